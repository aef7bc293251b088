"""Word files as they come: tracked changes, fields, signs of symbol fonts, numbers, and faults."""

from __future__ import annotations

import io
import zipfile

import pytest

from specwriter.reading import Paragraph, ReadingFault, Table, job_inside, read_word
from specwriter.reading.counting import numeral

W = "http://schemas.openxmlformats.org/wordprocessingml/2006/main"
NUMBERING = f"""\
<w:numbering xmlns:w="{W}"><w:abstractNum w:abstractNumId="0">
<w:lvl w:ilvl="0"><w:start w:val="3"/><w:numFmt w:val="decimal"/><w:lvlText w:val="%1."/></w:lvl>
<w:lvl w:ilvl="1"><w:start w:val="1"/><w:numFmt w:val="lowerLetter"/><w:lvlText w:val="%1(%2)"/>
</w:lvl></w:abstractNum>
<w:num w:numId="1"><w:abstractNumId w:val="0"/></w:num>
<w:num w:numId="2"><w:abstractNumId w:val="0"/>
<w:lvlOverride w:ilvl="0"><w:startOverride w:val="1"/></w:lvlOverride></w:num></w:numbering>"""


def word(body: str, **parts: str) -> bytes:
    buffer = io.BytesIO()
    document = f'<w:document xmlns:w="{W}"><w:body>{body}</w:body></w:document>'
    with zipfile.ZipFile(buffer, "w") as package:
        package.writestr("word/document.xml", document)
        for name, text in parts.items():
            package.writestr(f"word/{name}.xml", text)
    return buffer.getvalue()


def paragraph(runs: str, properties: str = "") -> str:
    return f"<w:p><w:pPr>{properties}</w:pPr>{runs}</w:p>"


def run(text: str, properties: str = "") -> str:
    return f'<w:r><w:rPr>{properties}</w:rPr><w:t xml:space="preserve">{text}</w:t></w:r>'


def texts(content: bytes, view: str = "new") -> list[str]:
    return [block.text for block in read_word(content, view).blocks]  # type: ignore[arg-type]


TRACKED = paragraph(
    run("Depth ")
    + f"<w:del>{run('1/4').replace('w:t', 'w:delText')}</w:del>"
    + f"<w:ins>{run('3/16')}</w:ins>"
    + run(" in.")
)


@pytest.mark.parametrize(("view", "text"), [("new", "Depth 3/16 in."), ("old", "Depth 1/4 in.")])
def test_tracked_words_are_read_either_way(view: str, text: str) -> None:
    assert texts(word(TRACKED), view) == [text]
    assert read_word(word(TRACKED)).tracked


def test_both_readings_are_kept_apart() -> None:
    (block,) = read_word(word(TRACKED), "both").blocks

    assert isinstance(block, Paragraph)
    assert [(p.state, p.text) for p in block.pieces] == [
        ("kept", "Depth "),
        ("deleted", "1/4"),
        ("inserted", "3/16"),
        ("kept", " in."),
    ]


def test_a_deleted_mark_joins_two_paragraphs_and_a_deleted_row_goes() -> None:
    row = f"<w:tr><w:trPr><w:del/></w:trPr><w:tc>{paragraph(run('gone'))}</w:tc></w:tr>"
    kept = f"<w:tr><w:tc>{paragraph(run('stays'))}</w:tc></w:tr>"
    content = word(
        paragraph(run("One "), "<w:rPr><w:del/></w:rPr>")
        + paragraph(run("sentence."))
        + f"<w:tbl>{kept}{row}</w:tbl>"
    )

    assert texts(content) == ["One sentence.", "stays"]
    assert texts(content, "old") == ["One ", "sentence.", "stays\ngone"]


@pytest.mark.parametrize(
    ("runs", "text"),
    [
        ('<w:r><w:sym w:font="Symbol" w:char="F0B1"/></w:r>', "±"),
        ('<w:r><w:sym w:font="Symbol" w:char="00A3"/></w:r>', "≤"),
        ('<w:r><w:sym w:font="Other" w:char="zz"/></w:r>', "?"),
        ("<w:r><w:t>10</w:t><w:noBreakHyphen/><w:t>ft</w:t></w:r>", "10-ft"),
        ("<w:r><w:t>a</w:t><w:tab/><w:t>b</w:t><w:br/></w:r>", "a\tb\n"),
        (run("shown") + run("hidden", "<w:vanish/>"), "shown"),
        (run("on", '<w:vanish w:val="false"/>'), "on"),
        (f"<w:hyperlink>{run('linked')}</w:hyperlink>", "linked"),
        (f"<w:fldSimple w:instr='REF x'>{run('7')}</w:fldSimple>", "7"),
        (f"<w:fldSimple w:instr=' PAGE '>{run('7')}</w:fldSimple>", "#"),
        (
            "<w:r><w:fldChar w:fldCharType='begin'/></w:r><w:r><w:instrText>NUMPAGES</w:instrText>"
            "</w:r><w:r><w:fldChar w:fldCharType='separate'/></w:r>"
            + run("12")
            + "<w:r><w:fldChar w:fldCharType='end'/></w:r>",
            "#",
        ),
        (f"<w:sdt><w:sdtContent>{run('controlled')}</w:sdtContent></w:sdt>", "controlled"),
        (
            "<w:r><w:fldChar w:fldCharType='begin'/></w:r><w:r><w:instrText>REF x</w:instrText>"
            "</w:r><w:r><w:fldChar w:fldCharType='separate'/></w:r>"
            + run("3.4")
            + "<w:r><w:fldChar w:fldCharType='end'/></w:r>",
            "3.4",
        ),
    ],
)
def test_every_kind_of_run_is_read_as_it_shows(runs: str, text: str) -> None:
    assert texts(word(paragraph(runs))) == [text]


def test_numbers_are_counted_as_the_file_says() -> None:
    def item(num: int, level: int) -> str:
        place = f'<w:numPr><w:ilvl w:val="{level}"/><w:numId w:val="{num}"/></w:numPr>'
        return paragraph(run("x"), place)

    order = ((1, 0), (1, 1), (1, 1), (1, 0), (1, 1), (2, 0), (2, 0))
    content = word("".join(item(*each) for each in order), numbering=NUMBERING)

    labels = [b.label for b in read_word(content).blocks if isinstance(b, Paragraph)]
    assert labels == ["3.", "3(a)", "3(b)", "4.", "4(a)", "1.", "2."]


@pytest.mark.parametrize(
    ("count", "form", "text"),
    [
        (27, "lowerLetter", "aa"),
        (14, "upperRoman", "XIV"),
        (1999, "lowerRoman", "mcmxcix"),
        (4, "decimalZero", "04"),
        (0, "lowerLetter", "0"),
    ],
)
def test_numerals(count: int, form: str, text: str) -> None:
    assert numeral(count, form) == text


def test_a_table_in_a_cell_is_read_in_its_place() -> None:
    inner = f"<w:tbl><w:tr><w:tc>{paragraph(run('inner'))}</w:tc></w:tr></w:tbl>"
    outer = f"<w:tbl><w:tr><w:tc>{paragraph(run('outer'))}{inner}<w:p/></w:tc></w:tr></w:tbl>"

    (table,) = read_word(word(outer)).blocks

    assert isinstance(table, Table)
    assert [type(block).__name__ for block in table.rows[0].cells[0].blocks] == [
        "Paragraph",
        "Table",
        "Paragraph",
    ]


def packed(name: str, content: bytes) -> bytes:
    buffer = io.BytesIO()
    with zipfile.ZipFile(buffer, "w") as package:
        package.writestr(name, content)
    return buffer.getvalue()


@pytest.mark.parametrize(
    ("content", "says"),
    [
        (b"PK\x03\x04", "is broken"),
        (b"\xd0\xcf\x11\xe0", "old kind"),
        (packed("readme.txt", b""), "no Word document"),
        (packed("word/document.xml", b"<w:document"), "no well-formed XML"),
        (packed("word/document.xml", b"<!DOCTYPE a [<!ENTITY b 'c'>]><a/>"), "declares entities"),
        (
            packed(
                "word/document.xml",
                b'<d:document xmlns:d="http://purl.oclc.org/ooxml/wordprocessingml/main"/>',
            ),
            "strict form",
        ),
    ],
)
def test_a_file_that_cannot_be_read_says_why_and_what_to_do(content: bytes, says: str) -> None:
    with pytest.raises(ReadingFault, match=says) as caught:
        read_word(content)
    assert caught.value.todo


def test_a_word_file_without_a_job_carries_none() -> None:
    assert job_inside(word(paragraph(run("x")))) is None


def test_numbers_that_are_none_are_passed_over() -> None:
    broken = NUMBERING.replace('w:val="3"', 'w:val="three"').replace('w:ilvl="1"', 'w:ilvl="99"')
    places = '<w:numPr><w:ilvl w:val="{}"/><w:numId w:val="1"/></w:numPr><w:outlineLvl w:val="x"/>'
    body = "".join(paragraph(run("x"), places.format(level)) for level in ("0", "99", "-1", "a"))

    labels = [
        block.label
        for block in read_word(word(body, numbering=broken)).blocks
        if isinstance(block, Paragraph)
    ]
    assert labels == ["1.", "", "", "2."]


def test_a_note_is_read_by_its_number() -> None:
    notes = f"""<w:footnotes xmlns:w="{W}"><w:footnote w:type="separator" w:id="0"/>
<w:footnote w:id="2">{paragraph(run("See 3.2."))}</w:footnote></w:footnotes>"""

    (note,) = read_word(word(paragraph(run("x")), footnotes=notes)).margins

    assert (note.name, [block.text for block in note.blocks]) == ("Footnote 1", ["See 3.2."])


def test_a_field_inside_an_instruction_shows_nothing() -> None:
    def mark(kind: str) -> str:
        return f"<w:r><w:fldChar w:fldCharType='{kind}'/></w:r>"

    inner = mark("begin") + "<w:r><w:instrText>REF x</w:instrText></w:r>" + mark("separate")
    inner += run("7") + mark("end")
    outer = mark("begin") + "<w:r><w:instrText>IF </w:instrText></w:r>" + inner
    outer += mark("separate") + run("yes") + mark("end")

    assert texts(word(paragraph(outer))) == ["yes"]


def test_settings_are_read_as_they_were_and_as_they_are() -> None:
    change = "<w:pPrChange w:id='1'><w:pPr><w:outlineLvl w:val='0'/></w:pPr></w:pPrChange>"
    content = word(paragraph(run("Scope"), f"<w:outlineLvl w:val='1'/>{change}"))

    headings = [read_word(content, view).blocks[0] for view in ("old", "new")]

    assert [each.heading for each in headings if isinstance(each, Paragraph)] == [1, 2]


def test_a_file_that_nests_without_end_is_refused() -> None:
    deep = "<w:sdt><w:sdtContent>" * 3000 + "</w:sdtContent></w:sdt>" * 3000

    with pytest.raises(ReadingFault, match="nested too deeply"):
        read_word(word(deep))
