"""Laws of written values, over generated values of every form and every unit."""

from __future__ import annotations

from fractions import Fraction

from hypothesis import assume, given, settings
from hypothesis import strategies as st

from specwriter.quantity import (
    DIMENSIONS,
    UNITS,
    Interval,
    Unit,
    ValueFault,
    both_systems,
    other_system,
    parse,
    show_like,
)

WHOLE = st.integers(1, 99_999).flatmap(lambda n: st.sampled_from([str(n), f"{n:,}"]))
DECIMAL = st.tuples(st.integers(0, 999), st.integers(1, 999)).map(lambda n: f"{n[0]}.{n[1]:03d}")
FRACTION = st.tuples(st.integers(1, 63), st.sampled_from([2, 8, 16, 64])).map(
    lambda n: f"{n[0]}/{n[1]}"
)
MIXED = st.tuples(st.integers(1, 99), st.integers(1, 7), st.sampled_from(["-", " "])).map(
    lambda n: f"{n[0]}{n[2]}{n[1]}/8"
)
NUMBER = st.one_of(WHOLE, DECIMAL, FRACTION, MIXED)
UNIT = st.sampled_from(sorted(UNITS.values(), key=lambda unit: unit.symbol))
WITH_PARTNER = UNIT.filter(lambda unit: unit.partner != "")
FORMS = {
    "{a}": 1, "at least {a}": 1, "at most {a}": 1, "≥ {a}": 1, "{a} to {b}": 2, "{n} to {b}": 2,
    "{a}, {b}": 2, "{a} ± {b}": 3, "{a} +/- {b}": 3, "{a} +{b} -{c}": 3, "{a} -{b} +{c}": 3,
}  # fmt: skip


def with_unit(number: str, unit: Unit) -> str:
    if unit.symbol.startswith("$"):
        return f"${number}{unit.symbol[1:]}"
    return f"{number} {unit.symbol}"


@st.composite
def written(draw: st.DrawFn, units: st.SearchStrategy[Unit] = UNIT) -> str:
    """A value in any form and unit; the parts of a tolerance never reach below zero."""
    unit, form = draw(units), draw(st.sampled_from(sorted(FORMS)))
    numbers = [draw(NUMBER) for _ in "abc"]
    if FORMS[form] == 3:
        assume(unit.symbol[0] != "$" or "+" not in form)
        numbers.sort(key=lambda number: parse(number).amounts[0].value, reverse=True)
    a, b, c = (with_unit(number, unit) for number in numbers)
    bare = f"${numbers[0]}" if unit.symbol.startswith("$") else numbers[0]
    return form.format(a=a, b=b, c=c, n=bare)


@given(written())
def test_reading_and_printing_gives_the_text_back_letter_for_letter(text: str) -> None:
    once = parse(text)

    assert str(once) == text
    assert both_systems(once).startswith(text)
    assert parse(str(once)) == once


@given(written())
def test_a_value_is_read_alike_whether_or_not_its_kind_is_known(text: str) -> None:
    free = parse(text)

    assert parse(text, free.dimension) == free


@given(written(WITH_PARTNER))
def test_there_and_back_returns_within_the_last_written_digit(text: str) -> None:
    value = parse(text)
    there = other_system(value)
    assert there is not None
    back = parse(there)

    assert back.form == value.form
    for was, now in zip(value.amounts, back.amounts, strict=True):
        step = min(was.step, Fraction(1, 64)) if was.is_fraction else was.step
        assert abs(now.unit.factor * now.value - was.unit.factor * was.value) <= (
            step * was.unit.factor / 2
        ) or (was.unit.offset and abs(now.base - was.base) <= step * was.unit.factor / 2)


@given(NUMBER, st.integers(0, 64 * 12))
def test_a_computed_amount_written_like_a_fraction_is_exact(number: str, parts: int) -> None:
    base = parts * UNITS["in"].factor / 64

    assert parse(show_like(base, parse("3/16 in"))).nominal == base


@given(NUMBER, UNIT, st.integers(2, 12))
def test_a_multiple_of_the_unit_is_a_multiple_of_the_amount(
    number: str, unit: Unit, times: int
) -> None:
    one = parse(with_unit(number, unit)).amounts[0]

    many = unit.to_base(one.value * times) - unit.offset

    assert many == times * (one.base - unit.offset)
    assert unit.from_base(one.base) == one.value


SCRAPS = st.sampled_from(
    ["1/8", "in", " ", "to", "±", "+", "-", "–", ",", ".", "½", "1:48", "120+00", "$", "/",
     "per ft",
     "at least", "max", "°", "(", ")", '"', "'", "0", "12", "3/4", "SY", "in/mi", "e9", "ft", "and",
     "⅟", "²", "٣", "\u00a0", "about", "1,000", "between", "x"]
)  # fmt: skip
ANYTHING = st.one_of(st.text(max_size=40), st.lists(SCRAPS, max_size=12).map("".join))
KINDS = st.one_of(st.none(), st.sampled_from(sorted(DIMENSIONS)))


def refusal(text: str, kind: str | None) -> ValueFault | None:
    try:
        parse(text, kind)
    except ValueFault as fault:
        return fault
    return None


@settings(max_examples=600, deadline=None)
@given(ANYTHING, KINDS)
def test_text_of_any_kind_is_read_or_refused_and_never_breaks(text: str, kind: str | None) -> None:
    fault = refusal(text, kind)

    if fault is not None:
        assert fault.says
        assert fault.todo
        assert 0 <= fault.column < fault.column + fault.width <= len(text) + 1
    else:
        value = parse(text, kind)
        other = other_system(value)
        assert value.text == text
        assert other is None or parse(other).form == value.form


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


INTERVALS = st.builds(Interval, ENDS, ENDS)


@given(INTERVALS, INTERVALS, INTERVALS)
def test_meeting_may_be_grouped_in_any_way(a: Interval, b: Interval, c: Interval) -> None:
    assert a.meet(b).meet(c) == a.meet(b.meet(c))
    assert a.meet(a) == a
    assert a.meet(b).within(a)


@given(ENDS, ENDS, st.fractions(0, 5), st.fractions(-20, 20))
def test_widening_keeps_what_was_inside(
    low: Fraction | None, high: Fraction | None, slack: Fraction, x: Fraction
) -> None:
    narrow = Interval(low, high)

    assert narrow.within(narrow.widen(slack))
    assert x not in narrow or x in narrow.widen(slack)
