"""Tests and what follows from them: two tables, because ten columns cannot be read on a page.

The first says what is required and how it is tested, the second what follows from a failure.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import reduce

from specwriter.assemble.document import Table
from specwriter.assemble.page import Page, Phrase, blank, plain
from specwriter.assemble.registers.cells import NONE, Row, after, key, table
from specwriter.assemble.registers.properties import Required, required_properties
from specwriter.assemble.view import Many, View
from specwriter.assemble.wording import Bound, in_words, joined, limit

_PUBLISHED = re.compile(r"\b(AASHTO|ASTM|ISO|EN)\b")
_TEST_HEADER = ("Requirement", "Limit", "Test", "Place and time", "Tester and lot", "Judged on")
_REMEDY_HEADER = ("Requirement", "Remedy", "Retest", "Effect on pay")

_BOUNDS: dict[str, Bound] = {
    "at_least": "at_least",
    "single_at_least": "at_least",
    "at_most": "at_most",
    "close_share": "at_least",
    "close_spacing": "at_most",
    "edge_offset": "at_most",
    "joint_offset": "at_most",
    "fixture_offset": "at_most",
    "cable_offset": "at_least",
    "depth_per_pass": "at_most",
    "cover_after": "at_least",
    "thickness_after": "at_least",
    "asphalt_after": "at_least",
    "overlay_after": "at_least",
    "reservoir_after": "at_least",
    "section_modulus_after": "at_least",
}
"""Which way a bare value of a key bounds; the clauses word it in the same way."""

_Cells = Callable[[Required, Page], Row]


@dataclass(slots=True)
class _Grouped:
    """A row and the areas that it holds for."""

    title: str
    names: list[Phrase]
    cells: Row


def testing_table(areas: Many, page: Page) -> tuple[Table, ...]:
    """Both tables for every property that the areas require or test."""
    found = [item for area in areas for item in required_properties(area)]
    found.sort(key=lambda item: item.order)
    tests = _rows(found, _test_cells, page, len(areas))
    remedies = _rows(found, _remedy_cells, page, len(areas))
    if not found:
        path = f"{areas[0].path}.testing"
        tests = [[blank(path, head.lower()) for head in _TEST_HEADER]]
        remedies = [[blank(path, head.lower()) for head in _REMEDY_HEADER]]
    caption = "Requirements and tests"
    return (
        table(page, "testing_table", caption, _TEST_HEADER, tests),
        table(page, "remedy_table", "What follows from a failed test", _REMEDY_HEADER, remedies),
    )


def _rows(found: Sequence[Required], cells: _Cells, page: Page, areas: int) -> list[Row]:
    """One row a property; areas whose rows read the same share one."""
    groups: dict[tuple[str, ...], _Grouped] = {}
    for item in found:
        made = cells(item, page)
        same = (item.title, *(cell.text for cell in made))
        if same in groups:
            group = groups[same]
            group.names.append(key(item.area, "name"))
            group.cells = [_both_noted(a, b) for a, b in zip(group.cells, made, strict=True)]
        else:
            groups[same] = _Grouped(item.title, [key(item.area, "name")], made)
    return [_row(group, areas) for group in groups.values()]


def _row(group: _Grouped, areas: int) -> Row:
    title = plain(group.title)
    if len(group.names) < areas:
        title = title + after(", ", joined(group.names))
    return [title, *group.cells]


def _both_noted(kept: Phrase, other: Phrase) -> Phrase:
    return Phrase(kept.runs, kept.printed + other.printed, kept.missing + other.missing)


def _test_cells(item: Required, page: Page) -> Row:
    texts = ("test", "place and time", "tester and lot", "statistic")
    if not item.test:
        method, *others = _no_test(item, texts)
        return [
            limits_of(item, page),
            method_of(item) if item.owner.read("method") else method,
            *others,
        ]
    test = item.test
    place = key(test, "where") + after("; ", key(test, "when"))
    readings = after(", readings: ", key(test, "readings"))
    tester = in_words(test.read("by")) + after("; ", key(test, "lot")) + readings
    return [limits_of(item, page), method_of(item), place, tester, judged_on(test, page)]


def judged_on(test: View, page: Page) -> Phrase:
    """What is compared with the limit; a share leaves a blank until the job gives it."""
    project, tiers = page.job.project, test.read("tiers")
    share, statistic = test.read("share"), in_words(test.read("statistic"))
    by_share = test.read("statistic") == "share"
    parts = [] if by_share and tiers and not share else [statistic]
    if share or (by_share and not tiers):
        parts = [statistic + plain(", ") + limit(share, project, "at_least")]
    for tier in tiers:
        of_all = limit(tier.read("share"), project, "at_least") + plain(" of the readings ")
        parts.append(of_all + limit(tier.read("limit"), project))
    return reduce(lambda said, part: said + plain("; ") + part, parts)


def limits_of(item: Required, page: Page) -> Phrase:
    """Every limit of a property in one line."""
    if not item.limits:
        return plain(item.required) if item.required else NONE
    made = Phrase(())
    for lead, found in item.limits:
        between = "; " if made.runs and not lead.startswith(" ") else ""
        bound = _BOUNDS.get(found.path.rpartition(".")[2])
        made = made + plain(between + (lead if made.runs else lead.lstrip()))
        made = made + limit(found, page.job.project, bound)
    return made


def method_of(item: Required) -> Phrase:
    """Every method that the job names, each with its edition, and the device."""
    nouns = [noun for noun in (item.owner, item.test) if noun.read("method")] or [item.test]
    made, *others = [_with_edition(noun) for noun in nouns]
    for other in others:
        made = _both_noted(made, other) if other.text == made.text else made + after("; ", other)
    device = item.test.read("device")
    return made + after(", with ", key(item.test, "device")) if device else made


def _with_edition(noun: View) -> Phrase:
    """The method; a published one without its edition leaves a blank, if the house asks for it."""
    method, settings = key(noun, "method"), noun.job.settings
    undated = settings is not None and settings.undated_references == "edition_at_advertisement"
    if noun.read("edition") or (_PUBLISHED.search(method.text) and not undated):
        return method + after(", edition ", key(noun, "edition"))
    return method


def _remedy_cells(item: Required, page: Page) -> Row:
    if not item.test:
        return _no_test(item, ("remedy", "retest", "effect on pay"))
    return [key(item.test, name) for name in ("remedy", "retest", "pay_effect")]


def _no_test(item: Required, texts: Sequence[str]) -> list[Phrase]:
    """Blanks for a test that the job does not have: one decision, however many cells."""
    return [blank(item.test.path, text) for text in texts]
