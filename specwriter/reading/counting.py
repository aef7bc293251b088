"""The numbers that a Word file shows before its paragraphs, counted as Word counts them."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from xml.etree.ElementTree import Element

from specwriter.reading.xml import W, value, whole

_ROMAN = ((10, "x"), (9, "ix"), (5, "v"), (4, "iv"), (1, "i"))
_HUNDREDS = ((1000, "m"), (900, "cm"), (500, "d"), (400, "cd"), (100, "c"), (90, "xc"), (50, "l"))
_LEVELS = 9
_BUILT_IN = re.compile(r"(?:heading|toc) \d|caption|header|footer|title|subtitle", re.I)
"""Styles that one office program writes with a capital letter, and another without."""


@dataclass(frozen=True, slots=True)
class Level:
    """One level of a counting: where it starts, how it is written."""

    start: int
    form: str
    text: str


@dataclass(frozen=True, slots=True)
class Style:
    """What a paragraph style says that this reader needs."""

    name: str
    based_on: str | None
    num: str | None
    level: int | None
    outline: int | None


def styles_of(root: Element | None) -> dict[str, Style]:
    """Style id → style, paragraphs and tables alike."""
    if root is None:
        return {}
    return {each.get(f"{W}styleId", ""): _style(each) for each in root.iter(f"{W}style")}


def _style(element: Element) -> Style:
    level = value(element, "pPr", "numPr", "ilvl")
    outline = value(element, "pPr", "outlineLvl")
    name = value(element, "name") or ""
    return Style(
        name=name.lower() if _BUILT_IN.fullmatch(name) else name,
        based_on=value(element, "basedOn"),
        num=value(element, "pPr", "numPr", "numId"),
        level=None if level is None else whole(level, 0),
        outline=None if outline is None else whole(outline, 9),
    )


def chain(styles: Mapping[str, Style], style: str) -> list[Style]:
    """A style and those it is based on, nearest first."""
    found: list[Style] = []
    while style in styles and styles[style] not in found and len(found) < 20:
        found.append(styles[style])
        style = found[-1].based_on or ""
    return found


class Counting:
    """Counts paragraphs one after the other."""

    def __init__(self, root: Element | None) -> None:
        self._levels: dict[str, dict[int, Level]] = {}
        self._styles: dict[tuple[str, str], int] = {}
        self._abstract: dict[str, str] = {}
        self._overrides: dict[tuple[str, int], int] = {}
        self._counts: dict[str, list[int | None]] = {}
        self._begun: set[tuple[str, int]] = set()
        self._running: dict[str, str] = {}
        if root is not None:
            self._read(root)

    def _read(self, root: Element) -> None:
        for abstract in root.iter(f"{W}abstractNum"):
            id = abstract.get(f"{W}abstractNumId", "")
            levels = self._levels.setdefault(id, {})
            for each in abstract.iter(f"{W}lvl"):
                number = whole(each.get(f"{W}ilvl"), 0)
                levels[number] = _level(each)
                if style := value(each, "pStyle"):
                    self._styles[id, style] = number
        for num in root.findall(f"{W}num"):
            id = num.get(f"{W}numId", "")
            self._abstract[id] = value(num, "abstractNumId") or ""
            for override in num.iter(f"{W}lvlOverride"):
                if start := value(override, "startOverride"):
                    self._overrides[id, whole(override.get(f"{W}ilvl"), 0)] = whole(start, 1)

    def level_of_style(self, num: str, style: str) -> int:
        """The level that a style takes in a counting that names it."""
        return self._styles.get((self._abstract.get(num, ""), style), 0)

    def running(self, num: str) -> str:
        """The list that a paragraph of this list counts on from, or the list itself.

        An office program may give every item a list of its own that starts nothing anew.
        """
        abstract = self._abstract.get(num, "")
        starts = any(each == num for each, _ in self._overrides)
        if starts or abstract not in self._running:
            self._running[abstract] = num
        return self._running[abstract]

    def next(self, num: str, level: int) -> str:
        """The number of the next paragraph of a counting; empty for a bullet or no counting."""
        abstract = self._abstract.get(num)
        levels = self._levels.get(abstract or "", {})
        if abstract is None or level not in levels or not 0 <= level < _LEVELS:
            return ""
        counts = self._counts.setdefault(abstract, [None] * _LEVELS)
        if (num, level) not in self._begun:
            self._begun.add((num, level))
            if (num, level) in self._overrides:
                counts[level] = self._overrides[num, level] - 1
        last = counts[level]
        counts[level] = levels[level].start if last is None else last + 1
        counts[level + 1 :] = [None] * (_LEVELS - level - 1)
        return self._written(levels, counts, level)

    def _written(self, levels: dict[int, Level], counts: list[int | None], level: int) -> str:
        if levels[level].form in ("bullet", "none"):
            return ""

        def part(match: re.Match[str]) -> str:
            place = int(match[1]) - 1
            count = counts[place]
            known = levels.get(place, Level(1, "decimal", ""))
            return numeral(known.start if count is None else count, known.form)

        return re.sub(r"%(\d)", part, levels[level].text)


def _level(element: Element) -> Level:
    return Level(
        start=whole(value(element, "start"), 1),
        form=value(element, "numFmt") or "decimal",
        text=value(element, "lvlText") or "",
    )


def numeral(count: int, form: str) -> str:
    """A count as a letter, a Roman numeral or a number."""
    if count < 1:
        return str(count)
    if form in ("lowerLetter", "upperLetter"):
        times, place = divmod(count - 1, 26)
        text = chr(ord("a") + place) * (times + 1)
    elif form in ("lowerRoman", "upperRoman"):
        text = ""
        for size, sign in (*_HUNDREDS, *_ROMAN):
            text += sign * (count // size)
            count %= size
    else:
        return f"{count:02}" if form == "decimalZero" else str(count)
    return text.upper() if form.startswith("upper") else text
