"""Each starter is a job as it stands, and stays one when its comments are filled in."""

from __future__ import annotations

import re
from typing import Any

import pytest

from specwriter.model import build_job
from specwriter.source import read_text, starter
from specwriter.source.compose import Composer
from specwriter.source.schema import entry, route_of
from specwriter.source.starter import textures


def test_there_is_a_starter_for_every_texture() -> None:
    assert set(textures()) == set(entry(("areas", "*", "texture"))["enum"])


def test_an_unknown_texture_has_none() -> None:
    with pytest.raises(KeyError):
        starter("tining")


@pytest.mark.parametrize("texture", textures())
def test_a_starter_reads_without_fault(texture: str) -> None:
    source = read_text(starter(texture), texture)

    assert source.faults == ()
    assert source.data is not None
    assert [area.texture for area in build_job(source.data).areas.values()] == [texture]


@pytest.mark.parametrize("texture", textures())
def test_every_commented_key_stands_where_it_belongs(texture: str) -> None:
    text = filled_in(starter(texture))
    source = read_text(text, texture)

    assert [f"{fault.place}: {fault.says}" for fault in source.faults] == []
    assert len(source.values) > 100


def filled_in(text: str) -> str:
    """The starter with every commented key taken into use, with the schema's example."""
    lines = [line for line in map(_uncommented, text.split("\n")) if line is not None]
    found = Composer("job.yaml", "\n".join(lines)).read()
    assert found.faults == []
    for path, mark in found.values.items():
        if _value_at(found.data, path) is None:
            line = lines[mark.line - 1]
            key = line[: mark.column - 1 + mark.width] + ":"
            owner = line[: line.index("-") + 1] if path[-1].isdigit() else key
            lines[mark.line - 1] = f"{owner} {_example(path)}"
    return "\n".join(lines) + "\n"


def _uncommented(line: str) -> str | None:
    if re.match(r" {30,}#", line):  # a note that runs over several lines
        return None
    return re.sub(r"^( *)# (?= *(- )?[a-z_]+:(?: |$)| *- )", r"\1", line)


def _value_at(data: Any, path: str) -> Any:
    for key in path.split(".") if path else ():
        data = data[int(key)] if isinstance(data, list) else data[key]
    return data


def _example(path: str) -> str:
    if path.endswith("pay_item"):
        return "texturing"
    example = entry(route_of(path)).get("examples", ["water"])[0]
    return f'"{example}"' if isinstance(example, str) else str(example).lower()
