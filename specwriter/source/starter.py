"""The commented job files that a new job starts from, one a texture."""

from __future__ import annotations

from importlib.resources import files


def starter(texture: str) -> str:
    """The text of the starter for a texture; ``KeyError`` when there is none of that name."""
    file = files("specwriter.source").joinpath("starters", f"{texture}.yaml")
    if texture not in textures() or not file.is_file():
        raise KeyError(texture)
    return file.read_text("utf-8")


def textures() -> tuple[str, ...]:
    """The textures that there is a starter for, in the order of the schema."""
    from specwriter.source.schema import entry

    return tuple(entry(("areas", "*", "texture"))["enum"])
