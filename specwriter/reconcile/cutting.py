"""Relations of what is left under the blades: so much was there, so much is cut away."""

from __future__ import annotations

from dataclasses import replace

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
    given = Relation(
        slug=f"{slug}-out-of-reach",
        title=f"the {words[0]} cannot be kept",
        statement=f"{words[0]} = {words[1]}",
        shape=Linear({left: 1, before: -1}),
        why=why,
        source=source,
        validity="where everything that is allowed is cut; removal is measured to the new surface",
    )
    unassured = Unassured(
        slug=f"{slug}-not-assured", title=f"the limits on cutting do not keep the {words[0]}"
    )
    kinds = [(True, False), (False, True), (True, True)] if grooves else [(True, False)]
    return [
        _one(given, unassured if judged else None, ground, grooved, grooves)
        for ground, grooved in kinds
        for judged in (True, False)
        if ground or judged
    ]


def _one(
    given: Relation, assures: Unassured | None, ground: bool, grooved: bool, grooves: bool
) -> Relation:
    """The relation with its cuts; what is left is judged (``assures``) where removal is capped.

    Without a cap what must be left is the limit on removal itself.
    """
    cuts = ["removal.depth"] * ground + ["groove.depth"] * grooved
    names = ["depth of removal"] * ground + ["groove depth"] * grooved
    assert isinstance(given.shape, Linear)

    def applies(job: Job, area: Area) -> bool:
        if grooves and (is_ground(area), area.texture in GROOVED) != (ground, grooved):
            return False
        capped = not ground or removal_is_stated(area)
        return is_ground(area) is ground and capped is (assures is not None)

    return replace(
        given,
        statement=" - ".join([given.statement, *names]),
        shape=Linear({**given.shape.factors, **dict.fromkeys(cuts, 1)}),
        applies=applies,
        assures=assures,
    )
