"""A published method without its edition.

Looks at
    Test methods of AASHTO, ASTM, ISO or EN, and whether their edition is stated, as a key of
    its own or in the number (E965-15). An estimated texture depth and two standards on friction
    have rules of their own.

Why it matters
    Editions change what is measured: the same profile gave another texture depth by the 1997
    and by the 2019 text. An undated reference changes the contract when the next edition
    comes out, and nobody has decided it.

Conflict
    areas.mainline.smoothness.test.edition: null

Settled
    areas.mainline.smoothness.test.edition: 2014 (2018)

How to settle it
    State the edition that was read when the limit was set. Where the general provisions fix the
    edition at advertisement, say so with the setting undated_references.

Sources
    ASTM E1845, 1997 and 2019: the estimate of texture depth has another factor
    California DOT revised standard specifications, January 2015: "current" editions were replaced
    common practice, no source: an undated reference changes without anybody deciding it
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Area, Job
from specwriter.model.results import Test, TextureDepth
from specwriter.rules.completeness._properties import properties, read
from specwriter.rules.prose import listed
from specwriter.rules.rule import Rule

RULE = Rule(
    title="published methods without their edition",
    grade=Grade.OPEN,
    basis="practice",
    gap=True,
    base="complete/diamond_grinding",
)

_PUBLISHED = re.compile(r"\b(AASHTO|ASTM|ISO|EN)\b")
_DATED = re.compile(r"\d[-:](19|20)?\d{2}\b|\b(19|20)\d{2}\b")


_HISTORY = re.compile(r"\bE(?:1911|1960)\b")
"""Standards of which friction-edition-missing speaks."""


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area with every published method that has no edition."""
    if job.settings is not None and job.settings.undated_references == "edition_at_advertisement":
        return
    for area in job.areas.values():
        undated = list(_undated(area))
        if not undated:
            continue
        names = listed(list(dict.fromkeys(each.written for each in undated)))
        says = f"The job names {names} without saying which edition."
        yield RULE.finding(area, says, undated, ("state the edition of each",))


def _undated(area: Area) -> Iterator[Evidence]:
    for each in properties(area):
        test = read(area, each.test)
        if isinstance(test, Test) and not _HISTORY.search(test.method or ""):
            yield from _method(test, each.title)
    depth = area.texture_depth
    if depth is not None and depth.measure != "ETD" and not (depth.test and depth.test.edition):
        yield from _method(depth, "texture depth")


def _method(test: Test | TextureDepth, title: str) -> Iterator[Evidence]:
    if test.method is None or test.edition is not None:
        return
    if _PUBLISHED.search(test.method) and not _DATED.search(test.method):
        path = test.path_to("method")
        yield Evidence(path=path, label=f"method of the {title}", written=test.method)
