"""The relation behind a blade set of which only one thickness is given."""

from __future__ import annotations

from typing import Literal

from specwriter.model import Area, Job
from specwriter.reconcile.relation import Linear, Relation


def one_thickness(slug: str, noun: Literal["blade", "flush_grind"], name: str) -> Relation:
    """Core and cutting segment of ``noun`` are equal where the job gives just one of them."""

    def is_alone(job: Job, area: Area) -> bool:
        blades = getattr(area, noun)
        return (
            blades is not None
            and blades.spacer is not None
            and (blades.core is None) != (blades.segment is None)
        )

    return Relation(
        slug=slug,
        title="blade thickness and pattern disagree",
        statement=(
            "one blade thickness given alone beside a spacer is read as both the core and the "
            "cutting segment"
        ),
        shape=Linear({f"{noun}.core": 1, f"{noun}.segment": -1}),
        source="common practice, no source",
        validity=f"a job that gives the core or the cutting segment of the {name}, not both",
        applies=is_alone,
    )
