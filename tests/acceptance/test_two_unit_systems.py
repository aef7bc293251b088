"""The runway pattern in inches and in millimetres, with a texture depth that lies between the two.

The judge is geometry, by hand: 1/4 in by 1/4 in at 1-1/2 in is 0.0417 in or 1.058 mm, 6 mm by 6 mm
at 38 mm is 0.947 mm (UFC 3-260-02, ch. 21, 2001 prints both); 1.0 mm is asked of a new runway
(ICAO Annex 14, 3.1.24, as quoted on a study page).
"""

from __future__ import annotations

from typing import Any

from specwriter.diagnostic import Finding
from specwriter.source import read_text
from specwriter.workflow import check_source
from tests.support import patched, text_of

INCH = {"width": "1/4 in", "depth": "1/4 in", "spacing": "1-1/2 in"}
METRIC = {"width": "6 mm", "depth": "6 mm", "spacing": "38 mm"}
EXACT = {"width": "6.35 mm", "depth": "6.35 mm", "spacing": "38.1 mm"}
INCH_COLUMN = {
    "width": "1/4 in +1/16 in -0 in",
    "depth": "1/4 in ± 1/16 in",
    "spacing": "1-1/2 in +0 in -1/8 in",
}
METRIC_COLUMN = {
    "width": "6 mm +2 mm -0 mm",
    "depth": "6 mm ± 2 mm",
    "spacing": "38 mm +0 mm -3 mm",
}


def found(
    groove: dict[str, str], other: dict[str, str] | None = None, target: str = "1.0 mm"
) -> dict[str, list[Finding]]:
    """What a designer is told of the pattern, beside what is still open."""
    depth = {"measure": "MTD", "at_least": target, "method": "ASTM E965", "edition": "2015"}
    patches: dict[str, Any] = {
        "areas.runway.groove": groove,
        "areas.runway.texture_depth": depth | {"surface": "over_grooves", "land_texture": "0 mm"},
    }
    if other is not None:
        patches["areas.runway.also_stated"] = [{"in": "metric drawing", "groove": other}]
    checked = check_source(read_text(patched(text_of("runway_grooving"), patches), "job.yaml"))
    told: dict[str, list[Finding]] = {}
    for each in checked.findings:
        if each.grade.value in ("conflict", "caution"):
            told.setdefault(each.slug, []).append(each)
    return told


def test_the_inch_pattern_alone_meets_the_target() -> None:
    assert found(INCH) == {}


def test_the_metric_pattern_alone_does_not() -> None:
    told = found(METRIC)

    assert list(told) == ["texture-depth-out-of-reach"]
    assert "0.95 mm" in told["texture-depth-out-of-reach"][0].says


def test_both_as_printed_are_two_patterns_and_the_system_decides_the_target() -> None:
    told = found(INCH, METRIC)

    assert set(told) == {"stated-twice-with-different-values", "unit-system-decides-texture-depth"}
    twice = told["stated-twice-with-different-values"]
    assert {each.grade.value for each in twice} == {"conflict"}
    assert [len(each.evidence) for each in twice] == [2, 2]
    (decides,) = told["unit-system-decides-texture-depth"]
    assert len(decides.evidence) == 7
    assert "1.06 mm" in decides.says
    assert "0.95 mm" in decides.says


def test_it_does_not_matter_which_of_them_stands_in_the_drawing() -> None:
    one, other = found(INCH, METRIC), found(METRIC, INCH)

    assert {name: len(some) for name, some in one.items()} == {
        name: len(some) for name, some in other.items()
    }


def test_a_target_that_both_meet_leaves_the_two_patterns() -> None:
    assert set(found(INCH, METRIC, "0.9 mm")) == {"stated-twice-with-different-values"}


def test_the_exact_conversion_is_one_pattern() -> None:
    assert found(INCH, EXACT) == {}


def test_columns_with_tolerances_go_together_and_do_not_assure_the_target() -> None:
    """Width 6.35 mm, depth 4.76 mm and spacing 38 mm obey both columns: 0.796 mm."""
    told = found(INCH_COLUMN, METRIC_COLUMN)

    assert {each.grade.value for some in told.values() for each in some} == {"caution"}
    assert "0.8 mm" in told["texture-depth-not-assured"][0].says
