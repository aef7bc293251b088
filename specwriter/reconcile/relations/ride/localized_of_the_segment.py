"""The worst 25 ft of a segment that just passes."""

from __future__ import annotations

from fractions import Fraction

from specwriter.quantity import Interval
from specwriter.reconcile.readers.ride import LOCALIZED, ROUGHNESS
from specwriter.reconcile.relation import Linear, Relation, Unassured
from specwriter.reconcile.stated_ride import segment_breaks_localized
from specwriter.trade.ride.lengths import WORST_ERROR, WORST_OVER_SEGMENT

_RATIO, _ERROR = Fraction(str(WORST_OVER_SEGMENT)), Fraction(str(WORST_ERROR))

RELATION = Relation(
    slug="localized-of-the-segment",
    title="localized limit and segment limit do not go together",
    statement=f"the worst 25 ft of a segment is about {WORST_OVER_SEGMENT} x its roughness index",
    shape=Linear({LOCALIZED: 1, ROUGHNESS: _ERROR - _RATIO}, Interval(Fraction(0), None)),
    nominal=Linear({LOCALIZED: 1, ROUGHNESS: -_RATIO}),
    source="project calculation: median over segments of 0.1 mi of random surfaces",
    validity=(
        "surfaces without single bumps; half of all segments have a worse 25 ft, the ratio moves "
        "by 0.1 with the kind of surface"
    ),
    kind="model",
    assures=Unassured(
        slug="segment-that-passes-breaks-the-localized-limit",
        title="a segment that just passes breaks the localized limit",
    ),
    applies=segment_breaks_localized,
)
