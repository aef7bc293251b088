"""The usual spelling of clause bodies, read straight into their tree.

Jinja reads every spelling of the language, but takes ten times as long, and every draft reads
every clause. What this does not know it leaves to Jinja: it never guesses.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator

from specwriter.assemble.template import (
    And,
    Body,
    Compared,
    Const,
    Expression,
    For,
    If,
    Items,
    Key,
    Name,
    Not,
    Or,
    Print,
    Reference,
    Statement,
    Text,
    Worded,
)

_INNER = r"""(?:[^"'{}%#\\]|"[^"\\]*"|'[^'\\]*')*"""
_TAG = re.compile(rf"\{{\{{({_INNER})\}}\}}|\{{%({_INNER})%\}}\n?")
_TOKEN = re.compile(
    r"""\s*(?:([A-Za-z_][A-Za-z0-9_]*)|("[^"]*"|'[^']*')|(==|!=|[.,|()\[\]]))""", re.ASCII
)
_SPACES = re.compile(r"\s+")
_UNREAD = re.compile(r"\{[{%#]|\r")
_COMPARES = ("==", "!=", "in")
_KEYWORDS = frozenset(("and", "or", "not", "in", "is", "if", "else", "elif", "for", "recursive"))
_CONSTANTS = {"none": None, "true": True, "false": False}
_CONSTANTS |= {"None": None, "True": True, "False": False}
_END = ""


class UnusualError(ValueError):
    """A spelling that is left to Jinja."""


def read(source: str) -> Body:
    """The tree of a body; raises ``UnusualError``."""
    return _Statements(list(_pieces(source))).whole()


def _pieces(source: str) -> Iterator[Statement | _Expressions]:
    """Text and printed values in their order, and the words of tags between them.

    Spaces before a tag that begins a line and the line's end after a tag are left out.
    """
    at, fresh = 0, True
    for found in _TAG.finditer(source):
        # The look one character further finds a brace that stands right before the tag.
        _refuse_unread(source, at, found.start() + 1)
        printed, said = found.groups()
        text = source[at : found.start()]
        if said is not None:
            text = _without_indent(text, fresh)
        if text:
            yield Text(text)
        yield _Expressions(said) if printed is None else Print(_Expressions(printed).whole())
        at, fresh = found.end(), found[0].endswith("\n")
    _refuse_unread(source, at, len(source))
    if at < len(source):
        yield Text(source[at:])


def _refuse_unread(source: str, start: int, end: int) -> None:
    if _UNREAD.search(source, start, end):
        raise UnusualError


def _without_indent(text: str, fresh: bool) -> str:
    start = text.rfind("\n") + 1
    return text[:start] if (start or fresh) and _SPACES.fullmatch(text, start) else text


def _tokens(text: str) -> list[str]:
    tokens: list[str] = []
    at, end = 0, len(text.rstrip())
    while at < end:
        found = _TOKEN.match(text, at)
        if found is None:
            raise UnusualError
        tokens.append(found[found.lastindex or 0])
        at = found.end()
    tokens.append(_END)
    return tokens


class _Expressions:
    """Reads words and expressions, one after another."""

    def __init__(self, text: str) -> None:
        self.tokens = _tokens(text)
        self.at = 0

    @property
    def next(self) -> str:
        return self.tokens[self.at]

    def take(self) -> str:
        """The next token; there must be one."""
        token = self.next
        if token == _END:
            raise UnusualError
        self.at += 1
        return token

    def skip(self, token: str) -> bool:
        """Whether the token stands next; if so, go past it."""
        found = self.next == token
        self.at += found
        return found

    def expect(self, token: str) -> None:
        if not self.skip(token):
            raise UnusualError

    def whole(self) -> Expression:
        value = self.either()
        self.expect(_END)
        return value

    def either(self) -> Expression:
        left = self.both()
        while self.skip("or"):
            left = Or(left, self.both())
        return left

    def both(self) -> Expression:
        left = self.opposite()
        while self.skip("and"):
            left = And(left, self.opposite())
        return left

    def opposite(self) -> Expression:
        return Not(self.opposite()) if self.skip("not") else self.compared()

    def compared(self) -> Expression:
        first = self.worded()
        links = []
        while self.next in _COMPARES:
            links.append((self.take(), self.worded()))
        return Compared(first, tuple(links)) if links else first

    def worded(self) -> Expression:
        value = self.value()
        while self.skip("|"):
            value = Worded(value, self.name(), self.bound())
        return value

    def bound(self) -> tuple[str, ...]:
        return (self.string(),) if self.next == "(" else ()

    def string(self) -> str:
        """A word in quotes and parentheses."""
        self.expect("(")
        word = self.take()
        self.expect(")")
        if word[:1] not in ("'", '"'):
            raise UnusualError
        return word[1:-1]

    def value(self) -> Expression:
        if self.skip("("):
            value = self.either()
            self.expect(")")
            return value
        if self.next[:1] in ("'", '"'):
            return Const(self.take()[1:-1])
        if self.next in _CONSTANTS:
            return Const(_CONSTANTS[self.take()])
        return self.items() if self.skip("[") else self.named()

    def items(self) -> Items:
        items = [self.value()]
        while self.skip(","):
            items.append(self.value())
        self.expect("]")
        return Items(tuple(items))

    def named(self) -> Expression:
        name = self.name()
        if self.next == "(":
            return self.reference(name)
        value: Expression = Name(name)
        while self.skip("."):
            value = Key(value, self.key())
        return value

    def reference(self, name: str) -> Reference:
        if name not in ("ref", "table"):
            raise UnusualError
        return Reference(self.string())

    def name(self) -> str:
        name = self.key()
        if name in _KEYWORDS or name in _CONSTANTS:
            raise UnusualError
        return name

    def key(self) -> str:
        name = self.take()
        if not name.isidentifier():
            raise UnusualError
        return name


class _Statements:
    """Reads the pieces of a body as far as the tag that ends it."""

    def __init__(self, pieces: list[Statement | _Expressions]) -> None:
        self.pieces = pieces
        self.at = 0
        self.readers: dict[str, Callable[[_Expressions], Statement]] = {
            "if": self.choice,
            "for": self.loop,
        }

    def whole(self) -> Body:
        body, end = self.body()
        if end is not None:
            raise UnusualError
        return body

    def body(self) -> tuple[Body, _Expressions | None]:
        """Statements, and the tag after them that begins none."""
        made: list[Statement] = []
        while self.at < len(self.pieces):
            piece = self.pieces[self.at]
            self.at += 1
            if not isinstance(piece, _Expressions):
                made.append(piece)
                continue
            reader = self.readers.get(piece.next)
            if reader is None:
                return tuple(made), piece
            piece.take()
            made.append(reader(piece))
        return tuple(made), None

    def choice(self, words: _Expressions) -> If:
        cases = []
        while True:
            test = words.whole()
            body, tag = self.body()
            cases.append((test, body))
            if tag is None or not tag.skip("elif"):
                return If(tuple(cases), self.otherwise(tag, "endif"))
            words = tag

    def loop(self, words: _Expressions) -> For:
        name = words.name()
        words.expect("in")
        over = words.either()
        test = words.either() if words.skip("if") else None
        words.expect(_END)
        body, tag = self.body()
        return For(name, over, test, body, self.otherwise(tag, "endfor"))

    def otherwise(self, tag: _Expressions | None, end: str) -> Body:
        """The body after ``else``, if there is one, as far as the end."""
        body: Body = ()
        if tag is not None and tag.skip("else"):
            tag.expect(_END)
            body, tag = self.body()
        if tag is None:
            raise UnusualError
        tag.expect(end)
        tag.expect(_END)
        return body
