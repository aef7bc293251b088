"""Markdown as clauses usually write it → the tokens that markdown-it gives for it.

Paragraphs of plain lines, ordered lists of two levels, single words or phrases in ``*emphasis*``.
Whatever else a text holds makes it unusual, and markdown-it reads it: that takes five times as
long, and its import as long as half a draft.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Token:
    """What the reader of blocks looks at; the names are those of markdown-it."""

    type: str
    content: str = ""
    map: tuple[int, int] | None = None
    children: tuple[Token, ...] = ()


_ITEM = re.compile(r"( {3})?1\. (?=\S)")
_PLAIN = re.compile(r"(?![\s#>+~=|:-]|\d+[.)](?:\s|$))[^\\`_\[\]<&*\t]+(?<=\S)")
"""A line without a sign of Markdown, neither at its beginning nor inside, nor a space around it."""

_EMPHASIS = re.compile(r"(?<![\w*])\*(\w(?:[^*]*\w)?)\*(?![\w*])")
_IN_WORD = re.compile(r"(?<=[a-z0-9])_(?=[a-z0-9])")
"""An underscore that is none of Markdown's, such as that of a name."""

_PARAGRAPH_OPEN, _PARAGRAPH_CLOSE = "paragraph_open", "paragraph_close"
_LIST_OPEN, _LIST_CLOSE = Token("ordered_list_open"), Token("ordered_list_close")
_ITEM_CLOSE = Token("list_item_close")
_SOFT_BREAK = Token("softbreak")
_EM_OPEN, _EM_CLOSE = Token("em_open"), Token("em_close")


def usual_tokens(text: str) -> list[Token] | None:
    """The tokens of a text, or ``None`` where only markdown-it can tell."""
    found: list[Token] = []
    depth = 0
    lines = text.split("\n")
    at = 0
    while at < len(lines):
        line = lines[at]
        if not line:
            at += 1
            continue
        item = _ITEM.match(line)
        level = 0 if item is None else 2 if item[1] else 1
        end = at + 1 if item else _end(lines, at)
        said = [line[item.end() :]] if item else lines[at:end]
        is_torn = item is not None and end < len(lines) and _goes_on(lines[end])
        if is_torn or level > depth + 1 or not all(map(_is_usual, said)):
            return None
        found += _to_level(depth, level)
        found += _paragraph(said, at)
        depth = level
        at = end
    return [*found, *_to_level(depth, 0)]


def _end(lines: list[str], at: int) -> int:
    """Where the paragraph that begins at a line ends: at a blank line or an item."""
    end = at + 1
    while end < len(lines) and lines[end] and not _ITEM.match(lines[end]):
        end += 1
    return end


def _goes_on(line: str) -> bool:
    """Whether a line behind an item belongs to its paragraph."""
    return bool(line) and not _ITEM.match(line)


def _is_usual(line: str) -> bool:
    if "*" in line:
        line = _EMPHASIS.sub(r"\1", line)
    return bool(_PLAIN.fullmatch(_IN_WORD.sub("", line)))


def _to_level(depth: int, level: int) -> Iterator[Token]:
    """What closes and opens between a text in lists of one depth and one of another."""
    for _ in range(depth - level):
        yield _ITEM_CLOSE
        yield _LIST_CLOSE
    if level > depth:
        yield _LIST_OPEN
    elif level:
        yield _ITEM_CLOSE
    if level:
        yield Token("list_item_open")


def _paragraph(said: list[str], at: int) -> Iterator[Token]:
    where = (at, at + len(said))
    yield Token(_PARAGRAPH_OPEN, map=where)
    children = [child for line in said for child in (_SOFT_BREAK, *_inline(line))]
    yield Token("inline", "\n".join(said), where, tuple(children[1:]))
    yield Token(_PARAGRAPH_CLOSE)


def _inline(line: str) -> Iterator[Token]:
    if "*" not in line:
        yield Token("text", line)
        return
    for place, piece in enumerate(_EMPHASIS.split(line)):
        if place % 2:
            yield from (_EM_OPEN, Token("text", piece), _EM_CLOSE)
        elif piece:
            yield Token("text", piece)
