"""New pavement without an age at which it may be cut.

Looks at
    New pavement, and the age at which it is cut.

Why it matters
    Young concrete ravels at the groove edge, young asphalt smears and closes. The documents differ
    on how long to wait, so the job must say it.

Conflict
    conditions.new_pavement: true

Settled
    conditions.new_pavement: true
    conditions.pavement_age: at least 28 days

How to settle it
    State the age, or the age and the strength, at which the pavement may be cut.

Sources
    AC 150/5320-12C, 1997 (memory, unverified): 30 days for new asphalt
    AC 150/5370-10H item P-621, 2018 (memory, unverified): 14 days for asphalt, 28 for concrete
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence
from specwriter.rules.times import cure_setting

RULE = Rule(
    title="the age at which the new pavement is cut is not stated",
    grade=Grade.OPEN,
    basis="practice",
    needs=("conditions.new_pavement",),
    by_site=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for new pavement without an age, with the setting if there is one."""
    if not job.conditions.new_pavement or job.conditions.pavement_age is not None:
        return
    setting = cure_setting(job)
    says = "The pavement is new, and the job does not say at what age it may be cut."
    at = [evidence(job.conditions, "new_pavement", "new pavement")]
    at += [evidence(area, "texture", "texture") for area in job.areas.values()]
    if setting is not None:
        says += f" The setting {setting.name} is {setting.value}."
    settle = (f"an age of {setting.value if setting else 'the pavement when it is cut'}",)
    yield RULE.finding(None, says, at, settle)
