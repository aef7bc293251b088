"""A broken rule stops no other, causes silence their consequences, and absence is reported."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.rules import all_rules, run_rules
from specwriter.rules.causes import causes
from tests.support import job

RIDE = "areas.mainline.smoothness"
BY_SLUG = {rule.slug: rule for rule in all_rules()}


def broken(job: Job) -> Iterator[Finding]:
    yield from ()
    raise ZeroDivisionError("no pitch")


def test_a_broken_rule_is_named_and_the_others_still_run() -> None:
    bad = replace(BY_SLUG["index-unit"], slug="broken-rule", check=broken)
    clashing = job(
        "complete/diamond_grinding",
        {
            f"{RIDE}.instrument": "profilograph",
            f"{RIDE}.sensor": None,
            f"{RIDE}.sensor_width": None,
        },
    )

    report = run_rules(clashing, [bad, *all_rules()])

    assert [(each.slug, each.error) for each in report.defects] == [
        ("broken-rule", "ZeroDivisionError: no pitch")
    ]
    assert [each.slug for each in report.findings] == ["index-instrument"]


def test_a_cause_silences_its_consequence_in_the_same_area_only() -> None:
    both = job(
        "rural-grooving",
        {
            f"{RIDE}.index": "MRI",
            f"{RIDE}.instrument": "profilograph",
            f"{RIDE}.sensor": "point_laser",
            "areas.deck.smoothness": {"index": "MRI", "sensor": "point_laser"},
        },
    )

    found = [(each.slug, each.area) for each in run_rules(both).findings]

    assert found == [("index-instrument", "mainline"), ("sensor-on-longitudinal-texture", "deck")]


def test_a_whole_matter_that_is_missing_is_told_beside_a_clash_of_the_texture() -> None:
    patches = {"residue": None, RIDE: {"index": "IRI", "sensor": "point_laser"}}
    found = run_rules(job("complete/next_generation_concrete_surface", patches)).findings
    slugs = {finding.slug for finding in found}

    assert {"sensor-on-longitudinal-texture", "residue-not-settled"} <= slugs


def test_a_gap_in_a_clause_that_clashes_is_not_reported_beside_the_clash() -> None:
    no_test = {f"{RIDE}.test": None}
    clash = Finding(
        slug="elsewhere",
        grade=Grade.CONFLICT,
        basis="arithmetic",
        title="",
        area="mainline",
        evidence=(Evidence(path=f"{RIDE}.index", label="", written=""),),
        says="",
    )
    (gap,) = run_rules(job("complete/diamond_grinding", no_test)).found
    caution = replace(clash, grade=Grade.CAUTION)

    assert gap.slug == "requirement-without-test"
    assert causes([gap], all_rules(), [clash]) == (clash,)
    assert causes([gap], all_rules(), [caution]) == (caution, gap)


def test_what_a_rule_lacks_is_named_at_its_root() -> None:
    (missing,) = run_rules(job("diamond_grinding"), [BY_SLUG["index-unit"]]).not_run

    assert (missing.area, missing.because) == ("mainline", "smoothness is not given")


def test_the_order_of_rules_changes_no_finding() -> None:
    received = job("as-received")

    forward, backward = run_rules(received), run_rules(received, all_rules()[::-1])

    assert set(forward.findings) == set(backward.findings)
