"""Contracts that every clause of the shipped library keeps."""

from __future__ import annotations

import re
from functools import cache

import pytest

from specwriter.assemble import (
    Document,
    assemble,
    check_library,
    load_library,
    provision,
    select,
)
from specwriter.assemble.closure import requirements
from specwriter.assemble.document import Figure, Table
from specwriter.assemble.markdown import blocks_of
from specwriter.assemble.view import Value, job_view
from specwriter.model import Job
from tests.assemble.full import full
from tests.assemble.variants import around
from tests.support import TEXTURES, job

LIBRARY = load_library()
CLEAN = (
    "urban-grinding",
    "rural-grooving",
    "deck-transverse",
    "quiet-lanes",
    "runway",
    "five-textures",
)
EXAMPLES = (*CLEAN, "as-received")
BROKEN = re.compile(r".{0,40}(?:[ ][,.;)]|\(\)|\( |\.\.|,,|  |, \.|: \.).{0,20}")
"""Signs of a sentence with a hole in it."""


def text_of(made: Document) -> str:
    """Everything that stands in the parts, block by block."""
    lines = []
    for block in (b for part in made.parts for clause in part.clauses for b in clause.blocks):
        if isinstance(block, Table):
            lines += ["".join(r.text for r in cell) for row in block.rows for cell in row]
        elif isinstance(block, Figure):
            lines.append(block.description)
        else:
            lines.append("".join(run.text for run in block.runs))
    return "\n".join(lines)


def test_the_library_has_no_faults() -> None:
    assert [f"{f.place}: {f.says}" for f in check_library(LIBRARY)] == []


def test_the_five_parts_of_a_highway_provision_stand_in_order() -> None:
    assert [part.title for part in LIBRARY.outline.parts] == [
        "Description",
        "Materials",
        "Construction Requirements",
        "Method of Measurement",
        "Basis of Payment",
    ]


def test_every_clause_is_chosen_by_a_job_near_an_example() -> None:
    jobs = [*(job(name) for name in (*EXAMPLES, *TEXTURES)), *map(full, CLEAN)]
    chosen = set()
    for near in (*jobs, *(other for _, other in around(jobs))):
        chosen |= {choice.clause.id for choice in select(near, LIBRARY) if choice.chosen}

    assert {clause.id for clause in LIBRARY.clauses} - chosen == set()


def test_every_job_near_an_example_is_drafted_in_whole_sentences(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    # Most clauses of a variant read as they did before; those are read from Markdown once.
    read = cache(blocks_of)
    monkeypatch.setattr(provision, "blocks_of", lambda text, marked: read(text, tuple(marked)))

    for change, near in around(job(name) for name in CLEAN):
        text = text_of(assemble(near, LIBRARY))

        assert not BROKEN.search(text), (change, BROKEN.search(text))


@pytest.mark.parametrize("name", [*EXAMPLES, *TEXTURES])
def test_a_job_is_drafted(name: str) -> None:
    made = assemble(job(name), LIBRARY)

    assert [part.number for part in made.parts] == ["1.", "2.", "3.", "4.", "5."]
    assert not BROKEN.search(text_of(made)), BROKEN.search(text_of(made))


@pytest.mark.parametrize("name", CLEAN)
def test_a_clean_example_states_everything_it_requires(name: str) -> None:
    assert assemble(job(name), LIBRARY).unexpressed == ()


@pytest.mark.parametrize("name", CLEAN)
def test_every_number_required_by_a_clean_example_is_in_the_text_as_written(name: str) -> None:
    made = job(name)
    text = text_of(assemble(made, LIBRARY))
    required = [path for path, spelled in requirements(made) if spelled]

    assert [path for path in required if written(made, path) not in text] == []


@pytest.mark.parametrize("name", CLEAN)
def test_a_job_with_every_result_is_stated_whole_and_leaves_nothing_open(name: str) -> None:
    made = full(name)
    document = assemble(made, LIBRARY)
    text = text_of(document)
    required = [path for path, spelled in requirements(made) if spelled]

    assert document.unexpressed == ()
    assert document.open_decisions == ()
    assert not BROKEN.search(text), BROKEN.search(text)
    assert [path for path in required if written(made, path) not in text] == []


def written(made: Job, path: str) -> str:
    """The text of the job at a path; of a limit of zero, how the document says it."""
    found = job_view(made)
    for key in path.split("."):
        found = found[int(key)] if key.isdigit() else found.read(key)  # type: ignore[index]
    text = found.quantity.text.strip() if isinstance(found, Value) else str(found)
    return re.sub(r"^at most (0 \w+)$", r"\1 (none is allowed)", text)
