"""One changed value at a time: which way it goes, who bears it, and what is said about it."""

from __future__ import annotations

from typing import Any, NamedTuple

import pytest

from specwriter.compare import Change, Sense, compare
from tests.compare import edition

GRINDING, GROOVING = "urban-grinding", "rural-grooving"


class Case(NamedTuple):
    name: str
    base: str
    path: str
    old: Any
    new: Any
    sense: str
    bears: str
    difference: str = ""
    warning: str = ""


MAIN = "areas.mainline"
CASES = (
    Case(
        "inches restated in millimetres",
        *(GROOVING, f"{MAIN}.groove.spacing", "1/8 in", "3.2 mm", "restated", "both"),
        "3.2 mm is 0.025 mm more than 1/8 in",
    ),
    Case(
        "coarse millimetres within half a place",
        *(GROOVING, f"{MAIN}.groove.spacing", "1/8 in", "3 mm", "restated", "both"),
        "3 mm is 0.175 mm less than 1/8 in",
    ),
    Case(
        "coarse millimetres that hide another size",
        *(GROOVING, f"{MAIN}.groove.spacing", "1/16 in", "2 mm", "shifted", "check"),
        "2 mm is 0.4125 mm more than 1/16 in",
    ),
    Case(
        "a place finer than the converted value",
        *(GROOVING, f"{MAIN}.groove.spacing", "1/8 in", "3.3 mm", "shifted", "check"),
        "3.3 mm is 0.125 mm more than 1/8 in",
    ),
    Case(
        "a fraction as an exact decimal",
        *(GROOVING, f"{MAIN}.groove.spacing", "1/8 in", "0.125 in", "restated", "both"),
    ),
    Case(
        "a fraction as another fraction",
        *(GROOVING, f"{MAIN}.groove.spacing", "1/8 in", "2/16 in", "restated", "both"),
    ),
    Case(
        "a fraction as a rounded decimal",
        *(GROOVING, f"{MAIN}.groove.spacing", "3/16 in", "0.19 in", "restated", "both"),
        "0.19 in is 0.0025 in more than 3/16 in",
    ),
    Case(
        "a fraction as a decimal too coarse for it",
        *(GROOVING, f"{MAIN}.groove.spacing", "1/8 in", "0.1 in", "shifted", "check"),
        "0.1 in is 0.025 in less than 1/8 in",
    ),
    Case(
        "feet restated in inches",
        *(GROOVING, f"{MAIN}.coverage.window_width", "2 ft", "24 in", "restated", "both"),
    ),
    Case(
        "roughness restated",
        *(GRINDING, f"{MAIN}.smoothness.limit", "at most 60 in/mi", "at most 0.95 m/km"),
        *("restated", "both", "0.95 m/km is about 0.00303 m/km more than 60 in/mi"),
    ),
    Case(
        "roughness that only looks restated",
        *(GRINDING, f"{MAIN}.smoothness.limit", "at most 1.0 m/km", "at most 60.5 in/mi"),
        *("tighter", "contractor", "60.5 in/mi is 2.86 in/mi less than 1.0 m/km"),
    ),
    Case(
        "silent change of unit",
        *(GRINDING, f"{MAIN}.smoothness.limit", "at most 60 in/mi", "at most 60 m/km"),
        *("looser", "agency", "60 m/km is about 59.053 m/km more than 60 in/mi"),
        "The number stands but its unit went from in/mi to m/km: 63.36 times as much.",
    ),
    Case(
        "silent change to a smaller unit",
        *(GROOVING, f"{MAIN}.coverage.joint_offset", "at most 3 in", "at most 3 mm"),
        *("tighter", "contractor", "3 mm is 73.2 mm less than 3 in"),
        "The number stands but its unit went from in to mm: as little as one part in 25.4.",
    ),
    Case(
        "a yard is no metre",
        *(GROOVING, f"{MAIN}.groove.alignment_over", "1 yd", "1 m", "tighter", "contractor"),
        "1 m is 0.0856 m more than 1 yd",
        "The number stands but its unit went from yd to m: 1.09 times as much.",
    ),
    Case(
        "upper limit lowered",
        *(GRINDING, f"{MAIN}.smoothness.limit", "at most 75 in/mi", "at most 60 in/mi"),
        *("tighter", "contractor", "60 in/mi is 15 in/mi less than 75 in/mi"),
    ),
    Case(
        "bare upper limit lowered",
        *(GRINDING, f"{MAIN}.smoothness.limit", "75 in/mi", "60 in/mi"),
        *("tighter", "contractor", "60 in/mi is 15 in/mi less than 75 in/mi"),
    ),
    Case(
        "limit word made explicit",
        *(GRINDING, f"{MAIN}.joint_match", "1/16 in", "at most 1/16 in", "restated", "both"),
    ),
    Case(
        "joint match opened",
        *(GRINDING, f"{MAIN}.joint_match", "1/16 in", "1/8 in", "looser", "agency"),
        "1/8 in is 1/16 in more than 1/16 in",
    ),
    Case(
        "more may be removed",
        *(GRINDING, f"{MAIN}.removal.depth", "3/8 in", "1/2 in", "looser", "agency"),
        "1/2 in is 1/8 in more than 3/8 in",
    ),
    Case(
        "more must be covered",
        *(GRINDING, f"{MAIN}.coverage.share", "90 percent", "95 percent", "tighter", "contractor"),
        "95 percent is 5 percent more than 90 percent",
    ),
    Case(
        "lower limit turned into upper limit",
        *(GRINDING, f"{MAIN}.coverage.share", "at least 95 percent", "at most 95 percent"),
        *("mixed", "check", "a lower limit became an upper limit"),
    ),
    Case(
        "tolerance halved",
        *(GROOVING, f"{MAIN}.groove.depth", "3/16 in ± 1/16 in", "3/16 in ± 1/32 in"),
        *("tighter", "contractor", "1/32 in is 1/32 in less than 1/16 in"),
    ),
    Case(
        "one-sided tolerance opened to both sides",
        *(GROOVING, f"{MAIN}.groove.depth", "1/4 in +1/16 in -0 in", "1/4 in ± 1/16 in"),
        *("looser", "agency", "1/16 in is 1/16 in more than 0 in"),
    ),
    Case(
        "nominal value moved under the same tolerance",
        *(GROOVING, f"{MAIN}.groove.depth", "3/16 in ± 1/16 in", "1/4 in ± 1/16 in"),
        *("shifted", "check", "1/4 in is 1/16 in more than 3/16 in"),
    ),
    Case(
        "range inside the old one",
        *(GROOVING, f"{MAIN}.groove.depth", "1/8 in to 1/4 in", "1/8 in to 3/16 in"),
        *("tighter", "contractor", "3/16 in is 1/16 in less than 1/4 in"),
    ),
    Case(
        "range outside the old one",
        *(GROOVING, f"{MAIN}.groove.depth", "1/8 in to 3/16 in", "1/16 in to 1/4 in"),
        *("looser", "agency"),
        "1/16 in is 1/16 in less than 1/8 in; 1/4 in is 1/16 in more than 3/16 in",
    ),
    Case(
        "range crossing the old one",
        *(GROOVING, f"{MAIN}.groove.depth", "1/8 in to 3/16 in", "5/32 in to 3/8 in"),
        *("mixed", "check"),
        "5/32 in is 1/32 in more than 1/8 in; 3/8 in is 3/16 in more than 3/16 in",
    ),
    Case(
        "range rewritten as a tolerance",
        *(GROOVING, f"{MAIN}.groove.width", "0.090 in to 0.100 in", "0.095 in ± 0.005 in"),
        *("restated", "both"),
    ),
    Case(
        "bare dimension given a tolerance",
        *(GROOVING, f"{MAIN}.groove.spacing", "3/4 in", "3/4 in ± 1/8 in", "looser", "agency"),
        "a single value became a value with a tolerance",
    ),
    Case(
        "wider blanking band hides more",
        *(GRINDING, f"{MAIN}.smoothness.blanking_band", "0.0 in", "0.2 in", "looser", "agency"),
        "0.2 in is 0.2 in more than 0.0 in",
    ),
    Case(
        "shorter smoothness segment",
        *(GRINDING, f"{MAIN}.smoothness.segment", "0.1 mi", "100 ft", "tighter", "contractor"),
        "100 ft is 428 ft less than 0.1 mi",
    ),
    Case(
        "more readings by the contractor",
        *(GROOVING, f"{MAIN}.testing.groove_width.readings", 5, 10, "tighter", "contractor"),
        "10 is 5 more than 5",
    ),
    Case(
        "shorter lots in words",
        *(GROOVING, f"{MAIN}.testing.groove_width.lot"),
        *("each 1,000 ft of lane", "each 500 ft of lane", "tighter", "contractor"),
        "500 ft is 500 ft less than 1,000 ft",
    ),
    Case(
        "lot restated in words",
        *(GROOVING, f"{MAIN}.testing.groove_width.lot"),
        *("each 1,000 ft of lane", "each 305 m of lane", "restated", "both"),
        "305 m is 0.2 m more than 1,000 ft",
    ),
    Case(
        "mean to each",
        *(GROOVING, f"{MAIN}.testing.groove_spacing.statistic", "mean", "each"),
        *("tighter", "contractor"),
    ),
    Case(
        "each to mean",
        *(GROOVING, f"{MAIN}.testing.groove_spacing.statistic", "each", "mean"),
        *("looser", "agency"),
    ),
    Case(
        "statistic stated for the first time",
        *(GROOVING, f"{MAIN}.testing.groove_spacing.statistic", None, "each", "added", "check"),
    ),
    Case(
        "time for an answer no longer stated",
        *(GROOVING, "submittals.equipment.response", "7 days", None, "removed", "contractor"),
    ),
    Case(
        "sensor no longer named",
        *(GRINDING, f"{MAIN}.smoothness.sensor", "line_laser", None, "removed", "check"),
    ),
    Case(
        "another index",
        *(GRINDING, f"{MAIN}.smoothness.index", "MRI", "IRI", "changed", "check"),
    ),
    Case(
        "one of several allowed values struck out",
        *(GROOVING, f"{MAIN}.groove.spacing", "1/2 in, 3/4 in, 1 in", "1/2 in, 3/4 in"),
        *("tighter", "contractor"),
    ),
    Case(
        "grooves counted per metre",
        *(GRINDING, f"{MAIN}.groove.per_foot", "57 per ft", "187 per m", "restated", "both"),
        "187 per m is about 0.00787 per m less than 57 per ft",
    ),
    Case(
        "unit price per square metre",
        *(GRINDING, "pay_items.grinding.unit_price", "$4.50/SY", "$5.38/m2", "restated", "both"),
        "$5.38/m2 is about $0.00196/m2 less than $4.50/SY",
    ),
    Case(
        "estimated quantity",
        *(GRINDING, "pay_items.grinding.quantity", "28,160 SY", "28,000 SY", "changed", "both"),
        "28,000 SY is 160 SY less than 28,160 SY",
    ),
    Case(
        "both wheel paths",
        *(GRINDING, f"{MAIN}.smoothness.wheel_paths", "right", "both", "tighter", "contractor"),
    ),
    Case(
        "another wheel path",
        *(GRINDING, f"{MAIN}.smoothness.wheel_paths", "right", "left", "changed", "check"),
    ),
    Case(
        "exclusion removed",
        *(GRINDING, f"{MAIN}.smoothness.exclusions", "25 ft at each end", None),
        *("tighter", "contractor"),
    ),
    Case(
        "exclusion added",
        *(GRINDING, f"{MAIN}.smoothness.exclusions", None, "25 ft at each end"),
        *("looser", "agency"),
    ),
    Case(
        "exclusion shortened",
        *(GRINDING, f"{MAIN}.smoothness.exclusions", "25 ft at each end", "10 ft at each end"),
        *("tighter", "contractor", "10 ft is 15 ft less than 25 ft"),
    ),
    Case(
        "edition of a method",
        *(GRINDING, f"{MAIN}.smoothness.test.edition", "2014 (2018)", "2022"),
        *("unknown", "check", "", "Another edition may ask for something else."),
    ),
    Case(
        "remedy with a lost not",
        *(GROOVING, f"{MAIN}.testing.groove_width.remedy"),
        *("do not saw again", "saw again", "reworded", "check", '"do not" is gone'),
        'A duty may turn on "not".',
    ),
    Case(
        "effect on pay reworded",
        *(GROOVING, f"{MAIN}.testing.groove_width.pay_effect"),
        *("bare area is not paid", "bare area is not measured", "reworded", "check"),
        '"paid" became "measured"',
    ),
    Case(
        "only a capital",
        *(GROOVING, f"{MAIN}.testing.groove_width.where", "The first cut", "the first cut"),
        *("restated", "both", "only spaces or capitals differ"),
    ),
    Case(
        "submittal due earlier",
        *(GROOVING, "submittals.equipment.due", "10 days", "14 days", "tighter", "contractor"),
        "14 days is 4 days more than 10 days",
    ),
    Case(
        "weeks for days",
        *(GROOVING, "submittals.equipment.due", "14 days", "2 weeks", "restated", "both"),
    ),
    Case(
        "answer due sooner",
        *(GROOVING, "submittals.equipment.response", "7 days", "5 days", "tighter", "agency"),
        "5 days is 2 days less than 7 days",
    ),
    Case(
        "more tries at the trial section",
        *(GROOVING, "trial_section.tries", 2, 3, "looser", "agency", "3 is 1 more than 2"),
    ),
    Case(
        "trial section no longer paid",
        *(GROOVING, "trial_section.paid", "at_contract_price", "included"),
        *("tighter", "contractor"),
    ),
    Case(
        "permit now the contractor's",
        *(GROOVING, "residue.permit_by", "agency", "contractor", "tighter", "contractor"),
    ),
    Case(
        "pay item lost",
        *(GROOVING, f"{MAIN}.pay_item", "grooving", None, "removed", "contractor"),
    ),
    Case(
        "site fact",
        *(GROOVING, "conditions.slab_thickness", "10 in", "8 in", "changed", "check"),
        "8 in is 2 in less than 10 in",
    ),
    Case(
        "site fact given as a range",
        *(GROOVING, "conditions.joint_spacing", "12 ft to 18 ft", "14 ft to 16 ft"),
        *("changed", "check"),
        "14 ft is 2 ft more than 12 ft; 16 ft is 2 ft less than 18 ft",
    ),
    Case(
        "station",
        *(GROOVING, f"{MAIN}.limits.0.to", "172+80", "171+20", "changed", "both"),
        "171+20 is 160 ft less than 172+80",
    ),
    Case(
        "slope as a ratio",
        *(GROOVING, "conditions.cross_slope", "2 percent", "1:50", "restated", "both"),
    ),
)


def only_change(case: Case) -> Change:
    old = edition(case.base, {case.path: case.old})
    new = edition(case.base, {case.path: case.new})
    changes = compare(old, new).changes
    assert len(changes) == 1, [change.label for change in changes]
    return changes[0]


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.name)
def test_a_change_has_its_sense_its_bearer_and_its_words(case: Case) -> None:
    change = only_change(case)

    found = (change.sense.value, change.bears, change.difference, change.warning)
    assert found == (case.sense, case.bears, case.difference, case.warning)
    assert change.because
    assert change.source == "common practice, no source"


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.name)
def test_the_same_change_read_backwards_has_the_mirrored_sense(case: Case) -> None:
    forth = only_change(case)
    back = only_change(case._replace(old=case.new, new=case.old))

    assert back.sense is forth.sense.mirrored
    assert (back.old, back.new, back.label) == (forth.new, forth.old, forth.label)


def test_more_readings_by_the_agency_are_its_own_burden() -> None:
    tester = {"areas.mainline.testing.groove_width.by": "agency"}
    readings = "areas.mainline.testing.groove_width.readings"
    old, new = (edition(GROOVING, {**tester, readings: count}) for count in (5, 10))

    (change,) = compare(old, new).changes

    assert (change.sense, change.bears) == (Sense.TIGHTER, "agency")
