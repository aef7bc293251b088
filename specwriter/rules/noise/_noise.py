"""Each area with its noise limit; only for rules that need ``noise``."""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.model import Area, Job
from specwriter.model.results import Noise
from specwriter.rules.rule import given

NOT_COMPARABLE = ("method-of-another-property", "noise-measure-and-method", "noise-scale")
"""Faults after which nothing else is said of the noise limit."""


def noises(job: Job) -> Iterator[tuple[Area, Noise]]:
    """Each area with its noise requirement."""
    for area in job.areas.values():
        yield area, given(area.noise)


def words_of_test(noise: Noise) -> str:
    """All free texts of the noise requirement, to look for what they mention."""
    test = noise.test
    texts = [noise.age] if noise.age else []
    if test is not None:
        texts += [text for text in (test.method, test.device, test.where, test.when) if text]
    return " ".join(texts)
