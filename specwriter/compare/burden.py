"""Who carries a change, and why: a table of the matters that a contract deals with.

Each matter says, in one sentence each, who carries it when a requirement tightens, loosens or
changes otherwise.
"""

from __future__ import annotations

from dataclasses import dataclass

from specwriter.compare.change import Bearer, Sense, Touches

PRACTICE = "common practice, no source"


@dataclass(frozen=True, slots=True)
class Burden:
    """Who carries a change, and why."""

    bears: Bearer
    because: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Matter:
    """A kind of requirement: who carries it when it tightens, loosens or changes otherwise.

    ``added`` and ``removed`` are for requirements whose coming and going is neither tighter nor
    looser.
    """

    tighter: Burden
    looser: Burden
    other: Burden
    added: Burden | None = None
    removed: Burden | None = None
    source: str = PRACTICE
    touches: Touches = "contract"
    """What an addendum is asked about: competition, money, the contract, the site, or no more
    than the record."""

    def burden(self, sense: Sense) -> Burden:
        """Who carries a change of this sense."""
        match sense:
            case Sense.TIGHTER:
                return self.tighter
            case Sense.LOOSER:
                return self.looser
            case Sense.ADDED:
                return self.added or self.tighter
            case Sense.REMOVED:
                return self.removed or self.looser
            case Sense.RESTATED:
                return RESTATED
            case _:
                return self.other


RESTATED = Burden("both", "Nothing is asked that was not asked before.")
_CHECK = Burden("check", "The values alone do not say in whose favour this goes: read it in place.")

_STATED = Burden("check", "This is now stated: check what it asks for that was left open.")
_UNSTATED = Burden("check", "This is no longer stated: check what is now left open.")

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
CAPACITY = Matter(
    tighter=Burden("contractor", "Fewer machines qualify, so a suitable one must be found."),
    looser=Burden("agency", "Lesser machines qualify: the end result alone must now protect."),
    other=Burden("check", "Other machines qualify: check that they can reach the result."),
    added=Burden(
        "both", "Fewer machines qualify; asking for a machine also moves risk to the agency."
    ),
    removed=Burden("both", "Any machine qualifies: reaching the end result alone is the risk."),
    touches="competition",
)
MACHINES_TOGETHER = Matter(
    tighter=Burden("contractor", "Only one machine may work in a lane."),
    looser=Burden("agency", "Several machines may work in a lane, and their textures can differ."),
    other=CAPACITY.other,
    added=Burden("contractor", "Machines that share a lane are now under a rule."),
    removed=Burden("agency", "Machines that share a lane need not match any more."),
    touches="competition",
)
PRESCRIBED = Matter(
    tighter=Burden(
        "both", "There is less choice of means; what is prescribed also moves risk to the agency."
    ),
    looser=Burden("both", "There is more choice of means; the end result alone must now protect."),
    other=Burden("check", "Other means are prescribed: check that they can reach the result."),
    added=Burden(
        "agency", "A prescribed blade or method moves the risk of the end result to the agency."
    ),
    removed=Burden(
        "contractor", "The means are not prescribed any more: reaching the end result is the risk."
    ),
    touches="competition",
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
    added=_STATED,
    removed=_UNSTATED,
)
AGENCY_TESTING = Matter(
    tighter=Burden("agency", "The agency measures more, and more work can be found wanting."),
    looser=Burden("agency", "The agency measures less, so more poor work can pass."),
    other=TESTING.other,
)
METHOD = Matter(
    tighter=_STATED,
    looser=_UNSTATED,
    other=Burden("check", "Another method or edition may measure and judge differently."),
)
REMEDY = Matter(
    tighter=Burden("contractor", "Work that fails costs more to put right than before."),
    looser=Burden("agency", "Work that fails has a milder consequence than before."),
    added=Burden("contractor", "Work that fails has a consequence that was not written before."),
    removed=Burden("agency", "Work that fails no longer has this consequence."),
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
    tighter=Burden("agency", "The agency must answer in less time."),
    looser=Burden("contractor", "The contractor waits longer for an answer."),
    other=Burden("check", "The time for an answer is written otherwise."),
    added=Burden("agency", "The agency must now answer within a stated time."),
    removed=Burden("contractor", "No time is stated any more within which the agency answers."),
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
    added=_STATED,
    removed=_UNSTATED,
)
RESIDUE = Matter(
    tighter=Burden("contractor", "Residue must be handled under a stricter rule."),
    looser=Burden("agency", "Residue may be handled under a looser rule: permits govern."),
    other=Burden("check", "Residue is handled in another way: local permits govern."),
)
_BIDS = Burden("both", "Money is measured or paid otherwise: bids change with it.")
PRICE = Matter(tighter=_BIDS, looser=_BIDS, other=_BIDS, touches="money")
INCLUDED = Matter(
    tighter=Burden("contractor", "Work is paid inside another price: the price risk moves."),
    looser=Burden("agency", "Work leaves the price and must be paid elsewhere."),
    other=_BIDS,
    added=_STATED,
    removed=_UNSTATED,
    touches="money",
)
PAY_ITEM = Matter(
    tighter=Burden("both", "Work gets a pay item: check what is now paid where."),
    looser=Burden("contractor", "Without a pay item the work is incidental: the price risk moves."),
    other=Burden("both", "Work is paid under another item: bids change with it."),
    touches="money",
)
ADJUSTMENT = Matter(
    tighter=Burden("both", "Pay now follows the result: more to gain and more to lose."),
    looser=Burden("both", "Pay no longer follows the result in this way."),
    other=Burden("both", "The money that follows the result changed: gain and risk move."),
    touches="money",
)
FACT = Matter(
    tighter=Burden("check", "A fact of the site is now stated: requirements may rest on it."),
    looser=Burden("check", "A fact of the site is no longer stated: requirements rested on it."),
    other=Burden("check", "A fact of the site changed: read the requirements that rest on it."),
    touches="site",
)
EXTENT = Matter(
    tighter=Burden("both", "There is more to texture: quantities and traffic staging change."),
    looser=Burden("both", "There is less to texture: quantities and traffic staging change."),
    other=Burden("both", "The extent moved: quantities and traffic staging change."),
    touches="money",
)
AREA = Matter(
    tighter=EXTENT.tighter,
    looser=EXTENT.looser,
    other=Burden("both", "The area stands under another id: references to it must follow."),
    touches="money",
)
SCHEDULE = Matter(
    tighter=Burden("check", "The order of work has another step."),
    looser=Burden("check", "The order of work has a step less."),
    other=Burden("check", "The order of work changed: check curing, joints and traffic."),
)
RECORD = Matter(tighter=_CHECK, looser=_CHECK, other=_CHECK, touches="record")
_NAMED = Burden("both", "Versions are told apart by this.")
EDITION = Matter(tighter=_NAMED, looser=_NAMED, other=_NAMED, touches="record")
ACCEPTANCE = Matter(
    tighter=Burden("agency", "Somebody takes responsibility for a finding."),
    looser=Burden("agency", "Nobody takes responsibility for this finding any more."),
    other=Burden("agency", "Responsibility for a finding is taken in other words."),
    touches="record",
)
