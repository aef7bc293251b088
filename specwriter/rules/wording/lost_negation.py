"""A text that permits what its value forbids.

Looks at
    Texts of the job that permit unground surface between passes while a limit or a coverage
    forbids it, that let residue flow to drains or open lanes or traffic run on it, or that have it
    spread beside the road while residue.regime has it hauled.

Why it matters
    A "not" falls out in editing, and the sentence says the opposite. Whoever reads the words and
    not the number does the opposite, and is right.

Conflict
    areas.mainline.coverage.unground_strip: at most 0 in
    areas.mainline.testing.coverage.remedy: unground surface between passes is permitted

Settled
    areas.mainline.coverage.unground_strip: at most 0 in
    areas.mainline.testing.coverage.remedy: unground surface between passes is not permitted

How to settle it
    Put the negation back, or change the value.

Sources
    Maryland Standard Specifications 509.03.02, undated: as stored, permits unground surface
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.rules.polarity import SENSES, permitted, says_spread
from specwriter.rules.rule import Rule, evidence
from specwriter.rules.texts import Text, texts

RULE = Rule(
    title="the text permits what is forbidden",
    grade=Grade.CONFLICT,
    basis="wording",
)


_SETTLE = ("put the negation back", "change the value")


def check(job: Job) -> Iterator[Finding]:
    """One finding for each text that permits what the job or every provision forbids."""
    yield from _spread(job)
    for text in texts(job):
        for sense, sentence in permitted(text.words):
            values = list(_forbidden(job, text)) if sense is SENSES[0] else []
            if sense is SENSES[0] and not values:
                continue
            against = (
                f" the {values[0].label} is {values[0].written}"
                if values
                else (" the provision forbids it")
            )
            says = f"The text permits {sense.name}, and{against}."
            area = job.areas.get(text.area or "")
            at = [text.evidence(text.words.find(sentence)), *values]
            yield RULE.finding(area, says, at, _SETTLE)


def _spread(job: Job) -> Iterator[Finding]:
    """Texts that spread what is to be hauled."""
    if job.residue is None or job.residue.regime != "haul":
        return
    regime = evidence(job.residue, "regime", "residue regime")
    for text in texts(job):
        start = says_spread(text.words)
        if start is not None:
            says = (
                "The text has the residue spread beside the road, and the residue regime is haul."
            )
            yield RULE.finding(None, says, [text.evidence(start), regime], _SETTLE)


def _forbidden(job: Job, text: Text) -> Iterator[Evidence]:
    """The values that allow no unground strip, in the area of the text or in every area."""
    for id, area in job.areas.items():
        coverage = area.coverage
        if coverage is None or text.area not in (None, id):
            continue
        strip = coverage.unground_strip
        if strip is not None and strip.interval.high == 0:
            yield evidence(coverage, "unground_strip", "unground strip")
