"""Bad input → exactly these lines, in this order: place, what is wrong, what to do."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any

import pytest
import yaml

from specwriter.source import read_text

FRAMES = {
    "none": "",
    "top": (
        "format: 1\n"
        "project: {title: Grooving, agency: Roads}\n"
        "areas: {a: {texture: longitudinal_grooving, place: roadway}}\n"
    ),
    "area": (
        "format: 1\n"
        "project: {title: Grooving, agency: Roads}\n"
        "areas:\n"
        "  a:\n"
        "    texture: longitudinal_grooving\n"
        "    place: roadway\n"
    ),
}
"""Each case's text is put behind the frame that its table names."""

JARGON = re.compile(
    r"\b(yaml|json|schema|object|array|string|propert\w+|mapping|sequence|scalar|node|boolean|"
    r"null|token|parse\w*|integer|additional\w+|enum|regex)\b",
    re.IGNORECASE,
)


def _tables() -> list[Any]:
    return [
        pytest.param(table["frame"], case, id=f"{path.stem}: {name}")
        for path in sorted((Path(__file__).parent / "cases").glob("*.yaml"))
        for table in [yaml.safe_load(path.read_text("utf-8"))]
        for name, case in table["cases"].items()
    ]


@pytest.mark.parametrize(("frame", "case"), _tables())
def test_bad_input_is_answered_by_these_lines(frame: str, case: dict[str, Any]) -> None:
    source = read_text(FRAMES[frame] + case["text"], "job.yaml")

    said = [f"{fault.place}: {fault.says}; {fault.todo}" for fault in source.faults]

    assert said == case["expect"]


@pytest.mark.parametrize(("frame", "case"), _tables())
def test_messages_speak_of_keys_values_and_lists_only(frame: str, case: dict[str, Any]) -> None:
    source = read_text(FRAMES[frame] + case["text"], "job.yaml")

    for fault in source.faults:
        words = re.sub(r"'[^']*'|known here: .*", "", f"{fault.says}; {fault.todo}")
        assert not JARGON.search(words)
        assert fault.todo
        assert not fault.says.endswith(".")


@pytest.mark.parametrize(("frame", "case"), _tables())
def test_the_marker_lies_inside_the_line(frame: str, case: dict[str, Any]) -> None:
    source = read_text(FRAMES[frame] + case["text"], "job.yaml")

    for fault in source.faults:
        end = fault.place.column - 1 + fault.width
        assert end <= len(source.line(fault.place.line)) + 1
