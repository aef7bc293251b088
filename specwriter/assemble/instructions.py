"""What a provision does to each place of the section that it amends, and its title tables."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from specwriter.assemble.counting import counted
from specwriter.assemble.document import Clause, ListItem, Numbering, Part, Run, Table
from specwriter.assemble.house import HouseError
from specwriter.model import Job
from specwriter.model.project import SectionChange

_VERBS = {
    "new_article": ("Add ", " of this provision as {at}."),
    "add_after": ("Add ", " of this provision after {at}."),
    "replace": ("Replace {at} by ", " of this provision."),
    "delete_and_substitute": ("Delete {at} and substitute ", " of this provision."),
    "delete": ("Delete {at}.", ""),
}
"""Before and after the clauses of the provision; each instruction is one sentence."""
_THE_REST = (
    "Add each other clause of this provision at the end of {base}; where such a clause differs "
    "from the text of {base}, the clause governs."
)


def instructions_of(
    job: Job, parts: tuple[Part, ...], numbering: Numbering, section: str
) -> tuple[tuple[ListItem, ...], tuple[str, ...]]:
    """An item for each change of the base section, and the paths that they lack.

    ``section`` is what the house calls a section of its standard specifications.

    Raises ``HouseError`` for a clause that is not in the provision.
    """
    base = job.project.base_section
    changes = base.changes if base else ()
    clauses = {clause.id: clause for part in parts for clause in part.clauses}
    sentences = [tuple(_sentence(change, clauses)) for change in changes]
    missing = [
        change.path_to("clauses")
        for change, runs in zip(changes, sentences, strict=True)
        if any(run.kind == "blank" for run in runs)
    ]
    if base and base.action == "amend" and not changes:
        missing.append(base.path_to("changes"))
    if changes and set(clauses) - {id for change in changes for id in change.clauses}:
        name = f"{section} {base.number}" if base and base.number else f"the {section.lower()}"
        sentences.append((Run(text=_THE_REST.format(base=name)),))
    items = (
        ListItem(runs=runs, label=counted(numbering.item, {"item": place}), starts=place == 1)
        for place, runs in enumerate(sentences, 1)
    )
    return tuple(items), tuple(missing)


def _sentence(change: SectionChange, clauses: Mapping[str, Clause]) -> Iterator[Run]:
    before, after = (text.format(at=change.at) for text in _VERBS[change.action])
    yield Run(text=before)
    if change.action == "delete":
        return
    if not change.clauses:
        yield Run(text="[clauses of this provision]", kind="blank")
    for place, id in enumerate(change.clauses):
        if id not in clauses:
            says = f"the provision of this job has no clause '{id}'"
            todo = "name a clause of the provision; 'specwriter clauses' lists them"
            raise HouseError(f"{change.path_to('clauses')}.{place}", says, todo)
        if place:
            yield Run(text=" and " if place == len(change.clauses) - 1 else ", ")
        yield Run(text=clauses[id].number.rstrip("."), kind="reference", target=id)
    yield Run(text=after)


def title_tables(job: Job) -> tuple[Table, ...]:
    """The record of revisions and the block of approvals, where the job has them."""
    project = job.project
    made = []
    if project.revisions:
        rows = [(each.revision, each.date or "", each.change) for each in project.revisions]
        made.append(_table("revisions", "Revisions", ("Revision", "Date", "Change"), rows))
    if project.approvals:
        head = ("Role", "Name", "Signature", "Date")
        signed = [(each.role, each.name or "", "", each.date or "") for each in project.approvals]
        made.append(_table("approvals", "Approval", head, signed, (4, 4, 4, 2)))
    return tuple(made)


def _table(
    id: str,
    caption: str,
    header: tuple[str, ...],
    rows: Sequence[tuple[str, ...]],
    widths: tuple[int, ...] = (),
) -> Table:
    """A table without a number: it belongs to the title, not to the clauses."""
    cells = tuple(tuple((Run(text=text),) if text else () for text in row) for row in rows)
    return Table(id=id, number=0, caption=caption, header=header, rows=cells, widths=widths)
