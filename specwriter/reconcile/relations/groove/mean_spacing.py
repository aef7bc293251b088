"""The mean spacing of a random pattern, of which a share is close.

For everything that is judged over a length of many spacings, the pattern is one of uniform
grooves at the mean: the grooves of the length hold their volume whatever their order.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction
from typing import Any

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.relation import Function, Linear, Relation
from specwriter.reconcile.requirement import is_random, sources

MEAN, SHARE = "groove.spacing", "groove.close_share"
CLOSE, GREATEST = "groove.close_spacing", "groove.greatest_spacing"


def is_random_pattern(job: Job, area: Area) -> bool:
    """True where some document asks for a share of close spacings."""
    return any(is_random(each) for each in sources(area))


def value(at: Mapping[str, Any]) -> Any:
    """The share at the mean of the close spacings, the rest at the mean of the others."""
    return at[SHARE] * at[CLOSE] + (1 - at[SHARE]) * at[GREATEST]


def signs(at: Mapping[str, Interval]) -> dict[str, int | None]:
    """A greater share of close spacings brings the mean down where they are the closer ones."""
    close, greatest = at[CLOSE].high, at[GREATEST].low
    closer = close is not None and greatest is not None and close <= greatest
    share = at[SHARE].high
    return {SHARE: -int(closer), CLOSE: 1, GREATEST: int(share is not None and share <= 1)}


def _share(mean: Any, at: Mapping[str, Any]) -> Any:
    return (at[GREATEST] - mean) / (at[GREATEST] - at[CLOSE])


def _close(mean: Any, at: Mapping[str, Any]) -> Any:
    return (mean - (1 - at[SHARE]) * at[GREATEST]) / at[SHARE]


def _greatest(mean: Any, at: Mapping[str, Any]) -> Any:
    return (mean - at[SHARE] * at[CLOSE]) / (1 - at[SHARE])


RELATION_OF_MEANS = Relation(
    slug="mean-spacing-of-the-pattern",
    title="the random pattern does not have its mean spacing",
    statement=(
        "mean spacing of a random pattern = share x close spacing + (1 - share) x other spacing; "
        "the close ones and the others go up to what is written"
    ),
    shape=Function(
        output=MEAN,
        inputs=(SHARE, CLOSE, GREATEST),
        value=value,
        signs=signs,
        inverses={SHARE: _share, CLOSE: _close, GREATEST: _greatest},
    ),
    source="arithmetic",
    why=(
        "A random pattern is tested and drained by its mean: a closer share and a wider mean "
        "cannot both be cut."
    ),
    validity="random patterns of which a share must be close, over a length of many spacings",
    applies=is_random_pattern,
)
OTHERS_ARE_WIDER = replace(
    RELATION_OF_MEANS,
    statement="the spacings that are not close are wider than the close ones",
    shape=Linear({GREATEST: 1, CLOSE: -1}, Interval(Fraction(0), None)),
)
SHARE_OF_ALL = replace(
    RELATION_OF_MEANS,
    statement="a share is at most 100 percent",
    shape=Linear({SHARE: 1}, Interval(None, Fraction(1))),
)
RELATIONS = [RELATION_OF_MEANS, OTHERS_ARE_WIDER, SHARE_OF_ALL]
