"""Whether a change calls for an addendum: a setting, with the reason for each answer.

The setting ``bids`` follows the practice that an addendum is issued when competition, major
quantities or a material point of the contract is touched, and not for trivial corrections
(Texas DOT, PS&E manual, 7.1.3). ``every`` counts each change that is more than another way of
writing the same. The agency's own rule governs, and on federal-aid work the approval that 23 CFR
635.112 asks for (memory, unverified).
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from specwriter.compare.change import Sense, Touches

Setting = Literal["bids", "every"]

SOURCE = "Texas DOT, PS&E manual, 7.1.3: when an addendum is issued"

_BECAUSE: dict[Touches, str] = {
    "competition": "other machines or methods qualify, which touches competition",
    "money": "quantities or pay change, which touches every bid",
    "contract": "what the contractor must do or reach changes",
    "site": "bids rest on this fact of the site",
    "record": "nothing that is asked for or paid changes",
}
_SAME = {
    Sense.RESTATED: "the same is asked for, written otherwise",
    Sense.MOVED: "the same is asked for, in another place or order",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Addendum:
    """When a change is material; a pay quantity that moves by ``minor`` or less is not."""

    setting: Setting = "bids"
    minor: Fraction = Fraction(0)


@dataclass(frozen=True, slots=True, kw_only=True)
class Materiality:
    """An answer and its reason."""

    material: bool
    because: str


def judge_material(
    addendum: Addendum,
    sense: Sense,
    touches: Touches,
    *,
    warned: bool,
    moved_by: Fraction | None = None,
) -> Materiality:
    """Whether a change is material. ``moved_by`` is the share by which a pay quantity moved.

    ``warned`` is true when a reader could overlook what the change does.
    """
    if sense in _SAME and not warned:
        return Materiality(material=False, because=_SAME[sense])
    if moved_by is not None and moved_by <= addendum.minor:
        return Materiality(material=False, because="the quantity moves within the minor share")
    if addendum.setting == "every":
        return Materiality(material=True, because="each change counts under this setting")
    if sense is Sense.REWORDED and not warned:
        return Materiality(
            material=False, because="words changed, and no number or word of duty among them"
        )
    return Materiality(material=touches != "record", because=_BECAUSE[touches])
