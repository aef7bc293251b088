"""One system judged: its clashes, its results, its idle limits, and the table of all of them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from specwriter.quantity import Interval
from specwriter.reconcile.assure import check_result, producer, unknown_inputs
from specwriter.reconcile.clash import Clash, search
from specwriter.reconcile.idle import allowed_by, idle_limit
from specwriter.reconcile.pictured import pictured
from specwriter.reconcile.requirement import Requirement
from specwriter.reconcile.rest import rest_of
from specwriter.reconcile.system import System
from specwriter.reconcile.tighten import missing_needed, tightenings
from specwriter.reconcile.verdict import Outcome, Standing, Verdict


@dataclass(frozen=True, slots=True, kw_only=True)
class Judged:
    """A system with its verdicts; ``left`` are the requirements without the ones that clash."""

    system: System
    left: tuple[Requirement, ...]
    verdicts: tuple[Verdict, ...]

    def table(self) -> Iterator[Standing]:
        """A row for each requirement, with the limits that are idle."""
        for each in self.system.requirements:
            yield _standing(self.system, each, self.left, self.verdicts)


def judge(system: System) -> Judged:
    """The clashes of a system, and its results held against the rest."""
    exact = system.is_sound(exact=True)
    clashes, left = ([], system.requirements) if exact else _clashes(system)
    whole = replace(system, requirements=left)
    verdicts = (*clashes, *_results(whole, clashes, exact))
    return Judged(system=system, left=left, verdicts=verdicts)


def _clashes(system: System) -> tuple[list[Verdict], tuple[Requirement, ...]]:
    """What cannot hold together, proved or by experience, and what is left without it."""
    if system.is_sound(exact=False):
        return [], system.requirements
    hard = search(system.requirements, system.exact)
    found = [_clash(system, "impossible", each) for each in hard.clashes]
    if not hard.decided:
        found.append(Verdict(area=system.area, outcome="not decided"))
    if not hard.clashes:
        found += [_clash(system, "impossible", each) for each in _nominal(system)]
    if len(system.exact) == len(system.relations):
        return found, hard.left
    soft = search(hard.left, system.relations)
    found += [_clash(system, "not expected", each) for each in soft.clashes]
    return found, soft.left


def _clash(system: System, outcome: Outcome, clash: Clash) -> Verdict:
    return Verdict(area=system.area, outcome=outcome, clash=clash)


def _nominal(system: System) -> Iterator[Clash]:
    """Clashes of the nominal dimensions, where only the edges of their tolerances meet.

    One value in two unit systems is none: its columns differ by how they were rounded.
    """
    dimensions = [each for each in system.requirements if each.role != "result"]
    if all(each.quantity.form != "tolerance" for each in dimensions):
        return
    by_path = {each.path: each for each in dimensions}
    for clash in search([each.at_nominal() for each in dimensions], system.exact).clashes:
        members = tuple(by_path[each.path] for each in clash.members)
        if not clash.relations and len({each.quantity.unit.system for each in members}) > 1:
            continue
        yield replace(clash, members=members, nominal_only=True)


def _results(system: System, clashes: Sequence[Verdict], exact: bool) -> Iterator[Verdict]:
    """Each result that the rest is expected to assure, unless a clash already touches it."""
    touched = {
        each.variable
        for verdict in clashes
        if verdict.clash and not verdict.clash.nominal_only
        for each in verdict.clash.members
    }
    for target in system.requirements:
        relation = producer(target, system.relations)
        if target.role != "result" or relation is None or touched & set(relation.variables):
            continue
        rest = rest_of(target, system.requirements, system.relations, exact=exact or None)
        if unknown_inputs(relation, rest):
            continue
        outcome, check = check_result(target, relation, rest)
        if outcome == "not assured":
            check = replace(check, tightenings=tightenings(check, rest))
            if check.missing:
                check = replace(check, missing_needed=missing_needed(check, rest))
            check = pictured(check, rest)
        yield Verdict(area=system.area, outcome=outcome, result=check)


def _standing(
    system: System,
    requirement: Requirement,
    left: Sequence[Requirement],
    verdicts: Sequence[Verdict],
) -> Standing:
    """What a requirement is left by the others, and whether it can bind."""
    others = [one for one in left if one is not requirement]
    allowed = allowed_by(others, requirement.variable, system.exact)
    verdict = _verdict_on(requirement, verdicts)
    clashing = any(each.clash for each in verdicts)
    if verdict is None and not clashing:
        found = idle_limit(requirement, system.requirements, system.exact, allowed)
        verdict = Verdict(area=system.area, outcome="idle", idle=found) if found else None
    open_ = clashing and requirement.role == "result"
    outcome: Outcome = verdict.outcome if verdict else "not decided" if open_ else "holds"
    return Standing(
        requirement=requirement,
        allowed=_shown(requirement, allowed, verdict),
        outcome=outcome,
        verdict=verdict,
        expected=_expected(system, requirement, others) if verdict is None else None,
    )


def _expected(
    system: System, requirement: Requirement, others: Sequence[Requirement]
) -> Interval | None:
    """What models and experience leave a result; nothing where they leave it anything."""
    if requirement.role != "result" or all(each.kind == "exact" for each in system.relations):
        return None
    found = allowed_by(others, requirement.variable, system.relations)
    return found if found.low or found.high is not None else None


def _shown(requirement: Requirement, allowed: Interval, verdict: Verdict | None) -> Interval:
    """What the table shows: the range of a judged result, or where a clash leaves room."""
    if verdict is not None and verdict.result is not None:
        return verdict.result.allowed
    moves = verdict.clash.moves if verdict is not None and verdict.clash else ()
    return next((each.to for each in moves if each.member is requirement), allowed)


def _verdict_on(requirement: Requirement, verdicts: Sequence[Verdict]) -> Verdict | None:
    for verdict in verdicts:
        if verdict.result and verdict.result.target is requirement:
            return verdict
        if verdict.clash and requirement in verdict.clash.members:
            return verdict
    return None
