"""Two versions compared, as Markdown: for a merge request or a file beside the job."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from itertools import groupby

from specwriter.compare import Comparison, Sense, said
from specwriter.compare.text import Span
from specwriter.compare.text.changes import TextChange
from specwriter.compare.text.judgement import judge_text
from specwriter.diagnostic import Finding
from specwriter.report.compared import Compared
from specwriter.report.comparison_text import NOTICE, summary
from specwriter.report.text_changes import clause_name, shortened
from specwriter.report.versions_text import TEXT_NOTICE, notes_of, text_summary

_SPECIAL = re.compile(r"([\\`*_\[\]<>|~&#])")


def versions_markdown(compared: Compared) -> str:
    """The whole comparison as CommonMark with pipe tables and struck-out text."""
    title = f"# {escaped(compared.old.name)} → {escaped(compared.new.name)}"
    blocks = [title, *(escaped(note) for note in notes_of(compared))]
    if compared.is_empty:
        return "\n\n".join((*blocks, "Nothing differs.")) + "\n"
    for version in (compared.old, compared.new):
        if version.by_hand:
            blocks.append(f"## Edited by hand: {escaped(version.name)}")
            blocks += _text(version.by_hand)
    if compared.comparison is not None:
        blocks += _requirements(compared.comparison)
    blocks.append("## Text")
    blocks += _text(compared.text_changes)
    blocks.append(escaped(text_summary(compared.text_changes)))
    blocks.append(f"*{escaped(NOTICE if compared.comparison else TEXT_NOTICE)}*")
    return "\n\n".join(blocks) + "\n"


def escaped(text: str) -> str:
    """Text that Markdown reads back as the same characters, on one line."""
    return _SPECIAL.sub(r"\\\1", " ".join(text.split()))


def table(header: Sequence[str], rows: Iterable[Sequence[str]]) -> str:
    """A pipe table of escaped cells."""
    lines = [header, ["---"] * len(header), *([escaped(cell) for cell in row] for row in rows)]
    return "\n".join(f"| {' | '.join(line)} |" for line in lines)


def _requirements(comparison: Comparison) -> Iterator[str]:
    yield "## Requirements"
    if comparison.changes:
        header = ("Area", "Requirement", "Old", "New", "Sense", "Who bears it", "Addendum")
        yield table(header, requirement_rows(comparison))
    cares = [f"- {escaped(c.label)}: {escaped(c.warning)}" for c in comparison.changes if c.warning]
    if cares:
        yield "**Take care**"
        yield "\n".join(cares)
    yield from _effects(comparison)
    yield escaped(summary(comparison))


def requirement_rows(comparison: Comparison) -> Iterator[tuple[str, ...]]:
    """One row a change: area, requirement, old, new, sense, who bears it, addendum."""
    names = dict(comparison.areas)
    for each in comparison.changes:
        sense = "unknown, review" if each.sense is Sense.UNKNOWN else each.sense.value
        yield (
            names.get(each.area or "", ""),
            each.label,
            said(each.old),
            said(each.new),
            f"{sense}: {each.difference}" if each.difference else sense,
            f"{each.bears}: {each.because}",
            f"{'yes' if each.material else 'no'}: {each.material_because}",
        )


def amount_rows(comparison: Comparison) -> Iterator[tuple[str, ...]]:
    """One row a quantity, number of tests or cost: what, old, new, difference."""
    for each in comparison.amounts:
        old = each.old.text if each.old else "(absent)"
        new = each.new.text if each.new else "(absent)"
        yield each.label, old, new, each.difference


def verdict_rows(comparison: Comparison) -> Iterator[tuple[str, ...]]:
    """One row a verdict that comes, goes or turns: area, what it is on, old, new."""
    names = dict(comparison.areas)
    for each in comparison.verdicts:
        area = names.get(each.area, each.area)
        yield area, each.about, each.old or "nothing", each.new or "nothing"


def finding_rows(comparison: Comparison) -> Iterator[tuple[str, str, str]]:
    """One row a finding that comes, goes or changes: what happens, grade, title."""
    yield from _findings("appears", comparison.appeared)
    yield from _findings("vanishes", comparison.vanished)
    yield from _findings("stays, with other values", (each.new for each in comparison.altered))


def _findings(verb: str, findings: Iterable[Finding]) -> Iterator[tuple[str, str, str]]:
    for each in findings:
        where = f" in {each.area}" if each.area else ""
        yield verb, each.grade.value, f"{each.title}{where} ({each.slug}): {each.says}"


def _effects(comparison: Comparison) -> Iterator[str]:
    findings = list(finding_rows(comparison))
    if findings:
        yield "## Findings"
        yield table(("What happens", "Grade", "Finding"), findings)
    if comparison.verdicts:
        yield "## Verdicts"
        yield table(("Area", "On", "Old", "New"), verdict_rows(comparison))
    if comparison.amounts:
        yield "## Quantities, tests and cost"
        yield table(("What", "Old", "New", "Difference"), amount_rows(comparison))
    if comparison.remarks:
        yield "## Remarks"
        yield "\n".join(f"- {escaped(remark)}" for remark in comparison.remarks)


def _text(changes: Sequence[TextChange]) -> Iterator[str]:
    told = [change for change in changes if not change.follows]
    for clause, group in groupby(told, key=clause_name):
        yield f"### {escaped(clause)}"
        yield "\n".join(_change(change) for change in group)


def _change(change: TextChange) -> str:
    judged = judge_text(change)
    care = f" **Take care:** {escaped(judged.warning)}" if judged.warning else ""
    sense = (
        change.kind if change.kind in ("moved", "row added", "row removed") else judged.sense.value
    )
    return f"- {sense}, {escaped(change.place)}: {_words(change)}{care}"


def _words(change: TextChange) -> str:
    if change.kind == "rewritten":
        return "".join(_span(span) for span in change.spans).strip()
    if change.kind == "moved":
        return f"from {escaped(change.clause)}" if change.clause else "from another place"
    if change.kind == "look":
        return escaped(f'"{change.spans[0].text}" was {change.old} and is {change.new}')
    text = escaped(shortened(change.old or change.new))
    return f"~~{text}~~" if change.old else f"**{text}**"


def _span(span: Span) -> str:
    text = escaped(span.shown)
    left = " " if span.text[:1].isspace() else ""
    right = " " if span.text[-1:].isspace() and text else ""
    if not text or span.kind == "equal":
        return f"{left}{text}{right}"
    mark = "~~" if span.kind == "removed" else "**"
    return f"{left}{mark}{text}{mark}{right}"
