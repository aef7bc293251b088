"""Numbers as they are written: whole, decimal, fraction, mixed, station and ratio."""

from __future__ import annotations

import re
import unicodedata
from fractions import Fraction

from specwriter.quantity.fault import ValueFault
from specwriter.quantity.quantity import Amount
from specwriter.quantity.unit import KILOMETRE_STATION, PLAIN, RATIO, STATION

_LONGEST_NUMBER = 20
VULGAR = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞⅐⅑⅒"
_NUMBER = re.compile(
    rf"(?:(?P<whole>[0-9]+)(?:-|\ +|(?=[{VULGAR}])))?"
    rf"(?P<part>(?P<top>[0-9]+)/(?P<bottom>[0-9]+)|[{VULGAR}])"
    r"|(?P<decimal>[1-9][0-9]{0,2}(?:,[0-9]{3})+(?![0-9])(?:\.[0-9]+)?|[0-9]+(?:\.[0-9]+)?|\.[0-9]+)"
)
_COMMAS = re.compile(r"[0-9]+(?:,[0-9]+)+(?:\.[0-9]+)?")
_STATION = re.compile(
    r"(?:sta(?:tion|\.)? *)?(?P<text>([0-9]{1,6})\+([0-9]{2,3})(?:\.([0-9]{1,6}))?)"
    r"(?= *(?:$|,|to\b))",
    re.IGNORECASE,
)
_RATIO = re.compile(r"1 *: *([0-9]{1,9}(?:\.[0-9]{1,9})?)(?![0-9.:])")


def read_number(text: str, at: int) -> tuple[Amount, int] | None:
    """The number that begins at ``at``, without a unit, and where it ends; ``None`` if none does.

    Raises ``ValueFault`` for a number that is written wrongly.
    """
    match = _NUMBER.match(text, at)
    if match is None:
        return None
    _refuse_commas(text, at, match)
    if len(match[0]) > _LONGEST_NUMBER:
        says = f"'{match[0]}' is longer than any measured number"
        raise ValueFault(says, at, len(match[0]), "write fewer digits")
    if decimal := match["decimal"]:
        value = Fraction(decimal.replace(",", ""))
        return Amount(value, match[0], PLAIN, _decimal_step(decimal)), match.end()
    part = _part(match)
    whole = _whole(match, part)
    return Amount(whole + part, match[0], PLAIN, Fraction(1, part.denominator), True), match.end()


def _refuse_commas(text: str, at: int, match: re.Match[str]) -> None:
    commas = _COMMAS.match(text, at)
    if commas is None or commas.end() <= match.end():
        return
    one = commas[0].count(",") == 1
    plain = commas[0].replace(",", "." if one else "")
    todo = f"write {plain}, or a space behind the comma of a list"
    raise ValueFault(f"'{commas[0]}' has a comma in it", at, len(commas[0]), todo)


def _part(match: re.Match[str]) -> Fraction:
    """The fraction of a number, with its own bottom: 2/16 stays in sixteenths for the step."""
    if match["bottom"] is None:
        return Fraction(unicodedata.normalize("NFKC", match["part"]).replace("⁄", "/"))
    if int(match["bottom"]) == 0:
        says = "a fraction cannot have 0 below the line"
        raise ValueFault(says, match.start("part"), len(match["part"]), "write it anew")
    return Fraction(int(match["top"]), int(match["bottom"]))


def _whole(match: re.Match[str], part: Fraction) -> int:
    """The whole number in front of a fraction; 0-1/2 and 1-9/8 may be meant otherwise."""
    if match["whole"] is None:
        return 0
    whole = int(match["whole"])
    if whole == 0:
        says = f"'{match[0]}' may mean a number or a range"
        todo = f"write '{match['part']}', or '0 to {match['part']}'"
        raise ValueFault(says, match.start(), len(match[0]), todo)
    if part >= 1:
        says = f"'{match['part']}' behind a whole number is not below 1"
        todo = "write a mixed number, such as 1-1/2, or a range with 'to'"
        raise ValueFault(says, match.start("part"), len(match["part"]), todo)
    return whole


def _decimal_step(text: str) -> Fraction:
    """One unit in the last written place; trailing zeros of 1,000 and more do not count."""
    digits = text.replace(",", "")
    if "." in digits:
        return Fraction(1, 10 ** (len(digits) - digits.index(".") - 1))
    zeros = len(digits) - len(digits.rstrip("0"))
    return Fraction(10**zeros) if int(digits) >= 1000 else Fraction(1)


def read_station(text: str, at: int) -> tuple[Amount, int] | None:
    """A station such as 120+00 (hundreds of feet) or 1+200 (kilometres)."""
    match = _STATION.match(text, at)
    if match is None:
        return None
    unit = STATION if len(match[3]) == 2 else KILOMETRE_STATION
    decimals = match[4] or ""
    value = Fraction(f"{match[2]}.{match[3]}{decimals}")
    step = Fraction(1, 10 ** (len(match[3]) + len(decimals)))
    return Amount(value, match["text"], unit, step), match.end()


def read_ratio(text: str, at: int) -> tuple[Amount, int] | None:
    """A slope as rise to run, such as 1:48."""
    match = _RATIO.match(text, at)
    if match is None:
        return None
    run = Fraction(match[1])
    if run == 0:
        says = "a slope of 1:0 is not a slope"
        raise ValueFault(says, at, len(match[0]), "write a slope, such as 2 percent or 1:48")
    return Amount(1 / run, match[0], RATIO, Fraction(0), True), match.end()
