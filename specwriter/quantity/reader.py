"""Reads one written value from left to right, as the grammar says."""

from __future__ import annotations

import re
from dataclasses import dataclass, field

from specwriter.quantity.fault import ValueFault
from specwriter.quantity.number import VULGAR, read_number, read_ratio, read_station
from specwriter.quantity.quantity import Amount, Form
from specwriter.quantity.spelling import find_unit, suggest_unit
from specwriter.quantity.unit import DIMENSIONS, PLAIN, UNITS, Unit

_AT_LEAST = re.compile(r" *(?:at +least\b|>=|≥)", re.IGNORECASE)
_AT_MOST = re.compile(r" *(?:at +most\b|<=|≤)", re.IGNORECASE)
_TO = re.compile(r" *-? *to\b", re.IGNORECASE)  # the hyphen of "10- to 12-in"
_PLUS_MINUS = re.compile(r" *(?:±|\+ */? *-|plus or minus\b)", re.IGNORECASE)
_DIGIT = rf"(?= *\.?[0-9{VULGAR}])"
_FIRST_PART = re.compile(rf" *(?:, *(?=\+))?([+-]){_DIGIT}")
_OTHER_PART = re.compile(rf" *[,;/]? *([+-]){_DIGIT}")
_COMMA = re.compile(r" *,")
_SIGN = re.compile(r"(-)? *(\$)?")
_NO_SIGN = re.compile(r"()(\$)?")
_SPACE = re.compile(r" *")
_WORD = r"""(?:[A-Za-z°%²³^"'()]|\.(?![0-9])|(?<=[A-Za-z^])[23](?![0-9/.])|/(?= ?[A-Za-z]))+"""
_UNIT = re.compile(rf" *(?:-(?=[A-Za-z]))?((?!to\b){_WORD}(?: +(?!to\b){_WORD}){{0,3}})")
_MONEY = UNITS["$"]


@dataclass(slots=True)
class Piece:
    """A number with the unit written behind it (``PLAIN`` if none), and where it stands."""

    amount: Amount
    start: int
    end: int

    def with_unit(self, unit: Unit) -> Amount:
        """The number in a unit that is written elsewhere."""
        own = self.amount
        return Amount(own.value, own.text, unit, own.step, own.is_fraction)


@dataclass(slots=True)
class Reader:
    """Reads a folded text; ``pieces`` holds its numbers in the order of ``Quantity.amounts``."""

    text: str
    dimension: str | None
    at: int = 0
    pieces: list[Piece] = field(default_factory=list)

    def read(self) -> tuple[Form, tuple[Amount, ...]]:
        """The form and the numbers; raises ``ValueFault``."""
        limit = self._limit()
        self._next()
        form = limit or self._rest()
        self._refuse_leftovers()
        return form, self._amounts()

    def _limit(self) -> Form | None:
        if self._take(_AT_LEAST):
            return "at_least"
        return "at_most" if self._take(_AT_MOST) else None

    def _rest(self) -> Form:
        """What follows the first number."""
        if self._take(_TO):
            self._next()
            return "range"
        if self._take(_PLUS_MINUS):
            self._next(signed=False)
            self.pieces.append(self.pieces[1])
            return "tolerance"
        if sign := self._take(_FIRST_PART):
            self._two_sided(sign)
            return "tolerance"
        form: Form = "value"
        while self._take(_COMMA):
            self._next()
            form = "list"
        return form

    def _two_sided(self, sign: re.Match[str]) -> None:
        """Plus and minus, in either order."""
        self._next(signed=False)
        other = self._take(_OTHER_PART)
        if other is None or other[1] == sign[1]:
            part = "an upper" if sign[1] == "+" else "a lower"
            start, end = sign.start(1), self.pieces[1].end
            todo = "write both parts, such as +1/16 in -0 in; a range is written with 'to'"
            raise ValueFault(f"the tolerance has {part} part only", start, end - start, todo)
        self._next(signed=False)
        if sign[1] == "-":
            self.pieces[1:] = reversed(self.pieces[1:])

    def _take(self, what: re.Pattern[str]) -> re.Match[str] | None:
        match = what.match(self.text, self.at)
        if match is not None:
            self.at = match.end()
        return match

    def _next(self, *, signed: bool = True) -> None:
        """Reads a number with the unit behind it, if there is one."""
        self._take(_SPACE)
        start = self.at
        special = read_station(self.text, start) or read_ratio(self.text, start)
        if special is not None:
            amount, self.at = special
        else:
            amount = self._number_and_unit(start, signed=signed)
        self.pieces.append(Piece(amount, start, self.at))

    def _number_and_unit(self, start: int, *, signed: bool) -> Amount:
        sign = self._take(_SIGN if signed else _NO_SIGN)
        minus, money = sign.groups() if sign else ("", "")
        self._take(_SPACE)
        found = read_number(self.text, self.at)
        if found is None:
            raise self._no_number(start)
        number, self.at = found
        written = self.text[start : self.at]
        unit = self._pay_unit() if money else self._unit()
        value = -number.value if minus else number.value
        return Amount(value, written, unit, number.step, number.is_fraction)

    def _no_number(self, start: int) -> ValueFault:
        rest, whole = self.text[start:].strip(), self.text.strip()
        if not rest:
            end = len(self.text.rstrip())
            return ValueFault("a number is missing", end, 1, self.expected())
        if not any(character.isdigit() for character in whole):
            at = self.text.index(whole)
            return ValueFault(f"'{whole}' has no number in it", at, len(whole), self.expected())
        if start == len(self.text) - len(self.text.lstrip()) and rest[0] in "+±":
            says = "a tolerance stands here without the value that it belongs to"
            return ValueFault(says, start, len(rest), "write the value in front of it")
        says = f"a number is missing before '{rest}'"
        return ValueFault(says, start, len(rest), self.expected())

    def _unit(self) -> Unit:
        match = _UNIT.match(self.text, self.at)
        if match is None:
            return PLAIN
        unit = self._longest(match, "")
        if unit is None:
            words = match[1].strip()
            near = suggest_unit(words, self.dimension)
            todo = f"did you mean '{near}'?" if near else self.expected()
            raise ValueFault(f"'{words}' is not a unit", match.start(1), len(words), todo)
        return unit

    def _pay_unit(self) -> Unit:
        match = _UNIT.match(self.text, self.at)
        if match is None or not re.match(r"/|per\b", match[1]):
            return _MONEY
        unit = self._longest(match, "$")
        if unit is None:
            says = f"'{match[1]}' is not a pay unit"
            todo = "write $/SY, $/m2 or $/ft"
            raise ValueFault(says, match.start(1), len(match[1]), todo)
        return unit

    def _longest(self, match: re.Match[str], front: str) -> Unit | None:
        """The unit of as many of the words as make one; the rest stays to be read."""
        words = match[1]
        while words:
            if unit := find_unit(front + words):
                self.at = match.start(1) + len(words)
                return unit
            words = words.rpartition(" ")[0].rstrip()
        return None

    def _refuse_leftovers(self) -> None:
        rest = self.text[self.at :].strip()
        if rest:
            at = self.text.index(rest, self.at)
            todo = f"write '{self.text[: self.at].strip()}' alone"
            raise ValueFault(f"'{rest}' is not understood here", at, len(rest), todo)

    def _amounts(self) -> tuple[Amount, ...]:
        """The numbers, each with its unit or with the one unit that the others have."""
        written = {piece.amount.unit for piece in self.pieces} - {PLAIN}
        if len(written) == 2 and _MONEY in written:
            written.discard(_MONEY)  # $4.50 to $5.00/SY
        if len(written) == 1:
            common = written.pop()
            return tuple(
                piece.with_unit(common) if piece.amount.unit in (PLAIN, _MONEY) else piece.amount
                for piece in self.pieces
            )
        self._refuse_bare(written)
        return tuple(piece.amount for piece in self.pieces)

    def _refuse_bare(self, written: set[Unit]) -> None:
        bare = next((piece for piece in self.pieces if piece.amount.unit is PLAIN), None)
        if bare and (written or self.dimension not in (None, "number")):
            words = self.text[bare.start : bare.end]
            says = f"'{words}' has no unit"
            raise ValueFault(says, bare.start, len(words), self.expected())

    def expected(self) -> str:
        """What is wanted here, with an example."""
        if self.dimension is None:
            return "write a number and its unit, such as 3/4 in"
        return f"write {DIMENSIONS[self.dimension]}"
