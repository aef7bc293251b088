"""Headers, footers and notes of a Word file, by the name that a reader gives them."""

from __future__ import annotations

import posixpath
from collections.abc import Iterator
from xml.etree.ElementTree import Element

from specwriter.reading.xml import R, W, parse

_RELATIONS = "word/_rels/document.xml.rels"
_PAGES = {"default": "", "first": " of the first page", "even": " of even pages"}
_NOTES = {"footnotes": "footnote", "endnotes": "endnote"}


def margins_of(parts: dict[str, bytes], document: Element) -> Iterator[tuple[str, str, Element]]:
    """Name in words, name of the part, and the element that holds the blocks."""
    yield from _pages(parts, document)
    yield from _notes(parts)


def note_of(element: Element) -> tuple[str, str] | None:
    """The kind of a note and its number in the file; nothing for a header or footer."""
    kind = element.tag.rpartition("}")[2]
    return (kind, element.get(f"{W}id", "")) if kind in _NOTES.values() else None


def _pages(parts: dict[str, bytes], document: Element) -> Iterator[tuple[str, str, Element]]:
    targets = _targets(parts)
    taken: set[str] = set()
    for number, section in enumerate(document.iter(f"{W}sectPr"), start=1):
        for kind in ("header", "footer"):
            for reference in section.findall(f"{W}{kind}Reference"):
                part = targets.get(reference.get(f"{R}id", ""), "")
                if part in parts and part not in taken:
                    taken.add(part)
                    pages = _PAGES.get(reference.get(f"{W}type", "default"), "")
                    where = f" from section {number} on" if number > 1 else ""
                    yield f"{kind.capitalize()}{pages}{where}", part, parse(parts[part], part)


def _notes(parts: dict[str, bytes]) -> Iterator[tuple[str, str, Element]]:
    for kind, tag in _NOTES.items():
        part = f"word/{kind}.xml"
        if part in parts:
            root = parse(parts[part], part)
            notes = [each for each in root.findall(f"{W}{tag}") if each.get(f"{W}type") is None]
            for number, note in enumerate(notes, start=1):
                yield f"{tag.capitalize()} {number}", part, note


def _targets(parts: dict[str, bytes]) -> dict[str, str]:
    if _RELATIONS not in parts:
        return {}
    root = parse(parts[_RELATIONS], _RELATIONS)
    return {
        each.get("Id", ""): posixpath.normpath(
            posixpath.join("/word", each.get("Target", ""))
        ).lstrip("/")
        for each in root
    }
