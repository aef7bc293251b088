"""The parser's complaint → a sentence for a specification writer, placed where to act.

The parser notices many slips a line or more too late and in its own terms. Each function below
knows one slip, looks for it in the text around the complaint, and answers with a fault or
``None``; the first answer counts. Both parsers of the library (C and pure Python) are served.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from specwriter.diagnostic import Fault, Place
from specwriter.source.source import LINE_BREAK

_KEY = re.compile(r"^(?P<indent>\s*)(?:- +)?(?P<key>[\w-]+)(?P<rest>.*)$")
_OPENING_QUOTE = re.compile(r"(?:^|[:,\[{-])\s*([\"'])")
_CLOSE = {"[": "]", "{": "}"}

_Answer = tuple[int, int, str, str] | None
"""Line and column from 0, what is wrong, what to do."""


@dataclass(frozen=True, slots=True)
class _Trouble:
    """Where the parser stopped, and what it was busy with (lines and columns from 0)."""

    lines: list[str]
    line: int
    column: int
    problem: str
    context: str
    opened: tuple[int, int] | None

    @property
    def here(self) -> str:
        """The text from the place of the complaint to the end of its line."""
        return self.lines[self.line][self.column :]

    @property
    def before(self) -> str:
        return self.lines[self.line][: self.column]

    def previous(self) -> int | None:
        """The nearest line above that is neither blank nor a comment."""
        above = range(self.line - 1, -1, -1)
        return next((n for n in above if self.lines[n].split("#")[0].strip()), None)


def syntax_fault(error: Any, text: str, file: str) -> Fault:
    """The fault behind an error of the YAML library."""
    trouble = _trouble(error, LINE_BREAK.split(text))
    line, column, says, todo = next(filter(None, (look(trouble) for look in _LOOKS)))
    return Fault(place=Place(file=file, line=line + 1, column=column + 1), says=says, todo=todo)


def _trouble(error: Any, lines: list[str]) -> _Trouble:
    problem, context = getattr(error, "problem_mark", None), getattr(error, "context_mark", None)
    line = min(problem.line, len(lines) - 1) if problem else 0
    column = min(problem.column, len(lines[line])) if problem else 0
    # At the end of the file, the last line with something in it is where to look.
    while line and not lines[line].strip():
        line -= 1
        column = len(lines[line])
    opened = (context.line, context.column) if context and context.line < len(lines) else None
    return _Trouble(
        lines,
        line,
        column,
        str(getattr(error, "problem", "") or ""),
        str(getattr(error, "context", "") or ""),
        opened,
    )


def _tab(t: _Trouble) -> _Answer:
    indented = [n for n in range(t.line + 1) if re.match(r" *\t[ \t]*[^\s#]", t.lines[n])]
    if not indented or "\t" not in t.lines[t.line]:
        return None
    first = indented[0]
    more = f" (in {len(indented)} lines up to line {indented[-1] + 1})" if indented[1:] else ""
    says = "this line is indented with a tab"
    return first, t.lines[first].index("\t"), says, f"use two spaces for each step{more}"


def _stray_tab(t: _Trouble) -> _Answer:
    if not t.here.startswith("\t"):
        return None
    return t.line, t.column, "a tab stands where a space is needed", "type a space"


def _open_quote(t: _Trouble) -> _Answer:
    """A quote whose partner is missing on its line runs on to the next quote in the file."""
    if "end of stream" in t.problem and "quoted" in t.context and t.opened:
        return *t.opened, "the quote that opens here is never closed", _close_quote(t, *t.opened)
    for number in range(t.line + 1):
        for match in _OPENING_QUOTE.finditer(t.lines[number]):
            at, quote = match.start(1), match[1]
            if quote in t.lines[number][at + 1 :] or "#" in t.lines[number][:at]:
                break
            closing = next((n for n in range(number + 1, t.line + 1) if quote in t.lines[n]), None)
            if closing is not None and closing >= t.line - 1:
                says = "the quote that opens here is not closed on its line"
                return number, at, says, _close_quote(t, number, at)
    return None


def _close_quote(t: _Trouble, line: int, column: int) -> str:
    return f"close it with {t.lines[line][column]} on the same line"


def _after_quote(t: _Trouble) -> _Answer:
    closed = re.search(r"([\"'])[^\"']*\1\s*$", t.before)
    if not closed or not t.here.strip() or t.here[0] in ":,]}":
        return None
    column = t.column - len(t.before) + len(t.before.rstrip())
    says = f"text follows the closing {closed[1]}"
    if closed[1] == "'" and column == t.column:
        return (
            t.line,
            column - 1,
            "the apostrophe ends the quoted text",
            ("put the whole text between double quotes"),
        )
    return t.line, t.column, says, "put the quotes around the whole text, or take them out"


def _escape(t: _Trouble) -> _Answer:
    if "escape" not in t.problem:
        return None
    says = "a backslash has a meaning of its own between double quotes"
    return t.line, t.column, says, "put the text between single quotes"


def _greater_than(t: _Trouble) -> _Answer:
    if "block scalar" not in t.context or not t.opened:
        return None
    line, column = t.opened
    rest = t.lines[line][column:].lstrip(">=| ").rstrip()
    sign = t.lines[line][column]
    todo = f"write 'at least {rest}'" if sign == ">" else "take it out, or put quotes around"
    return line, column, f"a value cannot begin with '{sign}'", todo


def _sign(t: _Trouble) -> _Answer:
    """Signs that mean something to the file format when a value begins with them."""
    starts_here = any(word in t.context for word in ("alias", "anchor", "tag"))
    line, column = t.opened if starts_here and t.opened else (t.line, t.column)
    sign = t.lines[line][column : column + 1]
    if not starts_here and (sign not in ("@", "`", "%") or "token" not in t.problem):
        return None
    text = t.lines[line][column:].strip()
    todo = f'put the text in quotes: "{text}"' if '"' not in text else "put the text in quotes"
    return line, column, f"a value cannot begin with '{sign}'", todo


def _directive(t: _Trouble) -> _Answer:
    line = next((n for n in range(t.line + 1) if t.lines[n].startswith("%")), None)
    if line is None or not ("directive" in t.context or "document" in t.problem):
        return None
    return line, 0, "a line that begins with '%' is not read", "take it out"


def _bracket(t: _Trouble) -> _Answer:
    if "flow" not in t.context or not t.opened:
        return None
    line, column = t.opened
    bracket = t.lines[line][column : column + 1]
    if bracket not in _CLOSE:
        return None
    close = _CLOSE[bracket]
    if _is_balanced(t, line, column):
        says = f"a ',' or the closing '{close}' is missing here"
        return t.line, t.column, says, "put a ',' between two entries"
    says = f"the '{bracket}' that opens here is never closed"
    return line, column, says, f"close it with '{close}'"


def _is_balanced(t: _Trouble, line: int, column: int) -> bool:
    """True when the bracket is closed before the next key at or left of its own line's key."""
    margin = _indent(t.lines[line])
    depth = 0
    for number in range(line, len(t.lines)):
        text = t.lines[number][column if number == line else 0 :]
        begins_entry = re.match(r"(- )?[\w-]+:( |$)|- ", text.lstrip())
        if number > line and begins_entry and _indent(text) <= margin:
            return False
        for character in text.split(" #")[0]:
            depth += (character in "[{") - (character in "]}")
            if depth == 0:
                return True
    return False


def _closing_bracket(t: _Trouble) -> _Answer:
    if t.here[:1] not in ("]", "}"):
        return None
    return t.line, t.column, f"the '{t.here[0]}' closes nothing", "take it out, or open it before"


def _dash_after_key(t: _Trouble) -> _Answer:
    if "sequence entries" not in t.problem:
        return None
    says = "'- ' begins an item of a list and cannot stand behind a key"
    return t.line, t.column, says, "put each item on a line of its own below the key"


def _line_above(t: _Trouble) -> _Answer:
    """A ':' that comes as a surprise: often the line above lacks its own."""
    if "simple key" in t.context and t.opened:
        return _no_colon(t.lines, t.opened[0])
    if "mapping values" not in t.problem:
        return None
    if dash := re.match(r"\s*-(?=[^\s-])", t.lines[t.line]):
        return t.line, dash.end() - 1, "there is no space behind '-'", "begin each item with '- '"
    if re.search(r":\s", t.before) or re.search(r"[\"']\s*$", t.before):
        says = "a second ':' stands in this line"
        return t.line, t.column, says, "put the value in quotes, or give each key its own line"
    above = t.previous()
    if above is None:
        return None
    return _no_colon(t.lines, above) or _too_deep(t, above)


def _no_colon(lines: list[str], line: int) -> _Answer:
    match = _KEY.match(lines[line])
    if match is None:
        return None
    key, rest = match["key"], match["rest"].rstrip()
    at = match.end("key")
    if re.match(r":\S", rest):
        says = f"there is no space behind '{key}:'"
        return line, at, says, f"write '{key}: {rest[1:].strip()}'"
    if re.match(r"\s*[=;]", rest):
        at += len(rest) - len(rest.lstrip())
        return line, at, f"'{lines[line][at]}' stands where ':' belongs", f"write '{key}: ...'"
    if not re.search(r":(\s|$)", rest):
        todo = f"write '{f'{key}: {rest.strip()}'.strip()}'"
        return line, at, f"there is no ':' behind '{key}'", todo
    return None


def _too_deep(t: _Trouble, above: int) -> _Answer:
    indent, margin = _indent(t.lines[t.line]), _indent(t.lines[above])
    if indent <= margin:
        return None
    says = f"this line is indented further than line {above + 1}, which has a value of its own"
    return t.line, indent, says, f"{_indented(margin)}, like line {above + 1}"


def _item(t: _Trouble) -> _Answer:
    """Lists and keys mixed in one block."""
    line = t.lines[t.line]
    if "block collection" in t.context:
        says = "this line stands among the items of a list but does not begin with '- '"
        return t.line, _indent(line), says, "begin it with '- ', or indent it like the key it is"
    if "block mapping" in t.context and re.match(r"\s*- ", line):
        above = t.previous()
        if above is not None and re.match(r"\s*{", t.lines[above]):
            says = "there is no '- ' before this item of a list"
            return above, _indent(t.lines[above]), says, "begin each item with '- '"
        says = "an item of a list stands among keys"
        return t.line, _indent(line), says, "put it below the key whose list it belongs to"
    return None


def _indentation(t: _Trouble) -> _Answer:
    indent = _indent(t.lines[t.line])
    if not ("block mapping" in t.context or "document start" in t.problem) or t.column > indent:
        return None
    above = t.previous()
    if above is not None and t.lines[above].startswith("..."):
        return above, 0, "'...' ends the file, yet more follows", "take the line out"
    is_item = above is None or re.match(r"\s*- ", t.lines[above])
    if above is not None and not is_item and (slip := _no_colon(t.lines, above)):
        return slip
    says = "the indentation of this line fits none of the lines above"
    if above is None:
        return t.line, indent, says, "line it up with the keys that it belongs to"
    column = _indent(t.lines[above])
    todo = f"{_indented(column)} if it belongs beside line {above + 1}"
    return t.line, indent, says, todo


def _otherwise(t: _Trouble) -> _Answer:
    says = "this line cannot be read from here on"
    todo = "check colons, quotes, brackets and indentation here and in the line above"
    return t.line, t.column, says, todo


def _indented(spaces: int) -> str:
    if spaces == 0:
        return "do not indent it"
    return f"indent it by {spaces} space{'s' if spaces > 1 else ''}"


def _indent(line: str) -> int:
    return len(line) - len(line.lstrip())


_LOOKS: tuple[Callable[[_Trouble], _Answer], ...] = (
    _tab,
    _stray_tab,
    _open_quote,
    _escape,
    _greater_than,
    _directive,
    _sign,
    _after_quote,
    _bracket,
    _closing_bracket,
    _dash_after_key,
    _line_above,
    _item,
    _indentation,
    _otherwise,
)
