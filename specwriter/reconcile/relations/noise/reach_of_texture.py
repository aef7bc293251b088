"""A noise limit against the quietest level that the texture has been seen to reach."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.relation import Linear, Relation
from specwriter.trade.sound import BANDS, Band


def _applies(texture: str) -> Callable[[Job, Area], bool]:
    def applies(job: Job, area: Area) -> bool:
        return area.texture == texture

    return applies


def _relation(texture: str, band: Band) -> Relation:
    return Relation(
        slug="noise-limit-out-of-reach",
        title="the texture has not been seen to be so quiet",
        statement=(
            f"{texture.replace('_', ' ')} reaches {band.quietest} dB(A) at the source when new and "
            f"quiet, {band.loudest} dB(A) when aged or loud"
        ),
        shape=Linear({"noise.level": 1}, Interval(Fraction(band.quietest), None)),
        source=band.source,
        validity="levels beside the tyre (OBSI) at 60 mph; what was reported, from memory",
        kind="experience",
        applies=_applies(texture),
    )


RELATIONS = [_relation(*each) for each in BANDS.items()]
