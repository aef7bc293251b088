"""A test of something that has no limit.

Looks at
    Tests, and requirements on smoothness, texture depth, friction, noise, cross slope and under
    the straightedge, that give no limit at all.

Why it matters
    A result with nothing to compare it with neither passes nor fails. Either the limit stands
    in another document, and then two texts can part, or it was forgotten.

Conflict
    areas.mainline.joint_match: null

Settled
    areas.mainline.joint_match: at most 1/16 in

How to settle it
    State the limit, or take the test out.

Sources
    FHWA HIAM-20, attachment 3, 2010: the inspector must be able to judge compliance from the text
    FHWA HIAM-20, attachment 4, 2010: a requirement that serves neither acceptance nor payment
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Area, Job, Node
from specwriter.rules.completeness._properties import Property, properties, read, stated
from specwriter.rules.places import GRINDING
from specwriter.rules.rule import Rule

RULE = Rule(
    title="a test without a limit",
    grade=Grade.OPEN,
    basis="practice",
    gap=True,
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each property that is tested or named and has no limit."""
    for area in job.areas.values():
        for each in properties(area):
            node = _stated_at(area, each)
            if node is None or _has_limit(area, each) or _asked_for(area, each):
                continue
            names = " or ".join(keys for keys, _ in each.limits)
            says = f"The job speaks of the {each.title} and gives no limit for it ({names})."
            at = [Evidence(path=node.path, label=each.title, written="no limit")]
            settle = ("state the limit", "take it out of this area")
            yield RULE.finding(area, says, at, settle)


def _stated_at(area: Area, each: Property) -> Node | None:
    """The noun that speaks of the property: its test, or what holds limit and test together."""
    owner = each.test.rpartition(".")[0]
    found = read(area, each.test if owner == "testing" else owner)
    return found if isinstance(found, Node) else None


def _asked_for(area: Area, each: Property) -> bool:
    """Limits that rules of their own ask for: failed-blades-not-stated, removal-cap-not-stated."""
    sawn = area.texture != "diamond_grinding"
    return each.title == ("failed blades" if sawn else "removal") or (
        each.title == "removal" and area.texture in GRINDING
    )


def _has_limit(area: Area, each: Property) -> bool:
    if each.title != "smoothness":
        return any(stated(area, each))
    if read(area, "smoothness.segment") is None:
        kinds = [keys for keys, _ in each.limits]
    else:  # the limit of a short base says nothing of a segment
        kinds = ["smoothness.limit", "smoothness.improvement"]
    return any(read(area, keys) for keys in (*kinds, "smoothness.pay_adjustment.bands"))
