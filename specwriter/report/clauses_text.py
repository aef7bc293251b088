"""The clause library, and the choice of clauses for a job, as text and as JSON."""

from __future__ import annotations

import json
from collections.abc import Iterable
from typing import Any

from specwriter.assemble import Choice, Library
from specwriter.assemble.clause import LibraryClause
from specwriter.diagnostic import Fault

_FORMAT = 1


def library_text(library: Library) -> str:
    """Every clause under the part that it goes into, and the house formats."""
    blocks = []
    for part in library.outline.parts:
        own = [_line(c) for c in _in_part(library, part.id)]
        blocks.append("\n".join([part.title, *own]))
    formats = library.formats
    names = [f"   {each.name:<22} {each.title}" for each in formats.outlines.values()]
    blocks.append("\n".join([f"House formats (usual: {formats.default})", *names]))
    blocks.append(f"Numberings: {', '.join(formats.numberings)}")
    return "\n\n".join(blocks) + f"\n\n{_count(len(library.clauses), 'clause')}.\n"


def _in_part(library: Library, part: str) -> list[LibraryClause]:
    index = [each.id for each in library.outline.parts].index(part)
    placed = [(library.outline.place_of(clause), clause) for clause in library.clauses]
    own = [(place, clause) for place, clause in placed if place and place[0] == index]
    return [clause for _, clause in sorted(own, key=lambda x: (x[0], x[1].order, x[1].id))]


def _line(clause: LibraryClause) -> str:
    terms = [f"only {' or '.join(clause.textures)}"] if clause.textures else []
    terms += [f"when {clause.when}"] if clause.when else []
    said = f"\n      {'; '.join(terms)}" if terms else ""
    return f"   {clause.id:<34} {clause.title}{said}"


def choices_text(choices: Iterable[Choice], library: Library) -> str:
    """Which clauses a job has and which it has not, each with its reason."""
    listed = tuple(choices)
    replaced = dict(library.replaced)
    blocks = []
    for title, wanted in (("Chosen", True), ("Not chosen", False)):
        own = [each for each in listed if each.chosen is wanted]
        lines = [f"   {c.clause.id:<34} {c.because}{_origin(c.clause, replaced)}" for c in own]
        blocks.append("\n".join([f"{title}: {_count(len(own), 'clause')}", *lines]))
    return "\n\n".join(blocks) + "\n"


def _origin(clause: LibraryClause, replaced: dict[str, str]) -> str:
    if clause.id in replaced:
        return f"\n      {clause.file}, in place of {replaced[clause.id]}"
    return ""


def faults_text(faults: Iterable[Fault], clauses: int) -> str:
    """Every fault on a line of its own with what to do below it, and how many there are."""
    listed = tuple(faults)
    lines = [f"{each.place}: {each.says}\n   {each.todo}".rstrip() for each in listed]
    found = _count(len(listed), "fault") if listed else "nothing found"
    return "\n".join([*lines, f"{_count(clauses, 'clause')} looked at; {found}."]) + "\n"


def library_json(library: Library) -> str:
    """The clauses of the library with what they need and express."""
    return _dump({"clauses": [_clause(each) for each in library.clauses]})


def choices_json(choices: Iterable[Choice]) -> str:
    """The choice for each clause, with its reason."""
    return _dump(
        {
            "clauses": [
                {**_clause(each.clause), "chosen": each.chosen, "because": each.because}
                for each in choices
            ]
        }
    )


def faults_json(faults: Iterable[Fault]) -> str:
    """The faults with their places."""
    return _dump(
        {
            "faults": [
                {
                    "file": each.place.file,
                    "line": each.place.line,
                    "column": each.place.column,
                    "says": each.says,
                    "todo": each.todo,
                }
                for each in faults
            ]
        }
    )


def _clause(clause: LibraryClause) -> dict[str, Any]:
    return {
        "id": clause.id,
        "title": clause.title,
        "file": clause.file,
        "part": clause.part,
        "order": clause.order,
        "textures": list(clause.textures),
        "when": clause.when,
        "needs": list(clause.needs),
        "expresses": list(clause.expresses),
    }


def _dump(answer: dict[str, Any]) -> str:
    return json.dumps({"format": _FORMAT, **answer}, indent=2, ensure_ascii=False) + "\n"


def _count(number: int, noun: str) -> str:
    return f"{number} {noun}" if number == 1 else f"{number} {noun}s"
