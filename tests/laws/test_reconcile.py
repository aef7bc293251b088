"""Laws of reconciling, held against brute-force sampling.

The judge is a sample of exact rational choices inside the written ranges, drawn without the
engine: a proof of a clash must have none, a solution must be one.
"""

from __future__ import annotations

from fractions import Fraction
from itertools import product
from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from specwriter.model import Job
from specwriter.reconcile import findings_of, reconcile
from specwriter.reconcile.requirement import read
from specwriter.reconcile.solve import is_refuted, solve, tried
from tests.laws.count import cases
from tests.support import job
from tests.support.relations import relations_for

KEYS = ("groove.width", "land.width", "groove.spacing")


@st.composite
def ranges(draw: st.DrawFn, low: int, high: int) -> str:
    """A range of sixty-fourths of an inch."""
    first = draw(st.integers(low, high))
    second = draw(st.integers(first, high))
    if first == second:
        return f"{first}/64 in"
    return f"{first}/64 in to {second}/64 in"


SYSTEMS = st.fixed_dictionaries(
    {
        "groove.width": ranges(4, 20),
        "land.width": ranges(20, 60),
        "groove.spacing": ranges(24, 80),
    }
)


def made(values: dict[str, Any]) -> Job:
    bare: dict[str, Any] = {"areas.mainline.groove": {}, "areas.mainline.land": {}}
    return job(
        "longitudinal_grooving",
        bare | {f"areas.mainline.{key}": value for key, value in values.items()},
    )


def has_sampled_solution(built: Job) -> bool:
    stated = read(built, built.areas["mainline"])
    width, land, spacing = (
        next(each.interval for each in stated if each.variable == key) for key in KEYS
    )
    inch = Fraction(254, 10000)
    steps = [Fraction(n, 64) * inch for n in range(81)]
    return any(
        w + one in spacing
        for w, one in product(
            (step for step in steps if step in width), (step for step in steps if step in land)
        )
    )


@cases(60)
@given(SYSTEMS)
def test_a_clash_is_reported_exactly_when_no_sample_solves_the_system(
    values: dict[str, str],
) -> None:
    built = made(values)

    assert bool(findings_of(reconcile(built))) is not has_sampled_solution(built)


@cases(60)
@given(SYSTEMS, st.integers(8, 40))
def test_one_more_requirement_never_settles_a_clash(values: dict[str, str], count: int) -> None:
    before = findings_of(reconcile(made(values)))
    after = findings_of(reconcile(made(values | {"groove.per_foot": f"{count} per ft"})))

    assert not before or after


@cases(60)
@given(SYSTEMS)
def test_a_solution_lies_in_every_range_and_obeys_the_geometry(values: dict[str, str]) -> None:
    built = made(values)
    area = built.areas["mainline"]
    requirements = read(built, area)

    answer = solve(requirements, relations_for(built, area), exact=True)

    if answer.solution is not None:
        point = answer.solution
        assert point["groove.width"] + point["land.width"] == point["groove.spacing"]
        assert all(point[each.variable] in each.interval for each in requirements)


@cases(40)
@given(SYSTEMS, st.permutations(KEYS))
def test_the_order_of_the_keys_changes_nothing(values: dict[str, str], order: list[str]) -> None:
    turned = {key: values[key] for key in order}

    assert findings_of(reconcile(made(turned))) == findings_of(reconcile(made(values)))


@cases(40)
@given(SYSTEMS)
def test_every_way_out_settles_the_clash(values: dict[str, str]) -> None:
    for verdict in reconcile(made(values)).verdicts:
        if verdict.clash is None:
            continue
        members = list(verdict.clash.members)
        for move in verdict.clash.moves:
            moved = [each.narrowed(move.to) if each is move.member else each for each in members]
            assert solve(moved, verdict.clash.relations).solution is not None


@cases(150)
@given(SYSTEMS)
def test_what_a_refutation_rests_on_is_enough(values: dict[str, Any]) -> None:
    built = made(values)
    stated = read(built, built.areas["mainline"])
    trial = tried(stated, relations_for(built, built.areas["mainline"]))
    if trial.because is None:
        return
    needed = [each for each in stated if each.variable in trial.because.variables]

    assert trial.outcome == "refuted"
    assert is_refuted(needed, trial.because.relations)
