"""Texture depth at the end of life: the initial depth less the loss that was published."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.relation import Linear, Relation, Unassured
from specwriter.reconcile.requirement import sources
from specwriter.trade.wear import LOSS_MM, PUBLISHED_LOSS

INITIAL, END = "texture_depth.initial", "texture_depth.end_of_life"
_MM = Fraction(1, 1000)
_WHY = (
    "Traffic wears the lands down. Where the texture at the start is hardly more than that at the "
    "end of life, the surface is worn out years before it should be."
)


def _applies(texture: str) -> Callable[[Job, Area], bool]:
    def applies(job: Job, area: Area) -> bool:
        return area.texture == texture

    return applies


def _aside(job: Job, area: Area) -> str:
    depth = area.texture_depth
    if area.texture in LOSS_MM or depth is None or depth.end_of_life_at_least is None:
        return ""
    return f"no loss of texture in service is published for {area.texture.replace('_', ' ')}"


def _relation(texture: str, loss: Interval) -> Relation:
    assert loss.low is not None
    assert loss.high is not None
    low, high = float(loss.low), float(loss.high)
    return Relation(
        slug="texture-depth-at-end-of-life",
        title="texture depth at the start and at the end of life do not go together",
        statement=(
            f"texture depth at end of life = initial texture depth - {low:g} to {high:g} mm "
            f"({texture.replace('_', ' ')})"
        ),
        shape=Linear(
            {END: 1, INITIAL: -1},
            Interval(-loss.high * _MM, -loss.low * _MM),
        ),
        why=_WHY,
        source=PUBLISHED_LOSS.source,
        validity=PUBLISHED_LOSS.validity,
        kind="model",
        applies=_applies(texture),
        aside=_aside,
        assures=Unassured(
            slug="end-of-life-texture-not-assured",
            title="the initial texture depth does not assure that at the end of life",
        ),
    )


def _of_dimensions(job: Job, area: Area) -> bool:
    depths = [each.texture_depth for each in sources(area) if each.texture_depth is not None]
    return all(each.at_least is None for each in depths)


AS_CUT = Relation(
    slug="texture-depth-at-end-of-life",
    title="texture depth at the start and at the end of life do not go together",
    statement="initial texture depth = texture depth as it is cut, where no limit is set on it",
    shape=Linear({INITIAL: 1, "texture_depth": -1}),
    why=_WHY,
    source=PUBLISHED_LOSS.source,
    validity="where nothing but the end of life is limited",
    kind="model",
    about=(END,),
    applies=_of_dimensions,
)
NO_GAIN = Relation(
    slug="texture-depth-at-end-of-life",
    title="texture depth at the start and at the end of life do not go together",
    statement="texture depth at end of life is at most the initial texture depth",
    shape=Linear({END: 1, INITIAL: -1}, Interval(None, Fraction(0))),
    why=_WHY,
    source="common practice, no source: traffic wears grooves and lands down, it does not cut them",
    validity="textures of which no loss in service is published",
    kind="model",
    applies=lambda job, area: area.texture not in LOSS_MM,
)
RELATIONS = [*(_relation(*each) for each in LOSS_MM.items()), AS_CUT, NO_GAIN]
