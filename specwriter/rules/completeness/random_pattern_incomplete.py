"""Half of what says how a random pattern is mixed.

Looks at
    Random patterns that give one spacing and no range, or a limit for close spacings and no share
    of them, or a share and no limit.

Why it matters
    Half of the spacings under what, or how many under 1 in? A head of all wide spacings passes a
    clause that gives one of the two, and is not the pattern that was meant.

Conflict
    areas.mainline.groove:
      width: 1/8 in ± 1/64 in
      depth: 1/8 in to 3/16 in
      spacing: 3/8 in to 1-3/4 in
      pattern: random
      close_spacing: at most 1 in

Settled
    areas.mainline.groove:
      width: 1/8 in ± 1/64 in
      depth: 1/8 in to 3/16 in
      spacing: 3/8 in to 1-3/4 in
      pattern: random
      close_spacing: at most 1 in
      close_share: at least 50 percent

How to settle it
    Give both: the spacing that counts as close, and the share of such spacings.

Sources
    Ohio CMS 511.20, 2010: half of the spacings under 1 in
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.model.texture import Groove
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the random pattern is given by half",
    grade=Grade.OPEN,
    basis="published",
    needs=("groove",),
    gap=True,
    base="complete/transverse_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each pattern with one of the two values."""
    for area in job.areas.values():
        groove = given(area.groove)
        if groove.pattern == "random" and groove.spacing and groove.spacing.form != "range":
            yield RULE.finding(area, *_one_spacing(groove))
            continue
        if (groove.close_spacing is None) is (groove.close_share is None):
            continue
        has, lacks = "close_spacing", "close_share"
        if groove.close_spacing is None:
            has, lacks = lacks, has
        names = {"close_spacing": "spacing that counts as close", "close_share": "share of them"}
        says = f"The {names[has]} is {getattr(groove, has)}, and no {names[lacks]} is given."
        at = [evidence(groove, has, names[has])]
        yield RULE.finding(area, says, at, (f"give the {names[lacks]} (groove.{lacks})",))


def _one_spacing(groove: Groove) -> tuple[str, list[Evidence], tuple[str, ...]]:
    says = f"The pattern is random, and the spacing is {groove.spacing} and no range."
    at = [evidence(groove, "spacing", "groove spacing"), evidence(groove, "pattern", "pattern")]
    return says, at, ("give the smallest and the largest spacing", "pattern: uniform")
