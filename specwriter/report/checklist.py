"""The questions of the federal review checklist, and which check answers which.

The questions are those of FHWA Technical Advisory HIAM-20, Attachments 2 and 3, 2010, and of the
FHWA review guides on pavement smoothness and on measurement and payment, 1999, in our own words.
What no check answers stays with a person, and is said to.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Question:
    """One question of a reviewer; ``person`` is what remains to be read by somebody."""

    asks: str
    checks: tuple[str, ...] = ()
    person: str = ""


QUESTIONS = (
    Question(
        asks="Does the text follow the order of the work, one idea in a sentence?",
        checks=(
            "texture-missing-in-sequence",
            "repairs-after-cutting",
            "grooving-before-grinding",
            "sealing-before-cutting",
            "marking-before-cutting",
            "profile-before-cutting",
            "ride-test-after-sealing",
            "opening-before-the-last-step",
            "trial-after-production",
            "long-sentence",
        ),
        person="the order of sentences in clauses of your own",
    ),
    Question(
        asks="Does it have the five parts, or those of the agency? Does it say what it changes?",
        checks=("base-section-not-stated",),
        person="the draft has the parts of the format; clauses of your own are yours to file",
    ),
    Question(
        asks="Are there vague words, mixed duty verbs, two words for one thing, open lists?",
        checks=(
            "vague-words",
            "time-without-number",
            "and-or",
            "open-list",
            "duty-verb",
            "other-term",
            "term-defined-again",
            "abbreviation-not-explained",
            "reason-in-text",
            "order-to-the-agency",
            "general-provision-repeated",
        ),
        person="whether voice and tense are the same throughout, and lists are parallel",
    ),
    Question(
        asks="Is it said what is measured, by which method, where and when?",
        checks=(
            "requirement-without-test",
            "incomplete-test",
            "tolerance-without-length",
            "method-of-another-property",
            "index-instrument",
            "sensor-not-stated",
            "gauge-too-coarse",
            "reference-without-edition",
            "editions-differ",
            "undated-reference",
            "moving-edition",
        ),
    ),
    Question(
        asks="Can an inspector tell from the text whether the work complies?",
        checks=(
            "decided-without-criterion",
            "blank-text",
            "tolerance-without-unit",
            "dimension-without-tolerance",
            "coverage-share-without-window",
        ),
        person="whether the tests are worth their cost",
    ),
    Question(
        asks="Are there ways round a requirement?",
        checks=(
            "limit-with-a-way-round",
            "decided-without-criterion",
        ),
    ),
    Question(
        asks="Is it said how acceptance is decided, and what follows from a failure?",
        checks=(
            "incomplete-test",
            "mean-of-one-reading",
            "texture-statistic-and-limits",
            "regrinding-without-texture-test",
            "pay-after-correction",
            "failed-blades-not-stated",
        ),
        person="whether the remedy is fair to both sides",
    ),
    Question(
        asks="Does each requirement serve acceptance or payment?",
        checks=(
            "tested-without-limit",
            "requirement-without-test",
            "ride-limit-already-met",
        ),
        person="whether the requirement is needed at all",
    ),
    Question(
        asks="Is either the method prescribed or the result, and not both?",
        checks=(
            "method-and-result",
            "blade-set-for-unknown-aggregate",
        ),
        person="who bears the risk where both stay",
    ),
    Question(
        asks="Can the requirements be met together?",
        checks=(
            "dimensions-cannot-hold-together",
            "stated-twice-with-different-values",
            "limits-cross",
            "lost-negation",
        ),
        person="whether the result is what the road needs",
    ),
    Question(
        asks="Is a test needed, or does a certificate suffice?",
        person="the choice between test and certificate",
    ),
    Question(
        asks="Who measures the ride, how, how soon, and what settles two results that differ?",
        checks=(
            "smoothness-incomplete",
            "incomplete-test",
            "pay-schedule-incomplete",
            "profiler-agreement-unusual",
            "sensor-on-longitudinal-texture",
        ),
        person="the referee procedure of the agency, where it has one",
    ),
    Question(
        asks="Does the pay table pay for each result once, and never more for worse work?",
        checks=(
            "pay-schedule-not-chosen",
            "pay-rows-leave-a-gap",
            "pay-rows-overlap",
            "pay-rows-share-an-end",
            "pay-table-without-an-end",
            "pay-rises-with-roughness",
            "pay-row-also-corrected",
            "pay-jump",
            "cap-above-the-price",
        ),
        person="whether the sums are worth the difference in ride",
    ),
    Question(
        asks="Is each kind of work measured by a rule, in one unit, and paid in one place?",
        checks=(
            "measurement-not-stated",
            "area-rule-incomplete",
            "pay-unit-against-measurement",
            "price-list-missing",
            "cost-without-home",
            "included-and-excluded",
            "paid-twice",
            "overlap-paid",
            "one-defect-paid-twice",
            "quantity-in-text",
            "pay-item-not-used",
            "area-without-pay-item",
        ),
        person="drawings and plan notes, which the tool does not read",
    ),
    Question(
        asks="Do the quantities follow from the limits?",
        checks=(
            "limits-incomplete",
            "quantity-against-limits",
            "quantity-near-limits",
            "quantity-below-limits",
            "quantity-in-another-unit",
        ),
        person="whether the limits are those of the plans",
    ),
    Question(
        asks="Does the trial section show in time what production is judged by, and who pays it?",
        checks=(
            "trial-section-not-settled",
            "trial-after-production",
            "trial-not-awaited",
            "trial-answered-after-production",
            "no-time-for-second-try",
            "trial-shows-other-limits",
            "trial-measured-otherwise",
            "trial-paid-otherwise",
        ),
        person="where the trial section lies",
    ),
    Question(
        asks="Are the submittals described, and their times realistic?",
        checks=(
            "submittal-incomplete",
            "response-after-due",
            "no-time-to-resubmit",
            "no-time-for-trial",
            "due-before-work-that-is-not-done",
        ),
        person="whether each submittal is used",
    ),
    Question(
        asks="Are products named by what they must do, and not by their maker?",
        checks=("decided-without-criterion",),
        person="names of makers in clauses of your own, and the rules of the funding",
    ),
    Question(
        asks="Does one unit system govern, and do converted values agree?",
        checks=(
            "units-against-governing",
            "dual-values-differ",
            "pair-in-two-systems",
            "mixed-units-in-one-cut",
            "unit-slip",
        ),
    ),
    Question(
        asks="Does it duplicate or contradict the standard specifications?",
        checks=(
            "dual-values-differ",
            "pay-stated-twice",
        ),
        person="the text of the standard; the tool knows what stands under also_stated alone",
    ),
    Question(
        asks="Are the required federal and state provisions there?",
        person="the list of provisions for the funding of the contract",
    ),
    Question(
        asks="Does it fit the site: structures, drainage, neighbours, fixtures?",
        checks=(
            "bridge-depth-not-stated",
            "cover-not-stated",
            "no-depth-limit-over-steel",
            "loop-depth-not-stated",
            "residue-not-settled",
            "spreading-beside-closed-drainage",
            "permit-not-assigned",
            "tone-near-neighbours",
            "hours-not-stated",
            "kerb-strip-not-stated",
            "fixture-strip-not-stated",
            "cable-strip-not-stated",
        ),
        person="a walk over the site",
    ),
    Question(
        asks="Will the requirements be enforced, and will it be known whether they worked?",
        person="the answer of those who build and inspect the work",
    ),
)
