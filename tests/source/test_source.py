"""Data is what was written, and every value and key has a place."""

from __future__ import annotations

from decimal import Decimal
from typing import Any

import pytest
import yaml

from specwriter.source import read_text
from specwriter.source.compose import Composer
from tests.support import EXAMPLES, TEXTURES, text_of

NAMES = [*TEXTURES, *(path.name for path in sorted(EXAMPLES.iterdir()))]

TEXT = """\
# a job
format: 1
project:
  title: "Grooving"
areas:
  mainline:
    groove: {width: 1/8 in, depth: 3/16 in}
    limits:
      - from: 1+00
        to: 2+00
sequence:
  - sawing
  - marking
"""


@pytest.mark.parametrize("name", NAMES)
def test_the_jobs_at_hand_have_no_fault(name: str) -> None:
    assert read_text(text_of(name), name).faults == ()


@pytest.mark.parametrize(
    ("path", "place"),
    [
        ("format", "2:9"),
        ("project", "3:1"),
        ("project.title", "4:10"),
        ("areas.mainline", "6:3"),
        ("areas.mainline.groove", "7:13"),
        ("areas.mainline.groove.depth", "7:36"),
        ("areas.mainline.limits", "8:5"),
        ("areas.mainline.limits.0", "9:9"),
        ("areas.mainline.limits.0.to", "10:13"),
        ("sequence.1", "13:5"),
        ("areas.mainline.land.width", "6:3"),
        ("residue", "2:1"),
    ],
)
def test_a_value_stands_where_it_was_written(path: str, place: str) -> None:
    assert str(read_text(TEXT, "job.yaml").place(path)) == f"job.yaml:{place}"


@pytest.mark.parametrize(
    ("path", "place"),
    [
        ("project.title", "4:3"),
        ("areas.mainline.groove.depth", "7:29"),
        ("areas.mainline.limits.0", "9:9"),
        ("sequence.1", "13:5"),
        ("areas.mainline.land", "6:3"),
        ("", "2:1"),
    ],
)
def test_a_key_stands_where_it_was_written(path: str, place: str) -> None:
    assert str(read_text(TEXT, "job.yaml").key_place(path)) == f"job.yaml:{place}"


def test_lines_count_from_one() -> None:
    source = read_text(TEXT, "job.yaml")

    assert source.line(1) == "# a job"
    assert source.line(13) == "  - marking"
    assert (source.line(0), source.line(99)) == ("", "")


@pytest.mark.parametrize(
    ("written", "value"),
    [
        ("12:30", "12:30"),
        ("no", "no"),
        ("on", "on"),
        ("Yes", "Yes"),
        ("True", "True"),
        ("1e3", "1e3"),
        ("010", "010"),
        ("0x1F", "0x1F"),
        ("1_000", "1_000"),
        ("2027-02-01", "2027-02-01"),
        (".inf", ".inf"),
        ("=", "="),
        ("+1", "+1"),
        (".5", ".5"),
        ("1.10", Decimal("1.10")),
        ("-0.5", Decimal("-0.5")),
        ("0", 0),
        ("-12", -12),
        ("true", True),
        ("false", False),
        ("null", None),
        ("~", None),
        ('"12"', "12"),
        ("'true'", "true"),
        ('"null"', "null"),
        ("3/4 in", "3/4 in"),
        ("12+50", "12+50"),
    ],
)
def test_nothing_turns_into_something_else(written: str, value: object) -> None:
    data: Any = Composer("job.yaml", f"key: {written}\n").read().data

    assert data == {"key": value}
    assert type(data["key"]) is type(value)


def test_trailing_zeros_are_kept() -> None:
    assert str(Composer("job.yaml", "number: 614.10\n").read().data["number"]) == "614.10"


def test_keys_are_always_text() -> None:
    assert Composer("f", "1: a\ntrue: b\nno: c\n1.0: d\n").read().data == {
        "1": "a",
        "true": "b",
        "no": "c",
        "1.0": "d",
    }


@pytest.mark.parametrize("name", NAMES)
def test_the_loader_in_pure_python_reads_the_same(name: str) -> None:
    fast, slow = (Composer(name, text_of(name)).read(kind) for kind in (None, yaml.SafeLoader))

    assert slow.data == fast.data
    assert slow.values == fast.values
    assert slow.keys == fast.keys


def test_the_loader_in_pure_python_survives_deep_brackets() -> None:
    found = Composer("job.yaml", "[" * 20_000).read(yaml.SafeLoader)

    assert [fault.says for fault in found.faults] == [
        "blocks and brackets are nested more than 30 deep here"
    ]
