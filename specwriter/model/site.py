"""The job as it stands at one area: the facts of the area laid over those of the contract."""

from __future__ import annotations

from dataclasses import dataclass, fields, replace
from typing import Any

from specwriter.model.area import Area
from specwriter.model.conditions import Conditions, PavementFacts, PlaceFacts
from specwriter.model.job import Job
from specwriter.model.node import Node


@dataclass(frozen=True, slots=True, kw_only=True)
class _LaidOver(Conditions):
    """Facts of which some stand under the area (``path``) and the rest in the contract."""

    of_contract: frozenset[str]

    def path_to(self, key: str) -> str:
        return f"conditions.{key}" if key in self.of_contract else f"{self.path}.{key}"


def at_area(job: Job, area: Area) -> Job:
    """The job with the conditions that hold at an area.

    An area on another kind of pavement takes no fact about the contract's pavement: neither
    thickness nor joints, steel, stone, age or evenness.
    """
    if area.conditions is None:
        return job
    return replace(job, conditions=_laid_over(area.conditions, job.conditions))


def sites_of(job: Job) -> tuple[Job, ...]:
    """The job once for each set of facts that its areas lie on, with those areas only."""
    groups: dict[object, list[Area]] = {}
    for area in job.areas.values():
        groups.setdefault(_content(area.conditions), []).append(area)
    return tuple(
        replace(at_area(job, areas[0]), areas={area.id: area for area in areas})
        for areas in groups.values()
    )


def _laid_over(own: PlaceFacts, contract: Conditions) -> Conditions:
    stated = {each.name for each in fields(PlaceFacts) if getattr(own, each.name) is not None}
    mine = stated | {"path"}
    if own.pavement and contract.pavement and own.pavement != contract.pavement:
        mine |= {each.name for each in fields(PavementFacts)}
    every = {each.name for each in fields(Conditions)}
    values: dict[str, Any] = {
        name: getattr(own if name in mine else contract, name) for name in every
    }
    return _LaidOver(**values, of_contract=frozenset(every - mine))


def _content(node: Node | None) -> object:
    """What a noun says, without where it stands."""
    if node is None:
        return None
    values = (getattr(node, each.name) for each in fields(node) if each.name != "path")
    return tuple(_content(value) if isinstance(value, Node) else value for value in values)
