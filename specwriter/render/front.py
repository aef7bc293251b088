"""What the front sheet says: it speaks to the writer and comes off before the issue."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass

from specwriter.assemble.document import Document, OpenDecision, Run

FRONT_TITLE = "Front sheet"
FRONT_PURPOSE = (
    "For the writer of this provision. Remove this sheet before the provision is issued. "
    "The engineer of record and the local codes decide; this sheet does not."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class FrontSection:
    """A heading of the front sheet with its points."""

    title: str
    points: tuple[tuple[Run, ...], ...]


def front_sections(document: Document) -> tuple[FrontSection, ...]:
    """The sections that have something to say, in the order of their weight."""
    ids = {clause.number: clause.id for part in document.parts for clause in part.clauses}
    decisions = tuple(_decision(each, ids) for each in document.open_decisions)
    sections = (
        ("Status", _plain((document.status,) if document.status else ())),
        ("Cautions", _plain(document.cautions)),
        ("Open decisions", decisions),
        ("Clauses and formats of your own", _plain(document.provenance)),
        ("Requirements of the job that no clause states", _plain(document.unexpressed)),
    )
    return tuple(FrontSection(title=title, points=points) for title, points in sections if points)


def _plain(points: tuple[str, ...]) -> tuple[tuple[Run, ...], ...]:
    return tuple((Run(text=point),) for point in points)


def _decision(each: OpenDecision, ids: Mapping[str, str]) -> tuple[Run, ...]:
    """What is open, a reference to the clause that shows it, and the place in the job."""
    target = ids.get(each.clause, "")
    where = Run(text=each.clause, kind="reference" if target else "plain", target=target)
    return Run(text=f"{each.label}: "), where, Run(text=f" (job: {each.path})")


def lead_in_runs(document: Document) -> tuple[Run, ...]:
    """The lead-in, which comes as text, with what stands in brackets marked as a blank."""
    pieces = re.split(r"(\[[^\]]*\])", document.lead_in)
    return tuple(
        Run(text=piece, kind="blank" if piece.startswith("[") and piece.endswith("]") else "plain")
        for piece in pieces
        if piece
    )


def masthead(document: Document) -> tuple[tuple[str, str], ...]:
    """Label and value of each line of the title block that the job gives."""
    lines = (
        ("Contract", document.contract),
        ("Provision", document.provision),
        ("Revision", document.revision),
        ("Date", document.date),
    )
    return tuple((label, value) for label, value in lines if value)
