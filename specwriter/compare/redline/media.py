"""Styles and pictures of the old document that the new one lacks."""

from __future__ import annotations

import posixpath
import re
from xml.sax.saxutils import quoteattr

from specwriter.compare.redline.notes import Notes
from specwriter.reading.xml import Namer, W, parse

STYLES = "word/styles.xml"
RELATIONS = "word/_rels/document.xml.rels"
TYPES = "[Content_Types].xml"
_REFERENCE = re.compile(r'\br:(?:embed|link|id|pict)="([^"]*)"')
_IMAGE = "/image"


class Media:
    """Copies what old blocks need into the parts of the new document."""

    def __init__(self, old: dict[str, bytes], new: dict[str, bytes]) -> None:
        self._old, self._parts = old, new
        self._relations = _relations(old)
        self._copied: dict[str, str] = {}
        self.notes = Notes(old, new)

    def styles(self) -> None:
        """Adds the styles that only the old document has."""
        if STYLES not in self._old or STYLES not in self._parts:
            return
        namer = Namer()
        known = {e.get(f"{W}styleId") for e in parse(self._parts[STYLES], STYLES).iter(f"{W}style")}
        missing = [
            namer.text(each)
            for each in parse(self._old[STYLES], STYLES).iter(f"{W}style")
            if each.get(f"{W}styleId") not in known and each.get(f"{W}default") != "1"
        ]
        plain = [text for text in missing if set(namer.used) == {"w"} and "<w:numPr>" not in text]
        self._parts[STYLES] = _before_end(self._parts[STYLES], "</w:styles>", "".join(plain))

    def thing(self, xml: str) -> str:
        """A picture or note of the old document, pointing to its copy; nothing without a copy."""
        for reference in set(_REFERENCE.findall(xml)):
            id = self._copy(reference)
            if not id:
                return ""
            xml = xml.replace(f'="{reference}"', f'="{id}"')
        return self.notes.kept(xml)

    def _copy(self, reference: str) -> str:
        if reference in self._copied:
            return self._copied[reference]
        kind, target = self._relations.get(reference, ("", ""))
        source = posixpath.normpath(posixpath.join("word", target))
        if not kind.endswith(_IMAGE) or source not in self._old:
            return ""
        name = f"media/before-{len(self._copied) + 1}{posixpath.splitext(source)[1]}"
        self._parts[f"word/{name}"] = self._old[source]
        id = self._copied[reference] = f"before{len(self._copied) + 1}"
        relation = f'<Relationship Id="{id}" Type={quoteattr(kind)} Target="{name}"/>'
        self._parts[RELATIONS] = _before_end(self._parts[RELATIONS], "</Relationships>", relation)
        self._declare(posixpath.splitext(source)[1].lstrip("."))
        return id

    def _declare(self, ending: str) -> None:
        types = self._parts[TYPES].decode("utf-8")
        if f'Extension="{ending}"' in types:
            return
        kind = "jpeg" if ending in ("jpg", "jpeg") else ending
        line = f'<Default Extension="{ending}" ContentType="image/{kind}"/>'
        at = types.index(">", types.index("<Types")) + 1
        self._parts[TYPES] = (types[:at] + line + types[at:]).encode("utf-8")


def _relations(parts: dict[str, bytes]) -> dict[str, tuple[str, str]]:
    if RELATIONS not in parts:
        return {}
    root = parse(parts[RELATIONS], RELATIONS)
    return {e.get("Id", ""): (e.get("Type", ""), e.get("Target", "")) for e in root}


def _before_end(content: bytes, tag: str, added: str) -> bytes:
    text = content.decode("utf-8")
    if not added or tag not in text:
        return content
    at = text.rindex(tag)
    return (text[:at] + added + text[at:]).encode("utf-8")
