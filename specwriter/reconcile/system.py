"""The requirements and relations of an area, and the parts of them that do not touch."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from specwriter.model import Area, Job
from specwriter.reconcile.connected import connected
from specwriter.reconcile.registry import all_relations
from specwriter.reconcile.relation import Relation
from specwriter.reconcile.requirement import Requirement, read
from specwriter.reconcile.solve import seems_solvable


@dataclass(frozen=True, slots=True, kw_only=True)
class System:
    """Requirements and relations that have to do with one another."""

    area: str
    requirements: tuple[Requirement, ...]
    relations: tuple[Relation, ...]

    @property
    def exact(self) -> tuple[Relation, ...]:
        """The relations that can prove."""
        return tuple(each for each in self.relations if each.kind == "exact")

    def is_sound(self, *, exact: bool) -> bool:
        """True when one choice meets everything, at the nominal values.

        Then nothing clashes; the search for the reasons of a clash need not begin.
        """
        nominal = [each.at_nominal(exact=exact) for each in self.requirements]
        return seems_solvable(nominal, self.relations, exact=exact)


def system_of(job: Job, area: Area) -> System:
    """All that the job states on an area, and the relations that bear on it."""
    requirements = read(job, area)
    stated = {each.variable for each in requirements}
    near = connected(stated, all_relations())
    relations = connected(stated, [each for each in near if each.applies(job, area)])
    return System(area=area.id, requirements=requirements, relations=relations)


def parts_of(system: System) -> Iterator[System]:
    """The system in parts that share no variable; requirements that nothing bears on are left
    out."""
    groups: list[tuple[set[str], list[Relation]]] = []
    for relation in system.relations:
        names, inside = set(relation.variables), [relation]
        for group in [each for each in groups if names & each[0]]:
            names |= group[0]
            inside = group[1] + inside
            groups.remove(group)
        groups.append((names, inside))
    tied = {name for names, _ in groups for name in names}
    alone = dict.fromkeys(
        each.variable for each in system.requirements if each.variable not in tied
    )
    for names, inside in [*groups, *(({name}, []) for name in alone)]:
        stated = tuple(each for each in system.requirements if each.variable in names)
        bound_alone = any(len(each.variables) == 1 for each in inside)
        if len(stated) > 1 or (stated and bound_alone):
            yield System(area=system.area, requirements=stated, relations=tuple(inside))
