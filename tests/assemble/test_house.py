"""House formats: which parts there are, what they hold, and how everything is numbered."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from specwriter.assemble import HouseError, assemble, check_library, load_library, select
from specwriter.assemble.counting import counted, numeral
from specwriter.assemble.document import Document, ListItem
from specwriter.render import render_docx
from tests.assemble import clause, document, library
from tests.render import word
from tests.support import job

LIBRARY = load_library()
FORMATS = tuple(LIBRARY.formats.outlines)
NUMBERINGS = tuple(LIBRARY.formats.numberings)


def drafted(name: str, **settings: Any) -> Document:
    return assemble(job(name, {f"settings.{k}": v for k, v in settings.items()}), LIBRARY)


def ids(made: Document) -> list[str]:
    return [clause.id for part in made.parts for clause in part.clauses]


@pytest.mark.parametrize(
    ("form", "number", "text"),
    [
        ("", 12, "12"),
        ("02", 3, "03"),
        ("02", 12, "12"),
        ("a", 1, "a"),
        ("a", 26, "z"),
        ("a", 27, "aa"),
        ("a", 28, "bb"),
        ("A", 53, "AAA"),
        ("i", 4, "iv"),
        ("i", 49, "xlix"),
        ("I", 19, "XIX"),
    ],
)
def test_numbers_are_written_as_word_counts_them(form: str, number: int, text: str) -> None:
    assert numeral(number, form) == text


def test_a_pattern_keeps_what_is_not_a_field_of_it() -> None:
    values = {"part": 3, "clause": 2, "section": "P-621"}

    assert counted("{section}-{part}.{clause:02} {other}", values) == "P-621-3.02 {other}"


@pytest.mark.parametrize("form", FORMATS)
@pytest.mark.parametrize("name", ["urban-grinding", "rural-grooving"])
def test_every_format_holds_the_same_clauses_each_once(form: str, name: str) -> None:
    usual, made = drafted(name), drafted(name, house_format=form)

    kept = [i for i in ids(made) if not i.endswith(".not_used")]
    assert sorted(kept) == sorted(i for i in ids(usual) if not i.endswith(".not_used"))
    assert made.unexpressed == usual.unexpressed
    assert {d.path for d in made.open_decisions} == {d.path for d in usual.open_decisions}


def test_the_three_parts_of_a_section_and_the_parts_of_an_airfield_item() -> None:
    section = drafted("urban-grinding", house_format="three_part")
    item = drafted("urban-grinding", house_format="airfield_item")

    assert [(p.number, p.title) for p in section.parts] == [
        ("PART 1", "GENERAL"),
        ("PART 2", "PRODUCTS"),
        ("PART 3", "EXECUTION"),
    ]
    assert section.parts[0].clauses[0].number == "1.01"
    assert [p.title for p in item.parts] == [
        "Description",
        "Materials",
        "Construction Methods",
        "Acceptance",
        "Method of Measurement",
        "Basis of Payment",
        "References",
    ]
    number = job("urban-grinding").project.base_section.number  # type: ignore[union-attr]
    assert item.parts[6].clauses[0].number == f"{number}-7.1"
    assert item.parts[6].clauses[0].id == "common.references"


def test_measurement_and_payment_share_a_part_and_equipment_has_its_own() -> None:
    merged = drafted("urban-grinding", house_format="five_part_merged")
    apart = drafted("urban-grinding", house_format="five_part_equipment")

    paying = [c.id for c in merged.parts[3].clauses]
    assert paying[0] == "common.measured"
    assert "common.items" in paying
    assert [c.id for c in apart.parts[2].clauses] == [
        "common.equipment",
        "diamond_grinding.equipment",
        "diamond_grinding.blades",
    ]


@pytest.mark.parametrize("form", FORMATS)
@pytest.mark.parametrize("numbering", NUMBERINGS)
def test_word_counts_the_numbers_of_every_format_and_numbering(form: str, numbering: str) -> None:
    made = drafted("rural-grooving", house_format=form, numbering=numbering)
    content = render_docx(made)

    counting = word.Numbering(content)
    shown = [
        (label, word.text_of(each))
        for each in word.part(content, "word/document.xml").iter(f"{word.W}p")
        if (label := counting.label(each)) not in ("", "•")
    ]

    expected: list[tuple[str, str]] = []
    for part in made.parts:
        expected.append((part.number, part.title))
        for each in part.clauses:
            expected.append((each.number, each.title))
            expected += [
                (block.label, "".join(run.text for run in block.runs))
                for block in each.blocks
                if isinstance(block, ListItem)
            ]
    assert shown == expected


def test_a_list_goes_on_past_z() -> None:
    made = document(job("diamond_grinding"), "\n".join(f"1. Item {n}." for n in range(28)))

    items = [b for b in made.parts[2].clauses[0].blocks if isinstance(b, ListItem)]
    assert [item.label for item in items[25:]] == ["(z)", "(aa)", "(bb)"]


def test_a_missing_number_of_the_section_stands_in_brackets_and_is_open() -> None:
    made = assemble(job("runway_grooving", {"settings.house_format": "airfield_item"}), LIBRARY)

    assert made.parts[0].number == "[section]-1"
    assert "project.base_section" in [each.path for each in made.open_decisions]


@pytest.mark.parametrize(
    ("key", "name", "says"),
    [
        ("house_format", "five_parts", "did you mean 'five_part'"),
        ("numbering", "sections", "did you mean 'section'"),
    ],
)
def test_a_name_that_the_library_does_not_have_is_refused(key: str, name: str, says: str) -> None:
    with pytest.raises(HouseError) as caught:
        drafted("urban-grinding", **{key: name})

    assert caught.value.path == f"settings.{key}"
    assert says in caught.value.todo


@pytest.mark.parametrize(
    ("units", "page", "expected"),
    [("us", None, "letter"), ("si", None, "a4"), ("us", "a4", "a4"), ("si", "letter", "letter")],
)
def test_the_paper_follows_the_units_or_the_setting(
    units: str, page: str | None, expected: str
) -> None:
    patches = {"project.governing_units": units, "settings.page": page}
    made = assemble(
        job("diamond_grinding", patches if page else {**patches, "settings": {}}), LIBRARY
    )
    width = {"letter": "12240", "a4": "11906"}[expected]

    size = next(word.part(render_docx(made), "word/document.xml").iter(f"{word.W}pgSz"))
    assert made.page == expected
    assert size.get(f"{word.W}w") == width


@pytest.mark.parametrize(
    ("old", "new", "says"),
    [
        ("{part}.{clause}", "{part}.{claus}", "'{claus}' has no meaning in the number of a clause"),
        ("{part}.{clause}", "{clause}", "names its part and its place"),
        ('"{part}."', '"{part:A}."', "written in two ways"),
        ('"({item:a})"', '"({item:z})"', "braces cannot be read"),
        ("numbering: plain", "numbering: none_such", "there is no numbering 'none_such'"),
        ("holds: [measurement, payment]", "holds: measurement", "'holds' needs a list"),
        ("id: payment, title", "id: paying, title", "has no part 'payment'"),
    ],
)
def test_a_fault_of_the_formats_is_located(tmp_path: Path, old: str, new: str, says: str) -> None:
    shipped = (Path(__file__).parents[2] / "clauses" / "outline.yaml").read_text("utf-8")
    assert old in shipped
    (tmp_path / "outline.yaml").write_text(shipped.replace(old, new, 1), "utf-8")

    faults = check_library(load_library(tmp_path))

    assert any(says in fault.says for fault in faults), faults
    assert all(fault.place.line >= 1 for fault in faults)


def test_a_format_without_a_place_for_a_chosen_clause_is_a_fault() -> None:
    odd = library(clause("Text.", "common.one", part="elsewhere"))

    (fault,) = check_library(odd)

    assert "has no part 'elsewhere'" in fault.says


CHANGES = [
    {"at": "420.03(b)", "action": "replace", "clauses": ["common.residue"]},
    {"at": "420.04", "action": "add_after", "clauses": ["common.water", "common.safety"]},
    {"at": "the second sentence of 420.05", "action": "delete"},
    {"at": "420.06", "action": "delete_and_substitute", "clauses": ["common.opening"]},
    {"at": "420.07", "action": "new_article", "clauses": ["common.records"]},
]
BASE = {"number": "420", "title": "Texture", "edition": "2024", "action": "amend"}


def test_an_amendment_says_what_is_done_at_each_place() -> None:
    patches = {"project.base_section": {**BASE, "changes": CHANGES}}
    made = assemble(job("urban-grinding", patches), LIBRARY)
    numbers = {clause.id: clause.number for part in made.parts for clause in part.clauses}

    said = [f"{i.label} " + "".join(run.text for run in i.runs) for i in made.instructions]

    assert said == [
        f"(a) Replace 420.03(b) by {numbers['common.residue']} of this provision.",
        f"(b) Add {numbers['common.water']} and {numbers['common.safety']} of this provision "
        "after 420.04.",
        "(c) Delete the second sentence of 420.05.",
        f"(d) Delete 420.06 and substitute {numbers['common.opening']} of this provision.",
        f"(e) Add {numbers['common.records']} of this provision as 420.07.",
        "(f) Add each other clause of this provision at the end of Section 420; where such a "
        "clause differs from the text of Section 420, the clause governs.",
    ]


def test_an_amendment_that_places_every_clause_adds_no_rest() -> None:
    ids = [choice.clause.id for choice in select(job("urban-grinding"), LIBRARY) if choice.chosen]
    changes = [{"at": "420.03", "action": "replace", "clauses": ids}]

    patches = {"project.base_section": {**BASE, "changes": changes}}
    (only,) = assemble(job("urban-grinding", patches), LIBRARY).instructions

    assert "each other clause" not in "".join(run.text for run in only.runs)


@pytest.mark.parametrize(
    ("changes", "path"),
    [
        ([], "project.base_section.changes"),
        ([{"at": "420.03", "action": "replace"}], "project.base_section.changes.0.clauses"),
    ],
)
def test_an_amendment_that_says_too_little_is_open(changes: list[Any], path: str) -> None:
    patches = {"project.base_section": {**BASE, "changes": changes}}

    made = assemble(job("urban-grinding", patches), LIBRARY)

    assert path in [each.path for each in made.open_decisions]


def test_an_amendment_by_a_clause_that_is_not_there_is_refused_at_its_place() -> None:
    changes = [{"at": "420.03", "action": "replace", "clauses": ["common.nothing"]}]

    with pytest.raises(HouseError) as caught:
        assemble(
            job("urban-grinding", {"project.base_section": {**BASE, "changes": changes}}), LIBRARY
        )

    assert caught.value.path == "project.base_section.changes.0.clauses.0"


def test_revisions_and_approvals_stand_under_the_title_without_a_number() -> None:
    patches = {
        "project.revisions": [{"revision": 1, "date": "2027-02-01", "change": "Depth limited"}],
        "project.approvals": [{"role": "Engineer of record"}],
    }
    made = assemble(job("urban-grinding", patches), LIBRARY)
    body = word.part(render_docx(made), "word/document.xml")

    assert [(t.caption, t.number) for t in made.title_tables] == [("Revisions", 0), ("Approval", 0)]
    texts = [word.text_of(each) for each in body.iter(f"{word.W}p")]
    assert texts.index("Revisions") < texts.index("Depth limited") < texts.index("Approval")
    assert texts.index("Engineer of record") < texts.index("Description")


def test_an_airport_calls_a_section_an_item() -> None:
    base = {**BASE, "number": "P-621", "changes": [{"at": "621-3.1", "action": "delete"}]}
    settings = {"settings.house_format": "airfield_item", "project.base_section": base}

    made = assemble(job("runway", settings), LIBRARY)

    assert made.lead_in.startswith("Item P-621, Texture, of the 2024 Standard Specifications is")
    assert "at the end of Item P-621;" in "".join(run.text for run in made.instructions[1].runs)
