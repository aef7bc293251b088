"""The registers of what is tested: requirements, tests with their numbers, and methods cited."""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.assemble.page import Page
from specwriter.assemble.registers.properties import Required, required_properties
from specwriter.assemble.registers.testing import judged_on, limits_of, method_of
from specwriter.assemble.view import Missing, View, area_views
from specwriter.assemble.wording import in_words, written
from specwriter.model import Job
from specwriter.report.registers.register import Register
from specwriter.worksheet import Worksheet

_TEST_KEYS = ("where", "when", "lot", "readings")
_AFTER_KEYS = ("remedy", "retest", "pay_effect")
_PUBLISHED = re.compile(r"\b(?:AASHTO|ASTM|ISO|EN)(?: [A-Z]{1,3})? ?[\w/-]*\d[\w/-]*")
"""A standard by its number."""


def requirements(job: Job) -> Register:
    """Every property that acceptance judges, with everything that belongs to it."""
    columns = (
        *("area", "requirement", "limit", "test", "where", "when", "lot", "how many"),
        *("by", "statistic", "remedy", "retest", "pay", "key of the job"),
    )
    rows = [
        (
            name,
            item.title,
            limits_of(item, Page(job)).text if item.limits else "",
            _method(item),
            *(_text(item.test, key) for key in _TEST_KEYS),
            _text(item.test, "by"),
            judged_on(item.test, Page(job)).text if item.test.read("statistic") else "",
            *(_text(item.test, key) for key in _AFTER_KEYS),
            item.test.path,
        )
        for name, item in _required(job)
    ]
    return Register(name="requirements", columns=columns, rows=tuple(rows))


def tests(job: Job, worksheet: Worksheet) -> Register:
    """Every test with the number of its lots and readings, as far as lots have a size."""
    columns = ("area", "test", "method", "lot", "readings in a lot", "lots", "readings", "remark")
    counted = {
        (each.inputs[0].path, each.title.split(" ")[0]): each.value
        for each in worksheet.figures
        if each.inputs and each.inputs[0].path.endswith(".lot")
    }
    rows = []
    for name, item in _required(job):
        if not item.test:
            continue
        lot = f"{item.test.path}.lot"
        lots, readings = counted.get((lot, "lots"), ""), counted.get((lot, "readings"), "")
        remark = "" if lots else _uncounted(item, job, worksheet)
        cells = (_method(item), *(_text(item.test, key) for key in ("lot", "readings")))
        rows.append((name, item.title, *cells, lots, readings, remark))
    return Register(name="tests", columns=columns, rows=tuple(rows))


def _uncounted(item: Required, job: Job, worksheet: Worksheet) -> str:
    """Why the worksheet has no number of lots for a test."""
    area, *keys = item.test.path.split(".")[1:]
    noun = keys[-1] if keys[0] == "testing" else keys[0]
    title = f"lots of the test of {noun.replace('_', ' ')}"
    found = (w.because for w in worksheet.waiting if w.area == area and w.title == title)
    return next(found, "not counted")


def references(job: Job) -> Register:
    """Every document that the job cites, with its edition and what cites it."""
    cited: dict[tuple[str, str], dict[str, None]] = {}
    base = job.project.base_section
    if base:
        section = f"Standard Specifications, section {base.number or ''} {base.title or ''}".strip()
        cited[section, base.edition or ""] = {"base section": None}
    for name, item in _required(job):
        for document, edition in _cited(item):
            cited.setdefault((document, edition), {})[f"{item.title}, {name}"] = None
    rows = [(method, edition, "; ".join(users)) for (method, edition), users in cited.items()]
    return Register(
        name="references", columns=("document", "edition", "cited for"), rows=tuple(rows)
    )


def _cited(item: Required) -> Iterator[tuple[str, str]]:
    """Published documents that a test names, as its method or in its other texts."""
    for noun in {item.owner.path: item.owner, item.test.path: item.test}.values():
        for document in _PUBLISHED.findall(_text(noun, "method")):
            yield document, _text(noun, "edition")
    for key in (*_TEST_KEYS, *_AFTER_KEYS):
        yield from ((document, "") for document in _PUBLISHED.findall(_text(item.test, key)))


def _required(job: Job) -> Iterator[tuple[str, Required]]:
    for area in area_views(job):
        name = written(area.read("name")).text
        yield from ((name, item) for item in required_properties(area))


def _method(item: Required) -> str:
    given = item.test.read("method") or item.owner.read("method")
    return method_of(item).text if given else ""


def _text(noun: View, key: str) -> str:
    """What stands under a key in plain words; empty where nothing does."""
    if not noun:
        return ""
    found = noun.read(key)
    return "" if isinstance(found, Missing) else in_words(found).text
