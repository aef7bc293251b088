"""Footnotes: told by what they say, marked where they stand, right both ways in an office suite."""

from __future__ import annotations

import io
from collections.abc import Sequence
from pathlib import Path

import docx
import pytest

from specwriter.compare.redline import redline
from specwriter.compare.text import compare_texts
from specwriter.compare.text.changes import text_changes
from specwriter.reading import read_word
from specwriter.reading.package import read_package, write_package
from tests.compare.redline.office import needs_office, settled
from tests.compare.redline.test_redline import AUTHOR

W = 'xmlns:w="http://schemas.openxmlformats.org/wordprocessingml/2006/main"'
NOTES = "application/vnd.openxmlformats-officedocument.wordprocessingml.footnotes+xml"
RELATION = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/footnotes"
SIGN = "<w:r><w:footnoteRef/></w:r>"
FRAMES = (
    '<w:footnote w:type="separator" w:id="{}"><w:p><w:r><w:separator/></w:r></w:p></w:footnote>'
)

Lines = Sequence[tuple[str, str]]
"""Each paragraph, and the note at its end or nothing."""

OLD: Lines = (
    ("Grind the first lane.", "Before noon."),
    ("Groove the deck.", "A note that goes."),
    ("Collect the slurry.", ""),
    ("Open the road.", "A note that stays."),
    ("A paragraph that goes with its note.", "Gone too."),
)
NEW: Lines = (
    ("Grind the first lane.", "Before sunset."),
    ("Groove the deck.", ""),
    ("Collect the slurry.", "A note that comes."),
    ("Open the road.", "A note that stays."),
)
NONE: Lines = tuple((text, "") for text, _ in NEW)


def document(lines: Lines, first: int = 1) -> bytes:
    """A Word file with footnotes, numbered from ``first``."""
    buffer = io.BytesIO()
    docx.Document().save(buffer)
    parts = read_package(buffer.getvalue())
    body, notes = "", FRAMES.format(first - 1)
    for number, (text, note) in enumerate(lines, start=first):
        reference = f'<w:r><w:footnoteReference w:id="{number}"/></w:r>' if note else ""
        body += f"<w:p><w:r><w:t>{text}</w:t></w:r>{reference}</w:p>"
        if note:
            inner = f'<w:p>{SIGN}<w:r><w:t xml:space="preserve"> {note}</w:t></w:r></w:p>'
            notes += f'<w:footnote w:id="{number}">{inner}</w:footnote>'
    inner = f"<w:document {W}><w:body>{body}<w:sectPr/></w:body></w:document>"
    parts["word/document.xml"] = inner.encode()
    if any(note for _, note in lines):
        parts["word/footnotes.xml"] = f"<w:footnotes {W}>{notes}</w:footnotes>".encode()
        _declare(parts)
    return write_package(parts)


def _declare(parts: dict[str, bytes]) -> None:
    content = f'<Override PartName="/word/footnotes.xml" ContentType="{NOTES}"/></Types>'
    types = "[Content_Types].xml"
    parts[types] = parts[types].replace(b"</Types>", content.encode())
    relation = f'<Relationship Id="notes" Type="{RELATION}" Target="footnotes.xml"/>'
    name = "word/_rels/document.xml.rels"
    end = b"</Relationships>"
    parts[name] = parts[name].replace(end, relation.encode() + end)


def read(content: bytes) -> tuple[list[str], list[str]]:
    """The text with its references, and the notes."""
    text = read_word(content)
    blocks = [block.shown for block in text.blocks if block.text]
    return blocks, [each.blocks[0].text.strip() for each in text.margins if each.note]


def test_a_note_is_told_by_what_became_of_it() -> None:
    match = compare_texts(read_word(document(OLD)), read_word(document(NEW, first=3)))

    found = [
        (c.kind, c.old.strip(), c.new.strip()) for c in text_changes(match) if "note" in c.clause
    ]

    assert found == [
        ("rewritten", "Before noon.", "Before sunset."),
        ("removed", "A note that goes.", ""),
        ("added", "", "A note that comes."),
        ("removed", "Gone too.", ""),
    ]


def test_another_numbering_of_the_same_notes_is_no_change() -> None:
    assert compare_texts(read_word(document(OLD)), read_word(document(OLD, first=7))).is_same


@pytest.mark.parametrize("turned", [False, True])
def test_an_office_suite_settles_notes_both_ways(turned: bool, tmp_path: Path) -> None:
    needs_office()
    pairs = {
        "other notes": (document(OLD), document(NEW, first=3)),
        "no notes": (document(OLD), document(NONE)),
    }
    if turned:
        pairs = {name: (new, old) for name, (old, new) in pairs.items()}
    marked = {name: redline(old, new, AUTHOR) for name, (old, new) in pairs.items()}

    answers = settled(tmp_path / f"notes-{turned}", marked)

    for name, (old, new) in pairs.items():
        assert [read(each) for each in answers[name]] == [read(new), read(old)], name
