"""No number of a job is lost: each key of the schema holds one, and each reaches the document."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from specwriter.assemble import Document, assemble, load_library
from specwriter.render import render_markdown
from tests.assemble.every_key import numbered, written
from tests.assemble.variants import variants
from tests.support import TEXTURES

LIBRARY = load_library()
PLACES = {"transverse_grooving": "bridge_deck", "runway_grooving": "runway"}
ELSEWHERE = {
    "settings.": "what the house has decided is a matter of the checks",
    "reasons.": "reasons stand in the memo",
    "accepted.": "so does what somebody takes responsibility for",
    "areas.first.maintenance": "so does what those who keep the surface are told",
    "pay_items.first.quantity": "quantities and prices stand in the bid schedule",
    "pay_items.first.unit_price": "as above",
}
"""What the text of a provision does not say, and why."""


@pytest.mark.parametrize("own_facts", [False, True])
@pytest.mark.parametrize("texture", TEXTURES)
def test_each_number_of_a_job_with_every_key_is_in_its_document(
    texture: str, own_facts: bool
) -> None:
    job, numbers = numbered(texture, PLACES.get(texture, "roadway"), own_facts=own_facts)
    document = assemble(job, LIBRARY)
    text = plain(document)
    expected = [(path, number) for path, number in numbers if not path.startswith(tuple(ELSEWHERE))]
    if texture != "runway_grooving":
        expected = [each for each in expected if each[0] != "conditions.clear_within"]

    assert [f"{path}: {number}" for path, number in expected if not stands(number, text)] == []
    assert document.unexpressed == ()
    assert document.open_decisions == ()


FORMATS = ("five_part", "five_part_merged", "five_part_equipment", "airfield_item", "three_part")
NOT_PRINTED = {
    "settings.": "what the house has decided is a matter of the checks",
    "project.base_section.changes.0.clauses": "a name of a clause stands as its number",
}


@pytest.mark.parametrize(("texture", "house_format"), list(zip(TEXTURES, FORMATS, strict=True)))
def test_each_number_and_text_is_in_the_document_of_each_house_format(
    texture: str, house_format: str
) -> None:
    place = PLACES.get(texture, "roadway")
    job, numbers, texts = written(texture, place, own_facts=True, house_format=house_format)
    text = plain(assemble(job, LIBRARY))
    unsaid = (*ELSEWHERE, *NOT_PRINTED, "conditions.clear_within")

    assert len(texts) > 100
    lost = [path for path, number in numbers if not stands(number, text)]
    lost += [path for path, told in texts if told not in text and path != "settings.precedence.0"]
    assert [path for path in lost if not path.startswith(unsaid)] == []
    assert dict(texts)["settings.precedence.0"] in text


IDLE = {
    "conditions.new_pavement": "on old pavement the strength of new concrete is no matter",
    "conditions.bridges_within": "a deck is textured here itself",
    "conditions.open_between_shifts": "no aircraft on a road",
    "conditions.two_wheelers": "the sign stays until the job says that there are none",
    "settings.number_style": "a check holds the numbers of the job against it",
    "settings.page": "the paper is no text",
}
"""Words of a job that change no text of some documents, and why."""


@pytest.mark.parametrize("texture", ["diamond_grinding", "transverse_grooving"])
def test_each_word_of_a_job_changes_its_document(texture: str) -> None:
    job, _ = numbered(texture, PLACES.get(texture, "roadway"))
    before = plain(assemble(job, LIBRARY))
    words = [each for each in variants(job) if "absent" not in each[0]]

    idle = [change for change, other in words if plain(assemble(other, LIBRARY)) == before]

    assert len(words) > 50
    assert [change for change in idle if change.split(" ")[0] not in IDLE] == []


@pytest.mark.parametrize("noun", ["residue", "trial_section", "areas.first.smoothness", "project"])
def test_a_changed_word_of_a_job_loses_no_number(noun: str) -> None:
    """A number that a word makes idle is named as absent; every other one is printed still."""
    job, numbers = numbered("diamond_grinding", "roadway")
    near = [each for each in variants(job) if each[0].startswith(noun) and "absent" not in each[0]]
    lost = []
    for change, other in near:
        document = assemble(other, LIBRARY)
        text = plain(document)
        for path, number in numbers:
            idle = path.startswith((*ELSEWHERE, "conditions.clear_within"))
            if not idle and path not in document.unexpressed and not stands(number, text):
                lost.append(f"{change}: {path} {number}")

    assert near
    assert lost == []


def test_a_number_inside_a_longer_one_is_not_that_number() -> None:
    assert stands("8.123", "at least 8.123 in")
    assert not stands("8.123", "at least 8.1234 in or 18.123 in")


def plain(document: Document) -> str:
    """The document as Markdown without escapes, and without what its front sheet misses."""
    whole = replace(document, unexpressed=(), open_decisions=())
    return render_markdown(whole).replace("\\", "")


def stands(number: str, text: str) -> bool:
    """Whether a number stands in a text by itself."""
    return bool(re.search(rf"(?<![\d.]){re.escape(number)}(?!\d)", text))
