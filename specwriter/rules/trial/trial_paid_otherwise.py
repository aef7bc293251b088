"""A trial section paid in two ways.

Looks at
    How the trial section is paid, against the pay items and their lists of excluded work.

Why it matters
    At the contract price, within it, or under an item of its own: each is common, and two of them
    together are paid twice or not at all.

Conflict
    trial_section: {required: true, paid: included}
    pay_items.grinding.excludes: [trial section, traffic control]

Settled
    trial_section: {required: true, paid: included}
    pay_items.grinding.excludes: [traffic control]

How to settle it
    Keep one way of paying for it.

Sources
    FHWA review guide on measurement and payment, 1999: each kind of work is paid in one place
    Texas DOT PS&E manual, section 4.3, undated: conflict in payment is a common basis of claims
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.rules.payment._areas import paid_areas
from specwriter.rules.places import words
from specwriter.rules.rule import Rule, evidence, given
from specwriter.rules.trial._trial import NAMED

RULE = Rule(
    title="the trial section is paid in two ways",
    grade=Grade.CONFLICT,
    basis="published",
    needs=("trial_section.paid",),
    quiet_after=("trial-not-required-but-named", "included-and-excluded", "paid-twice"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding with every pay item that pays for the trial section in another way."""
    trial = given(job.trial_section)
    if not (other := list(_other_ways(job))):
        return
    says = f"The trial section is paid {words(trial.paid)}, and here it is paid elsewhere."
    at = [evidence(trial, "paid", "payment for the trial section"), *other]
    settle = ("take it out of the pay items", "take paid out, and describe the item that pays")
    yield RULE.finding(None, says, at, settle)


def _other_ways(job: Job) -> Iterator[Evidence]:
    """Items of its own, and prices of a texture that leave it out."""
    for item in job.pay_items.values():
        if re.search(NAMED, item.name, re.IGNORECASE):
            yield evidence(item, "name", "pay item")
        for index, work in enumerate(item.excludes if paid_areas(job, item.id) else ()):
            if re.search(NAMED, work, re.IGNORECASE):
                path = f"{item.path}.excludes.{index}"
                yield Evidence(path=path, label="excluded work", written=work)
