"""No matter that a provision must settle is left without a clause, and each fact does its work."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any

import pytest
import yaml

from specwriter.assemble import Document, assemble, load_library
from specwriter.assemble.registers import REGISTERS
from specwriter.model import Job
from specwriter.render import render_markdown
from tests.support import TEXTURES, job

LIBRARY = load_library()
TABLE: dict[str, Any] = yaml.safe_load(
    Path(__file__).with_name("slots.yaml").read_text(encoding="utf-8")
)
FLAGS: dict[str, dict[str, Any]] = TABLE["flags"]
SLOTS = {
    (kind, slot): homes
    for kind, slots in TABLE.items()
    if kind != "flags"
    for slot, homes in slots.items()
}
BESIDE = {*REGISTERS, "remedy_table", "lead_in", "revisions", "memo"}
"""What settles a matter and is no clause."""


def test_each_matter_has_a_clause_that_is_for_its_texture() -> None:
    clauses = {clause.id: clause for clause in LIBRARY.clauses}
    lost = {slot: [each for each in homes if each not in BESIDE] for slot, homes in SLOTS.items()}

    assert {kind for kind, _ in SLOTS} == {"common", *TEXTURES}
    assert all(SLOTS.values())
    for (kind, slot), homes in lost.items():
        for each in homes:
            found = clauses[each]
            assert kind == "common" or not found.textures or kind in found.textures, (slot, each)


def test_each_clause_settles_a_matter() -> None:
    named = {each for homes in SLOTS.values() for each in homes}
    untold = {clause.id for clause in LIBRARY.clauses} - named

    # A rank of the documents and the two that speak of price alone are matters of the house.
    assert untold == {"common.precedence", "common.hardness", "common.rework"}


@pytest.mark.parametrize("flag", FLAGS)
def test_a_fact_brings_its_words(flag: str) -> None:
    case = FLAGS[flag]
    without = text_of(job(case["job"], case.get("without", {})))
    told = text_of(job(case["job"], case["set"]))

    assert re.search(case["says"], told)
    assert not re.search(case["says"], without)


def text_of(made: Job) -> str:
    document: Document = assemble(made, LIBRARY)
    return render_markdown(document).replace("\\", "")
