"""The Markdown of clause bodies → blocks of the document.

Clauses use paragraphs, ordered lists of two levels, captioned tables, emphasis and block quotes
(notes); everything else is refused at its line.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace
from functools import cache
from itertools import groupby
from typing import TYPE_CHECKING, Literal, NoReturn

from specwriter.assemble.document import Block, ListItem, Note, Paragraph, Run, Table
from specwriter.assemble.markdown_tokens import Token, usual_tokens
from specwriter.assemble.page import ABOVE, MARK, Marked

if TYPE_CHECKING:
    from markdown_it import MarkdownIt
    from markdown_it.token import Token as OtherToken

_CAPTION = re.compile(r"Table:\s*(?P<id>[a-z][a-z0-9_]*)\s*\|\s*(?P<caption>\S.*)")
_Kind = Literal["plain", "strong", "emphasis"]
_EMPHASIS: dict[str, _Kind] = {"strong_open": "strong", "em_open": "emphasis"}
_REFUSED = {
    "heading_open": ("a heading", "the title stands in the front matter; leave it out"),
    "bullet_list_open": ("a bulleted list", "write 1. before each item"),
    "code_block": ("text indented by four spaces", "indent by three at most"),
    "fence": ("a block of code", "leave it out"),
    "hr": ("a line across the page", "leave it out"),
    "html_block": ("HTML", "leave it out"),
    "html_inline": ("HTML", "leave it out"),
    "image": ("a picture", "leave it out"),
    "link_open": ("a link", "name the document, section and year instead"),
    "code_inline": ("text between backquotes", "leave the backquotes out"),
    "hardbreak": ("a forced line break", "leave out the spaces or the backslash at the line's end"),
}


class MarkdownError(ValueError):
    """Markdown that clauses do not use: what it is, what to do, and its line (from 1)."""

    def __init__(self, says: str, todo: str, line: int) -> None:
        super().__init__(says)
        self.says = says
        self.todo = todo
        self.line = line


def blocks_of(text: str, marked: Sequence[Marked] = ()) -> tuple[Block, ...]:
    """The blocks that a rendered body makes; marks are exchanged for what they stand for.

    Raises ``MarkdownError`` at the first thing that clauses do not use.
    """
    usual = usual_tokens(text)
    return _Reader(parser().parse(text) if usual is None else usual, marked).blocks()


@cache
def parser() -> MarkdownIt:
    """The reader of unusual Markdown: CommonMark without HTML, with pipe tables."""
    from markdown_it import MarkdownIt

    return MarkdownIt("commonmark", {"html": False}).enable("table")


def plain_text(runs: Sequence[Run]) -> str:
    """The characters of some runs."""
    return "".join(run.text for run in runs)


@dataclass(slots=True)
class _Reader:
    tokens: Sequence[Token | OtherToken]
    marked: Sequence[Marked]
    at: int = 0
    made: list[Block] = field(default_factory=list)
    caption: tuple[str, str] | None = None
    line: int = 1

    def blocks(self) -> tuple[Block, ...]:
        while self.at < len(self.tokens):
            token = self.take()
            match token.type:
                case "paragraph_open":
                    self.paragraph()
                case "ordered_list_open":
                    self.listing(0)
                case "blockquote_open":
                    self.quote()
                case "table_open":
                    self.table()
                case _:
                    self.refuse(token)
        self.no_caption()
        return tuple(self.made)

    def take(self) -> Token | OtherToken:
        token = self.tokens[self.at]
        self.at += 1
        if token.map:
            self.line = token.map[0] + 1
        return token

    def inline(self) -> list[Run]:
        """The runs of an inline token and its closing token."""
        runs = self.runs(self.take())
        self.take()
        return runs

    def fault(self, says: str, todo: str) -> NoReturn:
        raise MarkdownError(says, todo, self.line)

    def refuse(self, token: Token | OtherToken) -> NoReturn:
        what, todo = _REFUSED.get(token.type, (token.type, "leave it out"))
        self.fault(f"clauses do not use {what}", todo)

    def runs(self, token: Token | OtherToken) -> list[Run]:
        runs: list[Run] = []
        kinds: list[_Kind] = ["plain"]
        for child in token.children or ():
            if child.type in _EMPHASIS:
                kinds.append(_EMPHASIS[child.type])
            elif child.type in ("strong_close", "em_close"):
                kinds.pop()
            elif child.type == "softbreak":
                runs.append(Run(text=" ", kind=kinds[-1]))
            elif child.type == "text":
                runs.extend(self.unmarked(child.content, kinds[-1]))
            else:
                self.refuse(child)
        return _joined(runs)

    def unmarked(self, text: str, kind: _Kind) -> Iterator[Run]:
        for i, piece in enumerate(MARK.split(text)):
            if i % 2 == 0:
                if piece:
                    yield Run(text=piece, kind=kind)
                continue
            for run in self.marked[int(piece)]:
                if not isinstance(run, Run):
                    self.fault("a table of the tool stands inside a line", "give it its own line")
                elif run.text or run.kind == "reference":
                    yield replace(run, kind=kind) if run.kind == "plain" else run

    def paragraph(self) -> None:
        """A paragraph, a caption, or a table of the tool with or without its caption."""
        content = self.tokens[self.at].content.strip()
        first, _, rest = content.partition("\n")
        caption = _CAPTION.fullmatch(first.strip())
        built = self.built(rest if caption else content)
        if built is not None:
            self.at += 2
            self.insert(built, self.captioned(caption) if caption else None)
        elif caption and not rest:
            self.at += 2
            self.caption = self.captioned(caption)
        else:
            self.no_caption()
            self.made.append(Paragraph(runs=tuple(self.inline())))

    def built(self, line: str) -> tuple[Block, ...] | None:
        """The blocks that code has built for a line; ``None`` when it is a line of text."""
        found = MARK.fullmatch(line.strip())
        content = self.marked[int(found[1])] if found else None
        if content is None or any(isinstance(item, Run) for item in content):
            return None
        return tuple(item for item in content if not isinstance(item, Run))

    def captioned(self, found: re.Match[str]) -> tuple[str, str]:
        usual = usual_tokens(found["caption"])
        inline = parser().parseInline(found["caption"])[0] if usual is None else usual[1]
        return found["id"], plain_text(self.runs(inline))

    def insert(self, blocks: tuple[Block, ...], caption: tuple[str, str] | None) -> None:
        caption, self.caption = caption or self.caption, None
        for place, block in enumerate(blocks):
            if caption and not place and isinstance(block, Table):
                self.made.append(replace(block, id=caption[0], caption=caption[1]))
            else:
                self.made.append(self.aimed(block) if isinstance(block, Paragraph) else block)

    def aimed(self, block: Paragraph) -> Paragraph:
        """A built paragraph whose reference to the table above has found it."""
        tables = [each.id for each in self.made if isinstance(each, Table)]
        above = tables[-1] if tables else ABOVE
        return Paragraph(
            runs=tuple(
                replace(run, target=above) if run.target == ABOVE else run for run in block.runs
            )
        )

    def no_caption(self) -> None:
        if self.caption:
            self.fault("a caption without a table", "put the table directly below its caption")

    def quote(self) -> None:
        self.no_caption()
        while (token := self.take()).type != "blockquote_close":
            if token.type != "paragraph_open":
                self.fault("a note holds paragraphs only", "move the rest out of the note")
            self.made.append(Note(runs=tuple(self.inline())))

    def listing(self, level: int) -> None:
        self.no_caption()
        number = 0
        while (token := self.take()).type != "ordered_list_close":
            if token.type != "list_item_open":
                self.refuse(token)
            number += 1
            self.item(number, level)

    def item(self, number: int, level: int) -> None:
        token = self.take()
        if token.type != "paragraph_open":
            self.fault("a list item begins with its text", "write the text after the number")
        runs = tuple(self.inline())
        # The label comes with the numbering of the house format.
        self.made.append(ListItem(runs=runs, label="", level=level, starts=number == 1))
        while (token := self.take()).type != "list_item_close":
            if token.type == "ordered_list_open" and level == 0:
                self.listing(1)
            elif token.type == "ordered_list_open":
                self.fault("lists have two levels", "take the third level out")
            elif token.type == "paragraph_open":
                self.fault("a list item has one paragraph", "make it a further item")
            else:
                self.refuse(token)

    def table(self) -> None:
        if self.caption is None:
            self.fault("this table has no caption", "write 'Table: name | caption' above it")
        name, caption = self.caption
        self.caption = None
        rows: list[list[tuple[Run, ...]]] = []
        while (token := self.take()).type != "table_close":
            if token.type == "tr_open":
                rows.append([])
            elif token.type in ("th_open", "td_open"):
                rows[-1].append(tuple(self.inline()))
        header = tuple(plain_text(cell) for cell in rows[0])
        body = tuple(tuple(row) for row in rows[1:])
        self.made.append(Table(id=name, number=0, caption=caption, header=header, rows=body))


def _joined(runs: list[Run]) -> list[Run]:
    """Neighbouring runs of one kind made into one."""
    made: list[Run] = []
    for kind, group in groupby(runs, key=lambda run: run.kind):
        if kind in ("blank", "reference"):
            made += group
        else:
            made.append(Run(text=plain_text(tuple(group)), kind=kind))
    return made
