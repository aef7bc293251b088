"""How each requirement is read: what its bare value means, and which matter it belongs to."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal, TypeVar

from specwriter.compare.burden import (
    ACCEPTANCE,
    ADJUSTMENT,
    AREA,
    CAPACITY,
    CUT,
    DUTY,
    EDITION,
    EXCLUSION,
    EXTENT,
    FACT,
    INCLUDED,
    MACHINES_TOGETHER,
    METHOD,
    PAY_ITEM,
    PRESCRIBED,
    PRICE,
    PROTECTION,
    RECORD,
    REMEDY,
    RESIDUE,
    RESPONSE,
    RESULT,
    SCHEDULE,
    STATISTIC,
    SUBMITTAL,
    TESTING,
    TRIAL,
    Matter,
)
from specwriter.compare.change import Sense

T = TypeVar("T")

Bare = Literal["at_most", "at_least", "target", "unordered", "fact"]
"""How a value without a limit word is read.

``unordered`` has a tighter side only when the value is written as a limit or a range, ``fact``
never: it asks for nothing.
"""


@dataclass(frozen=True, slots=True)
class Meaning:
    """How one requirement is read."""

    bare: Bare
    matter: Matter


# The reading of bare values is common practice, no source, unless a row says otherwise.
MEANINGS: dict[str, Meaning] = {
    "also_stated": Meaning("unordered", RECORD),
    "groove": Meaning("target", CUT),
    "groove.alignment": Meaning("at_most", CUT),
    "groove.alignment_over": Meaning("at_least", CUT),
    "groove.close_spacing": Meaning("unordered", CUT),
    "groove.close_share": Meaning("at_least", CUT),
    "alternatives": Meaning("unordered", CUT),
    "alternatives.name": Meaning("unordered", CUT),
    "land": Meaning("target", CUT),
    "ridge": Meaning("target", CUT),
    "flush_grind": Meaning("target", CUT),
    "flush_grind.operations": Meaning("unordered", PRESCRIBED),
    "blade": Meaning("target", PRESCRIBED),
    "blade.failed_allowed": Meaning("at_most", CUT),
    "equipment": Meaning("at_least", CAPACITY),
    "equipment.several_machines": Meaning("unordered", MACHINES_TOGETHER),
    "removal.depth": Meaning("at_most", PROTECTION),
    "removal.depth_per_pass": Meaning("at_most", PROTECTION),
    "removal.cover_after": Meaning("at_least", PROTECTION),
    "removal.thickness_after": Meaning("at_least", PROTECTION),
    "removal.reservoir_after": Meaning("at_least", PROTECTION),
    "removal.asphalt_after": Meaning("at_least", PROTECTION),
    "removal.overlay_after": Meaning("at_least", PROTECTION),
    "removal.section_modulus_after": Meaning("at_least", PROTECTION),
    "coverage": Meaning("at_most", RESULT),
    "coverage.share": Meaning("at_least", RESULT),
    "coverage.passes": Meaning("unordered", PRESCRIBED),
    "joint_match": Meaning("at_most", RESULT),
    "edge_ridge": Meaning("at_most", RESULT),
    "cross_slope.tolerance": Meaning("at_most", RESULT),
    "cross_slope.over": Meaning("at_least", RESULT),
    "straightedge": Meaning("at_most", RESULT),
    "straightedge.length": Meaning("at_least", RESULT),
    "smoothness": Meaning("unordered", METHOD),
    "smoothness.limit": Meaning("at_most", RESULT),
    "smoothness.improvement": Meaning("at_least", RESULT),
    "smoothness.blanking_band": Meaning("at_most", TESTING),
    "smoothness.runs": Meaning("at_least", TESTING),
    "smoothness.segment": Meaning("at_most", TESTING),
    "smoothness.partial_segment": Meaning("unordered", TESTING),
    "smoothness.reported_to": Meaning("unordered", TESTING),
    "smoothness.whichever": Meaning("unordered", RESULT),
    "smoothness.wheel_paths": Meaning("unordered", TESTING),
    "smoothness.exclusions": Meaning("at_most", EXCLUSION),
    "smoothness.agreement": Meaning("at_least", TESTING),
    "localized.limit": Meaning("at_most", RESULT),
    "localized.base": Meaning("unordered", METHOD),
    "pay_adjustment": Meaning("unordered", ADJUSTMENT),
    "bands": Meaning("unordered", ADJUSTMENT),
    "texture_depth": Meaning("unordered", METHOD),
    "texture_depth.at_least": Meaning("at_least", RESULT),
    "texture_depth.single_at_least": Meaning("at_least", RESULT),
    "texture_depth.end_of_life_at_least": Meaning("at_least", RESULT),
    "texture_depth.at_most": Meaning("at_most", RESULT),
    "texture_depth.land_texture": Meaning("target", RESULT),
    "friction": Meaning("unordered", METHOD),
    "friction.at_least": Meaning("at_least", RESULT),
    "noise": Meaning("unordered", METHOD),
    "noise.at_most": Meaning("at_most", RESULT),
    "test": Meaning("unordered", TESTING),
    "test.method": Meaning("unordered", METHOD),
    "test.edition": Meaning("unordered", METHOD),
    "test.device": Meaning("unordered", METHOD),
    "test.by": Meaning("unordered", DUTY),
    "test.lot": Meaning("at_most", TESTING),
    "test.where": Meaning("at_most", TESTING),
    "test.readings": Meaning("at_least", TESTING),
    "test.statistic": Meaning("unordered", STATISTIC),
    "test.share": Meaning("at_least", STATISTIC),
    "tiers": Meaning("unordered", RESULT),
    "tiers.share": Meaning("at_least", STATISTIC),
    "tiers.limit": Meaning("unordered", RESULT),
    "test.retest": Meaning("at_least", TESTING),
    "test.remedy": Meaning("unordered", REMEDY),
    "test.pay_effect": Meaning("unordered", REMEDY),
    "edition": Meaning("unordered", METHOD),
    "limits": Meaning("unordered", EXTENT),
    "area": Meaning("unordered", AREA),
    "texture": Meaning("unordered", CUT),
    "place": Meaning("unordered", EXTENT),
    "name": Meaning("unordered", RECORD),
    "pay_item": Meaning("unordered", PAY_ITEM),
    "pay_items": Meaning("unordered", PAY_ITEM),
    "pay_items.number": Meaning("unordered", PRICE),
    "pay_items.name": Meaning("unordered", PRICE),
    "pay_items.unit": Meaning("unordered", PRICE),
    "pay_items.measured_as": Meaning("unordered", PRICE),
    "pay_items.quantity": Meaning("unordered", PRICE),
    "pay_items.unit_price": Meaning("unordered", PRICE),
    "pay_items.includes": Meaning("unordered", INCLUDED),
    "pay_items.excludes": Meaning("unordered", INCLUDED),
    "residue": Meaning("unordered", RESIDUE),
    "residue.ph": Meaning("target", RESIDUE),
    "residue.setback": Meaning("at_least", RESIDUE),
    "residue.permit_by": Meaning("unordered", DUTY),
    "residue.pay_item": Meaning("unordered", PAY_ITEM),
    "trial_section": Meaning("at_least", TRIAL),
    "trial_section.tries": Meaning("at_most", TRIAL),
    "trial_section.paid": Meaning("unordered", INCLUDED),
    "trial_section.shows": Meaning("unordered", TRIAL),
    "trial_section.method": Meaning("unordered", METHOD),
    "trial_section.response": Meaning("at_most", RESPONSE),
    "submittals": Meaning("unordered", SUBMITTAL),
    "submittals.due": Meaning("at_least", SUBMITTAL),
    "submittals.response": Meaning("at_most", RESPONSE),
    "conditions": Meaning("fact", FACT),
    "settings": Meaning("fact", FACT),
    "sequence": Meaning("unordered", SCHEDULE),
    "project": Meaning("unordered", RECORD),
    "project.revision": Meaning("unordered", EDITION),
    "project.date": Meaning("unordered", EDITION),
    "accepted": Meaning("unordered", ACCEPTANCE),
    "reasons": Meaning("fact", FACT),
}

DEFAULT = Meaning("unordered", RECORD)

ORDERED_CHOICES: dict[str, tuple[tuple[str, str], ...]] = {
    "test.statistic": (("mean", "each"), ("mean", "mean_and_each"), ("share", "each")),
    "test.by": (("agency", "contractor"),),
    "residue.permit_by": (("agency", "contractor"),),
    "smoothness.wheel_paths": (("one", "both"), ("left", "both"), ("right", "both")),
    "smoothness.whichever": (("less_strict", "stricter"),),
    "straightedge.direction": (("longitudinal", "both"), ("transverse", "both")),
    "equipment.several_machines": (("true", "false"),),
    "trial_section.required": (("false", "true"),),
    "trial_section.paid": (("at_contract_price", "included"),),
    "trial_section.production": (("at_contractors_risk", "after_acceptance"),),
}
"""Choices with a looser and a tighter side, as pairs (looser, tighter)."""

UNKNOWN_WHEN_CHANGED = frozenset({"edition", "method"})
"""Keys whose change may alter what the same number means: a person must look."""

REMEDIES = frozenset({"remedy", "pay_effect", "action"})
"""Keys that say what follows from a failure."""

PRESENCE: dict[str, tuple[Sense, Sense]] = {
    "test.tiers": (Sense.TIGHTER, Sense.LOOSER),
    "smoothness.exclusions": (Sense.LOOSER, Sense.TIGHTER),
    "pay_items.includes": (Sense.TIGHTER, Sense.LOOSER),
    "pay_items.excludes": (Sense.LOOSER, Sense.TIGHTER),
}
"""Requirements whose mere presence eases or burdens: sense when added, sense when removed."""


def canonical(key: tuple[str, ...]) -> tuple[str, ...]:
    """The key with every entry under ``testing`` read as a test."""
    return tuple("test" if part == "testing" else part for part in key)


def lookup(key: tuple[str, ...]) -> Meaning:
    """The row for a key: the nearest one to its end, an exact key before its noun."""
    parts = canonical(key)
    for end in range(len(parts), 0, -1):
        for start in range(end):
            if found := MEANINGS.get(".".join(parts[start:end])):
                return found
    return DEFAULT


def entry_of(table: Mapping[str, T], key: tuple[str, ...]) -> T | None:
    """The entry of another table for a key, by its last two parts."""
    return table.get(".".join(canonical(key)[-2:]))
