"""The relation behind a blade set of which only one thickness is given."""

from __future__ import annotations

from dataclasses import replace
from typing import Literal

from specwriter.model import Area, Job
from specwriter.reconcile.relation import Linear, Relation
from specwriter.reconcile.requirement import cut_is_stated


def one_thickness(
    slug: str, noun: Literal["blade", "flush_grind"], name: str, land: str
) -> list[Relation]:
    """Core and cutting segment of ``noun`` are equal where the job gives just one of them.

    Then ``land`` is the spacer, unless the cut is wider than the segment.
    """

    def is_alone(job: Job, area: Area) -> bool:
        blades = getattr(area, noun)
        return (
            blades is not None
            and blades.spacer is not None
            and (blades.core is None) != (blades.segment is None)
        )

    def sets_the_land(job: Job, area: Area) -> bool:
        return is_alone(job, area) and (noun == "flush_grind" or not cut_is_stated(area))

    both = Relation(
        slug=slug,
        title="blade thickness and pattern disagree",
        statement=(
            "one blade thickness given alone beside a spacer is read as both the core and the "
            "cutting segment"
        ),
        shape=Linear({f"{noun}.core": 1, f"{noun}.segment": -1}),
        why=(
            "A blade has two thicknesses: the core that the spacer touches, and the wider rim that "
            "cuts. Where only one is given, the other is taken to be equal; if the figures then "
            "clash, mostly core and rim were mixed up."
        ),
        source="common practice, no source",
        validity=f"a job that gives the core or the cutting segment of the {name}, not both",
        applies=is_alone,
    )
    lands = replace(
        both,
        statement="blades of one thickness leave lands as wide as the spacer",
        shape=Linear({land: 1, f"{noun}.spacer": -1}),
        applies=sets_the_land,
    )
    return [both, lands]
