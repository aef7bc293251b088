"""New pavement cut younger than any document allows.

Looks at
    The age of new pavement when it is cut, against the setting of the house, or without one
    against the shortest age that is remembered for airfields, or usual on roads.

Why it matters
    Young concrete ravels at the edge of a groove, and young asphalt smears and closes it.

Conflict
    conditions.new_pavement: true
    conditions.pavement: jointed_plain_concrete
    conditions.pavement_age: at least 7 days

Settled
    conditions.new_pavement: true
    conditions.pavement: jointed_plain_concrete
    conditions.pavement_age: at least 28 days

How to settle it
    Raise the age, or state the strength at which the pavement may be cut.
    A house with its own figure gives it as the setting cure_age_concrete or cure_age_asphalt.

Sources
    AC 150/5370-10H item P-621, 2018 (memory, unverified): 14 days for asphalt, 28 for concrete
    AC 150/5320-12C, 1997 (memory, unverified): 30 days for new asphalt
    common practice, no source: 14 days on roads, which no document of ours sets
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import parse
from specwriter.rules.rule import Rule, evidence, given
from specwriter.rules.times import cure_setting

_AIRFIELD_CONCRETE = parse("28 days")
"""AC 150/5370-10H item P-621, 2018 (memory, unverified)."""
_OTHERS = parse("14 days")
"""Airfield asphalt: the same item; roads: common practice, no source."""

RULE = Rule(
    title="the new pavement is cut young",
    grade=Grade.CAUTION,
    basis="practice",
    needs=("conditions.new_pavement", "conditions.pavement_age", "conditions.pavement"),
    by_site=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for new pavement cut before the setting or the shortest remembered age."""
    conditions = job.conditions
    age = given(conditions.pavement_age)
    least = age.interval.low
    if not conditions.new_pavement or least is None:
        return
    setting = cure_setting(job)
    pavement = given(conditions.pavement)
    usual = _AIRFIELD_CONCRETE if pavement == "airfield_concrete" else _OTHERS
    wanted = setting.value if setting else usual
    if least >= wanted.amounts[0].base:
        return
    shortest = "the shortest age recalled" if "airfield" in pavement else "the usual shortest age"
    ground = f"the setting {setting.name} is" if setting else f"{shortest} is"
    says = f"The new pavement is cut at an age of {age}; {ground} {wanted}."
    at = [
        evidence(conditions, "pavement_age", "age when cut"),
        evidence(conditions, "pavement", "pavement"),
    ]
    settle = (f"an age of {wanted}", "a strength at which it may be cut")
    yield RULE.finding(None, says, at, settle)
