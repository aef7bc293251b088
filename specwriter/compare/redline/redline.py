"""The redline of two Word files."""

from __future__ import annotations

import re
from collections.abc import Mapping
from xml.sax.saxutils import quoteattr

from specwriter.compare.redline.lists import NUMBERING, Lists
from specwriter.compare.redline.media import Media
from specwriter.compare.redline.references import References
from specwriter.compare.redline.revision import Author, Revisions
from specwriter.compare.redline.survey import survey
from specwriter.compare.redline.writer import Writer
from specwriter.compare.text import TextMatch, compare_texts
from specwriter.reading import Text, read_word
from specwriter.reading.package import DOCUMENT, read_package, write_package
from specwriter.reading.xml import IGNORABLE, MC_NAME, R_NAME, W_NAME


def redline(
    old: bytes, new: bytes, author: Author, texts: tuple[Text, Text, TextMatch] | None = None
) -> bytes:
    """A Word file with every change tracked: frame and looks are those of the new file.

    Captions, references and counts of pages stay fields where they show the same in every state of
    the redline; other fields are written as what they show. Headers, footers and notes are marked
    in their own parts. ``texts`` saves reading and comparing again.
    Raises ``ReadingFault`` when a file cannot be read.
    """
    before, after, matched = texts or _read(old, new)
    was, parts = read_package(old), read_package(new)
    lists, media = Lists(was, parts), Media(was, parts)
    lists.learn(matched.parts)
    media.styles()
    revisions = Revisions(author)
    references = survey(matched.parts, lists)
    body = Writer(revisions, lists, media, references).body(matched.parts)
    body = media.notes.in_order(body)
    names = {"w": W_NAME, "r": R_NAME, "mc": MC_NAME, **before.namespaces, **after.namespaces}
    parts[DOCUMENT] = _document(after, body, names).encode("utf-8")
    # What stands beside has relations of its own, so an old picture there cannot be shown.
    writer = Writer(revisions, lists, Media({}, {}), References())
    notes: dict[tuple[str, str], str] = {}
    for beside in matched.margins:
        if beside.note:
            kind = "footnote" if beside.name.startswith("Footnote") else "endnote"
            notes[kind, beside.note] = writer.body(beside.parts)
        elif beside.part:
            root = "hdr" if beside.name.startswith("Header") else "ftr"
            parts[beside.part] = _part(root, writer.body(beside.parts), names).encode("utf-8")
    for name, root, inner in media.notes.parts(notes):
        parts[name] = _part(root, inner, names | media.notes.namer.used).encode("utf-8")
    if NUMBERING in parts:
        parts[NUMBERING] = lists.part(parts[NUMBERING], before, after)
    return write_package(parts)


def _read(old: bytes, new: bytes) -> tuple[Text, Text, TextMatch]:
    before, after = read_word(old), read_word(new)
    return before, after, compare_texts(before, after)


def _document(new: Text, body: str, names: Mapping[str, str]) -> str:
    section = re.sub(r"<w:sectPrChange\b.*?</w:sectPrChange>", "", new.section, flags=re.DOTALL)
    return _part("document", f"<w:body>{body}{section}</w:body>", names)


def _part(root: str, inner: str, names: Mapping[str, str]) -> str:
    declared = "".join(f" xmlns:{prefix}={quoteattr(name)}" for prefix, name in names.items())
    skipped = " ".join(sorted(IGNORABLE & set(names)))
    ignorable = f' mc:Ignorable="{skipped}"' if skipped else ""
    return (
        '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n'
        f"<w:{root}{declared}{ignorable}>{inner}</w:{root}>"
    )
