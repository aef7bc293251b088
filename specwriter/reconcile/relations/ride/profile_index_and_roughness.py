"""A limit of the profile index beside one of the roughness index: not of one quality."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.readers.ride import PROFILE, ROUGHNESS
from specwriter.reconcile.relation import Linear, Relation, Unassured
from specwriter.reconcile.relations.ride import WHY_TWO_LIMITS
from specwriter.reconcile.stated_ride import most
from specwriter.trade.ride.profilograph import FITS, SIMULATED, Fit

_IN_MI = Fraction(1, 63360)


def _side(fit: Fit, job: Job, area: Area) -> int:
    """1 where the line puts the profile index above the roughness index, -1 below, 0 unknown."""
    profile, roughness = most(job, area, PROFILE[fit.band]), most(job, area, ROUGHNESS)
    if profile is None or roughness is None:
        return 0
    return 1 if fit.iri(float(profile / _IN_MI)) > float(roughness / _IN_MI) else -1


def _surface(fit: Fit, side: int, job: Job, area: Area) -> float:
    """Roughness in in/mi of the surface at which the line is read: of the looser limit."""
    profile, roughness = most(job, area, PROFILE[fit.band]), most(job, area, ROUGHNESS)
    assert profile is not None
    assert roughness is not None
    return fit.iri(float(profile / _IN_MI)) if side > 0 else float(roughness / _IN_MI)


def _is_known(fit: Fit, side: int, job: Job, area: Area) -> bool:
    low, high = SIMULATED
    return low <= _surface(fit, side, job, area) <= high


def _applies(fit: Fit, side: int) -> Callable[[Job, Area], bool]:
    return lambda job, area: _side(fit, job, area) == side and _is_known(fit, side, job, area)


def _aside(fit: Fit, side: int) -> Callable[[Job, Area], str]:
    def aside(job: Job, area: Area) -> str:
        if _side(fit, job, area) != side or _is_known(fit, side, job, area):
            return ""
        low, high = SIMULATED
        return f"profile and roughness index are compared here from {low} to {high} in/mi only"

    return aside


def _relation(fit: Fit, side: int) -> Relation:
    """The line of a band, judged at the edge of its scatter that favours the job."""
    slope, offset = Fraction(str(fit.slope)), Fraction(str(fit.offset)) * _IN_MI
    reach = 2 * Fraction(str(fit.error)) * _IN_MI
    terms: list[tuple[str, int | Fraction]] = [(ROUGHNESS, 1), (PROFILE[fit.band], -slope)]
    factors = dict(terms[::side])
    edge = offset - side * reach
    output = "roughness" if side > 0 else "profile"
    return Relation(
        slug="profile-index-and-roughness",
        title="profile index and roughness index are not of one quality",
        statement=(
            f"roughness index = {fit.slope} x profile index + {fit.offset} in/mi, give or take "
            f"{2 * fit.error:.1f} in/mi, with a blanking band of {fit.band} in"
        ),
        shape=Linear(factors, Interval(None, None)),
        nominal=Linear(factors, Interval(edge, edge)),
        why=WHY_TWO_LIMITS,
        source="project calculation: profilograph and quarter-car over the same random profiles",
        validity=(
            "a screen for random surfaces of {} to {} in/mi; two standard errors are granted; "
            "there is no conversion".format(*SIMULATED)
        ),
        kind="model",
        assures=Unassured(
            slug=f"{output}-index-stricter-than-its-partner",
            title="profile index and roughness index are not of one quality",
        ),
        applies=_applies(fit, side),
        aside=_aside(fit, side),
    )


RELATIONS = [_relation(fit, side) for fit in FITS for side in (1, -1)]
