"""What to look at again in a folder of clauses: nothing here keeps a clause from being used."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator

from specwriter.assemble import subset
from specwriter.assemble.clause import LibraryClause
from specwriter.assemble.front_matter import fault_at
from specwriter.assemble.language import condition
from specwriter.diagnostic import Fault

_BUILT = {
    "limits_table": ("areas.*.limits", "areas.*.name"),
    "requirement_table": tuple(
        f"areas.*.{noun}" for noun in ("groove", "land", "ridge", "blade", "flush_grind")
    ),
    "testing_table": ("areas.*", "residue.ph"),
    "submittal_table": ("submittals",),
    "pay_item_table": ("pay_items",),
}
"""What the tables that code builds read from the job."""

_WHOLE = {"areas", "all_areas", "pay_items", "submittals", "areas.*", "pay_items.*", "submittals.*"}
"""Names of lists and of their members: to name them is not to read what they hold."""

_BRACES = re.compile(r"\{\{.*?\}\}|\{%.*?%\}|\{#.*?#\}", re.DOTALL)
_MARKER = re.compile(r"^\s*(?:\d+[.)]\s|Table:[^|]*\|)", re.MULTILINE)
_NAMED = re.compile(
    r"\d+ CFR [\d.]+(?:\(\w+\))*"
    r"|\b(?:AASHTO|ASTM|ISO|EN|FAA|UFGS)(?: [A-Z]{1,3})? ?[\w./-]*\d[\w./-]*"
)
"""Numbers that are names: of a law, a standard or a method."""

_NUMBER = re.compile(r"\d[\d,]*(?:[./-]\d+)*")


def review(clauses: Iterable[LibraryClause]) -> tuple[Fault, ...]:
    """Declared names that a clause never reads, and numbers that are written into its text."""
    return tuple(fault for clause in clauses for fault in (*_unread(clause), *_numbers(clause)))


def _unread(clause: LibraryClause) -> Iterator[Fault]:
    reads = _reads(clause)
    for key in ("needs", "expresses"):
        for pattern in getattr(clause, key):
            if not any(_meet(pattern, read) for read in reads):
                says = f"'{pattern}' stands under '{key}', but the clause never reads it"
                todo = "print the value in the text, or take the name out"
                yield fault_at(clause.file, clause.line_of(key), 1, says, todo)


def _reads(clause: LibraryClause) -> set[str]:
    body = subset.check(clause.body, [figure.name for figure in clause.fixed]).reads
    when = subset.check(condition(clause.when)).reads if clause.when else set()
    built = {path for name in body for path in _BUILT.get(name, ())}
    return (body | when) - _WHOLE | built


def _meet(declared: str, read: str) -> bool:
    """True when one path is the other, or lies below it."""
    below, above = f"{declared}.", f"{read}."
    return above.startswith(below) or below.startswith(above)


def _numbers(clause: LibraryClause) -> Iterator[Fault]:
    for number, line in enumerate(_prose(clause.body).split("\n"), start=clause.body_line):
        for found in _NUMBER.finditer(line):
            says = f"the number {found[0]} is written into the text"
            todo = "take it from the job, or put it under 'fixed' with its source"
            yield fault_at(clause.file, number, found.start() + 1, says, todo)


def _prose(body: str) -> str:
    """A body with everything but its own words blanked out; places stay where they are."""
    for pattern in (_BRACES, _MARKER, _NAMED):
        body = pattern.sub(lambda found: re.sub(r"[^\n]", " ", found[0]), body)
    return body
