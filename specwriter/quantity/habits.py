"""Habits of writing that the grammar refuses, each with the writing that it takes instead.

A habit speaks only when its better writing can be read, so no advice leads to another refusal.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from specwriter.quantity.fault import ValueFault
from specwriter.quantity.number import read_number
from specwriter.quantity.printing import decimal_text, fraction_text

Words = dict[str, str]

_AT_LEAST = r"minimum(?: of)?|min\.?(?: of)?|(?:not|no) less than|greater than or equal to"
_AT_MOST = (
    r"maximum(?: of)?|max\.?(?: of)?|(?:not|no) (?:more|greater) than|(?:not )?to exceed"
    r"|not exceeding|less than or equal to|up to"
)
_ABOVE = r"more than|greater than|over|above|exceeding|>"
_BELOW = r"less than|under|below|<"
_OR_MORE = r"\(?(?:minimum|min\.?|or more|or greater|or over|and over|and up)\)?"
_OR_LESS = r"\(?(?:maximum|max\.?|or less|or fewer|or under)\)?"
_LOOSE = r"about|approximately|approx\.?|nominal(?:ly)?|nom\.?|around|roughly|circa|ca\.?|[~≈]"
_LOOSELY = r"\(?(?:nominal|nom\.?|approximately|approx\.?|typical|typ\.?|or so|\+/-|±)\)?"
_FINEST = Fraction(1, 10**6)
_FEET = r"(?:ft\.?|feet|foot|')"
_INCHES = r"(?:in\.?|inch(?:es)?|\")"

_LIMIT = "'{mark}' is not how a limit is written here"
_OPEN = "'{mark}' does not say whether the limit itself is allowed"
_DASH = "'{text}' does not say what the dash means"
_VAGUE = "'{mark}' gives no tolerance"


@dataclass(frozen=True, slots=True)
class Habit:
    """A pattern over the whole text, what is wrong with its ``mark``, and the better writing.

    ``better`` is made from the groups of the pattern and must be readable; ``also`` is a
    second way out.
    """

    pattern: re.Pattern[str]
    says: str
    better: Callable[[Words], str]
    also: str = ""


def _habit(pattern: str, says: str, better: str | Callable[[Words], str], also: str = "") -> Habit:
    made = better.format_map if isinstance(better, str) else better
    return Habit(re.compile(rf" *{pattern} *", re.IGNORECASE), says, made, also)


def _with_commas(words: Words) -> str:
    return f"{words['mark'].replace(' ', ',')} {words['a']}"


def _written_out(words: Words) -> str:
    return f"{Decimal(words['mark']):f} {words['a']}"


def _in_inches(words: Words) -> str:
    feet, inches = (read_number(words[name], 0) for name in "ab")
    if feet is None or inches is None:
        return ""
    total = 12 * feet[0].value + inches[0].value
    fine = inches[0].is_fraction
    return f"{fraction_text(total) if fine else decimal_text(total, _FINEST, trim=True)} in"


_HABITS = (
    _habit(
        rf"(?P<a>\d[\d./ -]*?)[ -]*{_FEET}[ ,-]*(?P<mark>(?P<b>\d[\d./ -]*?)[ -]*{_INCHES})",
        "'{mark}' is a second unit",
        _in_inches,
    ),
    _habit(r"(?P<a>.*?\d.*?) *(?P<mark>[–—‒―]) *(?P<b>.*)", _DASH, "{a} to {b}"),
    _habit(r"(?P<a>.*?\d.*?) +(?P<mark>-) +(?P<b>.*)", _DASH, "{a} to {b}"),
    _habit(r"(?P<a>.*\d.*)(?<=\S)(?P<mark>-)(?P<b>[.\d].*)", _DASH, "{a} to {b}"),
    _habit(r"(?P<a>.*?\d.*?) *(?P<mark>\.\.+|…) *(?P<b>.*)", _DASH, "{a} to {b}"),
    _habit(rf"(?P<mark>{_AT_LEAST}) *(?P<a>.*)", _LIMIT, "at least {a}"),
    _habit(rf"(?P<mark>{_AT_MOST}) *(?P<a>.*)", _LIMIT, "at most {a}"),
    _habit(rf"(?P<a>.*?),? *(?P<mark>{_OR_MORE})", _LIMIT, "at least {a}"),
    _habit(rf"(?P<a>.*?),? *(?P<mark>{_OR_LESS})", _LIMIT, "at most {a}"),
    _habit(rf"(?P<mark>{_ABOVE}) *(?P<a>.*)", _OPEN, "at least {a}"),
    _habit(rf"(?P<mark>{_BELOW}) *(?P<a>.*)", _OPEN, "at most {a}"),
    _habit(rf"(?P<mark>{_LOOSE}) *(?P<a>.*)", _VAGUE, "{a}", ", or add its tolerance with ±"),
    _habit(rf"(?P<a>.*?),? *(?P<mark>{_LOOSELY})", _VAGUE, "{a}", ", or add its tolerance with ±"),
    _habit(
        r"(?P<mark>±|\+ */? *-) *(?P<a>.*)",
        "a tolerance stands here without the value that it belongs to",
        "at most {a}",
        ", or the value in front of {mark}",
    ),
    _habit(r"(?P<mark>\+) *(?P<a>.*)", "a plus sign in front says nothing", "{a}"),
    _habit(
        r"(?P<a>.*?\d.*?) *(?P<mark>\((?P<b>[+±-].*)\))",
        "a tolerance needs no brackets",
        "{a} {b}",
    ),
    _habit(
        r"(?P<mark>between) +(?P<a>.*?) +and +(?P<b>.*)",
        "a range is written with 'to'",
        "{a} to {b}",
    ),
    _habit(r"(?P<mark>from) +(?P<a>.*?to.*)", "a range needs no 'from'", "{a}"),
    _habit(
        r"(?P<a>.*?\d.*?) *\b(?P<mark>through|thru|until|till)\b *(?P<b>.*)",
        "a range is written with 'to'",
        "{a} to {b}",
    ),
    _habit(
        r"(?P<a>.*?\d.*?),? *(?P<mark>\band\b|\bor\b|&|;) *(?P<b>.*)",
        "'{mark}' may mean a list or a range",
        "{a}, {b}",
        ", or join them with 'to'",
    ),
    _habit(
        r"(?P<mark>\d{1,3}(?: \d{3})+(?:\.\d+)?)(?P<a>.*)",
        "'{mark}' has a space in it",
        _with_commas,
    ),
    _habit(
        r"(?P<mark>\d{1,9}(?:\.\d{1,9})?e[+-]?\d{1,2}(?!\d)) *(?P<a>.*)",
        "'{mark}' is written with a power of ten",
        _written_out,
    ),
    _habit(r"(?P<mark>(?P<b>[\d.]+) *: *1)(?P<a>)", "a slope is written rise to run", "1:{b}"),
    _habit(r"(?P<mark>1 *(?:in|on|to) *(?P<b>[\d.]+))", "a slope is written with a colon", "1:{b}"),
    _habit(
        r"(?P<a>.*?\d.*?) +(?P<mark>(?:in|per|over|on|within)(?: any| a)? +\d.*)",
        "'{mark}' is a second length",
        "{a}",
        "; the length that it is measured over has its own key",
    ),
    _habit(
        r"(?P<a>.*?\d.*?) *(?P<mark>[(\[].*[)\]])",
        "'{mark}' stands behind a whole value",
        "{a}",
        "; the other unit system is printed beside it",
    ),
    _habit(
        r"(?P<a>[^A-Za-z]*\d) +(?P<mark>[A-Za-z]+) *(?:per |/)(?P<b>.*)",
        "'{mark}' is not part of a number per length",
        "{a} per {b}",
    ),
    _habit(
        r"(?P<a>.*?\d.*?) *(?P<mark>[x×]|\bby\b) *(?P<b>.*\d.*)",
        "'{mark}' joins two values",
        "{a}",
        "; the second value has its own key",
    ),
)


def advise(
    text: str, fault: ValueFault, fault_of: Callable[[str], ValueFault | None]
) -> ValueFault:
    """The fault in the words of the habit that led to it, or the fault as it is.

    ``fault_of`` gives what is wrong with a better writing, or ``None`` when it can be read.
    """
    for habit in _HABITS:
        if match := habit.pattern.fullmatch(text):
            words = {name: found.strip() for name, found in match.groupdict().items()}
            words["text"] = text.strip()
            better = habit.better(words)
            if fault_of(better) is None:
                todo = f"write '{better}'" + habit.also.format_map(words)
                says = habit.says.format_map(words)
                return ValueFault(says, match.start("mark"), len(words["mark"]), todo)
    return fault
