"""A job and the clause library → the document, with what is still open."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import chain
from typing import Any

from specwriter.assemble.cautions import cautions_for
from specwriter.assemble.clause import LibraryClause
from specwriter.assemble.closure import unexpressed
from specwriter.assemble.document import Document, Enclosure, OpenDecision, Part
from specwriter.assemble.duty import with_duty_verb
from specwriter.assemble.front_matter import fault_at
from specwriter.assemble.house import house_format, house_numbering, paper
from specwriter.assemble.inspection import check_library, unplaced
from specwriter.assemble.instructions import instructions_of, title_tables
from specwriter.assemble.labels import label
from specwriter.assemble.language import Names, render
from specwriter.assemble.library import Library
from specwriter.assemble.markdown import MarkdownError, blocks_of
from specwriter.assemble.numbering import Draft, numbered
from specwriter.assemble.once import said_once
from specwriter.assemble.opening import opening_of
from specwriter.assemble.page import Page
from specwriter.assemble.provenance import provenance
from specwriter.assemble.select import names_for, names_of, select
from specwriter.assemble.single import without_single_items
from specwriter.assemble.view import area_views, job_view
from specwriter.diagnostic import Fault
from specwriter.model import Job

CLOSING = "End of special provision"


class LibraryError(ValueError):
    """The clause library cannot make this document: every reason, located."""

    def __init__(self, faults: Sequence[Fault]) -> None:
        super().__init__("; ".join(f"{fault.place}: {fault.says}" for fault in faults))
        self.faults = tuple(faults)


@dataclass(frozen=True, slots=True, kw_only=True)
class _Drafted:
    draft: Draft
    page: Page


def assemble(
    job: Job,
    library: Library,
    *,
    status: str = "",
    job_text: str = "",
    job_digest: str = "",
    settings: tuple[Enclosure, ...] = (),
) -> Document:
    """The special provision of a job.

    ``status`` goes into the header of every page; ``job_text``, ``job_digest``, the file of house
    ``settings`` and the user's own clauses travel with the document. Raises ``LibraryError`` when
    the library has faults, or a clause refers to one that this job does not have; ``HouseError``
    when it lacks the format that the job names.
    """
    if not library.shipped and (faults := check_library(library)):
        raise LibraryError(faults)
    outline = house_format(job, library)
    numbering = house_numbering(job, library, outline)
    choices = [choice.clause for choice in select(job, library, outline) if choice.chosen]
    if faults := tuple(unplaced(outline, choices)):
        raise LibraryError(faults)
    common = names_of(job)
    drafted = [_draft(clause, job, common) for clause in choices]
    parts, lost = numbered(outline, numbering, [item.draft for item in drafted])
    if lost:
        raise LibraryError(lost)
    opening = opening_of(job, outline.section)
    instructions, gaps = instructions_of(job, parts, numbering, outline.section)
    return Document(
        title=opening.title,
        subtitle=opening.subtitle,
        agency=job.project.agency,
        contract=job.project.contract or "",
        provision=job.project.provision or "",
        revision=job.project.revision or "",
        date=job.project.date or "",
        status=status,
        lead_in=opening.lead_in,
        open_decisions=_open_decisions(job, (*opening.missing, *gaps), drafted, parts),
        parts=parts,
        closing=CLOSING,
        instructions=instructions,
        title_tables=title_tables(job),
        cautions=cautions_for(job),
        provenance=provenance(library, outline, parts),
        own_clauses=library.own.name if library.own else "",
        enclosed=(*settings, *_own_files(library)),
        unexpressed=unexpressed(
            job,
            [item.draft.source for item in drafted],
            set(chain.from_iterable(item.page.printed for item in drafted)),
        ),
        numbering=numbering,
        page=paper(job),
        job_text=job_text,
        job_digest=job_digest,
    )


def _own_files(library: Library) -> tuple[Enclosure, ...]:
    files = library.own.files if library.own else ()
    return tuple(Enclosure("clauses", name, text) for name, text in files)


def _draft(clause: LibraryClause, job: Job, common: Names) -> _Drafted:
    page = Page(job)
    try:
        text = render(clause.body, names_for(clause, common), page)
        text = said_once(text, page)
        if job.settings and job.settings.duty_verb in ("shall", "must"):
            text = with_duty_verb(text, job.settings.duty_verb)
        blocks = blocks_of(without_single_items(text), page.marked)
    except MarkdownError as fault:
        where = fault_at(clause.file, clause.body_line, 1, fault.says, fault.todo)
        raise LibraryError([where]) from None
    return _Drafted(draft=Draft(source=clause, blocks=blocks), page=page)


def _open_decisions(
    job: Job, missing: Sequence[str], drafted: Sequence[_Drafted], parts: Sequence[Part]
) -> tuple[OpenDecision, ...]:
    """Every absent path once, with the clause that first needs it, in the document's order."""
    numbers = {clause.id: clause.number for part in parts for clause in part.clauses}
    first: dict[str, str] = dict.fromkeys(missing, "lead-in")
    for item in drafted:
        clause = item.draft.source
        for path in chain(item.page.missing, _absent_needs(clause, job)):
            first.setdefault(path, numbers[clause.id])
    return tuple(
        OpenDecision(path=path, label=label(path, job), clause=number)
        for path, number in first.items()
    )


def _absent_needs(clause: LibraryClause, job: Job) -> Iterator[str]:
    areas = {view.path for view in area_views(job, clause.textures)}
    for pattern in clause.needs:
        for path, found in _matches(pattern.split("."), job):
            outside = path.startswith("areas.") and ".".join(path.split(".")[:2]) not in areas
            if not found and found is not False and not outside:
                yield path


def _matches(keys: Sequence[str], job: Job) -> Iterator[tuple[str, object]]:
    """The paths that a pattern stands for in a job, each with what stands there."""
    found: list[tuple[str, Any]] = [("", job_view(job))]
    for key in keys:
        if key == "*":
            found = [(item.path, item) for _, many in found for item in many]
        else:
            found = [(f"{path}.{key}".lstrip("."), item.read(key)) for path, item in found]
    yield from found
