"""Everything that can be wrong in a library, found without any job."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from functools import cache

from specwriter.assemble import subset
from specwriter.assemble.clause import LibraryClause
from specwriter.assemble.document import Table
from specwriter.assemble.front_matter import fault_at, nearest
from specwriter.assemble.language import condition
from specwriter.assemble.library import Library
from specwriter.assemble.markdown import MarkdownError, blocks_of
from specwriter.assemble.outline import Outline
from specwriter.assemble.page import CLOSING, OPENING
from specwriter.assemble.registers import TABLE_IDS
from specwriter.assemble.shape import REGISTER_NAMES, ShapeError, check_path
from specwriter.diagnostic import Fault

_STATEMENT = re.compile(r"\{%.*?%\}|\{#.*?#\}")
_OUTPUT = re.compile(r"\{\{.*?\}\}", re.DOTALL)
_CAPTION = re.compile(r"^\s*Table:\s*([a-z][a-z0-9_]*)\s*\|", re.MULTILINE)
_REGISTER = re.compile(r"\{\{\s*(" + "|".join(REGISTER_NAMES) + r")\s*\}\}")
_ANY_TABLE = ((Table(id="any", number=0, caption="", header=(), rows=()),),)
"""Stands for a table that code builds, while there is no job to build it from."""


def check_library(library: Library) -> tuple[Fault, ...]:
    """Every fault of the outline and of the clause files, in the order of files and lines."""
    faults = list(library.faults)
    if not library.outline.parts and not library.faults:
        todo = "add an outline.yaml to the clauses"
        faults.append(fault_at("outline.yaml", 1, 1, "the library has no outline", todo))
    tables = {name for clause in library.clauses for name in table_ids(clause)}
    ids = {clause.id for clause in library.clauses}
    for clause in library.clauses:
        faults += clause_faults(clause)
        faults += _targets(clause, ids, tables)
    faults += unplaced(library.outline, library.clauses)
    faults += _numberings(library)
    return tuple(sorted(faults, key=lambda f: (f.place.file, f.place.line, f.place.column)))


def unplaced(outline: Outline, clauses: Sequence[LibraryClause]) -> Iterator[Fault]:
    """Clauses for which a house format has no part."""
    known = sorted({held for part in outline.parts for held in part.held if "." not in held})
    for clause in clauses if outline.parts else ():
        if outline.place_of(clause) is None:
            says = f"the house format '{outline.name}' has no part '{clause.part}'"
            yield fault_at(
                clause.file, clause.line_of("part"), 1, says, f"known: {', '.join(known)}"
            )


def _numberings(library: Library) -> Iterator[Fault]:
    known = library.formats.numberings
    for outline in library.formats.outlines.values():
        if outline.numbering not in known:
            says = f"there is no numbering '{outline.numbering}'"
            yield fault_at(outline.file, outline.line, 1, says, f"there are: {', '.join(known)}")


def table_ids(clause: LibraryClause) -> tuple[str, ...]:
    """The ids of the tables that a clause may put into the document."""
    built = [name for found in _REGISTER.findall(clause.body) for name in TABLE_IDS.get(found, ())]
    return (*_CAPTION.findall(clause.body), *built)


@cache
def clause_faults(clause: LibraryClause) -> tuple[Fault, ...]:
    """The faults of one clause by itself."""
    if not clause.body.strip():
        says, todo = "the clause has no text", "write a sentence, or take the file out"
        return (fault_at(clause.file, clause.body_line, 1, says, todo),)
    return (
        *_complaints(_checked(clause), clause, clause.body_line),
        *_when(clause),
        *_paths(clause),
        *_markdown(clause),
    )


@cache
def _checked(clause: LibraryClause) -> subset.Checked:
    return subset.check(clause.body, [figure.name for figure in clause.fixed])


def _complaints(checked: subset.Checked, clause: LibraryClause, first_line: int) -> Iterator[Fault]:
    for complaint in checked.complaints:
        line = first_line + complaint.line - 1
        yield fault_at(clause.file, line, 1, complaint.says, complaint.todo)


def _when(clause: LibraryClause) -> Iterator[Fault]:
    if not clause.when:
        return
    line = clause.line_of("when")
    if "%}" in clause.when:
        yield fault_at(clause.file, line, 1, "'when' holds one condition", "leave the braces out")
    else:
        yield from _complaints(subset.check(condition(clause.when)), clause, line)


def _paths(clause: LibraryClause) -> Iterator[Fault]:
    for key in ("needs", "expresses"):
        for pattern in getattr(clause, key):
            try:
                check_path(pattern)
            except ShapeError as fault:
                yield fault_at(clause.file, clause.line_of(key), 1, fault.says, fault.todo)


def _targets(clause: LibraryClause, ids: set[str], tables: set[str]) -> Iterator[Fault]:
    checked = _checked(clause)
    for line, target in checked.clauses:
        if target not in ids:
            says = f"there is no clause '{target}' to refer to"
            todo = nearest(target, sorted(ids))
            yield fault_at(clause.file, clause.body_line + line - 1, 1, says, todo)
    for line, target in checked.tables:
        if target not in tables:
            says, todo = (
                f"there is no table '{target}' to refer to",
                nearest(target, sorted(tables)),
            )
            yield fault_at(clause.file, clause.body_line + line - 1, 1, says, todo)


def _markdown(clause: LibraryClause) -> Iterator[Fault]:
    """What the Markdown of the body holds that clauses do not use, as far as the first fault."""
    if OPENING in clause.body or CLOSING in clause.body:
        says = "the clause holds a private-use character"
        yield fault_at(clause.file, clause.body_line, 1, says, "retype the text")
        return
    lines, numbers = _without_braces(clause.body)
    try:
        blocks_of("\n".join(lines), _ANY_TABLE)
    except MarkdownError as fault:
        line = clause.body_line + numbers[min(fault.line, len(numbers)) - 1]
        yield fault_at(clause.file, line, 1, fault.says, fault.todo)


def _without_braces(body: str) -> tuple[list[str], list[int]]:
    """The lines of a body with a word for each value, and the index that each line had."""
    one_line = _OUTPUT.sub(
        lambda m: "value" + "\n" * m[0].count("\n"), _REGISTER.sub(f"{OPENING}0{CLOSING}", body)
    )
    kept = [
        (index, _STATEMENT.sub("", line))
        for index, line in enumerate(one_line.split("\n"))
        if not line.strip() or _STATEMENT.sub("", line).strip()
    ]
    return [line for _, line in kept] or [""], [index for index, _ in kept] or [0]
