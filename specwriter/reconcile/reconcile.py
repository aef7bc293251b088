"""All areas of a job: clashes, results that the rest must assure, limits that cannot bind."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import cache

from specwriter.diagnostic import NotRun
from specwriter.model import Area, Job, at_area
from specwriter.model.labels import and_list
from specwriter.reconcile.assure import unknown_inputs
from specwriter.reconcile.judge import judge
from specwriter.reconcile.registry import all_relations, all_waits
from specwriter.reconcile.relation import Function, Relation, nowhere
from specwriter.reconcile.rest import rest_of
from specwriter.reconcile.system import System, parts_of, system_of
from specwriter.reconcile.variables import label
from specwriter.reconcile.verdict import AreaVerdicts, Reconciliation


def reconcile(job: Job) -> Reconciliation:
    """The verdicts on every area, and which relations could not look."""
    return Reconciliation(
        areas=tuple(_area(at_area(job, area), area) for area in job.areas.values())
    )


def _area(job: Job, area: Area) -> AreaVerdicts:
    system = system_of(job, area)
    parts = [judge(part) for part in parts_of(system)]
    return AreaVerdicts(
        area=area.id,
        judged=tuple(each for part in parts for each in part.verdicts),
        rows=lambda: (row for part in parts for row in part.table()),
        not_run=(*_unread(job, area), *_aside(job, area), *_not_run(system)),
        ran=tuple(_ran(system)),
    )


def _unread(job: Job, area: Area) -> Iterator[NotRun]:
    """What the job states and no reader could turn into a requirement."""
    for topic, waits in all_waits():
        for because in dict.fromkeys(waits(job, area)):
            title = f"{topic.replace('-', ' ')} against the rest"
            aside = not because.endswith("not given")
            yield NotRun(slug=topic, title=title, area=area.id, because=because, aside=aside)


@cache
def _with_an_end() -> tuple[Relation, ...]:
    """The relations that do not hold for every value; one of those that ask the same."""
    some = (each for each in all_relations() if each.aside is not nowhere)
    return tuple({(each.slug, each.aside): each for each in some}.values())


def _aside(job: Job, area: Area) -> Iterator[NotRun]:
    """Relations that do not hold for the values of the job; those of one name tell each reason
    once."""
    told: set[tuple[str, str]] = set()
    for relation in _with_an_end():
        because = relation.aside(job, area)
        if because and (relation.slug, because) not in told:
            told.add((relation.slug, because))
            yield NotRun(
                slug=relation.slug,
                title=relation.title,
                area=area.id,
                because=because,
                aside=True,
            )


def _ran(system: System) -> Iterator[str]:
    """Relations with two values or more to hold against each other, and results judged."""
    stated = {each.variable for each in system.requirements}
    for relation in system.relations:
        if len(stated.intersection(relation.variables)) >= 2:
            yield relation.slug
            if relation.assures and relation.output in stated:
                yield relation.assures.slug


def _not_run(system: System) -> Iterator[NotRun]:
    """Relations that wait for a value: all but one is unknown, or a result has no inputs."""
    stated = {each.variable: each for each in system.requirements}
    known_names = {*stated, *_computed(system.relations, {*stated})}
    for relation in system.relations:
        absent = [
            name
            for name in relation.variables
            if name not in known_names and name not in relation.optional
        ]
        known = sum(name in known_names for name in relation.variables)
        slug, waits = relation.slug, known == 1 and len(absent) >= 2 and relation.kind == "exact"
        if relation.assures and relation.output in stated and absent:
            target = stated[relation.output]
            rest = rest_of(target, system.requirements, system.relations, exact=False)
            absent = list(unknown_inputs(relation, rest))
            slug, waits = relation.assures.slug, bool(absent)
        if waits:
            verb = "is" if len(absent) == 1 else "are"
            yield NotRun(
                slug=slug,
                title=relation.statement,
                area=system.area,
                because=f"{and_list([label(name) for name in absent])} {verb} not given",
            )


def _computed(relations: Sequence[Relation], stated: set[str]) -> Iterator[str]:
    """What follows from stated values by one formula."""
    for relation in relations:
        if isinstance(relation.shape, Function) and stated.issuperset(relation.shape.inputs):
            yield relation.output
