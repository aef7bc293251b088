"""The findings that rest on no single relation, and what each of them says."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Joint:
    """A check over all relations of an area."""

    slug: str
    title: str
    statement: str
    why: str
    validity: str
    source: str


TOGETHER = Joint(
    slug="dimensions-cannot-hold-together",
    title="requirements that are fine in pairs and impossible together",
    statement=(
        "Every relation of the area must hold for one and the same choice of dimensions. The "
        "report names the smallest set of requirements that no choice satisfies: take any one "
        "of them out and the rest can be built."
    ),
    why=(
        "Each two of these requirements can be built, all of them together cannot. Nobody sees it "
        "by reading, and the contractor finds it out with the machine on the road."
    ),
    validity="a clash is reported only when it is proved, with the rounding of the numbers granted",
    source="arithmetic; each relation in the finding names its own source",
)
STATED_TWICE = Joint(
    slug="stated-twice-with-different-values",
    title="the same property is stated twice, with values that have nothing in common",
    statement=(
        "A property that is stated in two places, or in two units, is one property: some value "
        "must satisfy both, within the rounding of the written numbers."
    ),
    why=(
        "Two values for one thing are two contracts. Each side works by the one that suits it, and "
        "the difference is settled when the work is done."
    ),
    validity="also for a value and its soft conversion; the rounding of each is granted",
    source="arithmetic; NIST SP 811, appendix B, 2008, for the factors of conversion",
)
JOINTS = (TOGETHER, STATED_TWICE)
