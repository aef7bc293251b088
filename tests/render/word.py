"""Reads a Word file as its parts say, without the code that wrote it."""

from __future__ import annotations

import io
import zipfile
from string import ascii_lowercase
from xml.etree import ElementTree
from xml.etree.ElementTree import Element

HYPHENS = str.maketrans("\u2011\u2212", "--")
W = "{http://schemas.openxmlformats.org/wordprocessingml/2006/main}"


def names(content: bytes) -> list[str]:
    return zipfile.ZipFile(io.BytesIO(content)).namelist()


def part(content: bytes, name: str) -> Element:
    return ElementTree.fromstring(zipfile.ZipFile(io.BytesIO(content)).read(name))


def text_of(element: Element) -> str:
    """The text, whichever hyphen or minus keeps its lines whole."""
    return "".join(each.text or "" for each in element.iter(f"{W}t")).translate(HYPHENS)


def style_of(paragraph: Element) -> str:
    style = paragraph.find(f"{W}pPr/{W}pStyle")
    return "" if style is None else style.get(f"{W}val", "")


def value(element: Element, path: str) -> str | None:
    found = element.find("/".join(f"{W}{step}" for step in path.split("/")))
    return None if found is None else found.get(f"{W}val")


def fields(element: Element) -> list[str]:
    return [(each.text or "").strip() for each in element.iter(f"{W}instrText")]


def bookmarks(element: Element) -> list[str]:
    return [each.get(f"{W}name", "") for each in element.iter(f"{W}bookmarkStart")]


class Numbering:
    """Counts the numbered paragraphs as Word does, from numbering.xml and styles.xml."""

    def __init__(self, content: bytes) -> None:
        root = part(content, "word/numbering.xml")
        self._levels = {
            (each.get(f"{W}abstractNumId"), level.get(f"{W}ilvl")): level
            for each in root.iter(f"{W}abstractNum")
            for level in each.iter(f"{W}lvl")
        }
        self._nums = {each.get(f"{W}numId"): each for each in root.iter(f"{W}num")}
        self._styles = {
            each.get(f"{W}styleId"): each
            for each in part(content, "word/styles.xml").iter(f"{W}style")
        }
        self._counts: dict[str | None, list[int]] = {}
        self._begun: set[str] = set()

    def label(self, paragraph: Element) -> str:
        """The number shown before the paragraph; empty when it has none."""
        style = self._styles[style_of(paragraph)]
        num = value(paragraph, "pPr/numPr/numId") or value(style, "pPr/numPr/numId")
        if num is None:
            return ""
        level = value(paragraph, "pPr/numPr/ilvl") or value(style, "pPr/numPr/ilvl") or "0"
        abstract = value(self._nums[num], "abstractNumId")
        counts = self._counts.setdefault(abstract, [0] * 9)
        if num not in self._begun:
            self._begun.add(num)
            for override in self._nums[num].iter(f"{W}lvlOverride"):
                counts[int(override.get(f"{W}ilvl", "0"))] = 0
        counts[int(level)] += 1
        counts[int(level) + 1 :] = [0] * (8 - int(level))
        return self._written(abstract, counts, int(level))

    def _written(self, abstract: str | None, counts: list[int], level: int) -> str:
        label = value(self._levels[abstract, str(level)], "lvlText") or ""
        for each in range(level + 1):
            form = value(self._levels[abstract, str(each)], "numFmt") or ""
            label = label.replace(f"%{each + 1}", _numeral(counts[each], form))
        return label


def _numeral(count: int, form: str) -> str:
    match form:
        case "lowerLetter" | "upperLetter":
            doubled = ascii_lowercase[(count - 1) % 26] * ((count - 1) // 26 + 1)
            return doubled.upper() if form == "upperLetter" else doubled
        case "lowerRoman" | "upperRoman":
            text = ("i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix", "x")[count - 1]
            return text.upper() if form == "upperRoman" else text
        case "decimalZero":
            return f"{count:02}"
        case "decimal":
            return str(count)
        case "bullet":
            return ""
    raise AssertionError(f"no such form of number: {form}")
