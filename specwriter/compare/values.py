"""Which way a written value goes: by the range that it allows before and after."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from specwriter.compare.burden import Burden
from specwriter.compare.change import Sense
from specwriter.compare.meaning import Bare
from specwriter.compare.precision import amount_text, comparable, difference, restated, unit_slip
from specwriter.quantity import Interval, Quantity
from specwriter.quantity.printing import decimal_text


@dataclass(frozen=True, slots=True)
class Judgement:
    """The sense of a change, its arithmetic or words, and what could be overlooked."""

    sense: Sense
    difference: str = ""
    warning: str = ""
    burden: Burden | None = None
    """Who bears it, where the words say so and the matter alone does not."""


def judge_values(old: Quantity, new: Quantity, bare: Bare) -> Judgement:
    """How a written value changed; ``bare`` says how to read a value without a limit word."""
    was, now = allowed(old, bare), allowed(new, bare)
    if not comparable(old, new):
        return Judgement(Sense.CHANGED, warning=_kind_warning(old, new))
    apart = difference(old, new)
    if restated(old, new, was, now):
        return Judgement(Sense.RESTATED, apart or _exactly(old, new))
    warning = _slip_warning(old, new) if unit_slip(old, new) else ""
    if bare == "fact" or (bare == "unordered" and old.form == new.form == "value"):
        return Judgement(Sense.CHANGED, apart, warning)
    return Judgement(_sense(old, new, was, now), apart or _other_form(old, new), warning)


def _exactly(old: Quantity, new: Quantity) -> str:
    """That an exact conversion leaves no difference; empty for all else."""
    pairs = list(zip(old.amounts, new.amounts, strict=False))
    if old.form != new.form or any(was.base != now.base for was, now in pairs):
        return ""
    converted = [(was, now) for was, now in pairs if was.unit.factor != now.unit.factor]
    return "; ".join(f"{amount_text(b)} is exactly {amount_text(a)}" for a, b in converted)


def allowed(quantity: Quantity, bare: Bare) -> Interval:
    """The values that a requirement allows, with its bare form read as ``bare`` says."""
    exact = quantity.interval
    if quantity.form != "value":
        return exact
    return {
        "at_most": Interval(None, exact.high),
        "at_least": Interval(exact.low, None),
    }.get(bare, exact)


def _sense(old: Quantity, new: Quantity, was: Interval, now: Interval) -> Sense:
    if "list" in (old.form, new.form):
        return _sense_of_sets(
            {amount.base for amount in old.amounts}, {amount.base for amount in new.amounts}
        )
    return sense_of_ranges(was, now)


def _sense_of_sets(old: set[Fraction], new: set[Fraction]) -> Sense:
    if new < old:
        return Sense.TIGHTER
    return Sense.LOOSER if old < new else Sense.MIXED


def sense_of_ranges(old: Interval, new: Interval) -> Sense:
    """Inside is tighter, outside is looser, the same width elsewhere is shifted, else mixed."""
    if new.within(old):
        return Sense.TIGHTER
    if old.within(new):
        return Sense.LOOSER
    if _width(old) is not None and _width(old) == _width(new):
        return Sense.SHIFTED
    return Sense.MIXED


def _width(interval: Interval) -> Fraction | None:
    if interval.low is None or interval.high is None:
        return None
    return interval.high - interval.low


def _other_form(old: Quantity, new: Quantity) -> str:
    if old.form == new.form:
        return ""
    return f"{_FORMS[old.form]} became {_FORMS[new.form]}"


_FORMS = {
    "value": "a single value",
    "range": "a range",
    "tolerance": "a value with a tolerance",
    "at_least": "a lower limit",
    "at_most": "an upper limit",
    "list": "a list of values",
}


def _slip_warning(old: Quantity, new: Quantity) -> str:
    before, after = old.unit.symbol, new.unit.symbol
    sentence = f"The number stands but its unit went from {before} to {after}"
    if old.unit.offset or new.unit.offset:
        return f"{sentence}: another temperature."
    times = new.unit.factor / old.unit.factor
    if times >= 1:
        return f"{sentence}: {decimal_text(times, Fraction(1, 100), trim=True)} times as much."
    part = decimal_text(1 / times, Fraction(1, 100), trim=True)
    return f"{sentence}: as little as one part in {part}."


def _kind_warning(old: Quantity, new: Quantity) -> str:
    before, after = (each.dimension.replace("_", " ") for each in (old, new))
    return f"The two values measure different things: {before} and {after}."
