"""The blades are prescribed, and so is what they must give.

Looks at
    Ground areas whose blade set is prescribed to the blade, and limits on texture depth, friction
    or noise in the same area.

Why it matters
    Whoever prescribes how the work is done answers for what comes of it. When the prescribed
    blades do not give the required texture, the contractor has followed the contract and the
    owner pays for the second cut.

Conflict
    areas.mainline.blade: {segment: 0.125 in, core: 0.105 in, spacer: 0.120 in}
    areas.mainline.texture_depth: {measure: MTD, at_least: at least 0.8 mm}

Settled
    areas.mainline.blade: {segment: 0.125 in, core: 0.105 in, spacer: 0.120 in}

How to settle it
    Leave the blades to the contractor and keep the result, or prescribe the blades and drop the
    result. Where both stay, say which one governs and who bears the risk.

Sources
    FHWA HIAM-20, attachment 1, 2010: under a method specification the contractor follows the method
    commentary on 248 U.S. 132, 1918: the owner warrants the design that he prescribes
    Iowa DOT Standard Specifications 2532, undated: the contractor chooses the blades
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Area, Job
from specwriter.rules.completeness._properties import read
from specwriter.rules.rule import Rule

RULE = Rule(
    title="the method and the result are both prescribed",
    grade=Grade.CAUTION,
    basis="published",
    applies_to=("diamond_grinding",),
    quiet_after=("blade-set-for-unknown-aggregate",),
)

_METHOD = (("blade.spacer", "spacer"), ("blade.per_head", "number of blades per head"))
_RESULT = (
    ("texture_depth.at_least", "texture depth"),
    ("friction.at_least", "friction number"),
    ("noise.at_most", "noise level"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each ground area with a prescribed blade set and a required result."""
    for area in job.areas.values():
        method, result = list(_stated(area, _METHOD)), list(_stated(area, _RESULT))
        if not method or not result:
            continue
        says = (
            f"The {method[0].label} is prescribed, and the {result[0].label} that comes of it is "
            "required as well."
        )
        settle = ("leave the blades to the contractor", "take the result out")
        yield RULE.finding(area, says, [*method, *result], settle)


def _stated(area: Area, keys: tuple[tuple[str, str], ...]) -> Iterator[Evidence]:
    for way, label in keys:
        if (value := read(area, way)) is not None:
            yield Evidence(path=f"{area.path}.{way}", label=label, written=value.text)
