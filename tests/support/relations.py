"""The relations that hold in an area, near its requirements or not."""

from __future__ import annotations

from specwriter.model import Area, Job
from specwriter.reconcile.registry import all_relations
from specwriter.reconcile.relation import Relation


def relations_for(job: Job, area: Area) -> tuple[Relation, ...]:
    """All of them, so that a law is judged on more than the program looks at."""
    return tuple(relation for relation in all_relations() if relation.applies(job, area))
