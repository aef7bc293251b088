"""What to look at again in a folder of clauses: nothing here keeps a clause from being used."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator

from specwriter.assemble import subset
from specwriter.assemble.clause import LibraryClause
from specwriter.assemble.front_matter import fault_at
from specwriter.assemble.language import condition
from specwriter.assemble.shape import ShapeError, check_path
from specwriter.diagnostic import Fault

_BUILT = {
    "limits_table": ("areas.*.limits", "areas.*.name", "areas.*.place"),
    "requirement_table": tuple(
        f"areas.*.{noun}" for noun in ("groove", "land", "ridge", "blade", "flush_grind")
    ),
    "testing_table": ("areas.*", "residue.ph"),
    "submittal_table": ("submittals",),
    "pay_item_table": ("pay_items",),
}
"""What the tables that code builds read from the job."""

_LISTS = ("areas", "pay_items", "submittals")
_NOUNS = ("project", "settings", "conditions", "residue", "trial_section")
_WHOLE = {"all_areas", *_LISTS, *(f"{name}.*" for name in _LISTS), *_NOUNS}
"""Names of lists, of their members and of nouns: to name them is not to read what they hold."""

_BRACES = re.compile(r"\{\{.*?\}\}|\{%.*?%\}|\{#.*?#\}", re.DOTALL)
_MARKER = re.compile(r"^\s*(?:\d+[.)]\s|Table:[^|]*\|)", re.MULTILINE)
_NAMED = re.compile(
    r"\d+ CFR [\d.]+(?:\(\w+\))*"
    r"|\b(?:AASHTO|ASTM|ISO|EN|FAA|UFGS)(?: [A-Z]{1,3})? ?[\w./-]*\d[\w./-]*"
)
"""Numbers that are names: of a law, a standard or a method."""

_NUMBER = re.compile(
    r"\d[\d,]*(?:[./-]\d+)*"
    r"|\b(?:two|three|four|five|six|seven|eight|nine|ten|twelve|twenty|thirty)(?=[ -]"
    r"(?:inch|foot|feet|yard|mile|millimet|met|kilomet|minute|hour|day|week|percent|degree))"
)


_OF_AREA = "areas.*."
_LAID_OVER = f"{_OF_AREA}conditions."
"""What an area says of its site lies over what the contract says: reading one reads the other."""


def review(clauses: Iterable[LibraryClause]) -> tuple[Fault, ...]:
    """What a clause declares and never uses, and numbers that are written into its text."""
    return tuple(
        fault
        for clause in clauses
        for fault in (*_unread(clause), *_unprinted(clause), *_numbers(clause))
    )


def _unread(clause: LibraryClause) -> Iterator[Fault]:
    reads = _reads(clause)
    for key in ("needs", "expresses"):
        for pattern in getattr(clause, key):
            if _exists(pattern) and not any(_meet(pattern, read) for read in reads):
                says = f"'{pattern}' stands under '{key}', but the clause never reads it"
                todo = "print the value in the text, or take the name out"
                yield fault_at(clause.file, clause.line_of(key), 1, says, todo)


def _exists(pattern: str) -> bool:
    """Whether a job can have such a path; one that cannot is a fault already."""
    try:
        check_path(pattern)
    except ShapeError:
        return False
    return True


def _unprinted(clause: LibraryClause) -> Iterator[Fault]:
    for figure in clause.fixed:
        if not re.search(rf"\bfixed\.{figure.name}\b", clause.body):
            says = f"the fixed figure '{figure.name}' is never printed"
            todo = f"print it with {{{{ fixed.{figure.name} }}}}, or take it out"
            yield fault_at(clause.file, clause.line_of("fixed"), 1, says, todo)


def _reads(clause: LibraryClause) -> set[str]:
    body = subset.check(clause.body, [figure.name for figure in clause.fixed]).reads
    when = subset.check(condition(clause.when)).reads if clause.when else set()
    built = {path for name in body for path in _BUILT.get(name, ())}
    read = (body | when) - _WHOLE | built
    return read | {each.removeprefix(_OF_AREA) for each in read if each.startswith(_LAID_OVER)}


def _meet(declared: str, read: str) -> bool:
    """True when one path is the other, or lies below it."""
    below, above = f"{declared}.", f"{read}."
    return above.startswith(below) or below.startswith(above)


def _numbers(clause: LibraryClause) -> Iterator[Fault]:
    for number, line in enumerate(prose(clause.body).split("\n"), start=clause.body_line):
        for found in _NUMBER.finditer(line):
            says = f"the number {found[0]} is written into the text"
            todo = "take it from the job, or put it under 'fixed' with its source"
            yield fault_at(clause.file, number, found.start() + 1, says, todo)


def prose(body: str) -> str:
    """A body with everything but its own words blanked out; places stay where they are."""
    for pattern in (_BRACES, _MARKER, _NAMED):
        body = pattern.sub(lambda found: re.sub(r"[^\n]", " ", found[0]), body)
    return body
