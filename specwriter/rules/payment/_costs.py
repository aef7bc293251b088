"""Costs of texturing: which a job brings, and which words name the same cost.

The list of costs that want a home is common practice, no source.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from specwriter.diagnostic import Evidence
from specwriter.model import Job
from specwriter.rules.rule import evidence

_FILLERS = frozenset({"of", "the", "and", "for", "to", "in", "on", "by", "a", "an", "or", "all"})
_SAME = {"slurry": "residue", "hauling": "haul", "reseal": "resealing", "sealing": "resealing"}


@dataclass(frozen=True, slots=True, kw_only=True)
class Cost:
    """A cost that the job brings, the words that give it a home, and where the job says so."""

    name: str
    words: str
    because: Evidence

    def named_in(self, text: str) -> bool:
        """True when a text speaks of this cost."""
        return bool(re.search(self.words, text, re.IGNORECASE))


_BY_CONDITION = (
    ("live_traffic", "traffic control", r"traffic|lane closure|flagg"),
    ("night_work", "lighting of night work", r"light"),
    ("repairs_before", "slab repairs", r"repair|patch|slab replac"),
    ("loop_detectors", "detector loops", r"loop|detector"),
    ("raised_markers", "raised markers", r"marker"),
)


def costs(job: Job) -> Iterator[Cost]:
    """The costs that the facts of the job bring and that other sections often pay for."""
    conditions = job.conditions
    for key, name, words in _BY_CONDITION:
        if getattr(conditions, key):
            yield Cost(name=name, words=words, because=evidence(conditions, key, name))
    if conditions.joint_resealing == "this_contract":
        because = evidence(conditions, "joint_resealing", "joint resealing")
        yield Cost(name="joint resealing", words=r"seal", because=because)
    for index, step in enumerate(job.sequence):
        if re.search(r"marking|strip(?:e|ing)", step, re.IGNORECASE):
            because = Evidence(path=f"sequence.{index}", label="step of the work", written=step)
            yield Cost(name="pavement marking", words=r"marking|stripe|striping", because=because)
            break
    yield from _tests(job)
    for area in job.areas.values():
        if area.coverage is not None and area.coverage.feathering is not None:
            because = evidence(area.coverage, "feathering", "feathering")
            yield Cost(name="feathering", words=r"feather|transition|taper", because=because)
            break


def _tests(job: Job) -> Iterator[Cost]:
    """The tests that the contractor makes, once for the job."""
    for area in job.areas.values():
        ride = area.smoothness.test if area.smoothness else None
        for test in (*area.testing.values(), *([ride] if ride else [])):
            if test.by == "contractor":
                because = evidence(test, "by", "who tests")
                words = r"test|profil|quality|measurement"
                yield Cost(name="tests of the contractor", words=words, because=because)
                return


def same_cost(one: str, other: str) -> bool:
    """True when two texts name the same cost: equal words, or two or more words in the other."""
    first, second = _words(one), _words(other)
    if not first or not second:
        return False
    fewer, more = sorted((first, second), key=len)
    return first == second or (len(fewer) >= 2 and fewer <= more)


def _words(text: str) -> frozenset[str]:
    found = (word.removesuffix("s") for word in re.findall(r"[a-z]+", text.lower()))
    return frozenset(_SAME.get(word, word) for word in found if word not in _FILLERS)
