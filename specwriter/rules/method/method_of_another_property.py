"""A test standard that measures another property than the one it stands under.

Looks at
    The documents named as method of smoothness, texture depth, friction and noise.

Why it matters
    The number of the standard decides what is measured. A wrong one leaves the limit without a
    test, and the test without a limit.

Conflict
    areas.mainline.friction:
      measure: SN
      at_least: at least 40
      speed: 40 mph
      tyre: smooth
      test: {method: ASTM E965}

Settled
    areas.mainline.friction:
      measure: SN
      at_least: at least 40
      speed: 40 mph
      tyre: smooth
      test: {method: ASTM E274}

How to settle it
    Name the standard of the property.

Sources
    ASTM E965-15 and E1845-15, scopes: texture depth
    ASTM E274-97, scope: locked-wheel friction
    AASHTO T 360-16(2020), scope: on-board sound intensity
    AASHTO R 56-14(2018): profilers are certified, no lane is measured
    AASHTO R 54-14(2018), section 1: ride quality with inertial profilers
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Area, Job
from specwriter.rules.rule import Rule
from specwriter.rules.standards import named_in

RULE = Rule(
    title="the test standard measures another property",
    grade=Grade.CONFLICT,
    basis="published",
)

_PROPERTIES = {
    "smoothness": "smoothness",
    "texture_depth": "texture depth",
    "friction": "friction",
    "noise": "noise",
}


_MEASURED = {**_PROPERTIES, "certification": "the device"}


def check(job: Job) -> Iterator[Finding]:
    """One finding for each property whose named standards all measure another one."""
    for area in job.areas.values():
        for key, words in _PROPERTIES.items():
            if finding := _foreign(area, key, words):
                yield finding


def _foreign(area: Area, key: str, words: str) -> Finding | None:
    named = list(named_in(getattr(area, key)))
    if not named or any(standard.of == key for standard, _ in named):
        return None
    standard, place = named[0]
    says = (
        f"{standard.name} is {standard.title}: it measures {_MEASURED[standard.of]}, not {words}."
    )
    settle = (f"name the standard for {words}", f"move it to {standard.of}")
    return RULE.finding(area, says, (place,), settle)
