"""Ridges asked for on lands that are ground flush.

Looks at
    The height of the ridges of a next generation concrete surface.

Why it matters
    The lands of this texture are ground flush, and only the grooves lie below them. A ridge that is
    to stand between the cuts belongs to conventional diamond grinding; who asks for both gets a
    loud surface, or a lane that fails one of its two requirements.

Conflict
    areas.mainline.ridge.height: 1/16 in

Settled
    areas.mainline.ridge.height: at most 1/32 in

How to settle it
    Take the height of the ridges out, or limit what may stand up between the cuts.

Sources
    trade article, 2014; memory, unverified: essentially all of the texture lies below the lands
    common practice, no source: a ridge that is asked for is not flush
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="ridges are asked for on flush ground lands",
    grade=Grade.CAUTION,
    basis="practice",
    applies_to=("next_generation_concrete_surface",),
    base="next_generation_concrete_surface",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area whose ridges may not be absent."""
    for area in job.areas.values():
        ridge = area.ridge
        if ridge is not None and ridge.height is not None and ridge.height.interval.low:
            says = (
                f"The lands are ground flush, and ridges of {ridge.height} are to stand between "
                "them."
            )
            settle = ("no height of ridges", "ridge height: at most 1/32 in")
            yield RULE.finding(area, says, [evidence(ridge, "height", "ridge height")], settle)
