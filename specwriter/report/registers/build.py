"""Every register of a drafted job."""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.assemble import Document
from specwriter.model import Job
from specwriter.quantity import both_systems
from specwriter.report.registers.register import NO_ANSWER, Register
from specwriter.report.registers.tested import references, requirements, tests
from specwriter.report.result import CheckResult
from specwriter.worksheet import Worksheet


def registers_of(
    checked: CheckResult, document: Document, worksheet: Worksheet
) -> tuple[Register, ...]:
    """The seven registers; ``checked`` must have a job."""
    job = checked.job
    assert job is not None
    return (
        requirements(job),
        submittals(job),
        tests(job, worksheet),
        pay_items(job),
        references(job, document),
        open_decisions(document),
        accepted_findings(checked),
    )


def submittals(job: Job) -> Register:
    """What is due from the contractor, when, and what the agency does with it."""
    columns = ("submittal", "title", "content", "due", "before", "submitted for", "answer within")
    rows = [
        (
            each.id,
            each.title or "",
            each.content or "",
            str(each.due or ""),
            each.due_before or "",
            each.action or "",
            str(each.response or (NO_ANSWER if each.action == "information" else "")),
        )
        for each in job.submittals.values()
    ]
    return Register(name="submittals", columns=columns, rows=tuple(rows))


def pay_items(job: Job) -> Register:
    """The pay items with their quantities, what each price includes, and who is paid by it."""
    columns = (
        *("item", "number", "name", "unit", "quantity", "unit price"),
        *("measured as", "includes", "excludes", "pays for"),
    )
    rows = [
        (
            each.id,
            each.number or "",
            each.name,
            each.unit,
            both_systems(each.quantity) if each.quantity else "",
            str(each.unit_price or ""),
            each.measured_as or "",
            "; ".join(each.includes),
            "; ".join(each.excludes),
            "; ".join(_paid(job, each.id)),
        )
        for each in job.pay_items.values()
    ]
    return Register(name="pay_items", columns=columns, rows=tuple(rows))


def _paid(job: Job, item: str) -> Iterator[str]:
    yield from (area.name or area.id for area in job.areas.values() if area.pay_item == item)
    if job.residue and job.residue.pay_item == item:
        yield "residue"


def open_decisions(document: Document) -> Register:
    """What is still to be decided, with the clause that shows the blank."""
    columns = ("decision", "clause", "key of the job")
    rows = [(each.label, each.clause, each.path) for each in document.open_decisions]
    return Register(name="open_decisions", columns=columns, rows=tuple(rows))


def accepted_findings(checked: CheckResult) -> Register:
    """Findings for which somebody takes responsibility."""
    columns = ("finding", "at", "says", "grade", "because", "by", "on", "until", "for")
    rows = [
        (
            each.entry.finding,
            each.entry.at,
            each.finding.title,
            each.finding.grade.value,
            each.entry.because,
            each.entry.by,
            each.entry.on,
            each.entry.until or "",
            each.entry.wording or "",
        )
        for each in checked.accepted
    ]
    return Register(name="accepted_findings", columns=columns, rows=tuple(rows))
