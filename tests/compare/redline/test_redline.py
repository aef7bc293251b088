"""Accepted, a redline is the new document; rejected, the old one."""

from __future__ import annotations

import io
import re
import zipfile

import docx
import pytest

from specwriter.compare.redline import Author, redline
from specwriter.reading import read_word
from specwriter.reading.block import paragraphs
from tests.compare.redline.accepting import accepted, lines, rejected
from tests.compare.redline.generated import pair

AUTHOR = Author(name="Reviewer & Partner", date="2027-03-15")
SEEDS = range(120)


def told(content: bytes, view: str = "new") -> list[tuple[str, str]]:
    """Number and text of each paragraph that is not empty, by the reader of the program."""
    text = read_word(content, "old" if view == "old" else "new")
    return [(p.label, p.text) for p in paragraphs(text.blocks) if p.text.strip()]


def by_docx(content: bytes) -> list[str]:
    document = docx.Document(io.BytesIO(content))
    found = [paragraph.text for paragraph in document.paragraphs]
    found += [cell.text for table in document.tables for row in table.rows for cell in row.cells]
    return [text for text in found if text.strip()]


@pytest.mark.parametrize("seed", SEEDS)
def test_accepting_gives_the_new_text_and_rejecting_the_old(seed: int) -> None:
    old, new = pair(seed)

    marked = redline(old, new, AUTHOR)

    assert lines(accepted(marked)) == lines(new)
    assert lines(rejected(marked)) == lines(old)
    assert told(marked) == told(new)
    assert told(marked, "old") == told(old)


@pytest.mark.parametrize("seed", SEEDS[::6])
def test_a_reader_from_elsewhere_finds_the_same_text(seed: int) -> None:
    old, new = pair(seed)

    marked = redline(old, new, AUTHOR)

    assert by_docx(accepted(marked)) == by_docx(new)
    assert by_docx(rejected(marked)) == by_docx(old)


@pytest.mark.parametrize("seed", SEEDS[::10])
def test_two_equal_documents_give_no_change(seed: int) -> None:
    old, _ = pair(seed)

    marked = document_xml(redline(old, old, AUTHOR))

    assert "<w:ins " not in marked
    assert "<w:del " not in marked


@pytest.mark.parametrize("seed", SEEDS[::10])
def test_changes_bear_the_author_and_date_asked_for_and_a_number_each(seed: int) -> None:
    old, new = pair(seed)

    marked = document_xml(redline(old, new, AUTHOR))

    changes = re.findall(r"<w:(?:ins|del|moveFrom|moveTo|move\w+Start) [^>]*>", marked)
    wanted = 'w:author="Reviewer &amp; Partner" w:date="2027-03-15T00:00:00Z"'
    assert changes
    assert all(wanted in change for change in changes)
    numbers = re.findall(r'<w:(?:ins|del|move\w+?(?<!End)) w:id="(\d+)"', marked)
    assert len(numbers) == len(set(numbers))
    assert "w:date" not in document_xml(redline(old, new, Author(name="x")))


def document_xml(content: bytes) -> str:
    with zipfile.ZipFile(io.BytesIO(content)) as package:
        return package.read("word/document.xml").decode("utf-8")
