"""A class of profiler that samples too coarsely for the index.

Looks at
    Texts on certification, method and device that name a class of ASTM E950.

Why it matters
    Classes 3 and 4 may take a height every foot. That misses the short waves that make a good
    part of the IRI, and the index comes out too low.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.certification: ASTM E950-09(2018), Class 3 or better

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.certification: ASTM E950-09(2018), Class 1

How to settle it
    Ask for Class 1, or for certification by AASHTO R 56.

Sources
    Maine DOT section 401, compiled by a third party, undated: Class I or II
    ASTM E950; the steps of the classes from memory, unverified: 25, 150 and 300 mm
    project calculation: a step of 250 mm reads a wave of 2.4 m 3.5 percent low
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.model.results import Smoothness
from specwriter.rules.places import ROUGHNESS_INDEXES, rides
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the class of the profiler is too coarse for the index",
    grade=Grade.CAUTION,
    basis="published",
    needs=("smoothness.index",),
    quiet_after=("index-instrument",),
)

_COARSE = re.compile(r"E ?-?950\b.*?\bclass(?:es)? *(?:3|4|III|IV)\b", re.IGNORECASE)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each text that admits a coarse class."""
    for area, ride in rides(job):
        if ride.index not in ROUGHNESS_INDEXES:
            continue
        for place in _texts(ride):
            if _COARSE.search(place.written):
                says = (
                    "A profiler of this class may sample every 150 mm or more (memory, "
                    f"unverified); {ride.index} needs steps of about 25 mm."
                )
                at = [place, evidence(ride, "index", "smoothness index")]
                settle = ("ask for Class 1", "ask for certification by AASHTO R 56")
                yield RULE.finding(area, says, at, settle)


def _texts(ride: Smoothness) -> Iterator[Evidence]:
    if ride.certification:
        yield evidence(ride, "certification", "certification")
    for key in ("method", "device"):
        if ride.test is not None and getattr(ride.test, key):
            yield evidence(ride.test, key, f"{key} of the test")
