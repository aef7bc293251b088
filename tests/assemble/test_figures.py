"""Figures say what the tables say, at sizes that follow from the job."""

from __future__ import annotations

from typing import Any

import pytest

from specwriter.assemble.document import Figure, Paragraph, Plan, Section, Table
from tests.assemble import blocks, shown
from tests.support import TEXTURES, job

INCH = 25.4
BODY = "Table: dimensions | Dimensions\n{{ requirement_table }}\n\n{{ texture_figure }}\n"
TRAPEZOID = {
    "width": "1/2 in ± 1/16 in",
    "width_at_bottom": "1/4 in",
    "depth": "1/4 in ± 1/16 in",
    "spacing": "2-1/4 in +0 in -1/8 in",
}
RANDOM = {
    "width": "0.10 in",
    "depth": "0.15 in",
    "spacing": "3/8 in to 1-3/4 in",
    "pattern": "random",
}


def figures(name: str, patches: dict[str, Any] | None = None) -> list[Figure]:
    return [b for b in blocks(job(name, patches), BODY) if isinstance(b, Figure)]


def section(name: str, patches: dict[str, Any] | None = None) -> Section:
    drawing = figures(name, patches)[0].drawing
    assert isinstance(drawing, Section)
    return drawing


@pytest.mark.parametrize("name", [*TEXTURES, "urban-grinding", "rural-grooving"])
def test_a_figure_shows_values_of_the_table_above_it_and_says_each_in_words(name: str) -> None:
    made = blocks(job(name), BODY)
    (table,) = (block for block in made if isinstance(block, Table))
    cells = {shown(cell) for row in table.rows for cell in row}

    drawn = [f for f in made if isinstance(f, Figure) and isinstance(f.drawing, Section)]

    assert drawn
    for figure in drawn:
        assert {each.text for each in figure.dimensions} <= cells
        assert all(each.text.startswith(each.label) for each in figure.dimensions)
        assert all(f"{each.name} {each.text}" in figure.description for each in figure.dimensions)


@pytest.mark.parametrize(
    ("name", "patches", "width", "depth", "land"),
    [
        ("runway_grooving", {}, 0.25, 0.25, 1.25),
        ("runway_grooving", {"areas.runway.groove": TRAPEZOID}, 0.5, 0.25, 1.75),
        ("longitudinal_grooving", {"areas.mainline.groove.spacing": None,
                                   "areas.mainline.land.width": "1/2 in"}, None, None, 0.5),
        ("diamond_grinding", {"areas.mainline.groove": {"width": "0.1 in", "depth": "1/16 in",
                                                        "per_foot": "60 per ft"},
                              "areas.mainline.land": None}, 0.1, 0.0625, 0.1),
    ],
)  # fmt: skip
def test_sizes_follow_from_the_job(
    name: str, patches: dict[str, Any], width: float | None, depth: float | None, land: float
) -> None:
    made = section(name, patches)

    assert made.lands == pytest.approx([land * INCH] * len(made.lands))
    assert width is None or made.width == pytest.approx(width * INCH)
    assert depth is None or made.depth == pytest.approx(depth * INCH)


def test_sloping_sides_and_random_lands_are_drawn_as_such() -> None:
    sloping = section("runway_grooving", {"areas.runway.groove": TRAPEZOID})
    random = section("transverse_grooving", {"areas.mainline.groove": RANDOM})

    assert sloping.bottom == pytest.approx(0.25 * INCH)
    assert min(random.lands) == pytest.approx(0.275 * INCH)
    assert max(random.lands) == pytest.approx(1.65 * INCH)


def test_transverse_grooves_have_a_plan_with_the_strips_left_uncut() -> None:
    strips = {"edge_offset": "5 ft to 10 ft", "joint_offset": "3 in to 9 in"}

    cut, plan = figures("runway_grooving", {"areas.runway.coverage": strips})

    assert isinstance(cut.drawing, Section)
    assert plan.drawing == Plan(joint=True, edge=True)
    assert [each.label for each in plan.dimensions] == ["5 ft to 10 ft", "3 in to 9 in"]


@pytest.mark.parametrize(
    "groove",
    [
        {"width": "1/4 in", "depth": "1/4 in"},
        {"depth": "1/4 in", "spacing": "1-1/2 in"},
        {"width": "1/4 in", "spacing": "1-1/2 in"},
        {"width": "2 in", "depth": "1/4 in", "spacing": "1-1/2 in"},
    ],
)
def test_there_is_no_figure_of_what_cannot_be_drawn(groove: dict[str, str]) -> None:
    assert figures("runway_grooving", {"areas.runway.groove": groove}) == []


def test_the_line_above_a_figure_names_it_and_the_table_that_governs() -> None:
    (lead,) = (b for b in blocks(job("runway_grooving"), BODY) if isinstance(b, Paragraph))

    assert shown(lead.runs) == (
        "Figures <reference:1> and <reference:2> illustrate the dimensions; "
        "Table <reference:1> governs."
    )


def test_areas_with_the_same_dimensions_share_a_figure() -> None:
    same = job("runway_grooving")
    twice = job("runway_grooving", {"areas.taxiway": {
        "texture": "runway_grooving", "place": "taxiway", "name": "Taxiway B",
        "groove": {"width": "1/4 in", "depth": "1/4 in", "spacing": "1-1/2 in"},
    }})  # fmt: skip

    captions = [b.caption for b in blocks(twice, BODY) if isinstance(b, Figure)]

    assert len(captions) == len([b for b in blocks(same, BODY) if isinstance(b, Figure)])
    assert captions[0] == "Cross-section of the texture, runway and Taxiway B"


def test_an_alternative_has_a_cross_section_of_its_own() -> None:
    others = [
        {"name": "trapezoidal groove", "groove": TRAPEZOID},
        {"name": "undrawn", "groove": {"depth": "1/4 in"}},
    ]
    made = blocks(
        job("runway_grooving", {"areas.runway.alternatives": others}), "{{ alternative_figure }}"
    )

    lead, figure = made

    assert isinstance(lead, Paragraph)
    assert shown(lead.runs) == (
        "Figure <reference:1> illustrates what may be chosen; the dimensions listed above govern."
    )
    assert isinstance(figure, Figure)
    assert figure.caption == "Cross-section of the texture, runway, alternative trapezoidal groove"
    assert isinstance(figure.drawing, Section)
    assert figure.drawing.bottom == pytest.approx(0.25 * INCH)
    assert [each.label for each in figure.dimensions] == list(TRAPEZOID.values())


def test_an_area_without_alternatives_has_no_such_figure() -> None:
    assert blocks(job("runway_grooving"), "{{ alternative_figure }}") == ()
