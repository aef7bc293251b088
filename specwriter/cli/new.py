"""``specwriter new``: a commented job file to start from."""

from __future__ import annotations

from difflib import get_close_matches
from pathlib import Path

import click

from specwriter.cli import exit_codes
from specwriter.cli.files import write_all
from specwriter.cli.options import FILE
from specwriter.cli.output import say

_TEXTURES = (
    "diamond_grinding",
    "longitudinal_grooving",
    "transverse_grooving",
    "next_generation_concrete_surface",
    "runway_grooving",
)


@click.command(epilog=f"Textures: {', '.join(_TEXTURES)}.")
@click.argument("texture")
@click.argument("file", type=FILE)
@click.option("--force", is_flag=True, help="Overwrite the file if it exists.")
def command(texture: str, file: Path, force: bool) -> int:
    """Write a job file for TEXTURE to FILE, every key with a comment."""
    from specwriter.workflow import new_job

    name = texture.replace("-", "_").lower()
    if name not in _TEXTURES:
        near = get_close_matches(name, _TEXTURES, 1)
        hint = f"did you mean {near[0]}?" if near else f"there are: {', '.join(_TEXTURES)}"
        raise click.UsageError(f"there is no texture '{texture}'; {hint}")
    write_all({file: new_job(name).encode("utf-8")}, force=force)
    say(f"wrote {file}; fill it in, then: specwriter check {file}")
    return exit_codes.OK
