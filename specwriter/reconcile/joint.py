"""The findings that rest on several relations at once, and what each of them says."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Joint:
    """A check over all relations of an area."""

    slug: str
    title: str
    statement: str
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
    validity="a clash is reported only when it is proved, with the rounding of the numbers granted",
    source="arithmetic; each relation in the finding names its own source",
)
OUT_OF_REACH = Joint(
    slug="texture-depth-out-of-reach",
    title="the dimensions cannot give the texture depth",
    statement=(
        "Texture depth = groove width x depth / spacing + (1 - width / spacing) x texture of the "
        "land. No choice of dimensions that the job allows reaches the depth that it asks for."
    ),
    validity="texture depth over grooves and lands, where the texture of the land is stated",
    source="geometry: groove width x depth / spacing, and what the lands add",
)
NOT_ASSURED = Joint(
    slug="texture-depth-not-assured",
    title="the dimensions do not assure the texture depth",
    statement=(
        "Texture depth = groove width x depth / spacing + (1 - width / spacing) x texture of the "
        "land. The report gives one choice that obeys every dimension and misses the depth."
    ),
    validity=(
        "texture depth over grooves and lands; on a ground surface the formula is an upper "
        "bound, because ridges break"
    ),
    source="geometry: groove width x depth / spacing, and what the lands add",
)
JOINTS = (TOGETHER, OUT_OF_REACH, NOT_ASSURED)
