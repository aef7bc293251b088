"""A value in a text, and another one in brackets behind it.

Looks at
    Texts of the job that write a value and behind it, in brackets, the same one in another unit.

Why it matters
    Two figures that stand for one must be one. Where one of them is a slip, half of the readers
    build by it, and nothing in the sentence shows which of the two was meant.

Conflict
    areas.mainline.smoothness.exclusions: the first and last 25 ft (25 m) of each limit

Settled
    areas.mainline.smoothness.exclusions: the first and last 25 ft (7.6 m) of each limit

How to settle it
    Correct the figure that is wrong, or leave the brackets out: the other system is printed
    beside the values of the job, not within its texts.

Sources
    UFC 3-260-02, ch. 21, 2001: a stored copy prints 3 in beside 6 mm where 1/4 in is meant
    common practice, no source: figures within 4 percent or their rounding are a round conversion
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import Quantity, ValueFault, parse
from specwriter.rules.rule import Rule
from specwriter.rules.texts import texts
from specwriter.rules.units._dual import SHARE, ends_apart

_PAIR = re.compile(r"((?:[^\s()]+ ){0,6}[^\s()]+) \(([^()]+)\)")
"""The words before an opening bracket, and what stands in the brackets."""

RULE = Rule(
    title="two figures for one value in a text",
    grade=Grade.CAUTION,
    basis="published",
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each pair of values in a text that are apart beyond any rounding."""
    areas = job.areas
    for text in texts(job):
        for found in _PAIR.finditer(text.words):
            left, right = _value_at_the_end(found[1]), _value(found[2])
            if left and right and _apart(left, right):
                area = areas.get(text.area or "")
                says = f"The text gives {left}, and in brackets {right}."
                settle = ("the figure that is meant", "no figure in brackets")
                yield RULE.finding(area, says, [text.evidence(found.start(2))], settle)


def _value_at_the_end(words: str) -> Quantity | None:
    """The longest value with which the words end: ``1/8 in to 1/4 in`` of ``a depth of …``."""
    parts = words.split(" ")
    tails = (" ".join(parts[start:]) for start in range(len(parts)))
    return next((found for tail in tails if (found := _value(tail))), None)


def _value(text: str) -> Quantity | None:
    try:
        return parse(text)
    except ValueFault:
        return None


def _apart(left: Quantity, right: Quantity) -> bool:
    """True for two values of one dimension in two units that no rounding makes one."""
    if left.dimension != right.dimension or left.unit == right.unit:
        return False
    return bool(ends_apart(left, right, _slip))


def _slip(difference: Fraction, rounding: Fraction, size: Fraction) -> bool:
    return difference > rounding and difference > SHARE * size
