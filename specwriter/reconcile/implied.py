"""What several linear relations say together and none of them alone.

Propagation looks at one relation at a time. Spacing = width + land and spacing = segment + land
leave each of the four its full range, and together say that width = segment. Such a sum is found
by the simplex method, and is then a relation like any other.
"""

from __future__ import annotations

from collections.abc import Hashable, Iterator, Mapping, Sequence
from fractions import Fraction
from math import gcd, lcm

from specwriter.quantity import UNITS, Interval, show
from specwriter.reconcile.propagate import narrows, propagate
from specwriter.reconcile.relation import ANY, ZERO, Box, Linear, Relation
from specwriter.reconcile.simplex import Row, Tableau
from specwriter.reconcile.variables import ORDER, VARIABLES, label

ROUNDS = 3
"""Rounds of sums and propagation; stopping early is sound, only less sharp."""


def clashing_sum(box: Box, relations: Sequence[Relation]) -> Relation | None:
    """The relation implied by the linear ones that the box contradicts, if there is one."""
    row = _tableau(box, _linear(relations)).refute()
    return None if row is None else _sum_of(row)


def with_implied(
    box: Box | None, relations: Sequence[Relation], about: str | None = None
) -> tuple[tuple[Relation, ...], Box | None]:
    """The relations and the implied ones by which they narrow a box further, and what they leave
    of it. The box is narrowed by the relations themselves.

    Where only one variable is asked ``about`` and nothing is curved, what narrows the others is
    not looked for.
    """
    found, left, linear = tuple(relations), box, _linear(relations)
    names = dict.fromkeys(name for each in linear for name in each.variables)
    wanted = [name for name in names if about in (None, name) or len(linear) < len(found)]
    if len(linear) < 2:
        return found, left
    for _ in range(ROUNDS):
        more = () if left is None else tuple(_implied(left, linear, wanted))
        if not more:
            break
        found += more
        left = propagate(left, found)
    return found, left


def _implied(box: Box, linear: Sequence[Relation], wanted: Sequence[str]) -> Iterator[Relation]:
    table = _tableau(box, linear)
    if (row := table.refute()) is not None:
        yield _sum_of(row)
        return
    for name in wanted:
        for side in (-1, 1):
            row = table.push(name, side)
            more = None if row is None else _sum_of(row)
            if more and more.parts and narrows(box.get(name, ANY), more.shape.narrow(box, name)):
                yield more


def _linear(relations: Sequence[Relation]) -> list[Relation]:
    """The linear relations, without what was implied by them."""
    return [each for each in relations if isinstance(each.shape, Linear) and not each.parts]


def _tableau(box: Box, linear: Sequence[Relation]) -> Tableau:
    ends: dict[Hashable, Interval] = {
        name: box.get(name, ANY) for each in linear for name in each.variables
    }
    sums: dict[Hashable, tuple[Mapping[str, Fraction | int], Interval]] = {
        each: (each.shape.factors, each.shape.span)
        for each in linear
        if isinstance(each.shape, Linear)
    }
    return Tableau(ends, sums)


def _sum_of(row: Row) -> Relation:
    """The relations of a row, each times its factor, added up."""
    weights = {each: factor for each, factor in row.items() if isinstance(each, Relation)}
    if len(weights) == 1:
        return next(iter(weights))
    scale = _scale(row)
    factors: dict[str, Fraction] = {}
    span = ZERO
    for relation, weight in weights.items():
        assert isinstance(relation.shape, Linear)
        for name, factor in relation.shape.factors.items():
            factors[name] = factors.get(name, Fraction(0)) + factor * weight * scale
        span = _plus(span, relation.shape.span, weight * scale)
    shape = Linear({name: factor for name, factor in factors.items() if factor}, span)
    return Relation(
        slug=" + ".join(each.slug for each in weights),
        title="; ".join(each.title for each in weights),
        statement=_statement(shape),
        shape=shape,
        why=" ".join(dict.fromkeys(each.why for each in weights)),
        source="; ".join(dict.fromkeys(each.source for each in weights)),
        parts=tuple(weights),
    )


def _scale(row: Row) -> Fraction:
    """What makes the factors of the variables whole numbers without a common divisor, the first
    of them positive."""
    own = {name: factor for name, factor in row.items() if isinstance(name, str)}
    if not own:
        return Fraction(1)
    # The variables stand on the other side of the row than the sums: hence the sign.
    sign = -1 if own[min(own, key=lambda name: ORDER[name])] > 0 else 1
    divisor = gcd(*(each.numerator for each in own.values()))
    return sign * Fraction(lcm(*(each.denominator for each in own.values())), divisor)


def _plus(total: Interval, span: Interval, weight: Fraction) -> Interval:
    least, most = (span.low, span.high) if weight > 0 else (span.high, span.low)
    return Interval(
        None if total.low is None or least is None else total.low + weight * least,
        None if total.high is None or most is None else total.high + weight * most,
    )


def _statement(shape: Linear) -> str:
    """The sum in words: what is added on one side, what is taken away on the other."""
    low, high = shape.span
    verb = "=" if low == high else "is at least" if high is None else "is at most"
    unit = UNITS[VARIABLES[next(iter(shape.factors))].unit]
    rest = [show(end, unit) for end in dict.fromkeys((low, high)) if end]
    right = _terms(shape, -1) + ([" to ".join(rest)] if rest else [])
    return f"{' + '.join(_terms(shape, 1)) or '0'} {verb} {' + '.join(right) or '0'}"


def _terms(shape: Linear, sign: int) -> list[str]:
    """The variables with a factor of that sign."""
    own = {name: abs(factor) for name, factor in shape.factors.items() if factor * sign > 0}
    return [
        label(name) if factor == 1 else f"{factor} x {label(name)}" for name, factor in own.items()
    ]
