"""The memo as a document of its own, for the same renderers as the provision."""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.assemble import Document, Library
from specwriter.diagnostic import Finding
from specwriter.model import Job
from specwriter.report.area_table import HEAD, rows_of
from specwriter.report.rationale.pieces import Section, numbered, table, text
from specwriter.report.rationale.values import unmatched, value_sections
from specwriter.report.result import CheckResult
from specwriter.report.sentences import CAUTION
from specwriter.report.unchecked import unchecked
from specwriter.worksheet import Figure, Worksheet

_PURPOSE = (
    "This memo records why the values of the provision are what they are. It is no part of the "
    "contract, and nothing in it changes a requirement."
)


def memo_of(
    checked: CheckResult, document: Document, library: Library, worksheet: Worksheet
) -> Document:
    """The rationale memo of a drafted job; ``checked`` must have a job."""
    job = checked.job
    assert job is not None
    return Document(
        title=f"Rationale memo: {document.title}",
        subtitle=document.subtitle,
        agency=document.agency,
        contract=document.contract,
        provision=document.provision,
        revision=document.revision,
        date=document.date,
        status="NOT PART OF THE CONTRACT",
        lead_in=_PURPOSE,
        open_decisions=(),
        parts=numbered(
            (
                ("Values", list(value_sections(checked, library, document, worksheet.figures))),
                ("Calculations", list(_calculations(checked, worksheet))),
                ("Findings", list(_findings(checked))),
                *_maintenance(job),
                ("Sources of the clauses", list(_sources(document, library))),
                ("What is still open", list(_open(checked, document))),
            )
        ),
        closing="End of memo",
        front=False,
        page=document.page,
        job_text=document.job_text,
        job_digest=document.job_digest,
        own_clauses=document.own_clauses,
        enclosed=document.enclosed,
    )


def _calculations(checked: CheckResult, worksheet: Worksheet) -> Iterator[Section]:
    rows = [_calculation(n, each) for n, each in enumerate(worksheet.figures, 1)]
    if rows:
        head = ("No.", "Result", "From", "Source and validity")
        made = table("calculations", "Calculations", head, rows)
        yield "Figures that follow from the job", [made]
    else:
        yield "Figures that follow from the job", [text("The job gives nothing to compute from.")]
    areas = [area for area in checked.areas if area.table]
    for area in areas:
        caption = "What each requirement asks for, and what all the others allow"
        head = (area.area, *HEAD)
        found = table("standing", caption, head, rows_of(area))
        yield f"Requirements held together: {area.area}", [found]


def _calculation(number: int, figure: Figure) -> tuple[str, ...]:
    inputs = "; ".join(f"{each.label} {each.written}" for each in figure.inputs)
    source = f"{figure.source}." + (
        f" Valid: {figure.validity}." if figure.validity not in ("", "always") else ""
    )
    note = f" {figure.note[:1].upper()}{figure.note[1:]}" if figure.note else ""
    of = f" (alternative {figure.alternative})" if figure.alternative else ""
    return (
        str(number),
        f"{figure.title}{of}: {figure.value}",
        f"{figure.formula}: {inputs}",
        source[:1].upper() + source[1:] + note,
    )


def _findings(checked: CheckResult) -> Iterator[Section]:
    if checked.accepted:
        head = ("Finding", "Accepted because", "By, on, until")
        rows = [
            (
                _found(each.finding),
                each.entry.because,
                ", ".join(filter(None, (each.entry.by, each.entry.on, each.entry.until))),
            )
            for each in checked.accepted
        ]
        made = table("accepted", "Accepted findings", head, rows)
        yield "For which somebody takes responsibility", [made]
    if checked.findings:
        standing = [
            (each.grade.value, _found(each), "; ".join(each.settle), "; ".join(each.sources))
            for each in checked.findings
        ]
        standing_head = ("Grade", "Finding", "Ways to settle it", "Source")
        yield (
            "That stand",
            [table("standing", "Findings that stand", standing_head, standing)],
        )
    if not checked.accepted and not checked.findings:
        yield "None", [text(f"The checks found nothing. {CAUTION}")]


def _found(finding: Finding) -> str:
    evidence = "; ".join(f"{each.label} {each.written}" for each in finding.evidence)
    title = finding.title[:1].upper() + finding.title[1:]
    return f"{title}. {finding.says} ({evidence})" if evidence else f"{title}. {finding.says}"


def _maintenance(job: Job) -> Iterator[tuple[str, list[Section]]]:
    """What those who keep the surface are told; a part of its own where the job says something."""
    told: list[Section] = [
        (area.name or area.id.replace("_", " "), [text(area.maintenance)])
        for area in job.areas.values()
        if area.maintenance
    ]
    if told:
        yield "Maintenance of the surface", told


def _sources(document: Document, library: Library) -> Iterator[Section]:
    clauses = {each.id: each for each in library.clauses}
    rows, notes = [], []
    for shown in (clause for part in document.parts for clause in part.clauses):
        clause = clauses.get(shown.id)
        for each in clause.sources if clause else ():
            where = ", ".join(filter(None, (each.document, each.section, each.year)))
            rows.append((shown.number, shown.title, where, each.use))
        for figure in clause.fixed if clause else ():
            source = figure.source
            where = ", ".join(filter(None, (source.document, source.section, source.year)))
            rows.append((shown.number, shown.title, where, f"fixed figure {figure.value}"))
        if clause and clause.note:
            notes.append((shown.number, shown.title, clause.note))
    if rows:
        head = ("Clause", "Title", "Document, section, year", "Used for")
        yield "Published sources", [table("sources", "Sources", head, rows)]
    if notes:
        note_head = ("Clause", "Title", "Note")
        yield "Notes on clauses", [table("notes", "Notes", note_head, notes)]
    if not rows and not notes:
        yield "None", [text("The clauses name no source.")]


def _open(checked: CheckResult, document: Document) -> Iterator[Section]:
    assert checked.job is not None
    if document.open_decisions:
        rows = [(each.label, each.clause, each.path) for each in document.open_decisions]
        head = ("Decision", "Clause", "Key of the job")
        yield "Open decisions", [table("open", "Open decisions", head, rows)]
    if lost := unmatched(checked.job):
        lost_rows = [(each.at, each.because) for each in lost]
        lost_head = ("Key", "Reason")
        yield (
            "Reasons that belong to no value",
            [table("lost", "Reasons without a value", lost_head, lost_rows)],
        )
    if checked.not_run:
        rows = [
            (each.what, ", ".join(each.areas) or "whole contract", str(each.checks))
            for each in unchecked(checked.not_run)
        ]
        head = ("What the job does not give", "Areas", "Checks that wait for it")
        yield "What was not checked", [table("unrun", "Checks not run", head, rows)]
    if not (document.open_decisions or lost or checked.not_run):
        yield "None", [text("Nothing is open.")]
