"""What a requirement means to the two sides of the contract: a table, and nothing but a table.

Each row says how a bare value is to be read and which matter the requirement belongs to; each
matter says who carries a change, and why, in one sentence.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal, TypeVar

from specwriter.compare.change import Bearer, Sense

T = TypeVar("T")

Bare = Literal["at_most", "at_least", "target", "unordered", "fact"]
"""How a value without a limit word is read.

``unordered`` has a tighter side only when the value is written as a limit or a range, ``fact``
never: it asks for nothing.
"""

PRACTICE = "common practice, no source"


@dataclass(frozen=True, slots=True)
class Burden:
    """Who carries a change, and why."""

    bears: Bearer
    because: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Matter:
    """A kind of requirement: who carries it when it tightens, loosens or changes otherwise."""

    tighter: Burden
    looser: Burden
    other: Burden
    source: str = PRACTICE

    def burden(self, sense: Sense) -> Burden:
        """Who carries a change of this sense."""
        match sense:
            case Sense.TIGHTER | Sense.ADDED:
                return self.tighter
            case Sense.LOOSER | Sense.REMOVED:
                return self.looser
            case Sense.RESTATED:
                return RESTATED
            case _:
                return self.other


@dataclass(frozen=True, slots=True)
class Meaning:
    """How one requirement is read."""

    bare: Bare
    matter: Matter


RESTATED = Burden("both", "Nothing is asked that was not asked before.")
_CHECK = Burden("check", "The values alone do not say in whose favour this goes: read it in place.")

RESULT = Matter(
    tighter=Burden("contractor", "More must be achieved for the same pay item."),
    looser=Burden("agency", "The agency accepts a lesser result than before."),
    other=Burden("check", "The result asked for moved: check what it costs and what it gives."),
)
CUT = Matter(
    tighter=Burden("contractor", "The saw has less room within which the cut is accepted."),
    looser=Burden("agency", "The agency accepts more spread in the cut."),
    other=Burden("check", "The cut itself moved: check blades, drainage, texture and noise."),
)
PROTECTION = Matter(
    tighter=Burden("contractor", "More concrete must be left, so there is less room to correct."),
    looser=Burden("agency", "More of the agency's slab may be cut away."),
    other=Burden("check", "What must be left of the slab moved: check cover and thickness."),
)
MACHINE = Matter(
    tighter=Burden(
        "both", "Fewer machines qualify; a prescribed machine also moves risk to the agency."
    ),
    looser=Burden("both", "More machines qualify; the end result alone must now protect."),
    other=Burden("check", "Other machines qualify: check that they can reach the result."),
)
TESTING = Matter(
    tighter=Burden("contractor", "More is measured, so more work can be found wanting."),
    looser=Burden("agency", "Less is measured, so more poor work can pass."),
    other=Burden(
        "check", "The result is judged in another way: the same limit may bind otherwise."
    ),
)
STATISTIC = Matter(
    tighter=Burden("contractor", "Single readings must now pass where the mean evened them out."),
    looser=Burden("agency", "Single poor readings can now hide in the mean or the share."),
    other=TESTING.other,
)
AGENCY_TESTING = Matter(
    tighter=Burden("agency", "The agency measures more, and more work can be found wanting."),
    looser=Burden("agency", "The agency measures less, so more poor work can pass."),
    other=TESTING.other,
)
METHOD = Matter(
    tighter=TESTING.tighter,
    looser=TESTING.looser,
    other=Burden("check", "Another method or edition may measure and judge differently."),
)
REMEDY = Matter(
    tighter=Burden("contractor", "Work that fails has a consequence that was not written before."),
    looser=Burden("agency", "Work that fails no longer has this consequence."),
    other=Burden("check", "What follows from a failure is worded anew: compare its harshness."),
)
EXCLUSION = Matter(
    tighter=Burden("contractor", "Places that were left out of acceptance now count."),
    looser=Burden("agency", "Places that counted are now left out of acceptance."),
    other=Burden("check", "What is left out of acceptance is worded anew."),
)
SUBMITTAL = Matter(
    tighter=Burden("contractor", "The contractor must deliver more, or earlier."),
    looser=Burden("agency", "The agency gets less, or gets it later."),
    other=Burden("check", "What is delivered, or what becomes of it, changed."),
)
RESPONSE = Matter(
    tighter=Burden("agency", "The agency must answer sooner."),
    looser=Burden("contractor", "The contractor waits longer for an answer."),
    other=Burden("check", "The time for an answer is written otherwise."),
)
TRIAL = Matter(
    tighter=Burden("contractor", "More must be shown before production may begin."),
    looser=Burden("agency", "Production may begin after less has been shown."),
    other=Burden("check", "The trial section is asked for in another way."),
)
DUTY = Matter(
    tighter=Burden("contractor", "A duty of the agency becomes one of the contractor."),
    looser=Burden("agency", "A duty of the contractor becomes one of the agency."),
    other=_CHECK,
)
RESIDUE = Matter(
    tighter=Burden("contractor", "Residue must be handled under a stricter rule."),
    looser=Burden("agency", "Residue may be handled under a looser rule: permits govern."),
    other=Burden("check", "Residue is handled in another way: local permits govern."),
)
_BIDS = Burden("both", "Money is measured or paid otherwise: bids change with it.")
PRICE = Matter(tighter=_BIDS, looser=_BIDS, other=_BIDS)
INCLUDED = Matter(
    tighter=Burden("contractor", "Work is paid inside another price: the price risk moves."),
    looser=Burden("agency", "Work leaves the price and must be paid elsewhere."),
    other=_BIDS,
)
PAY_ITEM = Matter(
    tighter=Burden("both", "Work gets a pay item: check what is now paid where."),
    looser=Burden("contractor", "Without a pay item the work is incidental: the price risk moves."),
    other=Burden("both", "Work is paid under another item: bids change with it."),
)
ADJUSTMENT = Matter(
    tighter=Burden("both", "Pay now follows the result: more to gain and more to lose."),
    looser=Burden("both", "Pay no longer follows the result in this way."),
    other=Burden("both", "The money that follows the result changed: gain and risk move."),
)
FACT = Matter(
    tighter=Burden("check", "A fact of the site is now stated: requirements may rest on it."),
    looser=Burden("check", "A fact of the site is no longer stated: requirements rested on it."),
    other=Burden("check", "A fact of the site changed: read the requirements that rest on it."),
)
EXTENT = Matter(
    tighter=Burden("both", "There is more to texture: quantities and traffic staging change."),
    looser=Burden("both", "There is less to texture: quantities and traffic staging change."),
    other=Burden("both", "The extent moved: quantities and traffic staging change."),
)
AREA = Matter(
    tighter=EXTENT.tighter,
    looser=EXTENT.looser,
    other=Burden("both", "The area stands under another id: references to it must follow."),
)
SCHEDULE = Matter(
    tighter=Burden("check", "The order of work has another step."),
    looser=Burden("check", "The order of work has a step less."),
    other=Burden("check", "The order of work changed: check curing, joints and traffic."),
)
RECORD = Matter(tighter=_CHECK, looser=_CHECK, other=_CHECK)
ACCEPTANCE = Matter(
    tighter=Burden("agency", "Somebody takes responsibility for a finding."),
    looser=Burden("agency", "Nobody takes responsibility for this finding any more."),
    other=Burden("agency", "Responsibility for a finding is taken in other words."),
)

# The reading of bare values is common practice, no source, unless a row says otherwise.
MEANINGS: dict[str, Meaning] = {
    "groove": Meaning("target", CUT),
    "groove.alignment": Meaning("at_most", CUT),
    "groove.alignment_over": Meaning("at_least", CUT),
    "land": Meaning("target", CUT),
    "ridge": Meaning("target", CUT),
    "flush_grind": Meaning("target", CUT),
    "blade": Meaning("target", MACHINE),
    "blade.failed_allowed": Meaning("at_most", CUT),
    "equipment": Meaning("at_least", MACHINE),
    "removal.depth": Meaning("at_most", PROTECTION),
    "removal.depth_per_pass": Meaning("at_most", PROTECTION),
    "removal.cover_after": Meaning("at_least", PROTECTION),
    "removal.thickness_after": Meaning("at_least", PROTECTION),
    "coverage": Meaning("at_most", RESULT),
    "coverage.share": Meaning("at_least", RESULT),
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
    "smoothness.whichever": Meaning("unordered", RESULT),
    "smoothness.wheel_paths": Meaning("unordered", TESTING),
    "smoothness.exclusions": Meaning("at_most", EXCLUSION),
    "localized.limit": Meaning("at_most", RESULT),
    "localized.base": Meaning("unordered", METHOD),
    "pay_adjustment": Meaning("unordered", ADJUSTMENT),
    "bands": Meaning("unordered", ADJUSTMENT),
    "texture_depth": Meaning("unordered", METHOD),
    "texture_depth.at_least": Meaning("at_least", RESULT),
    "texture_depth.single_at_least": Meaning("at_least", RESULT),
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
    "submittals": Meaning("unordered", SUBMITTAL),
    "submittals.due": Meaning("at_least", SUBMITTAL),
    "submittals.response": Meaning("at_most", RESPONSE),
    "conditions": Meaning("fact", FACT),
    "sequence": Meaning("unordered", SCHEDULE),
    "project": Meaning("unordered", RECORD),
    "accepted": Meaning("unordered", ACCEPTANCE),
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
}
"""Choices with a looser and a tighter side, as pairs (looser, tighter)."""

UNKNOWN_WHEN_CHANGED = frozenset({"edition", "method"})
"""Keys whose change may alter what the same number means: a person must look."""

PRESENCE: dict[str, tuple[Sense, Sense]] = {
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
