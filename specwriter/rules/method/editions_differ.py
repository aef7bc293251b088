"""One standard in two editions.

Looks at
    The editions of each standard that the job names as a method or in a text.

Why it matters
    Two editions can measure two things. A job that names both leaves the laboratory to choose,
    and whoever lost by the choice names the other.

Conflict
    areas.mainline.texture_depth: {measure: MTD, method: ASTM E965, edition: 2015}
    areas.mainline.testing.texture.method: sand patch by ASTM E965-96

Settled
    areas.mainline.texture_depth: {measure: MTD, method: ASTM E965, edition: 2015}
    areas.mainline.testing.texture.method: sand patch by ASTM E965-15

How to settle it
    Name one edition everywhere.

Sources
    ASTM E1845, 1997 and 2019: the estimate of texture depth has another factor
    common practice, no source: a contract names one edition of a standard
"""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.model.results import Test, TextureDepth
from specwriter.rules.prose import listed
from specwriter.rules.rule import Rule, evidence
from specwriter.rules.standards import STANDARDS, Standard, standards_in
from specwriter.rules.texts import nodes, texts

RULE = Rule(
    title="one standard is named in two editions",
    grade=Grade.CAUTION,
    basis="published",
)

_SUFFIX = re.compile(r"\s?[-:]\s?(\d{4}|\d{2})\b")
_YEAR = re.compile(r"\d{4}")


def check(job: Job) -> Iterator[Finding]:
    """One finding for each standard with more than one year."""
    years: defaultdict[str, dict[str, list[Evidence]]] = defaultdict(dict)
    for standard, year, at in [*_in_texts(job), *_beside_methods(job)]:
        years[standard.name].setdefault(year, []).append(at)
    for name, found in years.items():
        if len(found) > 1:
            says = f"{name} is named in the editions of {listed(sorted(found))}."
            places = [each for some in found.values() for each in some]
            yield RULE.finding(None, says, places, ("one edition everywhere",))


def _in_texts(job: Job) -> Iterator[tuple[Standard, str, Evidence]]:
    """Standards that a text names with a year behind the number: E965-15."""
    for text in texts(job):
        for standard in STANDARDS:
            for found in re.finditer(standard.pattern, text.words, re.IGNORECASE):
                if year := _SUFFIX.match(text.words, found.end()):
                    yield standard, _four(year[1]), text.evidence(found.start())


def _beside_methods(job: Job) -> Iterator[tuple[Standard, str, Evidence]]:
    """Standards whose edition stands under a key of its own."""
    cited: list[Test | TextureDepth] = [*nodes(job, Test), *nodes(job, TextureDepth)]
    for node in cited:
        named = standards_in(node.method)
        year = _YEAR.search(node.edition or "")
        if len(named) == 1 and year:
            yield named[0], year[0], evidence(node, "edition", "edition")


def _four(year: str) -> str:
    """Two digits as a year: standards of this trade are younger than 1930."""
    if len(year) == 4:
        return year
    return f"20{year}" if int(year) < 30 else f"19{year}"
