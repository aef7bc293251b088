"""A check as one web page, to circulate and to print: the same findings as in text and JSON."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from html import escape
from itertools import groupby
from typing import NamedTuple

from specwriter.diagnostic import Fault, Finding
from specwriter.reconcile.verdict import AreaVerdicts
from specwriter.report.area_table import HEAD, judged_rows_of
from specwriter.report.carried import Carried, carried_sentences
from specwriter.report.check_text import summary
from specwriter.report.fault_text import count_of_faults, marked_line
from specwriter.report.result import CheckResult
from specwriter.report.sentences import CAUTION, acceptance_of, basis_of, broke, grades
from specwriter.report.unchecked import Unchecked, reason, unchecked
from specwriter.report.web_page import Marked, bullets, element, rows_table, web_page
from specwriter.rules.acceptance import AcceptedFinding
from specwriter.source import Source

_AREA_HEAD = ("Property", *map(str.capitalize, HEAD), "Margin, witness or reason")


class _Section(NamedTuple):
    """A part of the report on one job, with its heading; left out when it has no lines."""

    title: str
    lines: tuple[str, ...]


def check_html(results: Sequence[CheckResult], *, every_check: bool = False) -> str:
    """The page of all job files; ``every_check`` lists each check that could not look."""
    name = results[0].source.file if len(results) == 1 else f"{len(results)} files"
    title = f"Check of {name}"
    return web_page(title, _body(title, results, every_check), "check.css")


def _body(title: str, results: Sequence[CheckResult], every_check: bool) -> Iterator[str]:
    yield element("h1", title)
    for number, result in enumerate(results, 1):
        yield from _job(result, number, every_check)
    yield element("p", CAUTION, "notice")


def _job(result: CheckResult, number: int, every_check: bool) -> Iterator[str]:
    source = result.source
    yield element("h2", result.job.project.title if result.job else source.file)
    if result.carried:
        yield from _carried(result.carried)
    if result.job is None:
        yield element("p", count_of_faults(source), "summary")
        yield from (line for fault in source.faults for line in _fault(source, fault))
        return
    yield element("p", f"{source.file}: {summary(result)}.", "summary")
    sections = {
        f"job-{number}-{place}": section
        for place, section in enumerate(_sections(result, every_check), 1)
        if section.lines
    }
    yield from _contents(sections, result.job.project.title)
    for anchor, section in sections.items():
        yield f'<section aria-labelledby="{anchor}">'
        yield f'<h3 id="{anchor}">{escape(section.title)}</h3>'
        yield from section.lines
        yield "</section>"


def _contents(sections: dict[str, _Section], of: str) -> Iterator[str]:
    if len(sections) > 1:
        links = "".join(
            f'<li><a href="#{anchor}">{escape(section.title)}</a></li>'
            for anchor, section in sections.items()
        )
        yield f'<nav aria-label="Contents: {escape(of)}"><ul>{links}</ul></nav>'


def _sections(result: CheckResult, every_check: bool) -> Iterator[_Section]:
    told = [each.finding for each in result.told]
    for _, run in groupby(told, key=lambda finding: finding.grade):
        findings = list(run)
        lines = (line for each in findings for line in _finding(result, each))
        yield _Section(grades(findings), tuple(lines))
    accepted = (line for each in result.accepted for line in _accepted(result, each))
    yield _Section("Accepted findings", tuple(accepted))
    defects = (element("p", broke(each)) for each in result.defects)
    yield _Section("Defects of this program", tuple(defects))
    tables = (_area(each) for each in result.areas)
    yield _Section("What is required, and what the rest allows", tuple(filter(None, tables)))
    yield _Section("Not checked", tuple(filter(None, [_not_checked(result, every_check)])))


def _finding(result: CheckResult, finding: Finding) -> Iterator[str]:
    yield f'<article class="{finding.grade.value}">'
    yield from _opening(result, finding, finding.grade.value)
    if finding.settle:
        yield "<p>To settle, one of:</p>" if finding.settle[1:] else "<p>To settle:</p>"
        yield bullets(finding.settle)
    yield from _ending(finding)


def _accepted(result: CheckResult, accepted: AcceptedFinding) -> Iterator[str]:
    grade = accepted.finding.grade.value
    yield f'<article class="{grade} accepted">'
    yield from _opening(result, accepted.finding, f"accepted {grade}")
    yield element("p", acceptance_of(accepted))
    yield from _ending(accepted.finding)


def _opening(result: CheckResult, finding: Finding, word: str) -> Iterator[str]:
    """Heading, name of the check, requirements with their places, and what is said of them."""
    where = f"in {finding.area}: " if finding.area else ""
    yield f"<h4>{element('span', word, 'grade')} {escape(where + finding.title)}</h4>"
    places = [
        (label, Marked(written, "written"), Marked(place, "place"))
        for place, label, written in result.places(finding)
    ]
    header = ("Requirement", "As written", "Place")
    yield rows_table("What it rests on", header, places, named=0, look="places")
    yield element("p", finding.says)


def _ending(finding: Finding) -> Iterator[str]:
    slug = f"Check: {element('span', finding.slug, 'slug')}."
    yield f'<p class="basis">{escape(basis_of(finding))} {slug}</p>'
    yield "</article>"


def _area(area: AreaVerdicts) -> str:
    rows = [
        (name, required, allowed, Marked(outcome, outcome.replace(" ", "-")), behind)
        for name, required, allowed, outcome, behind in judged_rows_of(area)
    ]
    return rows_table(area.area, _AREA_HEAD, rows, named=0, look="rows areas")


def _not_checked(result: CheckResult, every_check: bool) -> str:
    if every_check:
        header, caption = ("Check", "Area", "Why"), "Every check that could not look"
        listed = [(each.slug, each.area or "", reason(each)) for each in result.not_run]
        return rows_table(caption, header, listed, named=0)
    lacking = unchecked(each for each in result.not_run if not each.aside)
    aside = unchecked(each for each in result.not_run if each.aside)
    return _reasons("Not given", "Why checks could not look", lacking) + _reasons(
        "Outside what is known", "What checks do not hold for", aside
    )


def _reasons(head: str, caption: str, listed: Iterable[Unchecked]) -> str:
    rows = [(each.what, ", ".join(each.areas), str(each.checks)) for each in listed]
    return rows_table(caption, (head, "Areas", "Checks"), rows, named=0) if rows else ""


def _fault(source: Source, fault: Fault) -> Iterator[str]:
    yield "<article>"
    yield element("p", f"{fault.place}: {fault.says}")
    before, marked, after = marked_line(source, fault)
    if (before + marked + after).strip():
        line = f"{escape(before)}{element('mark', marked)}{escape(after)}"
        yield f'<p class="line">{line}</p>'
    if fault.todo:
        yield element("p", fault.todo)
    yield "</article>"


def _carried(carried: Carried) -> Iterator[str]:
    yield from (element("p", sentence) for sentence in carried_sentences(carried))
    rows = [("\n".join(each.stands), "\n".join(each.given)) for each in carried.differences]
    yield rows_table("Where the text is not that of the job", ("Stands", "By the job"), rows)
