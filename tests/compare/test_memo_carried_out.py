"""A change memo carried out by a program on the old document gives the new one."""

from __future__ import annotations

from functools import cache
from typing import Any

import pytest

from specwriter.assemble import assemble, load_library
from specwriter.compare.instructions import instructions
from specwriter.compare.text import compare_texts
from specwriter.compare.text.changes import renumbered, text_changes
from specwriter.reading import Text, read_word
from specwriter.render import render_docx
from specwriter.workflow import check
from tests.compare.carrying_out import Clause, Copy, clauses_of
from tests.compare.redline.generated import pair
from tests.compare.redline.test_beside import DRAFTED, edited
from tests.compare.test_swapped_and_inserted import row_inserted, swapped
from tests.support import EXAMPLES, job

QUIET = "areas.freeway"
EDITIONS: dict[str, tuple[tuple[str, dict[str, Any]], tuple[str, dict[str, Any]]]] = {
    "a clause gone, and values changed": (
        ("quiet-lanes", {}),
        ("quiet-lanes", {f"{QUIET}.friction": None, f"{QUIET}.groove.depth": "1/8 in to 1/4 in"}),
    ),
    "items and clauses": (
        ("urban-grinding", {}),
        ("urban-grinding", {"conditions.loop_detectors": False, "trial_section.tries": "3"}),
    ),
    "without dual units": (
        ("urban-grinding", {}),
        ("urban-grinding", {"project.dual_units": False}),
    ),
    "another house format": (
        ("urban-grinding", {}),
        ("urban-grinding", {"settings.house_format": "three_part"}),
    ),
    "another verb": (("runway", {}), ("runway", {"settings.duty_verb": "must"})),
    "other contracts": (("five-textures", {}), ("quiet-lanes", {})),
    "a deck and a road": (("deck-transverse", {}), ("rural-grooving", {})),
}


@cache
def drafted(edition: str, side: int) -> Text:
    name, patches = EDITIONS[edition][side]
    return read_word(render_docx(assemble(job(name, patches), load_library())))


def shown(clauses: list[Clause]) -> list[str]:
    """Every heading, paragraph and row, in order."""
    found = []
    for clause in clauses:
        found.append(f"# {clause.title}")
        for line in clause.lines:
            found += [line.text] if line.rows is None else map(" | ".join, line.rows)
    return found


def carried_out(old: Text, new: Text) -> list[str]:
    match = compare_texts(old, new)
    memo = instructions(text_changes(match), renumbered(match))
    assert bool(memo) != match.is_same
    return shown(Copy(old).carry_out(memo))


@pytest.mark.parametrize("back", [False, True])
@pytest.mark.parametrize("edition", EDITIONS)
def test_the_memo_of_two_drafts_turns_one_into_the_other(edition: str, back: bool) -> None:
    old, new = drafted(edition, back), drafted(edition, not back)

    assert carried_out(old, new) == shown(clauses_of(new))


@pytest.mark.parametrize("seed", range(80))
def test_the_memo_of_generated_editions_turns_one_into_the_other(seed: int) -> None:
    old, new = map(read_word, pair(seed))

    assert carried_out(old, new) == shown(clauses_of(new))


@pytest.mark.parametrize("edit", [swapped, row_inserted])
def test_the_memo_of_an_edited_draft_turns_one_into_the_other(edit: Any) -> None:
    old, new = read_word(DRAFTED), read_word(edited(edit))

    assert carried_out(old, new) == shown(clauses_of(new))
    assert carried_out(new, old) == shown(clauses_of(old))


def test_the_revision_of_the_example_as_received_is_carried_out() -> None:
    folder = EXAMPLES / "as-received"
    jobs = [check(folder / name).job for name in ("job.yaml", "revised.yaml")]
    old, new = (read_word(render_docx(assemble(each, load_library()))) for each in jobs if each)

    assert carried_out(old, new) == shown(clauses_of(new))
