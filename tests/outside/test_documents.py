"""Every example, in Word and HTML, judged by readers and validators from elsewhere.

What needs a browser or a large download is in ``.ci/outside``.
"""

from __future__ import annotations

import io
import re
from collections.abc import Iterator
from itertools import pairwise
from pathlib import Path

import docx
import docx.table
import html5lib
import mammoth
import pytest
from openxml_audit import OpenXmlValidator

from specwriter.reading.package import read_package, write_package
from tests.outside.documents import FILES, MADE, NAMES, lines, squeezed
from tests.render import word
from tests.support import EXAMPLES

OPTIONAL = ("relationships/fontTable", "relationships/theme")
"""Parts that this validator wants and the standard leaves optional; Word makes its own."""


def by_python_docx(content: bytes) -> Iterator[str]:
    for item in docx.Document(io.BytesIO(content)).iter_inner_content():
        if isinstance(item, docx.table.Table):
            yield from (cell.text for row in item.rows for cell in row.cells)
        else:
            yield item.text


def by_mammoth(content: bytes) -> list[str]:
    return str(mammoth.extract_raw_text(io.BytesIO(content)).value).split("\n\n")


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("reader", [by_python_docx, by_mammoth])
def test_two_readers_find_the_text_of_the_tree(name: str, reader: object) -> None:
    found = squeezed(reader(FILES[name]))  # type: ignore[operator]
    expected = squeezed(lines(MADE[name]))

    assert found[-len(expected) :] == expected


@pytest.mark.parametrize("name", NAMES)
def test_every_part_follows_the_schemas_of_the_format(name: str, tmp_path: Path) -> None:
    path = tmp_path / "provision.docx"
    path.write_bytes(FILES[name])

    errors = [str(each) for each in OpenXmlValidator().validate(str(path)).errors]

    assert [each for each in errors if not any(part in each for part in OPTIONAL)] == []


def test_the_validator_sees_a_broken_order(tmp_path: Path) -> None:
    path = tmp_path / "broken.docx"
    parts = read_package(FILES[NAMES[0]])
    body = parts["word/document.xml"]
    parts["word/document.xml"] = body.replace(b"<w:pPr>", b"<w:pPr><w:nonsense/>", 1)
    path.write_bytes(write_package(parts))

    assert not OpenXmlValidator().validate(str(path)).is_valid


@pytest.mark.parametrize("name", NAMES)
def test_the_web_page_is_read_without_an_error(name: str) -> None:
    page = (EXAMPLES / name / "provision.html").read_text("utf-8")

    parser = html5lib.HTMLParser(strict=True)
    parser.parse(page)

    assert parser.errors == []


@pytest.mark.parametrize("name", NAMES)
def test_a_word_file_can_be_used_without_seeing_it(name: str) -> None:
    content = FILES[name]
    body = word.part(content, "word/document.xml")
    wp = "{http://schemas.openxmlformats.org/drawingml/2006/wordprocessingDrawing}"
    levels = [
        int(style[-1])
        for each in body.iter(f"{word.W}p")
        if (style := word.style_of(each)).startswith("Heading")
    ]

    # Headings begin at the first level and never leave one out on their way down.
    assert levels[0] == 1
    assert all(b - a <= 1 for a, b in pairwise(levels))
    for table in body.iter(f"{word.W}tbl"):
        assert table.find(f"{word.W}tr/{word.W}trPr/{word.W}tblHeader") is not None
        assert word.value(table, "tblPr/tblCaption")
    assert all(each.get("descr") for each in body.iter(f"{wp}docPr"))
    assert not [p for p in body.iter(f"{word.W}p") if not word.text_of(p) and not _holds(p)]
    properties = docx.Document(io.BytesIO(content)).core_properties
    assert properties.title
    assert properties.language == "en-US"


def _holds(paragraph: object) -> bool:
    """A picture, or a cell that is empty by intent (a total, a line to sign on)."""
    return word.style_of(paragraph) in ("Picture", "TableText")  # type: ignore[arg-type]


@pytest.mark.parametrize("name", NAMES)
def test_the_web_page_names_its_parts(name: str) -> None:
    page = (EXAMPLES / name / "provision.html").read_text("utf-8")

    assert '<html lang="en">' in page
    assert page.count("<h1>") == 1
    assert "<main>" in page
    assert all("<caption>" in each for each in re.findall(r"<table.*?</table>", page, re.DOTALL))
    assert all('aria-label="' in each for each in re.findall(r"<svg [^>]*>", page))
