"""What stands beside the text: headers, footers, notes; and fields, equations in the text."""

from __future__ import annotations

import io
import zipfile
from collections.abc import Callable
from pathlib import Path

import docx
import pytest
from docx.document import Document
from docx.oxml import parse_xml

from specwriter.compare.redline import redline
from specwriter.compare.text import compare_texts
from specwriter.compare.text.changes import text_changes
from specwriter.reading import job_inside, read_word
from specwriter.reading.package import DOCUMENT, read_package, write_package
from tests.compare.redline.office import needs_office, settled
from tests.compare.redline.test_redline import AUTHOR, document_xml
from tests.render.word import HYPHENS
from tests.support import EXAMPLES

DRAFTED = (EXAMPLES / "rural-grooving" / "provision.docx").read_bytes()
MATH = "http://schemas.openxmlformats.org/officeDocument/2006/math"
EQUATION = f'<m:oMath xmlns:m="{MATH}"><m:r><m:t>s = w + l</m:t></m:r></m:oMath>'


def edited(edit: Callable[[Document], object]) -> bytes:
    document = docx.Document(io.BytesIO(DRAFTED))
    edit(document)
    buffer = io.BytesIO()
    document.save(buffer)
    return buffer.getvalue()


def to_header(document: Document) -> None:
    document.sections[0].header.paragraphs[0].add_run(" not for bids")


def to_footer(document: Document) -> None:
    document.sections[0].footer.paragraphs[0].add_run(" not for bids")


def equation(document: Document) -> None:
    document.paragraphs[40]._p.append(parse_xml(EQUATION))


def margins(content: bytes) -> list[str]:
    """The text of each header and footer, by python-docx."""
    section = docx.Document(io.BytesIO(content)).sections[0]
    return [
        paragraph.text for each in (section.header, section.footer) for paragraph in each.paragraphs
    ]


def told(new: bytes) -> list[tuple[str, str]]:
    changes = text_changes(compare_texts(read_word(DRAFTED), read_word(new)))
    return [(each.clause, each.place) for each in changes]


@pytest.mark.parametrize(("edit", "name"), [(to_header, "Header"), (to_footer, "Footer")])
def test_a_change_beside_the_text_is_told_and_marked_there(
    edit: Callable[[Document], object], name: str
) -> None:
    new = edited(edit)

    marked = redline(DRAFTED, new, AUTHOR)

    assert told(new) == [(name, "paragraph 1")]
    assert "<w:ins " not in document_xml(marked)
    with zipfile.ZipFile(io.BytesIO(marked)) as package:
        found = next(each for each in package.namelist() if f"word/{name.lower()}" in each)
        part = package.read(found).decode()
    assert "not for bids" in part.split("<w:ins ")[1]
    assert ("PAGE" in part) == (name == "Footer")


def test_an_office_suite_settles_a_header_and_a_footer(tmp_path: Path) -> None:
    needs_office()
    new = edited(lambda document: (to_header(document), to_footer(document)))

    accepted, rejected = settled(tmp_path, {"beside": redline(DRAFTED, new, AUTHOR)})["beside"]

    assert [text.endswith("not for bids") for text in margins(accepted)] == [True, True]
    assert [text.endswith("not for bids") for text in margins(rejected)] == [False, False]


def test_an_equation_is_told_by_its_letters_and_kept_whole() -> None:
    new = edited(equation)
    changes = text_changes(compare_texts(read_word(DRAFTED), read_word(new)))

    assert ["[equation: s = w + l]" in each.new for each in changes] == [True]
    assert "<m:t>s = w + l</m:t>" in document_xml(redline(DRAFTED, new, AUTHOR))
    assert "<m:t>s = w + l</m:t>" in document_xml(redline(new, DRAFTED, AUTHOR))


def test_a_hyphen_or_a_minus_that_keeps_its_line_whole_is_a_plain_one() -> None:
    drafted = (EXAMPLES / "runway" / "provision.docx").read_bytes()
    parts = read_package(drafted)
    text = parts[DOCUMENT].decode()
    assert {"\u2011", "\u2212"} <= set(text)
    parts[DOCUMENT] = text.translate(HYPHENS).encode()
    typed = write_package(parts)

    for old, new in ((drafted, typed), (typed, drafted)):
        assert compare_texts(read_word(old), read_word(new)).is_same
        assert "<w:ins " not in document_xml(redline(old, new, AUTHOR))
    inside = job_inside(typed)
    assert inside is not None
    assert inside.changed is False


def test_another_number_of_pages_is_no_change_of_the_text() -> None:
    def paged(document: Document) -> None:
        footer = document.sections[0].footer.paragraphs[0]._p
        for text in footer.iter("{*}t"):
            text.text = text.text.replace("1", "14") if text.text == "1" else text.text

    assert told(edited(paged)) == []
