"""Laws of written values, over generated values of every form."""

from __future__ import annotations

import string
from fractions import Fraction

from hypothesis import given, settings
from hypothesis import strategies as st

from specwriter.quantity import UNITS, Interval, Quantity, ValueFault, other_system, parse

LENGTHS = ["in", "ft", "yd", "mm", "m", "in/mi", "m/km", "SY", "m2", "mph", "km/h", "lb", "kg"]
WHOLE = st.integers(1, 999).map(str)
DECIMAL = st.tuples(st.integers(0, 99), st.integers(1, 999)).map(lambda n: f"{n[0]}.{n[1]:03d}")
FRACTION = st.tuples(st.integers(1, 63), st.sampled_from([8, 16, 32, 64])).map(
    lambda n: f"{n[0]}/{n[1]}"
)
NUMBER = st.one_of(WHOLE, DECIMAL, FRACTION)
UNIT = st.sampled_from(LENGTHS)


@st.composite
def written(draw: st.DrawFn) -> str:
    unit, first, second = draw(UNIT), draw(NUMBER), draw(NUMBER)
    form = draw(st.sampled_from(["{a} {u}", "at least {a} {u}", "at most {a} {u}",
                                 "{a} {u} to {b} {u}", "{a} to {b} {u}", "{a} {u} ± {b} {u}",
                                 "{a} {u} +{b} {u} -0 {u}", "{a} {u}, {b} {u}"]))  # fmt: skip
    return form.format(a=first, b=second, u=unit)


@settings(max_examples=200)
@given(written())
def test_reading_and_printing_gives_the_text_back_letter_for_letter(text: str) -> None:
    once = parse(text)

    assert str(once) == text
    assert parse(str(once)) == once


@settings(max_examples=200)
@given(NUMBER, UNIT)
def test_there_and_back_returns_within_the_last_written_digit(number: str, unit: str) -> None:
    value = parse(f"{number} {unit}")
    there = other_system(value)
    assert there is not None
    back = parse(there)

    assert abs(back.amounts[0].base - value.amounts[0].base) <= step(value)


def step(value: Quantity) -> Fraction:
    """One unit in the last written place, in base units."""
    amount = value.amounts[0]
    return amount.step * UNITS[amount.unit.symbol].factor


@settings(max_examples=300)
@given(st.text(alphabet=string.printable + "±½°≥–−′″", max_size=40))
def test_text_of_any_kind_is_read_or_refused_and_never_breaks(text: str) -> None:
    fault = refusal(text)

    if fault is not None:
        assert fault.says
        assert 0 <= fault.column <= max(len(text), 1)


def refusal(text: str) -> ValueFault | None:
    try:
        parse(text, "length")
    except ValueFault as fault:
        return fault
    return None


ENDS = st.one_of(st.none(), st.fractions(-10, 10))


@given(ENDS, ENDS, ENDS, ENDS, st.fractions(-10, 10))
def test_meeting_intervals_keeps_just_the_common_values(
    a: Fraction | None, b: Fraction | None, c: Fraction | None, d: Fraction | None, x: Fraction
) -> None:
    first, second = Interval(a, b), Interval(c, d)

    assert first.meet(second) == second.meet(first)
    assert (x in first.meet(second)) == (x in first and x in second)
    if first.within(second) and not first.is_empty:
        assert x not in first or x in second
