"""Two pay items with one number or one name.

Looks at
    Numbers and names of the pay items.

Why it matters
    The bid schedule knows items by number and name. Two that share one are merged by the list or
    bid at two prices for the same work.

Conflict
    pay_items.other:
      name: Diamond Grinding Concrete Pavement
      unit: SY
      measured_as: plan area, each area once
      includes: [water]
    areas.mainline.pay_item: other
    residue.pay_item: grinding

Settled
    pay_items.grinding.name: Diamond Grinding

How to settle it
    Give each its own number and name, or merge the two.

Sources
    Texas DOT PS&E specification checklist, undated: items are matched by number and description
    Minnesota DOT Contract Administration Manual, 5-591.420, undated: special items have numbers
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="two pay items with one number or name",
    grade=Grade.CONFLICT,
    basis="published",
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each pair of items that share a number or a name."""
    for one, other in combinations(job.pay_items.values(), 2):
        for key in ("number", "name"):
            text = getattr(one, key)
            if text is None or text != getattr(other, key):
                continue
            says = f"{one.id} and {other.id} are two pay items, and both have the {key} {text}."
            at = [evidence(one, key, f"{key} of {one.id}"), evidence(other, key, f"of {other.id}")]
            yield RULE.finding(None, says, at, ("give each its own", "merge the two items"))
            break
