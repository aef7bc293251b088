"""All areas of a job: clashes, results that the rest must assure, limits that cannot bind."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace

from specwriter.diagnostic import NotRun
from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.assure import check_result, producer, rest_of, unknown_inputs
from specwriter.reconcile.clash import Clash, search
from specwriter.reconcile.idle import allowed_by, idle_limit
from specwriter.reconcile.registry import all_waits, relations_for
from specwriter.reconcile.relation import Relation
from specwriter.reconcile.requirement import Requirement, and_list, read
from specwriter.reconcile.solve import component, connected
from specwriter.reconcile.tighten import needed_of, tightenings
from specwriter.reconcile.variables import label
from specwriter.reconcile.verdict import AreaVerdicts, Outcome, Reconciliation, Standing, Verdict


def reconcile(job: Job) -> Reconciliation:
    """The verdicts on every area, and which relations could not look."""
    return Reconciliation(areas=tuple(_area(job, area) for area in job.areas.values()))


@dataclass(frozen=True, slots=True, kw_only=True)
class _System:
    """Requirements and relations of one area; ``exact`` are those that can prove."""

    area: str
    requirements: tuple[Requirement, ...]
    relations: tuple[Relation, ...]
    exact: tuple[Relation, ...] = field(default=())


def _area(job: Job, area: Area) -> AreaVerdicts:
    requirements = read(job, area)
    relations = connected([each.variable for each in requirements], relations_for(job, area))
    system = _System(
        area=area.id,
        requirements=requirements,
        relations=relations,
        exact=tuple(each for each in relations if each.kind == "exact"),
    )
    clashes, left = _clashes(system)
    rest = replace(system, requirements=left)
    verdicts = [*clashes, *_results(rest, clashes)]
    table, idle = _table(system, left, verdicts)
    return AreaVerdicts(
        area=area.id,
        verdicts=(*verdicts, *idle),
        table=table,
        not_run=(*_unread(job, area), *_not_run(system)),
        ran=tuple(_ran(system)),
    )


def _clashes(system: _System) -> tuple[list[Verdict], tuple[Requirement, ...]]:
    """What cannot hold together, proved or by experience, and what is left without it."""
    hard = search(system.requirements, system.exact)
    found = [_clash(system, "impossible", each) for each in hard.clashes]
    if not hard.decided:
        found.append(Verdict(area=system.area, outcome="not decided"))
    if not hard.clashes:
        found += [_clash(system, "impossible", each) for each in _nominal(system)]
    tied = _tied_to_soft(system.relations)
    soft = search([each for each in hard.left if each.variable in tied], system.relations)
    found += [_clash(system, "not expected", each) for each in soft.clashes]
    apart = [each for each in hard.left if each.variable not in tied]
    return found, (*apart, *soft.left)


def _tied_to_soft(relations: Sequence[Relation]) -> set[str]:
    """The variables that a relation with scatter reaches, directly or through others."""
    tied: set[str] = set()
    for each in relations:
        if each.kind != "exact" and not tied.intersection(each.variables):
            tied.update(name for one in component(each.output, relations) for name in one.variables)
    return tied


def _clash(system: _System, outcome: Outcome, clash: Clash) -> Verdict:
    return Verdict(area=system.area, outcome=outcome, clash=clash)


def _nominal(system: _System) -> Iterator[Clash]:
    """Clashes of the nominal dimensions, where only the edges of their tolerances meet."""
    dimensions = [each for each in system.requirements if each.role != "result"]
    if all(each.quantity.form != "tolerance" for each in dimensions):
        return
    by_path = {each.path: each for each in dimensions}
    for clash in search([each.at_nominal() for each in dimensions], system.exact).clashes:
        members = tuple(by_path[each.path] for each in clash.members)
        yield replace(clash, members=members, nominal_only=True)


def _results(system: _System, clashes: Sequence[Verdict]) -> Iterator[Verdict]:
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
        rest = rest_of(target, system.requirements, system.relations)
        if unknown_inputs(relation, rest):
            continue
        outcome, check = check_result(target, relation, rest)
        if outcome == "not assured":
            check = replace(check, tightenings=tightenings(check, rest))
            if check.missing:
                needed = needed_of(check.missing, dict(check.witness), check, rest)
                check = replace(check, missing_needed=needed.low if needed else None)
        yield Verdict(area=system.area, outcome=outcome, result=check)


def _table(
    system: _System, left: Sequence[Requirement], verdicts: Sequence[Verdict]
) -> tuple[tuple[Standing, ...], tuple[Verdict, ...]]:
    """What every requirement is left by the others, and the limits that are idle."""
    rows: list[Standing] = []
    idle: list[Verdict] = []
    tied = {name for each in system.relations for name in each.variables}
    counts = Counter(each.variable for each in system.requirements)
    clashing = any(each.clash for each in verdicts)
    for each in system.requirements:
        if each.variable not in tied and counts[each.variable] == 1:
            continue
        others = [one for one in left if one is not each]
        allowed = allowed_by(others, each.variable, system.exact)
        verdict = _verdict_on(each, verdicts)
        if verdict is None and not clashing:
            found = idle_limit(each, system.requirements, system.exact, allowed)
            if found:
                verdict = Verdict(area=system.area, outcome="idle", idle=found)
                idle.append(verdict)
        outcome: Outcome = "not decided" if clashing and each.role == "result" else "holds"
        outcome = verdict.outcome if verdict else outcome
        rows.append(
            Standing(
                requirement=each,
                allowed=_shown(each, allowed, verdict),
                outcome=outcome,
                verdict=verdict,
            )
        )
    return tuple(rows), tuple(idle)


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


def _unread(job: Job, area: Area) -> Iterator[NotRun]:
    """What the job states and no reader could turn into a requirement."""
    for topic, waits in all_waits():
        for because in dict.fromkeys(waits(job, area)):
            title = f"{topic.replace('-', ' ')} against the rest"
            yield NotRun(slug=topic, title=title, area=area.id, because=because)


def _ran(system: _System) -> Iterator[str]:
    """Relations with two values or more to hold against each other, and results judged."""
    stated = {each.variable for each in system.requirements}
    for relation in system.relations:
        if len(stated.intersection(relation.variables)) >= 2:
            yield relation.slug
            if relation.assures and relation.output in stated:
                yield relation.assures.slug


def _not_run(system: _System) -> Iterator[NotRun]:
    """Relations that wait for a value: all but one is unknown, or a result has no inputs."""
    stated = {each.variable for each in system.requirements}
    for relation in system.relations:
        known = [name for name in relation.variables if name in stated]
        absent = [
            name
            for name in relation.variables
            if name not in stated and name not in relation.optional
        ]
        waits = len(known) == 1 and len(absent) >= 2 and relation.kind == "exact"
        target = relation.output in stated and relation.assures
        if target and any(name != relation.output for name in absent):
            rest = rest_of(_of(system, relation.output), system.requirements, system.relations)
            absent = list(unknown_inputs(relation, rest))
            waits = bool(absent)
        if waits:
            yield NotRun(
                slug=relation.assures.slug if target and relation.assures else relation.slug,
                title=relation.statement,
                area=system.area,
                because=f"{and_list([label(name) for name in absent])} "
                f"{'is' if len(absent) == 1 else 'are'} not given",
            )


def _of(system: _System, variable: str) -> Requirement:
    return next(each for each in system.requirements if each.variable == variable)
