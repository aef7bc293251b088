"""An estimated texture depth without the edition that says how it is computed.

Looks at
    Areas that ask for ETD, and the edition of the method.

Why it matters
    Two editions compute ETD from MPD in two ways. Below an MPD of 0.67 mm the newer gives less,
    above it more, so the same surface passes by one edition and fails by the other.

Conflict
    areas.mainline.texture_depth:
      measure: ETD
      at_least: 0.8 mm
      method: ISO 13473-1
      direction: across_lane

Settled
    areas.mainline.texture_depth:
      measure: ETD
      at_least: 0.8 mm
      method: ISO 13473-1
      edition: "2019"
      direction: across_lane

How to settle it
    State the edition of the method.

Sources
    ISO 13473-1:2019, as stated in the method paper of a public implementation: ETD = 1.1 MPD
    ASTM E1845 and ISO 13473-1:1997, as used in public implementations: ETD = 0.2 mm + 0.8 MPD
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence
from specwriter.rules.texture_depth._depth import depths

RULE = Rule(
    title="the edition decides how the texture depth is computed",
    grade=Grade.OPEN,
    basis="published",
    needs=("texture_depth.measure", "texture_depth.method"),
    quiet_after=(
        "method-of-another-property",
        "outflow-as-texture-depth",
        "texture-measure-and-method",
    ),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each ETD whose method has no edition."""
    for area, depth in depths(job):
        test = depth.test
        if depth.measure != "ETD" or depth.edition or (test and test.edition):
            continue
        says = (
            f"{depth.method} computes ETD as 0.2 mm + 0.8 MPD in older editions and as 1.1 MPD "
            "since 2019; the job does not say which edition holds."
        )
        at = [
            evidence(depth, "measure", "measure of texture depth"),
            evidence(depth, "method", "test method"),
        ]
        settle = ('state the edition, such as edition: "2019"', "limit MPD itself")
        yield RULE.finding(area, says, at, settle)
