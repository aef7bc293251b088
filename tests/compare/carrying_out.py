"""Carries out the instructions of a change memo on the old document, as a clerk would.

Nothing is known of the comparison but the sentences of the memo and what they give. Names are
those of the old document, as the memo says, so each place is found before anything is changed.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field

from specwriter.compare.instructions import Instruction
from specwriter.reading import Block, Paragraph, Table, Text

_CAPTION = re.compile(r"^(?:Table|Figure)\s+\S+?(?=[.:]?\s|$)")
_NUMBER = re.compile(r"(?<![\w./(-])\d+(?:\.\d+)*(?![\w/-]|\.\d)")
_UNITS = re.compile(r"\s?(?:in|mm|ft|m|km|mi|percent|lb|kg|SY|mph|dB|to|±|h|days?)\b")
_GIVEN = "\ue000{}\ue001"
_KEPT = re.compile("\ue000(.*?)\ue001", re.DOTALL)
_KIND = re.compile(r"\b(Table|Figure)s?\s+(?:[\d.]+(?:,? and |, | to ))*$")
_SEE = re.compile(r"\b(?:[Ss]ee|as) $")
_RENUMBER = re.compile(r"Renumber (.*?)\.( References to these numbers follow\.)?")
_ADD = re.compile(r"(?:After (.*), add|At the beginning, add) the clause (.*):")
_MOVE_CLAUSE = re.compile(r"Move (.*) to (?:follow (.*)|the beginning); its number becomes .*\.")
_MOVE_TEXT = re.compile(
    r'Move the text "(.*)" to (?:the beginning of )?(.*?)'
    r'(?: to follow ((?:the row )?".*"|[Tt]able .*))?\.'
)
_ROWS = re.compile(r'(.*?), add the following rows? (?:after the row "(.*)"|as the first):')
_ITEM = re.compile(
    r"item (\S+)(?: of (?!list )(\S+))?(?: of list (\d+))?(?: (?:under|after) (.*))?"
)
_EDIT = re.compile(r'delete "(.*?)"(?: and substitute "(.*?)")?(?=; delete "|\.$)', re.DOTALL)


@dataclass(eq=False)
class Line:
    """A paragraph, or a table of rows.

    ``label`` is the number that the office program counts, ``depth`` the level of its list.
    """

    text: str = ""
    label: str = ""
    depth: int = 0
    rows: list[list[str]] | None = None

    @property
    def caption(self) -> str:
        """The name of the table or figure that it is the caption of."""
        found = _CAPTION.match(self.text)
        return found[0] if found else ""

    @property
    def is_plain(self) -> bool:
        """A paragraph that is counted: no item, no caption."""
        return self.rows is None and not self.label and not self.caption


@dataclass(eq=False)
class Clause:
    """A heading, its number and its words, and what stands under it."""

    label: str
    words: str
    lines: list[Line] = field(default_factory=list)

    @property
    def title(self) -> str:
        """How the memo names it."""
        return " ".join(filter(None, (self.label, self.words)))


_Target = tuple[Callable[[], str], Callable[[str], None]]
"""How to read a text and how to write it."""


class Copy:
    """The old document on the clerk's desk."""

    def __init__(self, old: Text) -> None:
        self.clauses = clauses_of(old)
        self._numbers: dict[str, str] = {}
        self._steps: list[Callable[[], None]] = []
        self._last: dict[int, Line] = {}
        self._last_clauses: dict[str | None, Clause] = {}
        self._added: list[Clause] = []
        self._references = False

    def carry_out(self, memo: Sequence[Instruction]) -> list[Clause]:
        """The document after all instructions."""
        for each in memo:
            self._instruct(each)
        for step in self._steps:
            step()
        for clause in self.clauses:
            if clause not in self._added:
                clause.label = self._follow(clause.label)
                clause.words = self._follow(clause.words)
            for line in clause.lines:
                line.text = self._follow(line.text)
                line.rows = line.rows and [[self._follow(cell) for cell in r] for r in line.rows]
        return self.clauses

    def _instruct(self, memo: Instruction) -> None:
        says = memo.says
        if found := _RENUMBER.fullmatch(says):
            self._renumber(found[1])
            self._references = bool(found[2])
        elif found := re.fullmatch(r"Delete (.*) with all its text\.", says):
            clause = self._clause(found[1])
            self._steps.append(lambda: self.clauses.remove(clause))
        elif found := _ADD.fullmatch(says):
            self._add_clause(found[1], found[2], memo.given)
        elif found := _MOVE_CLAUSE.fullmatch(says):
            self._move_clause(found[1], found[2])
        elif found := _MOVE_TEXT.fullmatch(says):
            self._move_text(*found.groups())
        else:
            clause, rest = self._within(says)
            self._in_clause(clause, rest, memo)

    def _within(self, says: str) -> tuple[Clause, str]:
        assert says.startswith("In "), says
        inside = [c for c in self.clauses if says.startswith(f"In {c.title}, ")]
        clause = max(inside, key=lambda c: len(c.title))
        return clause, says[len(f"In {clause.title}, ") :]

    def _clause(self, title: str) -> Clause:
        """A clause of the old document, or one that the memo adds."""
        (found,) = (each for each in (*self.clauses, *self._added) if each.title == title)
        return found

    def _renumber(self, pairs: str) -> None:
        for pair in pairs.split(", "):
            old, new = pair.split(" as ")
            (first, *last), (begins, *_) = old.split(" to "), new.split(" to ")
            for step in range(_tail(last[0]) - _tail(first) + 1 if last else 1):
                self._numbers[_plus(first, step)] = _plus(begins, step)

    def _follow(self, text: str) -> str:
        """Numbers of clauses and tables that were renumbered, outside what the memo gave."""
        parts = _KEPT.split(text)
        made = [part if n % 2 else self._renumbered(part) for n, part in enumerate(parts)]
        return "".join(made)

    def _renumbered(self, text: str) -> str:
        """A number at the beginning is that of a heading; others stand for it where it is named."""

        def new(found: re.Match[str]) -> str:
            before, name = text[: found.start()], found[0]
            kind = _KIND.search(before)
            named = f"{kind[1]} {name}" if kind else name
            if not self._references and (before if not kind else kind.start()):
                return name
            if not kind and before and ("." not in name or _UNITS.match(text, found.end())):
                named = named if _SEE.search(before) else ""
            return self._numbers.get(named, name).split(" ")[-1]

        return _NUMBER.sub(new, text)

    def _add_clause(self, after: str | None, title: str, given: Sequence[str]) -> None:
        made = Clause("", title, [_line(each) for each in given])
        self._insert_clause(made, after)
        self._added.append(made)

    def _insert_clause(self, made: Clause, after: str | None) -> None:
        before = self._last_clause(after)

        def step() -> None:
            at = self.clauses.index(before) + 1 if before else 0
            self.clauses.insert(at, made)

        self._steps.append(step)
        self._last_clauses[after] = made

    def _last_clause(self, after: str | None) -> Clause | None:
        if after in self._last_clauses:
            return self._last_clauses[after]
        return self._clause(after) if after else None

    def _move_clause(self, title: str, after: str | None) -> None:
        clause = self._clause(title)
        self._steps.append(lambda: self.clauses.remove(clause))
        self._insert_clause(clause, after)

    def _move_text(self, text: str, title: str, after: str | None) -> None:
        clause = self._clause(title)
        if after and after.startswith("the row "):
            table, row = self._row_anywhere(clause, after.removeprefix("the row ").strip('"'))
            gone = next(each for each in table if " | ".join(each) == text)
            self._steps.append(lambda: table.remove(gone))
            self._steps.append(lambda: table.insert(table.index(row) + 1, gone))
            return
        home, line = next((c, each) for c in self.clauses for each in c.lines if each.text == text)
        self._steps.append(lambda: home.lines.remove(line))
        self._put(clause, after.strip('"') if after else "", [line])

    def _row_anywhere(self, clause: Clause, named: str) -> tuple[list[list[str]], list[str]]:
        for line in clause.lines:
            for row in line.rows or ():
                if _names_row(named, row):
                    assert line.rows is not None
                    return line.rows, row
        raise AssertionError(f"no row {named}")

    def _put(self, clause: Clause, after: str, made: list[Line]) -> None:
        last = self._block(clause, after) if after else None
        key = id(last or clause)
        before = self._last.get(key, last)
        self._last[key] = made[-1]

        def step() -> None:
            at = clause.lines.index(before) + 1 if before else 0
            clause.lines[at:at] = made

        self._steps.append(step)

    def _block(self, clause: Clause, named: str) -> Line:
        """The paragraph that begins so, or the table of that name."""
        named = named.strip('"')
        if found := [each for each in clause.lines if _quoted(each.text) == named]:
            return found[0]
        return self._place(clause, named)

    def _place(self, clause: Clause, place: str) -> Line:
        """The line that a place in words names."""
        if found := re.fullmatch(r"paragraph (\d+)", place):
            return [x for x in clause.lines if x.is_plain][int(found[1]) - 1]
        if found := re.fullmatch(r"table (\d+)", place):
            return [x for x in clause.lines if x.rows is not None][int(found[1]) - 1]
        if found := re.fullmatch(r"the caption of (.*)", place):
            return next(x for x in clause.lines if x.caption == found[1])
        if found := _ITEM.fullmatch(place):
            return self._item(clause, *found.groups())
        at = next(n for n, x in enumerate(clause.lines) if x.caption == place)
        return next(x for x in clause.lines[at:] if x.rows is not None)

    def _item(
        self, clause: Clause, label: str, of: str | None, nth: str | None, lead: str | None
    ) -> Line:
        lines = clause.lines
        if lead:
            lines = lines[lines.index(self._block(clause, lead)) + 1 :]
        lines = _lists(lines)[int(nth or 1) - 1]
        if of:
            lines = lines[next(n for n, x in enumerate(lines) if x.label == of) + 1 :]
        return next(x for x in lines if x.label == label)

    def _in_clause(self, clause: Clause, rest: str, memo: Instruction) -> None:
        given = list(memo.given)
        if found := re.fullmatch(r"add the following (?:after (.*)|at its beginning):", rest):
            made = [Line(rows=_rows(given))] if memo.is_table else [_line(each) for each in given]
            self._put(clause, found[1] or "", made)
        elif found := re.fullmatch(r"delete (.*) and substitute the following table:", rest):
            line = self._place(clause, found[1])
            self._steps.append(lambda: setattr(line, "rows", _rows(given)))
        elif found := re.fullmatch(r"delete (.*) with all its rows\.", rest):
            self._gone(clause, self._place(clause, found[1]))
        elif found := re.fullmatch(r'delete (.*?), which reads "(.*)"\.', rest, re.DOTALL):
            line = self._place(clause, found[1])
            assert line.text == found[2]
            self._gone(clause, line)
        elif found := re.fullmatch(r'delete the figure that is described so: "(.*)"\.', rest):
            self._gone(clause, next(x for x in clause.lines if found[1] in x.text))
        elif found := re.fullmatch(r'(.*?), delete the row "(.*)"\.', rest):
            rows = self._place(clause, found[1]).rows or []
            row = next(each for each in rows if _names_row(found[2], each))
            self._steps.append(lambda: rows.remove(row))
        elif found := _ROWS.fullmatch(rest):
            self._add_rows(self._place(clause, found[1]), found[2], given)
        elif not re.search(r', set ".*" [^"]*\.$', rest):
            self._rewrite(clause, rest, given)

    def _gone(self, clause: Clause, line: Line) -> None:
        self._steps.append(lambda: clause.lines.remove(line))

    def _add_rows(self, line: Line, after: str | None, given: list[str]) -> None:
        rows = line.rows
        assert rows is not None
        before = next(each for each in rows if _names_row(after, each)) if after else None

        def step() -> None:
            at = rows.index(before) + 1 if before is not None else 0
            rows[at:at] = _rows(given)

        self._steps.append(step)

    def _rewrite(self, clause: Clause, rest: str, given: list[str]) -> None:
        found = re.search(r", delete (?:the text and|the figure and|\")", rest)
        assert found, rest
        place, order = rest[: found.start()], rest[found.start() + 2 :]
        get, put = self._target(clause, place)
        if given:
            whole = f"[figure: {given[0]}]" if "figure" in order[:20] else given[0]
            self._steps.append(lambda: put(_GIVEN.format(whole)))
            return
        edits = _EDIT.findall(order)
        assert edits, order

        def step() -> None:
            text = get()
            for delete, substitute in edits:
                bare = text.replace("\ue000", "").replace("\ue001", "")
                text = text if text.count(delete) == 1 else bare
                assert text.count(delete) == 1, (delete, text)
                text = text.replace(delete, _GIVEN.format(substitute))
            put(text)

        self._steps.append(step)

    def _target(
        self, clause: Clause, place: str
    ) -> tuple[Callable[[], str], Callable[[str], None]]:
        if place == "the heading":
            return lambda: clause.words, lambda text: setattr(clause, "words", text)
        if found := re.fullmatch(r'(.*?), row "(.*)", column "(.*)"', place):
            rows = self._place(clause, found[1]).rows or []
            row = next(each for each in rows if _names_row(found[2], each))
            column = rows[0].index(found[3])
            return lambda: row[column], lambda text: row.__setitem__(column, text)
        line = self._place(clause, place)
        return lambda: line.text, lambda text: setattr(line, "text", text)


def _lists(lines: Sequence[Line]) -> list[list[Line]]:
    """The lists among some lines; a number that comes again begins another."""
    found: list[list[Line]] = [[]]
    for line in lines:
        if not line.depth and line.label in {x.label for x in found[-1] if not x.depth}:
            found.append([])
        if line.label:
            found[-1].append(line)
    return found


def clauses_of(text: Text) -> list[Clause]:
    """The document as its clauses, without the front sheet, and what stands beside it."""
    found = [Clause("", "the opening")]
    for block in text.blocks:
        if isinstance(block, Paragraph) and block.style.startswith("Front"):
            continue
        if isinstance(block, Paragraph) and block.heading:
            found.append(Clause(block.label, block.text.strip()))
        else:
            found[-1].lines.append(_of(block))
    margins = (
        Clause("", f"the {margin.name.lower()}", [_of(each) for each in margin.blocks])
        for margin in text.margins
    )
    return [*found, *margins]


def _of(block: Block) -> Line:
    if isinstance(block, Table):
        return Line(rows=[[cell.shown for cell in row.cells] for row in block.rows])
    depth = block.list[1] if block.list else 0
    return Line(text=block.shown, label=block.label, depth=depth)


def _line(text: str) -> Line:
    return Line(text=_GIVEN.format(text))


def _rows(given: Sequence[str]) -> list[list[str]]:
    return [[_GIVEN.format(cell) for cell in line.split(" | ")] for line in given]


def _names_row(named: str, row: Sequence[str]) -> bool:
    filled = [cell.strip() for cell in row if cell.strip()]
    names = [" | ".join(filled[:n]) for n in range(1, len(filled) + 1)]
    return any(named in (name, _quoted(name)) for name in names)


def _quoted(text: str) -> str:
    flat = " ".join(text.split())
    return flat if len(flat) <= 60 else flat[:59].rstrip() + "…"


def _tail(name: str) -> int:
    return int(re.findall(r"\d+", name)[-1])


def _plus(name: str, step: int) -> str:
    return re.sub(r"\d+$", lambda last: str(int(last[0]) + step), name) if step else name
