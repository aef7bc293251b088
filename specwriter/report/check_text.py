"""A check as text, plain enough to be read aloud at a meeting.

::

    CONFLICT in mainline: groove, land and spacing disagree                 groove-land-spacing
       job.yaml:16:14   groove width   1/8 in
       job.yaml:17:13   land width     1/2 in
       job.yaml:18:16   spacing        3/4 in
       A 1/8 in groove and a 1/2 in land repeat every 5/8 in, not every 3/4 in.
       To settle: spacing 5/8 in, or land 5/8 in, or groove 1/4 in.
"""

from __future__ import annotations

import textwrap
from collections.abc import Iterator, Sequence
from itertools import groupby

from specwriter.diagnostic import Finding, Grade, NotRun
from specwriter.reconcile.verdict import AreaVerdicts
from specwriter.report.area_table import HEAD, rows_of
from specwriter.report.carried import carried_text
from specwriter.report.fault_text import fault_text
from specwriter.report.result import CheckResult
from specwriter.report.sentences import (
    CAUTION,
    INDENT,
    WIDTH,
    acceptance_of,
    basis_of,
    broke,
    counted,
    grades,
    ways_out,
    wrapped,
)
from specwriter.report.unchecked import reason, unchecked
from specwriter.rules import Defect
from specwriter.rules.acceptance import AcceptedFinding

_COLOURS = {
    Grade.CONFLICT: "\033[1;31m",
    Grade.OPEN: "\033[1;35m",
    Grade.CAUTION: "\033[1;33m",
    Grade.NOTE: "\033[1;36m",
}
_PLAIN = "\033[0m"


def check_text(result: CheckResult, *, colour: bool = False, every_check: bool = False) -> str:
    """The whole report; ``every_check`` lists each check that could not look."""
    head = [carried_text(result.carried).rstrip()] if result.carried else []
    if result.job is None:
        return "\n\n".join([*head, fault_text(result.source)])
    blocks = [*head]
    blocks += [_finding(result, each.finding, colour) for each in result.told]
    blocks += [_accepted(result, each) for each in result.accepted]
    blocks += [_defect(each) for each in result.defects]
    blocks += ["\n".join(_table(each)) for each in result.areas if rows_of(each)]
    blocks.append("\n".join(_closing(result, every_check)))
    return "\n\n".join(blocks) + "\n"


def summary(result: CheckResult) -> str:
    """One line: ``2 conflicts, 1 caution; 1 accepted; 12 checks ran``."""
    parts = [grades(each.finding for each in result.told)]
    if result.accepted:
        parts.append(f"{len(result.accepted)} accepted")
    parts.append(f"{counted(len(result.ran), 'check', 'checks')} ran")
    return "; ".join(parts)


def _finding(result: CheckResult, finding: Finding, colour: bool) -> str:
    word = finding.grade.value.upper()
    lines = _head(word, finding)
    if colour:
        lines[0] = _COLOURS[finding.grade] + word + _PLAIN + lines[0].removeprefix(word)
    lines += _places(result, finding)
    lines.append(wrapped(finding.says))
    if finding.settle:
        lines.append(wrapped(f"To settle: {ways_out(finding.settle)}"))
    if basis := basis_of(finding):
        lines.append(wrapped(basis))
    return "\n".join(lines)


def _head(word: str, finding: Finding) -> list[str]:
    where = f" in {finding.area}" if finding.area else ""
    head = f"{word}{where}: {finding.title}"
    if len(head) + 2 + len(finding.slug) > WIDTH:
        return [*wrapped(head, "", INDENT).splitlines(), finding.slug.rjust(WIDTH)]
    return [head + finding.slug.rjust(WIDTH - len(head))]


def _places(result: CheckResult, finding: Finding) -> Iterator[str]:
    """Place, name and wording of each requirement, in columns."""
    rows = result.places(finding)
    place = max((len(row[0]) for row in rows), default=0)
    label = max((len(row[1]) for row in rows), default=0)
    for row in rows:
        yield f"{INDENT}{row[0]:{place}}   {row[1]:{label}}   {row[2]}"


def _accepted(result: CheckResult, accepted: AcceptedFinding) -> str:
    lines = _head(f"ACCEPTED {accepted.finding.grade.value}", accepted.finding)
    lines += _places(result, accepted.finding)
    lines.append(wrapped(accepted.finding.says))
    lines.append(wrapped(acceptance_of(accepted)))
    return "\n".join(lines)


def _defect(defect: Defect) -> str:
    return wrapped(f"DEFECT OF THIS PROGRAM: {broke(defect)}", "")


def _table(area: AreaVerdicts) -> Iterator[str]:
    """The area's requirements that others bear on, in columns.

    A long name is wrapped where that leaves room for a verdict of one word; a verdict that finds
    no room stands on a line of its own.
    """
    rows = [(area.area, *HEAD), *rows_of(area)]
    names, required, allowed = (max(len(row[column]) for row in rows) for column in range(3))
    room = WIDTH - len("impossible") - required - allowed - 3 * len(_GAP)
    names = min(names, max(room, _SHORTEST_NAME))
    for name, *cells, verdict in rows:
        first, *rest = textwrap.wrap(name, names, subsequent_indent=_GAP)
        opening = _GAP.join(
            [f"{first:{names}}", f"{cells[0]:{required}}", f"{cells[1]:{allowed}}", ""]
        )
        own_line = len(opening) > WIDTH - 24 and len(opening) + len(verdict) > WIDTH
        yield opening.rstrip() if own_line else wrapped(verdict, opening, " " * len(opening))
        yield from rest
        if own_line:
            yield wrapped(verdict, INDENT * 2)


_GAP = "  "
_SHORTEST_NAME = 18
"""Characters of a name below which wrapping it makes the table harder to read, not easier."""


def _closing(result: CheckResult, every_check: bool) -> Iterator[str]:
    yield f"{result.source.file}: {summary(result)}."
    if result.not_run and every_check:
        yield "Not checked:"
        yield from (_not_run(each) for each in result.not_run)
    elif result.not_run:
        yield from _lacking([each for each in result.not_run if not each.aside])
        yield from _aside([each for each in result.not_run if each.aside])
    yield wrapped(CAUTION, "")


def _not_run(each: NotRun) -> str:
    where = f" in {each.area}" if each.area else ""
    return wrapped(f"{each.slug}{where}: {reason(each)}", INDENT, INDENT * 2)


def _lacking(not_run: Sequence[NotRun]) -> Iterator[str]:
    if not_run:
        yield "Not checked, because the job does not give (with the checks that wait):"
    for areas, some in groupby(unchecked(not_run), key=lambda each: each.areas):
        told = (f"{each.what} {each.checks}" if each.checks > 1 else each.what for each in some)
        where = ", ".join(areas) or "whole contract"
        yield wrapped(f"{where}: {', '.join(told)}", INDENT, INDENT * 2)


def _aside(not_run: Sequence[NotRun]) -> Iterator[str]:
    """What the job gives, and what a check does not hold for."""
    if not_run:
        yield "Not checked, because it lies outside what is known:"
    for areas, some in groupby(unchecked(not_run), key=lambda each: each.areas):
        yield wrapped(
            f"{', '.join(areas)}: {'; '.join(each.what for each in some)}", INDENT, INDENT * 2
        )
