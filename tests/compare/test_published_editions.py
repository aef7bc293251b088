"""Published provisions in two editions, entered as jobs: what changed, and in which direction.

The documents are named at the head of each job. Each edition was seen in part, so only what
was read in both says how they differ: a place that one of them alone fills may not have been read
in the other.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from specwriter.compare import Change, compare
from specwriter.model import Job, build_job
from specwriter.source import read_text

FOLDER = Path(__file__).with_name("published")

CHANGES = {
    # One section number: smoothness of bridge decks in April 2008, of pavements in April 2009.
    ("iowa-2317-2008", "iowa-2317-2009"): [("place", "changed", "both")],
    # Profilographs alone in 2009; in 2019 also inertial profilers whose output is a profilogram.
    # A job names one instrument, here the one that was let in.
    ("iowa-2317-2009", "iowa-2317-2019"): [("instrument for smoothness", "changed", "check")],
    # From a profilogram to the mean roughness index of each 0.1 mi. Remainders up to 250 ft were
    # merged; now all are pro-rated and those under 100 ft need no corrective work, so the length
    # does not say in whose favour that is.
    ("iowa-2317-2019", "iowa-2317-current"): [
        ("smoothness index", "changed", "check"),
        ("partial smoothness segment", "changed", "check"),
    ],
    # The width of the head became a number: a least value, which the contractor must meet, and
    # means beside an end result, whose risk is the agency's. Several machines in one lane are not
    # prescribed, they are under a rule: segment, spacing and diameter of their blades must match.
    ("iowa-2532-2008", "iowa-2532-current"): [
        ("cutting width of the head", "added", "both"),
        ("several machines in one lane", "added", "contractor"),
    ],
}
AS_ADDED = {"cutting width of the head", "several machines in one lane"}
"""Judged as added: the first was put in words before, the second was read in the later edition
alone, and its text says what it asks for."""


def job(name: str) -> Job:
    source = read_text((FOLDER / f"{name}.yaml").read_text("utf-8"), f"{name}.yaml")
    assert source.data is not None
    assert not source.faults
    return build_job(source.data)


def read_in_both(change: Change) -> bool:
    return change.old is not None and change.new is not None


@pytest.mark.parametrize("pair", CHANGES, ids=" to ".join)
def test_two_editions_differ_by_what_a_reader_of_both_finds(pair: tuple[str, str]) -> None:
    changes = [each for each in compare(*map(job, pair)).changes if each.area]

    told = [
        (each.label, each.sense.value, each.bears)
        for each in changes
        if read_in_both(each) or each.label in AS_ADDED
    ]
    assert told == CHANGES[pair]


@pytest.mark.parametrize("pair", CHANGES, ids=" to ".join)
def test_two_editions_read_backwards_mirror(pair: tuple[str, str]) -> None:
    old, new = map(job, pair)

    there, back = compare(old, new).changes, compare(new, old).changes
    assert {(each.label, each.sense.mirrored) for each in there} == {
        (each.label, each.sense) for each in back
    }
