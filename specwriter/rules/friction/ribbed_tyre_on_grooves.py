"""Friction of a sawn texture judged with a ribbed tyre.

Looks at
    Skid numbers and friction coefficients on sawn textures, and the tyre of the test.

Why it matters
    Water escapes through the ribs of the tyre, so a ribbed tyre hardly sees the grooves that
    are being bought. A texture that is worn flat can still pass.

Conflict
    areas.mainline.friction: {measure: SN, at_least: at least 40, speed: 40 mph, tyre: ribbed}

Settled
    areas.mainline.friction: {measure: SN, at_least: at least 30, speed: 40 mph, tyre: smooth}

How to settle it
    Test with the smooth tyre, with a limit set for it, or ask for both.

Sources
    Transportation Research Record 1348: if one tyre only, the smooth one tells more
    Transportation Research Record 2005, pp. 172-182: grooves along the lane show little straight on
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.friction._measure import frictions
from specwriter.rules.places import words
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="a ribbed tyre hardly sees the texture",
    grade=Grade.CAUTION,
    basis="published",
    needs=("friction.measure",),
    quiet_after=(
        "friction-measure-and-method",
        "friction-name-and-test",
        "locked-wheel-on-runway",
    ),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each skid number with the ribbed tyre."""
    for area, friction, measure in frictions(job):
        tyre = friction.tyre or measure.tyre
        if measure.kind not in ("skid number", "coefficient") or tyre != "ribbed":
            continue
        says = (
            f"The ribs of the tyre drain the water themselves, so the number says little of the "
            f"{words(area.texture)}."
        )
        key = "tyre" if friction.tyre else "measure"
        at = [
            evidence(friction, key, "test tyre" if friction.tyre else "friction measure"),
            evidence(area, "texture", "texture"),
        ]
        settle = ("tyre: smooth, with a limit set for it", "ask for both tyres")
        yield RULE.finding(area, says, at, settle)
