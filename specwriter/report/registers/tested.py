"""The registers of what is tested: requirements, tests with their numbers, and methods cited."""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.assemble import Document
from specwriter.assemble.document import ListItem, Paragraph
from specwriter.assemble.page import Page
from specwriter.assemble.registers.properties import Required, required_properties
from specwriter.assemble.registers.testing import judged_on, limits_of, method_of
from specwriter.assemble.view import Missing, View, area_views
from specwriter.assemble.wording import in_words, written
from specwriter.model import Job
from specwriter.report.registers.register import NOT_COUNTED, Register
from specwriter.worksheet import Worksheet

_TEST_KEYS = ("where", "when", "lot", "readings")
_AFTER_KEYS = ("remedy", "retest", "pay_effect")
_PUBLISHED = re.compile(r"\b(?:AASHTO|ASTM|ISO|EN)(?: [A-Z]{1,3})? ?[\w/-]*\d[\w/-]*")
"""A standard by its number."""
_LAW = re.compile(r"\d+ CFR \d+(?:\.\d+)?|Form FHWA-\d+")
"""A law or a federal form by its number."""
_IN_FORCE = "as in force; the clause states no edition"


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
            limits_of(item, Page(job)).text if item.limits else "no number",
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
        lots, readings = counted.get((lot, "lots")), counted.get((lot, "readings"))
        remark = "counted" if lots else _uncounted(item, job, worksheet)
        cells = (_method(item), *(_text(item.test, key) for key in ("lot", "readings")))
        rows.append(
            (name, item.title, *cells, lots or NOT_COUNTED, readings or NOT_COUNTED, remark)
        )
    return Register(name="tests", columns=columns, rows=tuple(rows))


def _uncounted(item: Required, job: Job, worksheet: Worksheet) -> str:
    """Why the worksheet has no number of lots for a test."""
    area, *keys = item.test.path.split(".")[1:]
    noun = keys[-1] if keys[0] == "testing" else keys[0]
    title = f"lots of the test of {noun.replace('_', ' ')}"
    found = (w.because for w in worksheet.waiting if w.area == area and w.title == title)
    return next(found, NOT_COUNTED)


def references(job: Job, document: Document) -> Register:
    """Every document that job and clauses cite, with its edition and what cites it."""
    cited: dict[tuple[str, str], dict[str, None]] = {}
    base = job.project.base_section
    if base:
        section = f"Standard Specifications, section {base.number or ''} {base.title or ''}".strip()
        cited[section, base.edition or ""] = {"base section": None}
    for name, item in _required(job):
        for method, edition in _cited(item):
            cited.setdefault((method, edition), {})[f"{item.title}, {name}"] = None
    for law, clause in _laws(document):
        cited.setdefault((law, _IN_FORCE), {})[f"clause {clause}"] = None
    rows = [(method, edition, "; ".join(users)) for (method, edition), users in cited.items()]
    return Register(
        name="references", columns=("document", "edition", "cited for"), rows=tuple(rows)
    )


def _laws(document: Document) -> Iterator[tuple[str, str]]:
    """Laws and forms that the clauses name, each with the clause that names it."""
    for clause in (clause for part in document.parts for clause in part.clauses):
        for block in clause.blocks:
            runs = block.runs if isinstance(block, (Paragraph, ListItem)) else ()
            for law in _LAW.findall("".join(run.text for run in runs)):
                yield law, f"{clause.number} {clause.title}"


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
