"""One surface heard beside the tyre and at the roadside."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from typing import Literal

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.readers import noise
from specwriter.reconcile.relation import Linear, Relation, Unassured
from specwriter.reconcile.relations.noise import WHY
from specwriter.trade import sound


def _applies(variable: str) -> Callable[[Job, Area], bool]:
    def applies(job: Job, area: Area) -> bool:
        stated = {each.variable for each in noise.read(job, area)}
        return {variable, noise.SOURCE} <= stated

    return applies


def _relation(feet: Literal[25, 50]) -> Relation:
    level, deviation = sound.roadside(0, feet)
    offset, reach = Fraction(str(level)), 2 * Fraction(str(deviation))
    factors = {noise.ROADSIDE[feet]: 1, noise.SOURCE: -1}
    return Relation(
        slug="noise-at-the-roadside",
        title="the noise limits beside the tyre and at the roadside are not of one quality",
        statement=(
            f"a light vehicle at {feet} ft is {-level} dB(A) quieter than OBSI, give or take "
            f"{float(reach):g} dB(A)"
        ),
        shape=Linear(factors, Interval(offset - reach, offset + reach)),
        nominal=Linear(factors, Interval(offset - reach, offset - reach)),
        why=WHY,
        source=sound.ROADSIDE.source,
        validity=f"{sound.ROADSIDE.validity}; two standard deviations are granted",
        kind="model",
        assures=Unassured(
            slug="roadside-limit-stricter-than-the-source",
            title="the roadside limit asks for more than the limit beside the tyre",
        ),
        applies=_applies(noise.ROADSIDE[feet]),
    )


RELATIONS = [_relation(25), _relation(50)]
