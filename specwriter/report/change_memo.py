"""The change memo: numbered instructions in the form an addendum uses, as Word or Markdown.

Names, seals and dates of approval are left blank: they are for the people who give them.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from specwriter.compare import Change, Comparison, said
from specwriter.compare.instructions import Instruction, instructions
from specwriter.compare.redline.plain import word_file
from specwriter.compare.text.changes import renumbered
from specwriter.reading import Block, Cell, Paragraph, Piece, Row, Table, Text
from specwriter.report.compared import Compared
from specwriter.report.comparison_text import NOTICE
from specwriter.report.versions_markdown import amount_rows, escaped, table

TITLE = "Change memo"
LEAD_IN = (
    "The provision is changed as follows. Clauses, tables, rows and paragraphs are named as they "
    "stand in the base, before any instruction is carried out. Text between quotation marks is "
    "deleted, substituted or added exactly as written, where … stands for the rest of a long text; "
    "the cells of a row are parted by |. What comes at one place comes in the order of the "
    "instructions. Everything else stays."
)
BLANKS = (
    "Addendum number: ________   Date: ________",
    "Prepared by: ________   Approved by: ________",
    "Engineers of record whose sections change sign and seal these anew: ________",
)
_PAY = ("pay_items", "pay_item")


def memo_blocks(compared: Compared) -> Iterator[Block]:
    """The memo as blocks; headings, instructions, what is put in, and tables."""
    assert compared.match is not None
    yield _heading(TITLE, 1)
    yield from (_paragraph(line) for line in (*_subject(compared), *BLANKS))
    yield _heading("Instructions", 2)
    yield _paragraph(LEAD_IN)
    numbered = instructions(compared.text_changes, renumbered(compared.match))
    for number, each in enumerate(numbered, start=1):
        yield from _instruction(number, each)
    if not numbered:
        yield _paragraph("No word of the provision changes.")
    if compared.comparison is not None:
        yield from _effects(compared.comparison)
    yield _paragraph(NOTICE)


def _subject(compared: Compared) -> Iterator[str]:
    for name, version in (("Base", compared.old), ("Changed to", compared.new)):
        job = version.checked.job if version.checked else None
        if job is None:
            yield f"{name}: {version.name}"
            continue
        project = job.project
        facts = [project.provision or project.title]
        facts += [f"revision {project.revision}"] if project.revision else []
        facts += [project.date] if project.date else []
        yield f"{name}: {', '.join(facts)} ({version.name})"


def _instruction(number: int, instruction: Instruction) -> Iterator[Block]:
    yield _paragraph(f"{number}. {instruction.says}")
    if instruction.is_table:
        yield Table(rows=tuple(_row(text.split(" | ")) for text in instruction.given))
        return
    for text in instruction.given:
        yield _paragraph(f'"{text}"')


def _effects(comparison: Comparison) -> Iterator[Block]:
    pay = [each for each in comparison.changes if _is_pay(each)]
    if pay or comparison.amounts:
        yield _heading("Pay items and quantities", 2)
        for each in pay:
            old, new = said(each.old), said(each.new)
            yield _paragraph(f"{each.label}: {old} → {new}")
        if comparison.amounts:
            rows = (("What", "Old", "New", "Difference"), *amount_rows(comparison))
            yield Table(rows=tuple(_row(row) for row in rows))
    yield _heading("Why an addendum", 2)
    if not comparison.material:
        yield _paragraph("No change of the job calls for one under the setting used.")
    for each in comparison.material:
        bears = f"{each.sense.value}, {each.bears}"
        yield _paragraph(f"{each.label} ({bears}): {each.material_because}.")
    for remark in comparison.remarks:
        yield _paragraph(f"Remark: {remark}")


def _is_pay(change: Change) -> bool:
    side = change.new or change.old
    parts = side.path.split(".") if side else []
    return any(part in _PAY for part in parts)


def _heading(text: str, level: int) -> Paragraph:
    return Paragraph(pieces=(Piece(text),), style=f"Heading{level}", heading=level)


def _paragraph(text: str) -> Paragraph:
    return Paragraph(pieces=(Piece(text),), style="BodyText")


def _row(cells: Iterable[str]) -> Row:
    return Row(cells=tuple(_cell(text) for text in cells))


def _cell(text: str) -> Cell:
    return Cell(blocks=(Paragraph(pieces=(Piece(text),) if text else (), style="TableText"),))


def memo_word(compared: Compared, frame: bytes) -> bytes:
    """The memo as a Word file in a frame of the house."""
    return word_file(Text(blocks=tuple(memo_blocks(compared))), frame)


def memo_markdown(compared: Compared) -> str:
    """The memo as Markdown."""
    return "\n\n".join(_markdown(block) for block in memo_blocks(compared)) + "\n"


def _markdown(block: Block) -> str:
    if isinstance(block, Table):
        first, *rest = ([cell.text for cell in row.cells] for row in block.rows)
        return table(first, rest)
    text = escaped(block.text)
    if block.heading:
        return f"{'#' * block.heading} {text}"
    # A number and a full stop at the start of a line would become a list of Markdown's own.
    return text.replace(". ", "\\. ", 1) if text.split(".")[0].isdigit() else text
