"""Duties of the contractor read as the house writes them: imperative, shall or must."""

from __future__ import annotations

import re

import pytest

from specwriter.assemble import Document, assemble, load_library
from specwriter.assemble.document import ListItem, Paragraph
from specwriter.assemble.duty import duty_at, with_duty_verb
from tests.support import TEXTURES, job

LIBRARY = load_library()
TAG = re.compile(r"\{%.*?%\}|\{\{.*?\}\}")
OPENING = re.compile(r"^(?:After|As|At|Before|During|For|In|On|When|Where|While|With|Of)\b[^:]*?, ")
NO_DUTY = re.compile(
    r"(?:a|the|an|each|it|its|no|these|this|they|that|damage|acceptance|opening|federal|feathering"
    r"|production|ridge|surface|table|other|on|where|for|in|of)\b",
    re.IGNORECASE,
)
"""How a sentence begins that states no duty of the contractor, behind its opening."""


@pytest.mark.parametrize(
    ("said", "expected"),
    [
        ("Submit the plan.", "The Contractor shall submit the plan."),
        ("Do not cut:", "The Contractor shall not cut:"),
        (
            "Lift the head before a joint, and lower it behind it.",
            "The Contractor shall lift the head before a joint, and lower it behind it.",
        ),
        (
            "Where a lane narrows, end the pass; do not let it cross another.",
            "Where a lane narrows, the Contractor shall end the pass; the Contractor shall not "
            "let it cross another.",
        ),
        (
            "On Main Street, where a limit is reached, stop, and report it.",
            "On Main Street, where a limit is reached, the Contractor shall stop, and report it.",
        ),
        ("1. Measure both wheel paths.", "1. The Contractor shall measure both wheel paths."),
        ("Texture each repair.", "The Contractor shall texture each repair."),
        (
            "The limit is 1; correct each bump above it.",
            "The limit is 1; the Contractor shall correct each bump above it.",
        ),
        ("1. measure both wheel paths;", None),
        ("Texture depth is measured.", None),
        ("Groove width is measured, each groove twice.", None),
        ("The Agency will report each result, record each test.", None),
        ("Where a method conflicts with this provision, this provision governs.", None),
        ("On Main Street, the depth is at most 1/8 in.", None),
        ("| Submit | Measure |", None),
        ("Table: tests | Measure the depth", None),
    ],
)
def test_a_sentence_reads_with_shall(said: str, expected: str | None) -> None:
    assert with_duty_verb(said, "shall") == (expected or said)


@pytest.mark.parametrize("clause", LIBRARY.clauses, ids=lambda clause: clause.id)
def test_each_sentence_of_the_library_is_a_duty_or_has_a_subject(clause: object) -> None:
    assert [part for part in _parts(clause.body) if not _has_subject(part)] == []  # type: ignore[attr-defined]


@pytest.mark.parametrize("verb", ["shall", "must"])
@pytest.mark.parametrize("texture", TEXTURES)
def test_a_document_keeps_to_the_verb_of_the_house(verb: str, texture: str) -> None:
    made = assemble(job(f"complete/{texture}", {"settings": {"duty_verb": verb}}), LIBRARY)
    text = _text(made)

    assert f"A sentence with the Contractor {verb} states a duty of the Contractor." in text
    assert len(re.findall(rf"\b[Tt]he Contractor {verb}\b", text)) > 90
    assert {each.lower() for each in re.findall(r"\b(?:shall|must)\b", text)} == {verb}


@pytest.mark.parametrize("setting", [None, {"duty_verb": "imperative"}])
@pytest.mark.parametrize("texture", TEXTURES)
def test_an_imperative_document_has_no_other_duty_verb(
    setting: dict[str, str] | None, texture: str
) -> None:
    text = _text(assemble(job(f"complete/{texture}", {"settings": setting}), LIBRARY))

    assert not re.search(r"\b(?:shall|must)\b", text)
    assert "A sentence in the imperative states a duty of the Contractor." in text


def _parts(body: str) -> list[str]:
    """The sentences of a body between full stops and semicolons, its tags blanked out."""
    lines = [TAG.sub("", line).strip() for line in body.split("\n")]
    prose = [line for line in lines if line and not line.startswith(("|", "Table:"))]
    sentences = [line for line in prose if not line.startswith("1. ")]
    return [part for line in sentences for part in line.split("; ") if part[:1].isalpha()]


def _has_subject(part: str) -> bool:
    if duty_at(part) is not None or (part.endswith(":") and "," not in part):
        return True
    return bool(NO_DUTY.match(OPENING.sub("", part)))


def _text(made: Document) -> str:
    blocks = [each for part in made.parts for clause in part.clauses for each in clause.blocks]
    prose = [each for each in blocks if isinstance(each, Paragraph | ListItem)]
    return "\n".join("".join(run.text for run in each.runs) for each in prose)
