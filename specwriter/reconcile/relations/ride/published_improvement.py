"""An improvement that nobody has reported from grinding."""

from __future__ import annotations

from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.cutting import GROUND
from specwriter.reconcile.readers.ride import IMPROVEMENT
from specwriter.reconcile.relation import Linear, Relation
from specwriter.reconcile.stated_ride import demanded
from specwriter.trade.ride.improvement import BEST, CALIFORNIA, TEXAS, USUAL_BEST


def _relation(
    slug: str, title: str, most: float, words: str, why: str, *, beyond_best: bool
) -> Relation:
    def applies(job: Job, area: Area) -> bool:
        asked = demanded(job, area)
        return area.texture in GROUND and asked is not None and (asked > BEST) is beyond_best

    return Relation(
        slug=slug,
        title=title,
        statement=f"improvement of the index is at most {most:.0%} ({words})",
        shape=Linear({IMPROVEMENT: 1}, Interval(Fraction(0), Fraction(round(100 * most), 100))),
        why=why,
        source=f"{CALIFORNIA.source}; {TEXAS.source}",
        validity="what has been reported from jointed concrete pavement, not what can be proved",
        kind="experience",
        applies=applies,
    )


RELATIONS = [
    _relation(
        "improvement-beyond-what-is-published",
        "more improvement than has been reported from grinding",
        BEST,
        "the best that has been published",
        "Grinding takes off what stands up; it does not fill what lies low. A reduction that no "
        "project has reported is promised by the contract and delivered by nobody.",
        beyond_best=True,
    ),
    _relation(
        "improvement-at-the-edge-of-what-is-published",
        "an improvement that few grinding projects have reached",
        USUAL_BEST,
        f"the best of eleven projects; {BEST:.0%} is the best published anywhere",
        "Few projects have reached such a reduction. Bidders who know that add money, the others "
        "add claims.",
        beyond_best=False,
    ),
]
