"""The order of the work as a list of steps of known kinds."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from specwriter.diagnostic import Evidence
from specwriter.model import Job

_KINDS: tuple[tuple[str, str], ...] = (
    ("marking removal", r"remov\w+ (of )?(the )?(old |existing )?(pavement )?(mark|strip|paint)"),
    ("marking removal", r"(mark\w*|stripe\w*|striping|paint) (removal|eradication|obliteration)"),
    ("trial", r"trial|test (strip|section)|control strip"),
    ("profile", r"profil|smoothness|ride (test|quality)|roughness|straightedge"),
    ("repair", r"repair|patch|dowel|retrofit|undersealing|subsealing|jacking|slab repl\w*"),
    ("sealing", r"\b(re)?seal"),
    ("marking", r"\bmark|strip(e|ing)|\bpaint"),
    ("grooving", r"groov"),
    ("grinding", r"grind|grinding"),
    ("opening", r"\bopen"),
)
"""Kind of step and the words that tell it; the first row that matches decides."""

CUTTING = ("grinding", "grooving", "texturing")

MAKES: dict[str, tuple[str, ...]] = {
    "diamond_grinding": ("grinding",),
    "next_generation_concrete_surface": ("grinding", "grooving"),
    "longitudinal_grooving": ("grooving",),
    "transverse_grooving": ("grooving",),
    "runway_grooving": ("grooving",),
}
"""The steps that make each texture."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """One step of the sequence; ``kind`` is empty for words that no row knows."""

    number: int
    words: str
    kind: str

    @property
    def evidence(self) -> Evidence:
        """The step as it is written, with its number from 1."""
        return Evidence(
            path=f"sequence.{self.number}", label=f"step {self.number + 1}", written=self.words
        )

    @property
    def cuts(self) -> bool:
        """Whether the surface is cut in this step."""
        return self.kind in CUTTING


def done(job: Job) -> set[str]:
    """The kinds of work of the job: what makes its textures, and what its sequence names."""
    made = {kind for area in job.areas.values() for kind in MAKES[area.texture]}
    return made | {step.kind for step in steps(job)}


def steps(job: Job) -> Iterator[Step]:
    """The steps of the job, in their order."""
    for number, words in enumerate(job.sequence):
        yield Step(number=number, words=words, kind=_kind(words.lower()))


def _kind(words: str) -> str:
    for kind, pattern in _KINDS:
        if re.search(pattern, words):
            return kind
    return "texturing" if "textur" in words or "next generation" in words else ""


def pairs(job: Job, first: tuple[str, ...], then: tuple[str, ...]) -> Iterator[tuple[Step, Step]]:
    """Each step of a kind in ``first`` with the nearest later step of a kind in ``then``."""
    all_steps = list(steps(job))
    for step in all_steps:
        if step.kind in first:
            later = (each for each in all_steps[step.number + 1 :] if each.kind in then)
            if (found := next(later, None)) is not None:
                yield step, found
