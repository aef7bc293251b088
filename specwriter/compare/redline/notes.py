"""Footnotes and endnotes of a redline: those that stay are marked, those that go are kept."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from xml.etree.ElementTree import Element

from specwriter.compare.text.notes import REFERENCE, note_of
from specwriter.reading.xml import R_NAME, Namer, W, parse, whole

_RELATIONS = "word/_rels/document.xml.rels"
_TYPES = "[Content_Types].xml"
_TYPE = "application/vnd.openxmlformats-officedocument.wordprocessingml"
_SIGN = re.compile(r"<w:(?:footnote|endnote)Ref/>")
_OPENING = re.compile(r"<w:p>(?:<w:pPr>.*?</w:pPr>)?", re.DOTALL)


class Notes:
    """The notes of the new file, with copies of those that only the old one has."""

    def __init__(self, old: dict[str, bytes], new: dict[str, bytes]) -> None:
        self._old, self._parts = old, new
        self._copied: dict[str, dict[str, str]] = {}
        self._numbers: dict[str, dict[str, str]] = {}
        self.namer = Namer()

    def kept(self, reference: str) -> str:
        """A reference to a note that goes, pointing to its copy; nothing without such a note."""
        found = note_of(reference)
        if found is None:
            return reference
        kind, id = found
        notes = _notes(self._old, kind)
        text = self.namer.text(notes[id]) if id in notes else ""
        if not text or " r:" in text:
            return ""
        copies = self._copied.setdefault(kind, {})
        known = (whole(each, 0) for each in (*notes, *_notes(self._parts, kind)))
        own = str(1 + max(known, default=0) + len(copies))
        copies[own] = text.replace(f'w:id="{id}"', f'w:id="{own}"', 1)
        return reference.replace(f'w:id="{id}"', f'w:id="{own}"', 1)

    def in_order(self, body: str) -> str:
        """The body with its notes numbered as they follow each other.

        An office program takes the notes in the order of their numbers (found by trial,
        LibreOffice 7.4).
        """
        for kind in self._copied:
            frames = [id for id, note in self._notes(kind).items() if _is_frame(note)]
            first = 1 + max((whole(each, 0) for each in frames), default=0)
            order = [id for each, id in REFERENCE.findall(body) if each == kind]
            self._numbers[kind] = {id: str(place) for place, id in enumerate(order, first)}

        def numbered(found: re.Match[str]) -> str:
            kind, id = found[1], found[2]
            return found[0].replace(f'w:id="{id}"', f'w:id="{self._number(kind, id)}"')

        return REFERENCE.sub(numbered, body)

    def _number(self, kind: str, id: str) -> str:
        return self._numbers.get(kind, {}).get(id, id)

    def _notes(self, kind: str) -> dict[str, Element]:
        """The notes of the new file, or of the old one where the new one has none."""
        return _notes(self._parts if f"word/{kind}s.xml" in self._parts else self._old, kind)

    def parts(self, marked: Mapping[tuple[str, str], str]) -> Iterator[tuple[str, str, str]]:
        """Name, root and inner text of the parts to write anew.

        ``marked`` holds the inner text of the notes that changed, by kind and number.
        """
        for kind in sorted({*self._copied, *(kind for kind, _ in marked)}):
            name = f"word/{kind}s.xml"
            own = name in self._parts
            notes = self._notes(kind)
            texts = {
                id: self._note(note, marked.get((kind, id), ""))
                for id, note in notes.items()
                if own or _is_frame(note)
            } | self._copied.get(kind, {})
            if not own:
                self._declare(kind)
            frames = [id for id in texts if id in notes and _is_frame(notes[id])]
            order = [*frames, *self._numbers[kind]] if kind in self._numbers else list(texts)
            inner = (
                texts[id].replace(f'w:id="{id}"', f'w:id="{self._number(kind, id)}"', 1)
                for id in order
                if id in texts
            )
            yield name, f"{kind}s", "".join(inner)

    def _note(self, note: Element, marked: str) -> str:
        text = self.namer.text(note)
        if not marked:
            return text
        if sign := _SIGN.search(text):
            start = text.rindex("<w:r>", 0, sign.start())
            run = text[start : text.index("</w:r>", sign.end()) + len("</w:r>")]
            marked = _OPENING.sub(lambda found: found[0] + run, marked, count=1)
        return f"{text[: text.index('>') + 1]}{marked}</{self.namer.name(note.tag)}>"

    def _declare(self, kind: str) -> None:
        part = f"{kind}s.xml"
        relation = f'<Relationship Id="before-{kind}s" Type="{R_NAME}/{kind}s" Target="{part}"/>'
        content = f'<Override PartName="/word/{part}" ContentType="{_TYPE}.{kind}s+xml"/>'
        for name, end, line in (
            (_RELATIONS, b"</Relationships>", relation),
            (_TYPES, b"</Types>", content),
        ):
            self._parts[name] = self._parts[name].replace(end, line.encode() + end)


def _notes(parts: Mapping[str, bytes], kind: str) -> dict[str, Element]:
    name = f"word/{kind}s.xml"
    if name not in parts:
        return {}
    return {each.get(f"{W}id", ""): each for each in parse(parts[name], name)}


def _is_frame(note: Element) -> bool:
    """Whether it is the line between text and notes."""
    return note.get(f"{W}type") is not None
