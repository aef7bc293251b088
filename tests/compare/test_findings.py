"""Findings that come, go or change their words with the requirements."""

from __future__ import annotations

from specwriter.compare import compare
from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import build_job
from tests.compare import data_of, edition

JOB = edition("rural-grooving")
DEPTH = "areas.deck.groove.depth"


def finding(*paths: str, slug: str = "depth-cover", area: str = "deck", says: str = "") -> Finding:
    return Finding(
        slug=slug,
        grade=Grade.CONFLICT,
        basis="arithmetic",
        title="the groove reaches the steel",
        area=area,
        evidence=tuple(Evidence(path=path, label="depth", written="2 in") for path in paths),
        says=says,
    )


def test_a_finding_of_the_new_job_alone_appears() -> None:
    result = compare(JOB, JOB, (), (finding(DEPTH),))

    assert result.appeared == (finding(DEPTH),)
    assert not result.vanished
    assert not result.is_empty


def test_a_finding_of_the_old_job_alone_vanishes() -> None:
    assert compare(JOB, JOB, (finding(DEPTH),), ()).vanished == (finding(DEPTH),)


def test_the_same_finding_is_no_difference() -> None:
    cover = "areas.deck.removal.cover_after"
    old, new = (finding(DEPTH, cover),), (finding(cover, DEPTH),)

    assert compare(JOB, JOB, old, new).is_empty


def test_a_finding_with_other_numbers_is_altered() -> None:
    old, new = finding(DEPTH, says="2 in short"), finding(DEPTH, says="1 in short")

    result = compare(JOB, JOB, (old,), (new,))

    assert [(each.old, each.new) for each in result.altered] == [(old, new)]
    assert not (result.appeared)
    assert not (result.vanished)


def test_findings_on_other_requirements_are_other_findings() -> None:
    old, new = finding(DEPTH), finding("areas.deck.groove.spacing")

    result = compare(JOB, JOB, (old,), (new,))

    assert (result.appeared, result.vanished) == ((new,), (old,))


def test_a_finding_twice_is_counted_twice() -> None:
    once, twice = (finding(DEPTH),), (finding(DEPTH), finding(DEPTH))

    assert compare(JOB, JOB, once, twice).appeared == once


def test_a_finding_follows_an_area_to_its_new_id() -> None:
    data = data_of("rural-grooving")
    data["areas"]["harrow_deck"] = data["areas"].pop("deck")
    new = finding("areas.harrow_deck.groove.depth", area="harrow_deck")

    result = compare(JOB, build_job(data), (finding(DEPTH),), (new,))

    assert not (result.appeared)
    assert not (result.vanished)
    assert not (result.altered)


def test_a_finding_follows_a_stretch_to_its_new_position() -> None:
    data = data_of("urban-grinding")
    data["areas"]["mainline"]["limits"].reverse()
    old = finding("areas.mainline.limits.0.to", area="mainline")
    new = finding("areas.mainline.limits.1.to", area="mainline")

    assert compare(edition("urban-grinding"), build_job(data), (old,), (new,)).is_empty
