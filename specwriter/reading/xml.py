"""Parts of a Word file as trees, and trees as XML text again with the usual prefixes."""

from __future__ import annotations

import re
import zlib
from xml.etree import ElementTree
from xml.etree.ElementTree import Element
from xml.sax.saxutils import escape, quoteattr

from specwriter.reading.fault import ReadingFault

W_NAME = "http://schemas.openxmlformats.org/wordprocessingml/2006/main"
R_NAME = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
MC_NAME = "http://schemas.openxmlformats.org/markup-compatibility/2006"
XML_NAME = "http://www.w3.org/XML/1998/namespace"
W = f"{{{W_NAME}}}"
R = f"{{{R_NAME}}}"
MC = f"{{{MC_NAME}}}"
M_NAME = "http://schemas.openxmlformats.org/officeDocument/2006/math"
M = f"{{{M_NAME}}}"
STRICT = "http://purl.oclc.org/ooxml/wordprocessingml/main"
_DRAWING = "http://schemas.openxmlformats.org/drawingml/2006"
_OFFICE = "http://schemas.microsoft.com/office/word"
PREFIXES = {
    W_NAME: "w",
    R_NAME: "r",
    MC_NAME: "mc",
    M_NAME: "m",
    XML_NAME: "xml",
    f"{_DRAWING}/wordprocessingDrawing": "wp",
    f"{_DRAWING}/main": "a",
    f"{_DRAWING}/picture": "pic",
    f"{_OFFICE}/2010/wordml": "w14",
    f"{_OFFICE}/2012/wordml": "w15",
    f"{_OFFICE}/2010/wordprocessingDrawing": "wp14",
    f"{_OFFICE}/2010/wordprocessingShape": "wps",
    f"{_OFFICE}/2010/wordprocessingGroup": "wpg",
    f"{_OFFICE}/2010/wordprocessingCanvas": "wpc",
}


def parse(content: bytes, name: str) -> Element:
    """The root of a part; ``ReadingFault`` when it is no well-formed XML or declares entities."""
    todo = "open the file in the office program, save it again and use that file"
    if b"<!DOCTYPE" in content[:4096] or b"<!ENTITY" in content[:4096]:
        raise ReadingFault(f"the part {name} declares entities, which a Word file never does", todo)
    try:
        root = ElementTree.fromstring(content)
    except ElementTree.ParseError as error:
        raise ReadingFault(f"the part {name} is no well-formed XML: {error}", todo) from None
    if root.tag.startswith(f"{{{STRICT}}}"):
        raise ReadingFault(
            "this file is in the strict form of the format",
            "save it as an ordinary Word document (.docx) and use that file",
        )
    return root


def value(element: Element | None, *path: str) -> str | None:
    """The ``w:val`` of a descendant given by its tags without prefix."""
    for step in path:
        if element is None:
            return None
        element = element.find(W + step)
    return None if element is None else element.get(f"{W}val")


def whole(text: str | None, otherwise: int) -> int:
    """A number of the file; ``otherwise`` where it is absent, or no number at all."""
    return int(text) if text and re.fullmatch(r"-?\d{1,9}", text) else otherwise


IGNORABLE = frozenset({"w14", "w15", "wp14"})
"""Prefixes of later additions that a reader may skip, and must be told so."""


class Namer:
    """Writes trees as text, and remembers which namespaces it used."""

    def __init__(self) -> None:
        self.used: dict[str, str] = {}
        self._names: dict[str, str] = {}

    def name(self, tag: str) -> str:
        """``{namespace}local`` as ``prefix:local``."""
        known = self._names.get(tag)
        if known is None:
            known = self._names[tag] = self._named(tag)
        return known

    def _named(self, tag: str) -> str:
        if not tag.startswith("{"):
            return tag
        space, _, local = tag[1:].partition("}")
        prefix = PREFIXES.get(space) or f"n{zlib.crc32(space.encode()):08x}"
        if prefix != "xml":
            self.used[prefix] = space
        return f"{prefix}:{local}"

    def text(self, element: Element) -> str:
        """An element with all below it; the text behind it is left out."""
        name = self.name(element.tag)
        attributes = "".join(
            f" {self.name(key)}={quoteattr(text)}"
            for key, text in element.items()
            if "rsid" not in key
        )
        inner = escape(element.text or "") + "".join(
            self.text(child) + escape(child.tail or "") for child in element
        )
        return f"<{name}{attributes}>{inner}</{name}>" if inner else f"<{name}{attributes}/>"
