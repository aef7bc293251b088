"""What every relation owes the engine: narrowing loses no point that the relation allows.

The judge is a point computed from the relation's own statement, without intervals.
"""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from specwriter.quantity import Interval
from specwriter.reconcile.box import rough
from specwriter.reconcile.registry import all_relations
from specwriter.reconcile.relation import Function, Linear, Relation
from specwriter.reconcile.variables import VARIABLES, is_whole

FUNCTIONS = [each for each in all_relations() if isinstance(each.shape, Function)]
SUMS = [
    each
    for each in all_relations()
    if isinstance(each.shape, Linear) and each.shape.span != Interval(None, None)
]
SIZES = {"mm": (1, 300), "m": (500, 9000), "percent": (10, 1000), "m/km": (300, 4000), "": (1, 9)}
"""Usual sizes, in thousandths of the base unit, by the unit in which a variable is shown."""


SPACING = "conditions.joint_spacing"
"""Each new joint spacing is simulated by the quarter-car: three of them are enough here."""


WITHIN = {
    "conditions.slab_thickness": Interval(Fraction(1), Fraction(2)),
    "conditions.existing_wavelength": Interval(Fraction(5), Fraction(30)),
    "equipment.wheelbase": Interval(Fraction(3), Fraction(8)),
    "ride.localized_base": Interval(Fraction(4), Fraction(30)),
}
"""Where a relation holds for part of the values only (see its ``applies``)."""


@st.composite
def values(draw: st.DrawFn, name: str) -> Fraction:
    """A usual value of a variable, in its base unit."""
    if name == SPACING:
        return Fraction(draw(st.sampled_from((12, 15, 20)))) * Fraction(3048, 10000)
    if name in WITHIN:
        low, high = (int(end or 0) for end in WITHIN[name])
        return Fraction(draw(st.integers(low * 10, high * 10)), 10)
    unit = VARIABLES[name].unit if name in VARIABLES else "mm"
    low, high = SIZES.get(unit, (1, 1000))
    if is_whole(name):
        return Fraction(draw(st.integers(1, 6)))
    scale = 10**6 if unit == "m/km" else 1000
    return Fraction(draw(st.integers(low * 10, high * 10)), scale * 10)


@st.composite
def around(draw: st.DrawFn, point: Fraction) -> Interval:
    """An interval that holds the point, at times the point alone."""
    below, above = draw(st.integers(0, 8)), draw(st.integers(0, 8))
    return Interval(point * (10 - below) / 10, point * (10 + above) / 10)


def name_of(relation: Relation) -> str:
    return f"{relation.slug}: {', '.join(relation.variables)}"


@pytest.mark.parametrize("relation", FUNCTIONS, ids=name_of)
@settings(max_examples=60, deadline=None, derandomize=True)
@given(data=st.data())
def test_a_function_keeps_every_point_that_it_allows(
    relation: Relation, data: st.DataObject
) -> None:
    shape = relation.shape
    assert isinstance(shape, Function)
    point = {name: data.draw(values(name), label=name) for name in shape.inputs}
    try:
        output = Fraction(shape.value(point))
    except (ZeroDivisionError, ValueError, OverflowError):
        return
    width, spacing = point.get("groove.width", Fraction(0)), point.get("groove.spacing")
    if point.get("groove.width_at_bottom", Fraction(0)) > width:
        return
    if output < 0 or (spacing is not None and spacing * 19 < width * 20):
        return
    point[shape.output] = output
    box = {name: data.draw(around(at), label=f"around {name}") for name, at in point.items()}
    box |= {name: box[name].meet(limits) for name, limits in WITHIN.items() if name in box}
    if SPACING in box:
        box[SPACING] = Interval(point[SPACING], point[SPACING])

    for start in (box, rough(box)):
        for name, at in point.items():
            left = shape.narrow(start, name)
            hair = abs(at) * Fraction(1, 10**9)
            assert left.low is None or left.low <= at + hair, name
            assert left.high is None or left.high >= at - hair, name


@pytest.mark.parametrize("relation", SUMS, ids=name_of)
@settings(max_examples=30, deadline=None, derandomize=True)
@given(data=st.data())
def test_a_sum_keeps_every_point_that_it_allows(relation: Relation, data: st.DataObject) -> None:
    shape = relation.shape
    assert isinstance(shape, Linear)
    *others, last = shape.variables
    point = {name: data.draw(values(name), label=name) for name in others}
    total = sum((shape.factors[name] * at for name, at in point.items()), Fraction(0))
    edge = shape.span.low if shape.span.low is not None else shape.span.high
    assert edge is not None
    point[last] = (edge - total) / shape.factors[last]
    box = {name: data.draw(around(at), label=f"around {name}") for name, at in point.items()}
    if any(interval.is_empty for interval in box.values()):
        return

    for name, at in point.items():
        assert at in shape.narrow(box, name)
