"""The simplex method over fractions against an optimizer from elsewhere.

Outside check: z3 decides the same sums over the reals and optimizes over them.
"""

from __future__ import annotations

from collections.abc import Hashable, Mapping
from fractions import Fraction

import z3
from hypothesis import given
from hypothesis import strategies as st

from specwriter.quantity import Interval
from specwriter.reconcile.simplex import Row, Tableau
from tests.laws.count import cases
from tests.laws.judge import bounds, exact

Sums = dict[Hashable, tuple[Mapping[str, Fraction | int], Interval]]
NAMES = tuple("abcdefg")


@st.composite
def ranges(draw: st.DrawFn) -> Interval:
    """A range of halves that has a lower end, and an upper one mostly."""
    low = Fraction(draw(st.integers(0, 30)), 2)
    width = draw(st.sampled_from((0, 1, 3, 10, 40, None)))
    return Interval(low, None if width is None else low + Fraction(width, 2))


@st.composite
def systems(draw: st.DrawFn) -> tuple[dict[Hashable, Interval], Sums]:
    """Variables with ranges, and sums of two to four of them."""
    ends: dict[Hashable, Interval] = {name: draw(ranges()) for name in NAMES}
    sums: Sums = {}
    for number in range(draw(st.integers(1, 5))):
        names = draw(st.lists(st.sampled_from(NAMES), min_size=2, max_size=4, unique=True))
        factors = {name: draw(st.sampled_from((1, -1, 1, -1, 2, Fraction(1, 3)))) for name in names}
        edge = Fraction(draw(st.integers(-6, 6)))
        spans = (Interval(edge, edge), Interval(edge, None), Interval(None, edge))
        sums[number] = (factors, draw(st.sampled_from(spans)))
    return ends, sums


def solver_of(ends: dict[Hashable, Interval], sums: Sums) -> tuple[z3.Optimize, dict[str, z3.Real]]:
    solver, terms = z3.Optimize(), {name: z3.Real(name) for name in NAMES}
    for name, interval in ends.items():
        solver.add(*bounds(terms[str(name)], interval))
    for factors, span in sums.values():
        total = sum(exact(factor) * terms[name] for name, factor in factors.items())
        solver.add(*bounds(total, span))
    return solver, terms


def reach(row: Row, ends: Mapping[Hashable, Interval]) -> Interval:
    """All values that the sum of a row can take; it is zero by its own making."""
    low: Fraction | None = Fraction(0)
    high: Fraction | None = Fraction(0)
    for name, factor in row.items():
        least, most = ends[name] if factor > 0 else (ends[name].high, ends[name].low)
        low = None if low is None or least is None else low + factor * least
        high = None if high is None or most is None else high + factor * most
    return Interval(low, high)


@cases(300)
@given(systems())
def test_a_refusal_carries_its_proof_and_a_choice_obeys(
    made: tuple[dict[Hashable, Interval], Sums],
) -> None:
    ends, sums = made
    table = Tableau(ends, sums)
    row = table.refute()

    assert (row is None) is (str(solver_of(ends, sums)[0].check()) == "sat")
    if row is not None:
        assert Fraction(0) not in reach(row, table.ends)
    else:
        assert all(table.at[name] in interval for name, interval in table.ends.items())


@cases(200)
@given(systems(), st.sampled_from(NAMES), st.sampled_from((-1, 1)))
def test_a_variable_is_pushed_to_the_end_that_the_optimizer_finds(
    made: tuple[dict[Hashable, Interval], Sums], name: str, side: int
) -> None:
    ends, sums = made
    table = Tableau(ends, sums)
    if table.refute() is not None:
        return
    row = table.push(name, side)
    solver, terms = solver_of(ends, sums)
    goal = solver.maximize(terms[name]) if side > 0 else solver.minimize(terms[name])
    solver.check()
    best = str(solver.upper(goal) if side > 0 else solver.lower(goal))

    if "oo" in best:
        assert row is None
        assert table.ends[name].high is None
    else:
        assert table.at[name] == Fraction(best)
        if row is not None:
            free = {**table.ends, name: Interval(None, None)}
            factor = row[name]
            rest = reach({each: one for each, one in row.items() if each != name}, free)
            end = rest.low if factor * side > 0 else rest.high
            assert end is not None
            assert -end / factor == Fraction(best)
