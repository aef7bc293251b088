"""Tables that code builds from the job."""

from __future__ import annotations

import pytest

from specwriter.assemble.document import Document, Table
from specwriter.model import Job
from tests.assemble import blocks, document, rows
from tests.support import job

AREA = "areas.mainline"
TEST = {
    "method": "depth gauge",
    "where": "each lane",
    "when": "each shift",
    "by": "contractor",
    "lot": "each shift",
    "readings": "10",
    "statistic": "mean",
    "remedy": "saw again",
    "retest": "10 more",
    "pay_effect": "none",
}


def tables(made: Job, name: str, **front: str) -> list[Table]:
    return [b for b in blocks(made, f"{{{{ {name} }}}}", **front) if isinstance(b, Table)]


def open_paths(made: Document) -> list[str]:
    return [decision.path for decision in made.open_decisions if decision.clause == "3.1"]


def test_pay_items_have_number_name_and_unit_but_no_quantity() -> None:
    (table,) = tables(job("urban-grinding"), "pay_item_table")

    assert table.header == ("Item number", "Pay item", "Unit")
    assert rows(table) == [["614.10", "Diamond Grinding Concrete Pavement", "SY"]]


def test_a_pay_item_without_a_number_is_open() -> None:
    made = document(job("diamond_grinding"), "{{ pay_item_table }}")

    assert open_paths(made) == ["pay_items.grinding.number"]


@pytest.mark.parametrize("name", ["pay_item", "submittal"])
def test_a_job_without_any_is_asked_for_them(name: str) -> None:
    made = document(job("diamond_grinding", {"pay_items": {}}), f"{{{{ {name}_table }}}}")

    assert open_paths(made) == [f"{name}s"]


def test_submittals_say_what_when_and_how_long() -> None:
    made = job(
        "diamond_grinding",
        {
            "submittals": {
                "plan": {
                    "title": "Plan",
                    "content": "pH and site",
                    "due": "10 days",
                    "due_before": "grinding",
                    "action": "review",
                    "response": "5 days",
                },
                "data_sheet": {"due": "3 days", "due_before": "grinding", "action": "information"},
                "log": {"title": "Log", "action": "review"},
            }
        },
    )

    (table,) = tables(made, "submittal_table")

    assert rows(table) == [
        ["Plan: pH and site", "10 days before grinding", "review", "5 days"],
        ["Data sheet", "3 days before grinding", "information", "–"],
        [
            "Log",
            "<blank:[time due]> before <blank:[event it is due before]>",
            "review",
            "<blank:[response time]>",
        ],
    ]


def test_a_test_for_damage_says_that_none_is_allowed() -> None:
    made = job("diamond_grinding", {f"{AREA}.testing.damage": TEST})
    tables = [each for each in blocks(made, "{{ testing_table }}") if isinstance(each, Table)]

    assert [row[:2] for row in rows(tables[0]) if row[0] == "Damage"] == [
        ["Damage", "none that comes from the work"]
    ]


def test_limits_give_each_stretch_its_plan_area_and_a_total() -> None:
    (table,) = tables(job("rural-grooving"), "limits_table")

    assert rows(table) == [
        [
            "Route 9 travel lanes",
            "Route 9 eastbound",
            "1 and 2",
            "120+00",
            "172+80",
            "24 ft (7.3 m)",
            "14,080 SY",
        ],
        [
            "Harrow Creek bridge deck",
            "Route 9 eastbound",
            "1 and 2",
            "172+80",
            "174+40",
            "24 ft (7.3 m)",
            "427 SY",
        ],
        ["Total", "", "", "", "", "", "14,507 SY"],
    ]


def test_an_area_without_limits_shows_one_open_decision() -> None:
    made = document(job("diamond_grinding", {f"{AREA}.limits": None}), "{{ limits_table }}")

    assert open_paths(made) == [f"{AREA}.limits"]


def test_a_stretch_without_width_has_no_plan_area() -> None:
    made = job("diamond_grinding", {f"{AREA}.limits": [{"from": "1+00", "to": "2+00"}]})

    (table,) = tables(made, "limits_table")

    assert rows(table)[0][-2:] == ["<blank:[width of the limits]>", "–"]


def test_dimensions_have_a_column_for_each_area() -> None:
    made = job(
        "longitudinal_grooving",
        {
            "areas.deck": {
                "texture": "longitudinal_grooving",
                "place": "bridge_deck",
                "groove": {"width": "0.1 in", "pattern": "random"},
            }
        },
    )

    (table,) = tables(made, "requirement_table")

    assert table.header == ("Dimension", "mainline", "deck")
    assert rows(table) == [
        ["Groove width", "0.095 in (2.41 mm)", "0.1 in (2.5 mm)"],
        ["Groove depth", "1/8 in to 3/16 in (3.2 to 4.8 mm)", "<blank:[groove depth]>"],
        ["Groove spacing", "3/4 in (19.1 mm)", "–"],
        ["Groove pattern", "–", "random"],
    ]


def test_many_areas_are_listed_downwards() -> None:
    area = {"texture": "diamond_grinding", "place": "ramp", "groove": {"width": "3 mm"}}
    made = job("diamond_grinding", {f"areas.ramp_{i}": area for i in range(4)})

    (table,) = tables(made, "requirement_table")

    assert table.header == ("Dimension", "Area", "Requirement")
    assert rows(table)[1] == ["Groove width", "ramp 0", "3 mm (0.12 in)"]


def test_a_table_of_the_tool_takes_the_caption_above_it() -> None:
    (table,) = blocks(job("urban-grinding"), "Table: bid | Bid items\n{{ pay_item_table }}")

    assert isinstance(table, Table)
    assert (table.id, table.caption) == ("bid", "Bid items")


def grooving(testing: dict[str, object], **more: object) -> Job:
    patches = {f"{AREA}.testing": testing, **{f"{AREA}.{k}": v for k, v in more.items()}}
    return job("longitudinal_grooving", patches)


def test_every_tested_dimension_has_its_row_in_both_tables() -> None:
    every = {f"groove_{name}": TEST for name in ("width", "depth", "spacing")}

    tests, remedies = tables(grooving(every), "testing_table")

    assert [row[0] for row in rows(tests)] == ["Groove width", "Groove depth", "Groove spacing"]
    assert rows(tests)[1] == [
        "Groove depth",
        "1/8 in to 3/16 in (3.2 to 4.8 mm)",
        "depth gauge",
        "each lane; each shift",
        "contractor; each shift, readings: 10",
        "mean",
    ]
    assert rows(remedies)[0] == ["Groove width", "saw again", "10 more", "none"]


def test_a_requirement_without_any_test_is_one_decision() -> None:
    every = {f"groove_{name}": TEST for name in ("width", "depth")}

    made = document(grooving(every), "{{ testing_table }}")

    assert open_paths(made) == [f"{AREA}.testing.groove_spacing"]


@pytest.mark.parametrize("cell", sorted(TEST))
def test_each_absent_cell_is_a_decision(cell: str) -> None:
    every: dict[str, object] = {f"groove_{name}": TEST for name in ("width", "depth")}
    every["groove_spacing"] = {key: text for key, text in TEST.items() if key != cell}

    made = document(grooving(every), "{{ testing_table }}")

    assert open_paths(made) == [f"{AREA}.testing.groove_spacing.{cell}"]


@pytest.mark.parametrize(
    ("share", "cell", "lacking"),
    [
        ("at least 90 percent", "share of the readings, at least 90 percent", []),
        ("90 percent", "share of the readings, at least 90 percent", []),
        (
            None,
            "share of the readings, <blank:[share of readings in the groove spacing test]>",
            [f"{AREA}.testing.groove_spacing.share"],
        ),
    ],
)
def test_a_share_of_readings_says_which_share(
    share: str | None, cell: str, lacking: list[str]
) -> None:
    every: dict[str, object] = {f"groove_{name}": TEST for name in ("width", "depth")}
    every["groove_spacing"] = {**TEST, "statistic": "share"} | ({"share": share} if share else {})

    made = document(grooving(every), "{{ testing_table }}")

    assert rows(tables(grooving(every), "testing_table")[0])[2][-1] == cell
    assert open_paths(made) == lacking


TIERS = [
    {"share": "at least 90 percent", "limit": "at least 3/16 in"},
    {"share": "60 percent", "limit": "at least 1/4 in"},
]
TIERS_SAID = (
    "at least 90 percent of the readings at least 3/16 in (4.8 mm); "
    "at least 60 percent of the readings at least 1/4 in (6.4 mm)"
)


@pytest.mark.parametrize(
    ("statistic", "share", "cell"),
    [
        ("share", None, TIERS_SAID),
        ("each", None, f"each reading; {TIERS_SAID}"),
        (
            "share",
            "at least 95 percent",
            f"share of the readings, at least 95 percent; {TIERS_SAID}",
        ),
    ],
)
def test_tiers_of_the_readings_stand_beside_what_each_of_them_must_meet(
    statistic: str, share: str | None, cell: str
) -> None:
    test = {**TEST, "statistic": statistic, "tiers": TIERS} | ({"share": share} if share else {})
    every: dict[str, object] = dict.fromkeys(("groove_width", "groove_spacing"), TEST)

    made = grooving({**every, "groove_depth": test})

    assert rows(tables(made, "testing_table")[0])[1][-1] == cell
    assert open_paths(document(made, "{{ testing_table }}")) == []


@pytest.mark.parametrize(
    ("texture_depth", "cell", "lacking"),
    [
        ({"method": "ASTM E965", "edition": "2015"}, "ASTM E965, edition 2015", []),
        (
            {"method": "ASTM E965"},
            "ASTM E965, edition <blank:[edition of the method of texture depth]>",
            [f"{AREA}.texture_depth.edition"],
        ),
        ({"method": "sand patch"}, "sand patch", []),
    ],
)
def test_a_published_method_needs_its_edition(
    texture_depth: dict[str, str], cell: str, lacking: list[str]
) -> None:
    test = {key: text for key, text in TEST.items() if key != "method"}
    depth = {"measure": "MTD", "at_least": "0.8 mm", "test": test, **texture_depth}
    every: dict[str, object] = {f"groove_{n}": TEST for n in ("width", "depth", "spacing")}

    made = document(grooving(every, texture_depth=depth), "{{ testing_table }}")

    table = made.parts[2].clauses[0].blocks[0]
    assert isinstance(table, Table)
    assert rows(table)[-1][:3] == ["Texture depth (MTD)", "at least 0.8 mm (0.031 in)", cell]
    assert open_paths(made) == lacking


def test_areas_that_read_the_same_share_a_row() -> None:
    tests, remedies = tables(job("rural-grooving"), "testing_table")

    assert [row[0] for row in rows(tests)] == [
        "Groove width",
        "Groove depth, Route 9 travel lanes",
        "Groove depth, Harrow Creek bridge deck",
        "Groove spacing",
        "Coverage",
    ]
    assert [row[0] for row in rows(remedies)] == [
        "Groove width",
        "Groove depth",
        "Groove spacing",
        "Coverage",
    ]


def test_a_ground_texture_is_judged_as_a_whole() -> None:
    made = document(job("diamond_grinding"), "{{ testing_table }}")

    table = made.parts[2].clauses[0].blocks[0]
    assert isinstance(table, Table)
    assert rows(table)[0][:2] == [
        "Ground texture",
        "groove width 0.125 in (3.18 mm); groove depth 1/16 in (1.6 mm); "
        "land width 0.100 in (2.54 mm)",
    ]
    assert open_paths(made) == [f"{AREA}.testing.texture"]


def test_the_residue_is_tested_when_the_job_says_so() -> None:
    every: dict[str, object] = {f"groove_{n}": TEST for n in ("width", "depth", "spacing")}
    made = job(
        "longitudinal_grooving",
        {f"{AREA}.testing": {**every, "residue": TEST}, "residue": {"ph": "6.0 to 12.0"}},
    )

    tests, _ = tables(made, "testing_table")

    assert rows(tests)[-1][:2] == ["Residue", "pH 6.0 to 12.0"]


def test_only_the_areas_of_the_clause_are_listed() -> None:
    made = job("as-received")

    (table,) = tables(made, "limits_table", textures="[longitudinal_grooving]")

    assert [row[0] for row in rows(table)] == ["South curve"]


@pytest.mark.parametrize(
    ("place", "name", "told"),
    [
        ("roadway", "Mill Road", []),
        ("ramp", "Exit 2 ramp", []),
        ("bridge_deck", "Mill Road", ["bridge deck"]),
        ("shoulder", "Mill Road", ["shoulder"]),
    ],
)
def test_the_place_of_an_area_is_told_where_its_name_does_not(
    place: str, name: str, told: list[str]
) -> None:
    (table,) = tables(
        job("diamond_grinding", {f"{AREA}.place": place, f"{AREA}.name": name}), "limits_table"
    )

    assert [head.lower() for head in table.header[1:-6]] == ["place"] * len(told)
    assert [row[1:-6] for row in rows(table)] == [told]
