"""The questions of the federal review checklist, and which check answers which.

The questions are those of FHWA Technical Advisory HIAM-20, Attachments 2 and 3, 2010, in our own
words. What no check answers stays with a person, and is said to.
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
            "repairs-after-cutting",
            "grooving-before-grinding",
            "sealing-before-cutting",
            "marking-before-cutting",
            "profile-before-cutting",
            "trial-after-production",
        ),
        person="the order of sentences in clauses of your own",
    ),
    Question(
        asks="Does it have the five parts, or those of the agency?",
        person="the draft has the parts of the format; clauses of your own are yours to file",
    ),
    Question(
        asks="Are there vague words, mixed duty verbs, two words for one thing?",
        checks=("vague-words", "time-without-number", "and-or", "duty-verb", "other-term"),
    ),
    Question(
        asks="Is it said what is measured, by which method, where and when?",
        checks=(
            "requirement-without-test",
            "incomplete-test",
            "index-instrument",
            "sensor-not-stated",
            "undated-reference",
            "moving-edition",
        ),
    ),
    Question(
        asks="Can an inspector tell from the text whether the work complies?",
        checks=("decided-without-criterion", "blank-text", "tolerance-without-unit"),
        person="whether the tests are worth their cost",
    ),
    Question(
        asks="Are there ways round a requirement?",
        checks=("limit-with-a-way-round", "decided-without-criterion"),
    ),
    Question(
        asks="Can the requirements be met together?",
        checks=("dimensions-cannot-hold-together", "limits-cross", "lost-negation"),
        person="whether the result is what the road needs",
    ),
    Question(
        asks="Is a test needed, or does a certificate suffice?",
        person="the choice between test and certificate",
    ),
    Question(
        asks="Are the submittals described, and their times realistic?",
        checks=(
            "response-after-due",
            "no-time-to-resubmit",
            "due-before-work-that-is-not-done",
        ),
        person="whether each submittal is used",
    ),
    Question(
        asks="Does it duplicate or contradict the standard specifications?",
        person="the text of the standard, which the tool does not hold",
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
            "spreading-beside-closed-drainage",
            "tone-near-neighbours",
            "kerb-strip-not-stated",
            "fixture-strip-not-stated",
        ),
        person="a walk over the site",
    ),
)
