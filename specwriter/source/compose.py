"""Text → data with the mark of every key and value; strict about what a job file may hold.

Built from parser events instead of the library's own constructor, because that one drops
places, lets the last of two equal keys win in silence, and turns ``12:30``, ``no``, ``1e3``,
``010`` and ``2027-02-01`` into something that was not written.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from decimal import Decimal
from typing import Any

import yaml
from yaml import events as ev

from specwriter.diagnostic import Fault, Place
from specwriter.source.source import Mark
from specwriter.source.syntax import syntax_fault

DEEPEST = 30
MOST_VALUES = 50_000
_LONGEST_NUMBER = 40  # Python refuses to read whole numbers of thousands of digits

_WHOLE = re.compile(r"-?(?:0|[1-9][0-9]*)")
_DECIMAL = re.compile(r"-?(?:0|[1-9][0-9]*)\.[0-9]+")
_WORDS: dict[str, bool | None] = {
    "": None,
    "~": None,
    "null": None,
    "true": True,
    "false": False,
}
_LOADER: Any = getattr(yaml, "CSafeLoader", yaml.SafeLoader)


class _StopError(Exception):
    """Reading cannot go on; the last fault says why."""


@dataclass(slots=True)
class _Frame:
    """A list or block of keys that is being read."""

    value: Any
    path: str
    start: Mark
    skipped: bool
    key: str | None = None
    """Key that waits for its value."""
    skip_next: bool = False
    """The value that comes belongs to a key that was refused."""
    lines: dict[str, int] = field(default_factory=dict)
    """Line of each key seen."""


@dataclass(slots=True)
class Composer:
    """Reads one text; afterwards its attributes hold what was found."""

    file: str
    text: str
    data: Any = None
    values: dict[str, Mark] = field(default_factory=dict)
    keys: dict[str, Mark] = field(default_factory=dict)
    faults: list[Fault] = field(default_factory=list)
    refused: set[str] = field(default_factory=set)
    """Paths whose value was refused: what is said about them later would only follow on."""
    complete: bool = False
    """True when reading reached the end of the text."""
    empty: bool = True
    _stack: list[_Frame] = field(default_factory=list)
    _count: int = 0
    _documents: int = 0

    def read(self, loader: Any = None) -> Composer:
        """Read the whole text; faults are kept, none is raised."""
        try:
            for event in yaml.parse(self.text, Loader=loader or _LOADER):
                self._take(event)
            self.complete = True
        except _StopError:
            pass
        except RecursionError:  # the parser in pure Python, on very deep brackets
            self.faults.append(self._fault(Mark(1, 1), *_TOO_DEEP))
        except yaml.YAMLError as error:
            self.faults.append(syntax_fault(error, self.text, self.file))
        return self

    def _take(self, event: Any) -> None:
        if isinstance(event, ev.DocumentStartEvent):
            self._document(event)
        elif isinstance(event, ev.AliasEvent):
            self._alias(event)
        elif isinstance(event, ev.ScalarEvent):
            self._refuse_extras(event)
            self._scalar(event)
        elif isinstance(event, ev.CollectionStartEvent):
            self._refuse_extras(event)
            self._open(event)
        elif isinstance(event, ev.CollectionEndEvent):
            self._stack.pop()

    def _document(self, event: Any) -> None:
        self._documents += 1
        mark = _mark(event)
        if self._documents > 1:
            self._say(mark, "a second document begins here", "keep one job in one file")
            raise _StopError
        if event.version or event.tags:
            self._say(mark, "a line that begins with '%' is not read", "take it out")

    def _alias(self, event: Any) -> None:
        mark = _mark(event)
        top = self._stack[-1] if self._stack else None
        if top is None or not top.skip_next:
            says = f"'*{event.anchor}' refers to a value elsewhere, which a job file does not do"
            self._say(mark, says, "write the value out; a text that begins with '*' needs quotes")
        if self._awaits_key():
            self._stack[-1].skip_next = True
        else:
            path = self._attach(None, mark, mark)
            self.refused.add(path)

    def _refuse_extras(self, event: Any) -> None:
        if event.anchor:
            says = f"'&{event.anchor}' names a value, which a job file does not do"
            self._say(_mark(event), says, "take it out; a text that begins with '&' needs quotes")
        if event.tag:
            says = "a value cannot begin with '!'"
            self._say(_mark(event), says, "take the '!' and its word out, or put quotes around")

    def _scalar(self, event: Any) -> None:
        mark = _mark(event, self.text)
        if self._awaits_key():
            self._key(event.value, mark, plain=not event.style)
            return
        here = self._stack[-1] if self._stack else None
        blank = not event.value and not event.style
        key_mark = self.keys.get(_join(here.path, here.key)) if here and here.key else None
        self._attach(_typed(event), key_mark if blank and key_mark else mark, mark)
        self.empty = self.empty and blank and here is None

    def _key(self, key: str, mark: Mark, plain: bool) -> None:
        frame = self._stack[-1]
        if plain and key == "<<":
            self._say(
                mark, "'<<' merges other keys in, which a job file does not do", "write them out"
            )
            frame.skip_next = True
        elif key in frame.lines:
            says = f"'{key}' stands twice here; the first is in line {frame.lines[key]}"
            self._say(mark, says, "keep one of the two")
            frame.skip_next = True
        else:
            frame.lines[key] = mark.line
            frame.key = key
            if not frame.skipped:
                self.keys[_join(frame.path, key)] = mark

    def _open(self, event: Any) -> None:
        mark = _mark(event, self.text)
        if len(self._stack) >= DEEPEST:
            self.faults.append(self._fault(mark, *_TOO_DEEP))
            raise _StopError
        value: Any = {} if isinstance(event, ev.MappingStartEvent) else []
        self.empty = False
        if self._awaits_key():
            self._say(mark, "a key must be a plain word", "write the key as one word before ':'")
            self._stack[-1].skip_next = True
            self._stack.append(_Frame(value, "", mark, skipped=True))
            return
        skipped = bool(self._stack) and (self._stack[-1].skipped or self._stack[-1].skip_next)
        owner_key = self.keys.get(self._next_path()) if self._stack else None
        shown = mark if event.flow_style or owner_key is None else owner_key
        path = self._attach(value, shown, mark)
        self._stack.append(_Frame(value, path, mark, skipped))

    def _awaits_key(self) -> bool:
        if not self._stack:
            return False
        top = self._stack[-1]
        return isinstance(top.value, dict) and top.key is None and not top.skip_next

    def _next_path(self) -> str:
        top = self._stack[-1]
        if isinstance(top.value, list):
            return _join(top.path, str(len(top.value)))
        return _join(top.path, top.key or "")

    def _attach(self, value: Any, mark: Mark, item: Mark) -> str:
        """Put a value where it belongs and note its mark; returns its path."""
        self._count += 1
        if self._count > MOST_VALUES:
            says = f"this file holds more than {MOST_VALUES:,} values"
            self._say(mark, says, "check that it is the right file")
            raise _StopError
        if not self._stack:
            self.data = value
            self.values[""] = self.keys[""] = mark
            return ""
        top, path = self._stack[-1], self._next_path()
        if isinstance(top.value, list):
            top.value.append(value)
            if not top.skipped:
                self.keys[path] = item
        elif top.skip_next:
            top.skip_next = False
            return path
        else:
            top.value[top.key] = value
            top.key = None
        if not top.skipped:
            self.values[path] = mark
        return path

    def _say(self, mark: Mark, says: str, todo: str) -> None:
        self.faults.append(self._fault(mark, says, todo))

    def _fault(self, mark: Mark, says: str, todo: str) -> Fault:
        place = Place(file=self.file, line=mark.line, column=mark.column)
        return Fault(place=place, says=says, todo=todo, width=mark.width)


_TOO_DEEP = (
    f"blocks and brackets are nested more than {DEEPEST} deep here",
    "check the indentation and the brackets",
)


def _typed(event: Any) -> Any:
    """The value of a scalar: null, true, false, a whole or decimal number, or else its text."""
    text: str = event.value
    if event.style or not event.implicit[0]:
        return text
    if text in _WORDS:
        return _WORDS[text]
    if len(text) <= _LONGEST_NUMBER and _WHOLE.fullmatch(text):
        return int(text)
    if len(text) <= _LONGEST_NUMBER and _DECIMAL.fullmatch(text):
        return Decimal(text)
    return text


def _mark(event: Any, text: str = "") -> Mark:
    start, end = event.start_mark, event.end_mark
    one_line = start.line == end.line
    width = max(end.column - start.column, 1) if one_line else 1
    inside = None
    if one_line and isinstance(event, ev.ScalarEvent):
        # Escapes shift columns, so a quoted text has them only when it stands letter by letter.
        quote = 1 if event.style else 0
        if text[start.index + quote : start.index + quote + len(event.value)] == event.value:
            inside = quote
    return Mark(start.line + 1, start.column + 1, width, inside)


def _join(path: str, key: str) -> str:
    return f"{path}.{key}" if path else key
