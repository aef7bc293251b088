"""What the front sheet says: it speaks to the writer and comes off before the issue."""

from __future__ import annotations

from dataclasses import dataclass

from specwriter.assemble.document import Document

FRONT_TITLE = "Front sheet"
FRONT_PURPOSE = (
    "For the writer of this provision. Remove this sheet before the provision is issued. "
    "The engineer of record and the local codes decide; this sheet does not."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class FrontSection:
    """A heading of the front sheet with its points; ``target`` ids lead to clauses."""

    title: str
    points: tuple[str, ...]
    targets: tuple[str, ...] = ()


def front_sections(document: Document) -> tuple[FrontSection, ...]:
    """The sections that have something to say, in the order of their weight."""
    decisions = document.open_decisions
    ids = {clause.number: clause.id for part in document.parts for clause in part.clauses}
    sections = (
        FrontSection(title="Status", points=(document.status,) if document.status else ()),
        FrontSection(title="Cautions", points=document.cautions),
        FrontSection(
            title="Open decisions",
            points=tuple(f"{each.label}: {each.clause} (job: {each.path})" for each in decisions),
            targets=tuple(ids.get(each.clause, "") for each in decisions),
        ),
        FrontSection(
            title="Requirements of the job that no clause states", points=document.unexpressed
        ),
    )
    return tuple(section for section in sections if section.points)


def masthead(document: Document) -> tuple[tuple[str, str], ...]:
    """Label and value of each line of the title block that the job gives."""
    lines = (
        ("Contract", document.contract),
        ("Provision", document.provision),
        ("Revision", document.revision),
        ("Date", document.date),
    )
    return tuple((label, value) for label, value in lines if value)
