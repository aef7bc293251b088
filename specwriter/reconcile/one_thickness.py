"""The relation behind a blade set of which only one thickness is given."""

from __future__ import annotations

from typing import Literal

from specwriter.model import Area, Job
from specwriter.reconcile.relation import Linear, Relation


def one_thickness(
    slug: str, noun: Literal["blade", "flush_grind"], name: str, land: str
) -> list[Relation]:
    """Core and cutting segment of ``noun`` are equal where the job gives just one of them.

    Then ``land`` is the spacer; said apart, because intervals do not see that a thickness that
    stands twice in one sum cancels out.
    """

    def is_alone(job: Job, area: Area) -> bool:
        blades = getattr(area, noun)
        return (
            blades is not None
            and blades.spacer is not None
            and (blades.core is None) != (blades.segment is None)
        )

    return [
        Relation(
            slug=slug,
            title="blade thickness and pattern disagree",
            statement=(
                "one blade thickness given alone beside a spacer is read as both the core and the "
                "cutting segment"
            ),
            shape=Linear({first: 1, second: -1}),
            source="common practice, no source",
            validity=f"a job that gives the core or the cutting segment of the {name}, not both",
            applies=is_alone,
        )
        for first, second in ((f"{noun}.core", f"{noun}.segment"), (land, f"{noun}.spacer"))
    ]
