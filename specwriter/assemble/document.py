"""The document tree: what every renderer is given. Numbers and references are already text."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal


@dataclass(frozen=True, slots=True, kw_only=True)
class Numbering:
    """How everything is numbered: patterns whose fields are counted.

    ``{part}`` and ``{clause}`` count parts and clauses, ``{item}`` the items of a list. A form
    may follow: ``{clause:02}`` for 01, ``:A`` and ``:a`` for letters, ``:I`` and ``:i`` for
    Roman numerals. Whatever else stands in a pattern is printed as it is.
    """

    part: str = "{part}."
    clause: str = "{part}.{clause}"
    item: str = "({item:a})"
    subitem: str = "({item:i})"


@dataclass(frozen=True, slots=True, kw_only=True)
class Run:
    """A stretch of text of one kind.

    ``blank`` marks an open decision shown as a fill-in; ``reference`` points to ``target``
    (the id of a clause, table or figure) and carries its number as text.
    """

    text: str
    kind: Literal["plain", "strong", "emphasis", "blank", "reference"] = "plain"
    target: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Paragraph:
    """Running text of a clause."""

    runs: tuple[Run, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class ListItem:
    """One item of a list with its label; ``level`` 0 is the outer list, 1 the inner."""

    runs: tuple[Run, ...]
    label: str
    level: int = 0
    starts: bool = False
    """True for the first item of a list: numbering begins again here."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Table:
    """A captioned table; ``rows`` exclude the ``header``. ``id`` is its reference target.

    ``number`` is 0 for a table that is not counted.
    """

    id: str
    number: int
    caption: str
    header: tuple[str, ...]
    rows: tuple[tuple[tuple[Run, ...], ...], ...]
    widths: tuple[int, ...] = ()
    """Relative column widths; empty where the text settles them. For cells filled in by hand."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Dimension:
    """A dimension that a figure shows.

    ``at`` is its key below the area, such as ``groove.width``; ``label`` the value as the job
    writes it, and ``text`` the same as tables print it, in both unit systems.
    """

    at: str
    name: str
    label: str
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Section:
    """The sizes, in millimetres, at which a cross-section of grooves is drawn.

    ``lands`` are the strips between the grooves from left to right: one groove more than lands.
    ``ripple`` is the pitch of a fine ground texture on the lands; 0 for plain lands.
    """

    width: float
    bottom: float
    depth: float
    lands: tuple[float, ...]
    ripple: float = 0.0
    bar: tuple[float, str] = (25.4, "1 in")
    """Length and label of the scale bar."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Plan:
    """What a plan of transverse grooves shows; it is a diagram and has no scale.

    ``skew`` is in degrees; ``joint``, ``edge`` and ``random`` say what there is to draw.
    """

    skew: float = 0.0
    joint: bool = False
    edge: bool = False
    random: bool = False
    runway: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Figure:
    """A captioned drawing; ``description`` gives every dimension in words. ``id`` as in tables."""

    id: str
    number: int
    caption: str
    drawing: Section | Plan
    dimensions: tuple[Dimension, ...]
    notes: tuple[str, ...]
    """Lines of text below the drawing."""
    description: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Note:
    """A cautionary or explanatory note set off from the text."""

    runs: tuple[Run, ...]


Block = Paragraph | ListItem | Table | Figure | Note


@dataclass(frozen=True, slots=True, kw_only=True)
class Clause:
    """A numbered clause of a part: ``number`` such as "3.4", ``id`` the clause file's id."""

    id: str
    number: str
    title: str
    blocks: tuple[Block, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """A part of the provision; ``number`` is printed as it is, such as "3." or "PART 3"."""

    id: str
    number: str
    title: str
    clauses: tuple[Clause, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class OpenDecision:
    """A value or choice that a chosen clause needs and the job does not give."""

    path: str
    label: str
    clause: str
    """Number of the first clause that shows the blank."""


@dataclass(frozen=True, slots=True)
class Enclosure:
    """A file that a job was drafted with: a file of house settings, or one of the own clauses."""

    kind: Literal["settings", "clauses"]
    name: str
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Document:
    """A special provision, ready to be rendered.

    ``status`` is empty for a clean provision, else the sentence printed in the header of every
    page. ``cautions``, ``open_decisions`` and ``unexpressed`` speak to the writer, not to the
    contractor: they go on a front sheet that is removed before the provision is issued.
    """

    title: str
    subtitle: str
    agency: str
    contract: str
    provision: str
    revision: str
    date: str
    status: str
    lead_in: str
    open_decisions: tuple[OpenDecision, ...]
    parts: tuple[Part, ...]
    closing: str
    """The constant last line of the document."""
    instructions: tuple[ListItem, ...] = ()
    """What is done at each place of the section that the provision amends."""
    front: bool = True
    """Whether there is a front sheet; a document that is no contract text has none."""
    title_tables: tuple[Table, ...] = ()
    """Revisions and approvals, which stand under the title and have no number."""
    cautions: tuple[str, ...] = ()
    """What can hurt people, and who must settle it; printed on the front sheet."""
    provenance: tuple[str, ...] = ()
    """Clauses and formats that come from a folder of the user; for the front sheet."""
    own_clauses: str = ""
    """How that folder is named; it travels with the job."""
    enclosed: tuple[Enclosure, ...] = ()
    """The other files that the provision was made from; they travel with the job too."""
    unexpressed: tuple[str, ...] = ()
    """Paths of requirements that stand in the job but in no chosen clause."""
    numbering: Numbering = Numbering()
    page: Literal["letter", "a4"] = "letter"
    job_text: str = ""
    job_digest: str = ""

    @property
    def title_blocks(self) -> tuple[Block, ...]:
        """What stands between the lead-in and the first part."""
        return (*self.instructions, *self.title_tables)
