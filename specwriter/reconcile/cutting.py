"""Relations of what is left under the blades: so much was there, so much is cut away."""

from __future__ import annotations

from collections.abc import Callable

from specwriter.model import Area, Job
from specwriter.reconcile.relation import Linear, Relation, Unassured
from specwriter.reconcile.requirement import sources

GROUND = ("diamond_grinding", "next_generation_concrete_surface")
GROOVED = (
    "longitudinal_grooving",
    "transverse_grooving",
    "next_generation_concrete_surface",
    "runway_grooving",
)


def removal_is_stated(area: Area) -> bool:
    """True where some document caps the depth of removal."""
    return any(
        each.removal is not None and each.removal.depth is not None for each in sources(area)
    )


def is_ground(area: Area) -> bool:
    """True where the surface between the grooves is cut too."""
    return area.texture in GROUND or removal_is_stated(area)


def left_after(
    slug: str,
    left: str,
    before: str,
    words: tuple[str, str],
    source: str,
    why: str,
    *,
    grooves: bool = True,
) -> list[Relation]:
    """``left = before - removal - groove depth``, with the terms that the texture has.

    ``words`` name what is left and what was there. Without ``grooves`` their depth does not count.
    """
    kinds = [(True, False), (False, True), (True, True)] if grooves else [(True, False)]
    return [
        _one(slug, left, before, words, source, why, ground, grooved, grooves)
        for ground, grooved in kinds
    ]


def _one(
    slug: str,
    left: str,
    before: str,
    words: tuple[str, str],
    source: str,
    why: str,
    ground: bool,
    grooved: bool,
    grooves: bool,
) -> Relation:
    cuts = ["removal.depth"] * ground + ["groove.depth"] * grooved
    names = " - ".join(["depth of removal"] * ground + ["groove depth"] * grooved)
    return Relation(
        slug=f"{slug}-out-of-reach",
        title=f"the {words[0]} cannot be kept",
        statement=f"{words[0]} = {words[1]} - {names}",
        shape=Linear({left: 1, before: -1} | dict.fromkeys(cuts, 1)),
        why=why,
        source=source,
        validity="where everything that is allowed is cut; removal is measured to the new surface",
        applies=_applies(ground, grooved, grooves),
        assures=Unassured(
            slug=f"{slug}-not-assured", title=f"the limits on cutting do not keep the {words[0]}"
        ),
    )


def _applies(ground: bool, grooved: bool, grooves: bool) -> Callable[[Job, Area], bool]:
    def applies(job: Job, area: Area) -> bool:
        if not grooves:
            return is_ground(area)
        return is_ground(area) is ground and (area.texture in GROOVED) is grooved

    return applies
