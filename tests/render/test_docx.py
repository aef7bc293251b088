from __future__ import annotations

import io
import zipfile
from dataclasses import replace
from xml.etree import ElementTree

import docx
import pytest

from specwriter.assemble.document import Clause, Document, ListItem, Paragraph, Run, Table
from specwriter.render import render_docx
from specwriter.render.docx_body import Body
from specwriter.render.docx_keep import last_blocks
from specwriter.render.docx_table import table_xml
from specwriter.render.docx_widths import best_widths, column_widths
from specwriter.render.docx_xml import run, unbroken
from tests.render import word
from tests.render.sample import JOB_TEXT, SAMPLE
from tests.render.word import W

CONTENT = render_docx(SAMPLE)
BODY = word.part(CONTENT, "word/document.xml")
CLAUSES = [clause for part in SAMPLE.parts for clause in part.clauses]


def test_the_same_document_gives_the_same_bytes() -> None:
    assert render_docx(replace(SAMPLE)) == CONTENT


def test_another_document_gives_other_bytes() -> None:
    assert render_docx(replace(SAMPLE, revision="C")) != CONTENT


def test_part_names_are_unique_sorted_and_begin_with_the_content_types() -> None:
    first, *rest = word.names(CONTENT)
    assert first == "[Content_Types].xml"
    assert rest == sorted(set(rest))


def test_entries_carry_no_clock() -> None:
    entries = zipfile.ZipFile(io.BytesIO(CONTENT)).infolist()
    assert {entry.date_time for entry in entries} == {(1980, 1, 1, 0, 0, 0)}


@pytest.mark.parametrize("name", word.names(CONTENT))
def test_every_part_is_well_formed_and_has_no_open_placeholder(name: str) -> None:
    word.part(CONTENT, name)
    if name != "customXml/item1.xml":
        assert b"$" not in zipfile.ZipFile(io.BytesIO(CONTENT)).read(name)


def test_every_part_has_a_content_type_and_every_relation_a_part() -> None:
    types = word.part(CONTENT, "[Content_Types].xml")
    overrides = {each.get("PartName", "") for each in types if each.get("PartName")}
    assert overrides <= {f"/{name}" for name in word.names(CONTENT)}
    for relation in word.part(CONTENT, "word/_rels/document.xml.rels"):
        target = relation.get("Target", "")
        name = target[3:] if target.startswith("../") else f"word/{target}"
        assert name in word.names(CONTENT)


def test_every_style_that_is_used_is_defined() -> None:
    styles = word.part(CONTENT, "word/styles.xml")
    defined = {each.get(f"{W}styleId") for each in styles.iter(f"{W}style")}
    kinds = ("pStyle", "rStyle", "tblStyle", "basedOn", "next")
    for name in ("document", "header1", "footer1", "styles", "numbering"):
        root = word.part(CONTENT, f"word/{name}.xml")
        used = {each.get(f"{W}val") for kind in kinds for each in root.iter(f"{W}{kind}")}
        assert used <= defined, name


def test_numbers_counted_by_word_are_those_of_the_tree() -> None:
    numbering = word.Numbering(CONTENT)
    counted = [
        (label, word.text_of(each))
        for each in BODY.iter(f"{W}p")
        if (label := numbering.label(each)) not in ("", "•")
    ]
    assert counted == list(_numbered(SAMPLE))


def _numbered(document: Document) -> list[tuple[str, str]]:
    labels = []
    for part in document.parts:
        labels.append((part.number, part.title))
        for clause in part.clauses:
            labels.append((clause.number, clause.title))
            labels += [
                (block.label, "".join(run.text for run in block.runs))
                for block in clause.blocks
                if isinstance(block, ListItem)
            ]
    return labels


def test_every_table_repeats_its_header_and_tears_no_row() -> None:
    tables = list(BODY.iter(f"{W}tbl"))
    assert len(tables) == 2
    for table in tables:
        rows = table.findall(f"{W}tr")
        heads = [row.find(f"{W}trPr/{W}tblHeader") is not None for row in rows]
        assert heads == [True] + [False] * (len(rows) - 1)
        assert all(row.find(f"{W}trPr/{W}cantSplit") is not None for row in rows)


@pytest.mark.parametrize(
    ("shares", "least", "widths"),
    [
        ((1, 1, 1), (0, 0, 0), (333, 333, 334)),
        ((4, 2, 2, 2), (100,) * 4, (400, 200, 200, 200)),
        ((1, 9), (300, 100), (300, 700)),
        ((1, 1, 8), (150, 0, 0), (150, 94, 756)),
        ((1, 1, 1), (100, 333, 340), (327, 333, 340)),
        ((1, 1), (1500, 500), (750, 250)),
        ((1,), (50,), (1000,)),
    ],
)
def test_a_column_gets_its_share_but_room_for_its_longest_word(
    shares: tuple[int, ...], least: tuple[int, ...], widths: tuple[int, ...]
) -> None:
    assert column_widths(shares, least, 1000) == widths


def test_no_paragraph_is_empty() -> None:
    assert [word.style_of(each) for each in BODY.iter(f"{W}p") if not word.text_of(each)] == []


def test_a_list_or_text_after_a_table_brings_its_space() -> None:
    after = [
        following
        for element, following in zip(BODY[0], list(BODY[0])[1:], strict=False)
        if element.tag == f"{W}tbl" and word.style_of(following) != "Heading2"
    ]
    assert [each.find(f"{W}pPr/{W}spacing") is not None for each in after] == [True]


def test_references_are_fields_that_lead_to_a_bookmark() -> None:
    marks = word.bookmarks(BODY)
    assert len(marks) == len(set(marks)) == len(CLAUSES) + 2
    references = [each.split(maxsplit=2) for each in word.fields(BODY) if each.startswith("REF")]
    assert [switches for _, _, switches in references] == [r"\r \h", r"\h", r"\r \h"]
    assert {name for _, name, _ in references} <= set(marks)
    ids = [each.get(f"{W}id") for each in BODY.iter(f"{W}bookmarkStart")]
    assert len(ids) == len(set(ids))


def test_a_reference_carries_its_number_before_any_field_is_updated() -> None:
    texts = [word.text_of(each) for each in BODY.iter(f"{W}p")]
    assert any("in Table 1 and as 1.2 requires: see 1.2. Do not" in text for text in texts)


def test_captions_are_counted_and_stay_with_their_table() -> None:
    captions = [each for each in BODY.iter(f"{W}p") if word.style_of(each) == "Caption"]
    assert [word.fields(each) for each in captions] == [[r"SEQ Table \* ARABIC"]] * 2
    assert [word.text_of(each) for each in captions] == [
        "Table 1. Groove dimensions | limits",
        "Table 2. Limits of work",
    ]
    styles = word.part(CONTENT, "word/styles.xml")
    (style,) = (s for s in styles.iter(f"{W}style") if s.get(f"{W}styleId") == "Caption")
    assert style.find(f"{W}pPr/{W}keepNext") is not None


def test_pages_are_counted_in_the_footer() -> None:
    footer = word.part(CONTENT, "word/footer1.xml")
    assert word.fields(footer) == ["PAGE", "NUMPAGES"]
    assert "Revision B · 2026-03-02" in word.text_of(footer)


@pytest.mark.parametrize(("status", "lines"), [(SAMPLE.status, 2), ("", 1)])
def test_the_header_names_the_provision_and_its_status(status: str, lines: int) -> None:
    header = word.part(render_docx(replace(SAMPLE, status=status)), "word/header1.xml")
    text = word.text_of(header)
    assert len(header) == lines
    assert all(each in text for each in (SAMPLE.agency, "SP-7", "C-1042", status))


def test_a_blank_stands_in_brackets_and_is_marked() -> None:
    blanks = [each for each in BODY.iter(f"{W}r") if word.value(each, "rPr/rStyle") == "Blank"]
    assert [word.text_of(each) for each in blanks] == ["[groove depth, mm]"]


def test_the_front_sheet_comes_before_the_title_on_its_own_page() -> None:
    styles = [word.style_of(each) for each in BODY.iter(f"{W}p")]
    assert styles[0] == "FrontTitle"
    breaks = [
        word.style_of(p)
        for p in BODY.iter(f"{W}p")
        if p.find(f"{W}pPr/{W}pageBreakBefore") is not None
    ]
    assert breaks == ["Agency"]
    assert max(i for i, style in enumerate(styles) if style == "FrontPoint") < styles.index(
        "Agency"
    )


@pytest.mark.parametrize("text", [JOB_TEXT, "", "a\r\nb\tc\n", "$title & ${body} <!-- ]]> é ±"])
def test_the_job_text_comes_back_as_it_was(text: str) -> None:
    item = word.part(render_docx(replace(SAMPLE, job_text=text)), "customXml/item1.xml")
    assert (item.text or "") == text
    assert item.get("sha256") == SAMPLE.job_digest


def test_the_properties_name_the_document() -> None:
    properties = docx.Document(io.BytesIO(CONTENT)).core_properties
    assert properties.title == SAMPLE.title
    assert properties.author == SAMPLE.agency
    assert properties.subject == SAMPLE.subtitle
    assert properties.language == "en-US"
    assert f"{properties.created:%Y-%m-%d %H:%M}" == "2026-03-02 00:00"
    assert properties.modified == properties.created


@pytest.mark.parametrize("character", ["\x00", "\x0b", "\x1f", "\ufffe", "\ud800"])
@pytest.mark.parametrize("place", ["title", "job_text", "closing"])
def test_a_control_character_is_refused(character: str, place: str) -> None:
    code = f"U\\+{ord(character):04X}"
    with pytest.raises(ValueError, match=code):
        render_docx(replace(SAMPLE, **{place: f"Groove{character}depth"}))


@pytest.mark.parametrize(
    ("text", "whole"),
    [
        ("1-1/2 in", "1‑1/2 in"),
        ("+0 in -1/8 in", "+0 in −1/8 in"),
        ("-$5", "−$5"),
        ("(-0.5 mm), Runway 08-26", "(−0.5 mm), Runway 08‑26"),
        ("lead-in of 8-inch pipe, item W-12", "lead-in of 8-inch pipe, item W-12"),
        ("from 3 - 4", "from 3 - 4"),
    ],
)
def test_no_line_can_end_within_a_number_or_behind_its_minus(text: str, whole: str) -> None:
    found = ElementTree.fromstring(f'<w:p xmlns:w="{W[1:-1]}">{run(unbroken(text))}</w:p>')

    assert "".join(each.text or "" for each in found[0]) == whole
    assert word.text_of(found) == text


def test_a_second_reader_sees_headings_and_tables() -> None:
    read = docx.Document(io.BytesIO(CONTENT))
    headings = [p.text for p in read.paragraphs if p.style.name == "Heading 2"]
    assert headings == [clause.title for clause in CLAUSES]
    tables = [block for clause in CLAUSES for block in _tables(clause)]
    for made, table in zip(read.tables, tables, strict=True):
        assert [cell.text for cell in made.rows[0].cells] == list(table.header)
        assert len(made.rows) == 1 + len(table.rows)


def _tables(clause: Clause) -> list[Table]:
    return [block for block in clause.blocks if isinstance(block, Table)]


def test_a_short_table_stays_on_one_page_and_a_long_one_may_break() -> None:
    short, long = (
        [
            all(p.find(f"{W}pPr/{W}keepNext") is not None for p in row.iter(f"{W}p"))
            for row in table.findall(f"{W}tr")[1:]
        ]
        for table in BODY.iter(f"{W}tbl")
    )
    assert short == [True, True, True, True, False]
    # The first two rows stay together, and the last two.
    assert [place for place, kept in enumerate(long) if kept] == [0, len(long) - 2]


def test_the_room_goes_to_the_columns_that_make_rows_tall() -> None:
    text = "five zones across the runway, three places in each, drawn by random numbers"
    rows = [("Groove depth", "1/4 in", text), ("Groove width", "42,240 SY", text)]
    made = Table(
        id="tests",
        number=1,
        caption="Tests",
        header=("Requirement", "Limit", "Place"),
        rows=tuple(tuple((Run(text=cell),) for cell in row) for row in rows),
    )
    title, limit, place = (
        int(each.get(f"{W}w", "")) for each in _only_table(made).iter(f"{W}gridCol")
    )
    assert place > 2 * title > 2 * limit
    # A value keeps its unit beside it: no font of this size needs more for these nine letters.
    assert limit - 160 > len("42,240 SY") * 100


def test_widths_are_exchanged_until_no_exchange_makes_the_table_lower() -> None:
    header = ("Requirement", "Limit", "Place and time", "Judged on")
    row = ("Groove width, South curve", "1/8 in ± 1/64 in", "[place and time]", "[statistic]")
    made = Table(
        id="t",
        number=1,
        caption="Tests",
        header=header,
        rows=(tuple((Run(kind="blank", text=cell),) for cell in row),) * 9,
    )
    widths, lines = best_widths(made, 8640)
    # Head and nine rows of a line each: Arial of 9.5 points sets about two letters in 200 twips.
    assert lines == 10
    assert all(width - 180 >= 80 * len(cell) for width, cell in zip(widths, row, strict=True))
    # Arial Bold of that size sets "[statistic]" in 845 twips.
    assert widths[3] - 160 >= 845
    assert sum(widths) == 8640


def _only_table(table: Table) -> ElementTree.Element:
    xml = table_xml(table, lambda runs: run("".join(each.text for each in runs)), 9360)
    return ElementTree.fromstring(f'<w:body xmlns:w="{W[1:-1]}">{xml}</w:body>')


@pytest.mark.parametrize(("letters", "kept"), [(40, True), (200, False)])
def test_only_a_line_that_leads_in_a_list_is_kept_with_it(letters: int, kept: bool) -> None:
    blocks = (
        Paragraph(runs=(Run(text="x" * letters),)),
        ListItem(runs=(Run(text="one"),), label="(a)", starts=True),
    )
    lead, _ = Body(SAMPLE).blocks(blocks)
    assert ("<w:keepNext/>" in lead) is kept


def test_the_first_two_and_the_last_two_items_of_a_list_stay_together() -> None:
    lead = Paragraph(runs=(Run(text="In this order:"),))
    items = [ListItem(runs=(Run(text=each),), label="", starts=each == "1") for each in "12345"]
    made = Body(SAMPLE).blocks((lead, *items, lead))
    kept = ["<w:keepNext/>" in each for each in made]
    assert kept == [True, True, False, False, True, False, False]


@pytest.mark.parametrize(("texts", "kept"), [(1, 2), (2, 1)])
def test_the_last_page_holds_more_than_a_line(texts: int, kept: int) -> None:
    before, last = (
        replace(CLAUSES[0], id=id, blocks=(Paragraph(runs=(Run(text=id),)),) * count)
        for id, count in (("before", 1), ("last", texts))
    )
    part = replace(SAMPLE.parts[0], clauses=(before, last))
    blocks = last_blocks(replace(SAMPLE, parts=(part,), closing="End"))
    assert blocks == (*before.blocks, *last.blocks)[-kept:]
