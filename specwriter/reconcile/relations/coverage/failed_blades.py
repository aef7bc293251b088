"""How much of a window is lost when blades fail and cutting goes on."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from specwriter.quantity import Interval
from specwriter.reconcile.relation import Function, Relation, Unassured
from specwriter.trade.coverage import share_left

SHARE = "coverage.share"
FAILED, SPACING, WINDOW = "blade.failed_allowed", "groove.spacing", "coverage.window_width"


def _value(at: Mapping[str, Any]) -> Any:
    return share_left(at[FAILED], at[SPACING], at[WINDOW])


def _signs(at: Mapping[str, Interval]) -> dict[str, int | None]:
    return {FAILED: -1, SPACING: -1, WINDOW: 1}


RELATION = Relation(
    slug="share-lost-by-failed-blades",
    title="the failed blades that are allowed lose more of a window than it may lose",
    statement="share textured = 1 - failed blades x groove spacing / width of the window",
    shape=Function(
        output=SHARE,
        inputs=(FAILED, SPACING, WINDOW),
        value=_value,
        signs=_signs,
        inverses={
            FAILED: lambda share, at: (1 - share) * at[WINDOW] / at[SPACING],
            SPACING: lambda share, at: (1 - share) * at[WINDOW] / at[FAILED],
            # With nothing lost the window may be of any width.
            WINDOW: lambda share, at: at[FAILED] * at[SPACING] / (1 - share) if share < 1 else None,
        },
    ),
    why=(
        "Each failed blade leaves one groove out along the whole window. A rule that "
        "lets blades fail and a share that must be textured can only both stand if the "
        "first does not use up the second."
    ),
    source=(
        "geometry: a failed blade leaves one groove out of the window along its whole length; "
        "California DOT Standard Specifications 42-2, 2015: 95 percent of any 2 ft x 100 ft, "
        "cutting goes on with one failed blade and stops with more"
    ),
    about=(FAILED,),
    validity="all failed blades in one window; nothing else lost",
    assures=Unassured(
        slug="coverage-not-assured",
        title="the failed blades that are allowed can cost more coverage than is allowed",
    ),
)
