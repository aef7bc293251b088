"""Laws of clashes, witnesses and tightenings, held against the SMT solver (see ``judge``)."""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction
from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from specwriter.quantity import Interval
from specwriter.reconcile import reconcile
from specwriter.reconcile.assure import beyond, sides
from specwriter.reconcile.clash import Clash
from specwriter.reconcile.rest import rest_of
from specwriter.reconcile.system import System, system_of
from specwriter.reconcile.verdict import Verdict
from tests.laws.count import cases
from tests.laws.judge import Judge
from tests.laws.systems import areas, contracts, patches
from tests.support import job


def verdicts_on(keys: dict[str, Any]) -> tuple[Verdict, ...]:
    return reconcile(job("longitudinal_grooving", patches(keys))).verdicts


def outcomes(keys: dict[str, Any]) -> list[tuple[str, tuple[str, ...]]]:
    """Outcomes with the variables that they are about, in alphabetical order."""
    found = []
    for each in verdicts_on(keys):
        members = each.clash.members if each.clash else ()
        about = [each.result.target] if each.result else members
        if each.outcome != "idle":
            found.append((each.outcome, tuple(sorted(one.variable for one in about))))
    return sorted(found)


@cases(150)
@given(areas())
def test_a_clash_is_impossible_and_has_no_member_to_spare(
    drawn: tuple[str, dict[str, Any]],
) -> None:
    for system, clash in proofs(drawn):
        judge = Judge(system.requirements, system.exact)
        stated = [(each.variable, each.reading) for each in clash.members]

        assert judge.verdict(stated) == "unsat"
        for spared in range(len(stated)):
            assert judge.verdict(stated[:spared] + stated[spared + 1 :]) != "unsat"


@cases(60)
@given(areas())
def test_a_member_moved_to_its_room_ends_the_clash_and_half_way_does_not(
    drawn: tuple[str, dict[str, Any]],
) -> None:
    for _, clash in proofs(drawn):
        judge = Judge(clash.members, clash.relations)
        for move in clash.moves:
            others = [each for each in clash.members if each is not move.member]
            stated = [(each.variable, each.interval) for each in others]
            if judge.verdict(stated) != "sat":
                stated = [(each.variable, each.reading) for each in others]
            name, own = move.member.variable, move.member.reading
            assert judge.verdict([*stated, (name, move.to)]) != "unsat"
            assert judge.verdict([*stated, (name, half_of_the_way(own, move.to))]) != "sat"


def half_of_the_way(own: Interval, to: Interval) -> Interval:
    """From what a member asks half the way to its room, less what the room may be off."""
    if own.high is not None and to.low is not None and to.low >= own.high:
        return Interval(own.low, max(own.high, (own.high + to.low) / 2 - to.low / 1000))
    assert own.low is not None
    assert to.high is not None
    return Interval(min(own.low, (own.low + to.high) / 2 + to.high / 1000), own.high)


def proofs(drawn: tuple[str, dict[str, Any]]) -> Iterator[tuple[System, Clash]]:
    """The proved clashes of an area, each with all that was looked at."""
    built = job(*drawn)
    system = system_of(built, built.areas["mainline"])
    for verdict in reconcile(built).verdicts:
        clash = verdict.clash
        if clash is not None and clash.is_proof and not clash.nominal_only:
            yield system, clash


@cases(40)
@given(contracts())
def test_a_tightening_assures_the_result_and_half_of_it_does_not(keys: dict[str, Any]) -> None:
    built = job("longitudinal_grooving", patches(keys))
    system = system_of(built, built.areas["mainline"])
    verdicts = reconcile(built).verdicts
    if any(each.clash for each in verdicts):
        return
    for verdict in verdicts:
        check = verdict.result
        if check is None or not check.tightenings:
            continue
        rest = rest_of(check.target, system.requirements, system.relations)
        judge = Judge(system.requirements, rest.relations)
        failing = [
            (check.target.variable, beyond(side, limit))
            for side, limit, _ in sides(check.target.interval, Interval(None, None))
        ]
        for each in check.tightenings:
            others = [
                (one.variable, one.interval if rest.exact else one.reading)
                for one in rest.requirements
                if one != each.member
            ]
            whole = [*others, (each.member.variable, each.to)]
            half = [*others, (each.member.variable, halfway(each.member.interval, each.to))]
            assert all(judge.verdict([*whole, one]) != "sat" for one in failing)
            assert any(judge.verdict([*half, one]) != "unsat" for one in failing)


def halfway(wide: Interval, narrow: Interval) -> Interval:
    """Half as tight: each end moved half as far, or half of the way to where the range must go."""
    low = ((wide.low or Fraction(0)) + (narrow.low or 0)) / 2
    high = None if wide.high is None or narrow.high is None else (wide.high + narrow.high) / 2
    if high is None and wide.high is not None and low <= wide.high:
        high = wide.high
    return Interval(low, high)


def in_millimetres(value: Any) -> Any:
    """The same values in the other unit, exactly: 1/64 in is 0.396875 mm."""
    if isinstance(value, dict):
        return {key: in_millimetres(each) for key, each in value.items()}
    if not str(value).endswith(" in"):
        return value
    metric = re.sub(r"(\d+)/64 in", lambda found: f"{int(found[1]) * 0.396875:.6f} mm", value)
    return metric.replace(" mm to", " mm to")


@cases(40)
@given(contracts())
def test_the_unit_written_changes_nothing(keys: dict[str, Any]) -> None:
    assert outcomes(in_millimetres(keys)) == outcomes(keys)


@cases(40)
@given(contracts(), st.randoms())
def test_the_order_of_the_keys_changes_no_outcome(keys: dict[str, Any], random: Any) -> None:
    order = list(keys)
    random.shuffle(order)

    assert outcomes({key: keys[key] for key in order}) == outcomes(keys)


@cases(40)
@given(contracts(), st.integers(6, 30))
def test_another_requirement_never_makes_the_impossible_possible(
    keys: dict[str, Any], count: int
) -> None:
    before = any(each.outcome == "impossible" for each in verdicts_on(keys))
    more = keys | {"also_stated": [{"in": "Drawing 3", "groove": {"per_foot": f"{count} per ft"}}]}
    after = any(each.outcome == "impossible" for each in verdicts_on(more))

    assert after or not before
