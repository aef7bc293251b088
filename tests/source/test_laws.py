"""What holds for every text, however odd."""

from __future__ import annotations

import json
from collections.abc import Iterator
from decimal import Decimal
from typing import Any

import yaml
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from specwriter.source import Source, read_text
from specwriter.source.compose import Composer
from specwriter.source.source import LINE_BREAK
from tests.support import EXAMPLES, TEXTURES, text_of

JOBS = [text_of(name) for name in (*TEXTURES, *sorted(path.name for path in EXAMPLES.iterdir()))]
MODEST = settings(
    max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow], database=None
)

SIGNS = st.sampled_from([*":-#{}[]\"'&*!|>%@`,\n\t \\~?=$±½\x00\u202e\ufeff\xa0é", ": ", "\n  "])
WORDS = st.text(st.characters(codec="utf-8", exclude_categories=("Cc", "Cs")), max_size=12)


def assert_faults_are_inside(source: Source) -> None:
    lines = LINE_BREAK.split(source.text)
    for fault in source.faults:
        assert 1 <= fault.place.line <= len(lines)
        assert 1 <= fault.place.column <= len(lines[fault.place.line - 1]) + 1
        assert fault.says
        assert fault.todo
    places = [(fault.place.line, fault.place.column) for fault in source.faults]
    assert places == sorted(places)
    assert source.data is not None or source.faults


@MODEST
@given(st.text(max_size=200))
def test_any_text_is_read_or_refused_with_a_place(text: str) -> None:
    assert_faults_are_inside(read_text(text, "job.yaml"))


@MODEST
@given(st.lists(SIGNS | st.sampled_from(["areas", "groove", "width", "1/8 in", "- "]), max_size=40))
def test_any_heap_of_signs_is_read_or_refused_with_a_place(parts: list[str]) -> None:
    assert_faults_are_inside(read_text("".join(parts), "job.yaml"))


@MODEST
@given(st.sampled_from(JOBS), st.data())
def test_a_job_with_slips_is_read_or_refused_with_a_place(job: str, data: st.DataObject) -> None:
    text = job
    for _ in range(data.draw(st.integers(1, 3))):
        at = data.draw(st.integers(0, len(text)))
        gone = data.draw(st.integers(0, 5))
        text = text[:at] + data.draw(SIGNS | WORDS) + text[at + gone :]

    assert_faults_are_inside(read_text(text, "job.yaml"))


@MODEST
@given(st.sampled_from(JOBS), st.data())
def test_a_job_with_lines_moved_is_read_or_refused_with_a_place(
    job: str, data: st.DataObject
) -> None:
    lines = job.split("\n")
    at, to = (data.draw(st.integers(0, len(lines) - 1)) for _ in range(2))
    shift = data.draw(st.integers(-3, 3))
    moved = lines.pop(at)
    moved = " " * shift + moved if shift > 0 else moved[min(-shift, len(moved)) :]
    lines.insert(to, moved)

    assert_faults_are_inside(read_text("\n".join(lines), "job.yaml"))


PLAIN = (
    st.none()
    | st.booleans()
    | st.integers(-(10**12), 10**12)
    | st.text(st.characters(codec="ascii", min_codepoint=32, exclude_characters="\x7f"), max_size=9)
)
DATA = st.recursive(
    PLAIN,
    lambda below: (
        st.lists(below, max_size=4) | st.dictionaries(st.text("abc xyz", max_size=5), below)
    ),
    max_leaves=20,
)


@MODEST
@given(DATA)
def test_json_is_read_as_the_library_reads_it(data: Any) -> None:
    text = json.dumps({"data": data})
    found = Composer("job.yaml", text).read()

    assert found.faults == []
    assert found.data == yaml.safe_load(text) == {"data": data}


@MODEST
@given(st.decimals(-1000, 1000, places=3))
def test_decimals_are_exact(number: Decimal) -> None:
    assert Composer("job.yaml", f"n: {number:f}\n").read().data == {"n": number}


def paths(data: Any, path: str = "") -> Iterator[str]:
    yield path
    entries = data.items() if isinstance(data, dict) else ()
    entries = enumerate(data) if isinstance(data, list) else entries
    for key, below in entries:
        yield from paths(below, f"{path}.{key}" if path else str(key))


def test_every_path_in_the_data_has_a_place_of_its_own() -> None:
    for job in JOBS:
        source = read_text(job, "job.yaml")
        assert set(source.values) == set(source.keys) == set(paths(source.data))


def test_what_stands_at_a_place_is_the_value() -> None:
    for job in JOBS:
        source = read_text(job, "job.yaml")
        for path, mark in source.values.items():
            value = source.data
            for key in path.split(".") if path else ():
                value = value[int(key)] if isinstance(value, list) else value[key]  # type: ignore
            if isinstance(value, str) and mark.inside is not None:
                start = mark.column - 1 + mark.inside
                assert source.line(mark.line)[start : start + len(value)] == value
