"""Published provisions in two editions, entered as jobs: what changed, and in which direction.

The documents are named at the head of each job; the changes expected were taken from reading both
editions, not from the program.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from specwriter.compare import Change, compare
from specwriter.model import Job, build_job
from specwriter.source import read_text

FOLDER = Path(__file__).with_name("published")

CHANGES = {
    # A section number that went from bridge decks to pavement within a year.
    ("iowa-2317-2008", "iowa-2317-2009"): [
        ("place", "changed", "both"),
        ("straightedge length", "added", "contractor"),
        ("gap under the straightedge", "added", "contractor"),
        ("straightedge direction", "added", "contractor"),
        ("wheel paths profiled", "removed", "agency"),
        ("smoothness segment", "removed", "agency"),
        ("places left out of smoothness", "looser", "agency"),
    ],
    # A profilograph gave way to a profiler whose trace is read as a profilograph's.
    ("iowa-2317-2009", "iowa-2317-2019"): [
        ("straightedge length", "removed", "agency"),
        ("gap under the straightedge", "removed", "agency"),
        ("straightedge direction", "removed", "agency"),
        ("instrument for smoothness", "changed", "check"),
        ("simulated profilograph", "added", "check"),
        ("smoothness segment", "added", "contractor"),
        ("partial smoothness segment", "added", "contractor"),
        ("places left out of smoothness", "tighter", "contractor"),
    ],
    # Another index altogether; short segments count by their length.
    ("iowa-2317-2019", "iowa-2317-current"): [
        ("smoothness index", "changed", "check"),
        ("simulated profilograph", "removed", "check"),
        ("partial smoothness segment", "changed", "check"),
        ("base length of localized roughness", "added", "check"),
        ("certification of the profiler", "added", "check"),
        ("smoothness test", "removed", "agency"),
    ],
    # The width of the head became a number, and machines in one lane must match.
    ("iowa-2532-2008", "iowa-2532-current"): [
        ("cutting width of the head", "added", "agency"),
        ("several machines in one lane", "added", "agency"),
    ],
}


def job(name: str) -> Job:
    source = read_text((FOLDER / f"{name}.yaml").read_text("utf-8"), f"{name}.yaml")
    assert source.data is not None
    assert not source.faults
    return build_job(source.data)


def told(changes: tuple[Change, ...]) -> list[tuple[str, str, str]]:
    return [(each.label, each.sense.value, each.bears) for each in changes if each.area]


@pytest.mark.parametrize("pair", CHANGES, ids=" to ".join)
def test_two_editions_differ_by_what_a_reader_of_both_finds(pair: tuple[str, str]) -> None:
    old, new = map(job, pair)

    assert told(compare(old, new).changes) == CHANGES[pair]
