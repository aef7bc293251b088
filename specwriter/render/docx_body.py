"""Parts and clauses of a provision → WordprocessingML."""

from __future__ import annotations

from specwriter.assemble.document import (
    Block,
    Clause,
    Document,
    Figure,
    ListItem,
    Note,
    Paragraph,
    Part,
    Run,
    Table,
)
from specwriter.render.docx_keep import last_blocks, stays
from specwriter.render.docx_page import text_width
from specwriter.render.docx_picture import picture_of, picture_xml
from specwriter.render.docx_table import indent, table_xml
from specwriter.render.docx_xml import bookmarked, field, paragraph, run

FIRST_LIST = 10
"""Number of the first ``w:num`` that a list takes; the template owns those below."""

_STYLES = {"strong": "Strong", "emphasis": "Emphasis", "blank": "Blank"}
_LIST_STYLES = ("ListLetter", "ListRoman")


class Body:
    """Writes the body once; counts the lists that it has begun and keeps its pictures."""

    def __init__(self, document: Document) -> None:
        self.lists = 0
        self.pictures: list[bytes] = []
        self._page = text_width(document)
        clauses = [clause for part in document.parts for clause in part.clauses]
        blocks = [block for clause in clauses for block in clause.blocks]
        self._end = last_blocks(document)
        self._captioned = {block.id for block in blocks if isinstance(block, Table | Figure)}
        ids = dict.fromkeys((*(clause.id for clause in clauses), *sorted(self._captioned)))
        self._numbers = {id: place for place, id in enumerate(ids, 1)}

    def part(self, part: Part) -> str:
        """A part: its heading, then its clauses."""
        heading = paragraph(run(part.title), "Heading1")
        return heading + "".join(self._clause(clause) for clause in part.clauses)

    def _clause(self, clause: Clause) -> str:
        heading = paragraph(self._target(run(clause.title), clause.id), "Heading2")
        return heading + "".join(self.blocks(clause.blocks))

    def blocks(self, blocks: tuple[Block, ...]) -> list[str]:
        """Blocks that stand one below the other."""
        return [self._block(blocks, place) for place in range(len(blocks))]

    def _block(self, blocks: tuple[Block, ...], place: int) -> str:
        block = blocks[place]
        space = _space(blocks[place - 1] if place else None, block)
        kept = any(block is each for each in self._end) or stays(blocks, place)
        keep = "<w:keepNext/>" if kept else ""
        match block:
            case Paragraph():
                return paragraph(self.runs(block.runs), "BodyText", keep + space)
            case Note():
                return paragraph(self.runs(block.runs), "Note", space)
            case ListItem():
                return self._item(block, keep, space)
            case Table():
                return self._caption(block) + table_xml(block, self.runs, self._page)
            case Figure():
                return self._figure(block)

    def _figure(self, figure: Figure) -> str:
        self.pictures.append(picture_of(figure))
        number = self._target(field(r"SEQ Figure \* ARABIC", str(figure.number)), figure.id)
        caption = run("Figure ") + number + run(f". {figure.caption}")
        picture = picture_xml(figure, self.pictures[-1], len(self.pictures), self._page)
        return picture + paragraph(caption, "FigureCaption")

    def _item(self, item: ListItem, keep: str, space: str) -> str:
        if (item.starts and item.level == 0) or not self.lists:
            self.lists += 1
        number = FIRST_LIST + self.lists - 1
        level = f'<w:ilvl w:val="{item.level}"/><w:numId w:val="{number}"/>'
        style = _LIST_STYLES[item.level]
        return paragraph(self.runs(item.runs), style, f"{keep}<w:numPr>{level}</w:numPr>{space}")

    def _caption(self, table: Table) -> str:
        if not table.number:
            return paragraph(run(table.caption), "Caption")
        # The bookmark holds the number alone: a clause writes the word before its reference.
        number = self._target(field(r"SEQ Table \* ARABIC", str(table.number)), table.id)
        place = f'<w:ind w:left="{indent(table)}"/>'
        return paragraph(run("Table ") + number + run(f". {table.caption}"), "Caption", place)

    def _target(self, content: str, id: str) -> str:
        return bookmarked(content, self._name(id), self._numbers[id])

    def _name(self, id: str) -> str:
        # Word reads at most 40 characters and only letters, digits and underscores (memory).
        return f"_Ref_{self._numbers[id]:05}"

    def runs(self, runs: tuple[Run, ...]) -> str:
        """Runs with their styles and fields."""
        return "".join(self._run(each) for each in runs)

    def _run(self, each: Run) -> str:
        if each.kind == "reference" and each.target in self._numbers:
            # \r asks for the paragraph number; a caption has none, and the result would be empty.
            switch = r"\h" if each.target in self._captioned else r"\r \h"
            return field(f"REF {self._name(each.target)} {switch}", each.text)
        return run(each.text, _STYLES.get(each.kind, ""))


def _space(last: Block | None, block: Block) -> str:
    """The space above: a table has none of its own below, and the text after a list stands off."""
    if isinstance(last, Table):
        return '<w:spacing w:before="200"/>'
    apart = isinstance(last, ListItem) and isinstance(block, Paragraph)
    return '<w:spacing w:before="160"/>' if apart else ""


def list_numberings(count: int) -> str:
    """One ``w:num`` for each list begun, each counting from (a) and (i) again."""
    restart = "".join(
        f'<w:lvlOverride w:ilvl="{level}"><w:startOverride w:val="1"/></w:lvlOverride>'
        for level in (0, 1)
    )
    return "\n".join(
        f'<w:num w:numId="{number}"><w:abstractNumId w:val="1"/>{restart}</w:num>'
        for number in range(FIRST_LIST, FIRST_LIST + count)
    )
