"""A hand-made provision that uses every kind of block and every awkward character."""

from __future__ import annotations

from specwriter.assemble.document import (
    Clause,
    Document,
    ListItem,
    Note,
    OpenDecision,
    Paragraph,
    Part,
    Run,
    Table,
)

JOB_TEXT = 'title: "Grinding & grooving <A>"\n\n# trailing  spaces  \nlimit: 3.2 mm ± 0.4\n'


def plain(text: str) -> tuple[Run, ...]:
    return (Run(text=text),)


def item(text: str, label: str, *, level: int = 0, starts: bool = False) -> ListItem:
    return ListItem(runs=plain(text), label=label, level=level, starts=starts)


DIMENSIONS = Table(
    id="groove-dimensions",
    number=1,
    caption="Groove dimensions | limits",
    header=("Dimension", "Target", "Least", "Most"),
    rows=tuple(
        (
            plain(f"Dimension {n} of the <groove>"),
            plain("3.2 mm"),
            plain("2.8 mm"),
            plain("3.6 | 4"),
        )
        for n in range(1, 6)
    ),
    widths=(4, 2, 2, 2),
)

LIMITS = Table(
    id="grinding-limits",
    number=2,
    caption="Limits of work",
    header=("From", "To", "Area, and what is left out of it"),
    rows=tuple(
        (plain(f"{n}+000"), plain(f"{n + 1}+000"), plain("Both lanes, full width. " * (n % 4 + 1)))
        for n in range(45)
    ),
)

TEXTURE = Clause(
    id="texture-dimensions",
    number="2.1",
    title="Texture & dimensions",
    blocks=(
        Paragraph(
            runs=(
                Run(text="Cut grooves *as listed* in Table "),
                Run(text="1", kind="reference", target="groove-dimensions"),
                Run(text=" and as 1.2 requires: see "),
                Run(text="1.2", kind="reference", target="definitions"),
                Run(text=". Do "),
                Run(text="not", kind="strong"),
                Run(text=" exceed "),
                Run(text="depth", kind="emphasis"),
                Run(text=" of "),
                Run(text="[groove depth, mm]", kind="blank"),
                Run(text=" <at any place>."),
            )
        ),
        DIMENSIONS,
        item("Clean the surface before cutting.", "(a)", starts=True),
        item("Hold the alignment:", "(b)"),
        item("within 13 mm of the line;", "(i)", level=1, starts=True),
        item("within 25 mm at curves.", "(ii)", level=1),
        item("Collect the slurry.", "(c)"),
        Note(runs=plain("Slurry is caustic. Follow the local code.")),
        item("A second list begins again.", "(a)", starts=True),
        item("And goes on.", "(b)"),
        LIMITS,
    ),
)


def clause(id: str, number: str, title: str, text: str) -> Clause:
    return Clause(id=id, number=number, title=title, blocks=(Paragraph(runs=plain(text)),))


PARTS = (
    Part(
        id="general",
        number="1.",
        title="General",
        clauses=(
            clause("scope", "1.1", "Scope", "This work consists of cutting grooves. " * 6),
            clause("definitions", "1.2", "Definitions", "1. A groove is a saw cut."),
        ),
    ),
    Part(
        id="work",
        number="2.",
        title="Construction Requirements",
        clauses=(TEXTURE, clause("payment", "2.2", "Payment", "Paid by the square metre. " * 9)),
    ),
)

SAMPLE = Document(
    title="Longitudinal Grooving of Concrete Pavement",
    subtitle="Special provision to the standard specifications",
    agency="Province of Example & Roads",
    contract="C-1042",
    provision="SP-7",
    revision="B",
    date="2026-03-02",
    status="DRAFT WITH 2 UNSETTLED CONFLICTS - NOT FOR A CONTRACT",
    lead_in="This provision adds to the standard specifications.",
    open_decisions=(
        OpenDecision(path="areas.mainline.groove.depth", label="groove depth", clause="2.1"),
    ),
    parts=PARTS,
    closing="End of special provision",
    cautions=("Silica dust is harmful: the engineer of record settles the controls.",),
    unexpressed=("conditions.slab_thickness",),
    job_text=JOB_TEXT,
    job_digest="0" * 64,
)
