"""References and captions stay fields where they show the same in every state of the redline."""

from __future__ import annotations

import io
import re
from collections import Counter

import docx
import pytest
from docx.document import Document

from specwriter.compare.redline import redline
from tests.compare.redline.accepting import accepted, lines, rejected
from tests.compare.redline.generated import referring_pair
from tests.compare.redline.test_beside import DRAFTED, edited
from tests.compare.redline.test_redline import AUTHOR, document_xml


def fields(content: bytes) -> Counter[str]:
    """How often each kind of field stands in a file."""
    found = re.findall(r"<w:(?:instrText|delInstrText)[^>]*>\s*(\w+)", document_xml(content))
    return Counter(found)


def bookmarks(content: bytes) -> list[str]:
    return re.findall(r'<w:bookmarkStart [^>]*w:name="([^"]*)"', document_xml(content))


def one_word(document: Document) -> None:
    document.paragraphs[-1].add_run(" Added.")


def first_clause_goes(document: Document) -> None:
    """The first clause of the second part, heading and text."""
    heads = [p for p in document.paragraphs if p.style is not None and p.style.name == "Heading 2"]
    parts = [p for p in document.paragraphs if p.style is not None and p.style.name == "Heading 1"]
    first = next(p for p in heads if p._p.getprevious() is parts[1]._p)
    following = heads[heads.index(first) + 1]._p
    element = first._p
    while element is not following:
        after = element.getnext()
        element.getparent().remove(element)
        element = after


def test_every_field_stays_where_one_word_changes() -> None:
    marked = redline(DRAFTED, edited(one_word), AUTHOR)

    assert fields(DRAFTED)["REF"] > 20
    assert fields(marked) == fields(DRAFTED)
    assert bookmarks(marked) == bookmarks(DRAFTED)


def test_a_reference_that_would_show_another_number_becomes_text() -> None:
    new = edited(first_clause_goes)

    marked = redline(DRAFTED, new, AUTHOR)

    assert 0 < fields(marked)["REF"] < fields(new)["REF"]
    names = re.findall(r"REF (\w+)", document_xml(marked))
    assert set(names) <= set(bookmarks(marked))


@pytest.mark.parametrize("seed", range(3000, 3030))
def test_documents_that_refer_are_accepted_and_rejected_exactly(seed: int) -> None:
    old, new = referring_pair(seed)

    marked = redline(old, new, AUTHOR)

    assert lines(accepted(marked)) == lines(new)
    assert lines(rejected(marked)) == lines(old)
    assert len(bookmarks(marked)) == len(set(bookmarks(marked)))
    both = docx.Document(io.BytesIO(accepted(marked)))
    assert len(both.paragraphs) == len(docx.Document(io.BytesIO(new)).paragraphs)
