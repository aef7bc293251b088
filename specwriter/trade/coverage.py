"""Passes of a cutting head over a lane, and the grooves that a coverage window forgives.

Lengths in any one unit.
"""

from __future__ import annotations

from fractions import Fraction
from math import ceil, floor

from specwriter.trade.formula import Formula, identity

PASSES = identity("passes = (lane width - overlap) / (width of the head - overlap), rounded up")
COVERED = identity("covered width = passes × width of the head - (passes - 1) × overlap")

FORGIVEN = Formula(
    text="lost grooves forgiven = (1 - share) × width of the window / spacing, rounded down",
    source="geometry (project calculation)",
    validity="grooves lost over the whole length of the window, each counted with its spacing",
)

SHARE_LEFT = Formula(
    text="share textured = 1 - failed blades × spacing / width of the window",
    source="geometry: a failed blade leaves one groove out along the whole window",
    validity="all failed blades in one window; nothing else lost",
)

GAP_OF_RUN_OUT = Formula(
    text="gap under the straightedge = depth of removal × (length of the edge - run-out) / length "
    "of the edge; of a run-out longer than half the edge, depth of removal × length of the edge / "
    "(4 × run-out)",
    source="project calculation: geometry of an edge that rests on the slope of the run-out and on "
    "the cut beside it",
    validity="a plane run-out between two level surfaces, and an edge laid across it; where the "
    "ends are left out of the test, say so in its place",
)


def passes_needed(lane: Fraction, head: Fraction, overlap: Fraction) -> int:
    """Passes that leave no strip; ``ValueError`` where the overlap is not below the head."""
    if overlap >= head:
        raise ValueError("an overlap as wide as the head covers nothing new")
    return max(1, ceil((lane - overlap) / (head - overlap)))


def width_covered(passes: int, head: Fraction, overlap: Fraction) -> Fraction:
    """Width that passes cover: ``COVERED``."""
    return passes * head - (passes - 1) * overlap


def strip_left(lane: Fraction, passes: int, head: Fraction, overlap: Fraction) -> Fraction:
    """Uncut width left of a lane, 0 where the passes reach over its edge."""
    return max(Fraction(0), lane - width_covered(passes, head, overlap))


def grooves_forgiven(share: Fraction, window_width: Fraction, spacing: Fraction) -> int:
    """Whole grooves that may be missing across a window: ``FORGIVEN``."""
    return floor((1 - share) * window_width / spacing)


def share_left(failed: Fraction, spacing: Fraction, window_width: Fraction) -> Fraction:
    """Share of a window that is textured where blades fail: ``SHARE_LEFT``."""
    return 1 - failed * spacing / window_width


def gap_of_run_out(depth: Fraction | int, run_out: Fraction, edge: Fraction) -> Fraction:
    """Largest gap under a straightedge across a run-out: ``GAP_OF_RUN_OUT``."""
    if 2 * run_out <= edge:
        return depth * (edge - run_out) / edge
    return depth * edge / (4 * run_out)
