"""Laws of drafting: text of the job comes out character by character, and twice the same."""

from __future__ import annotations

import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from specwriter.assemble import assemble, load_library
from tests.assemble import document, shown
from tests.support import job

SIGNS = "*_`|#>{}%[]()<>\\&!~-+=.:\"'1a ßé±\ue000\ue001"


@given(st.text(alphabet=SIGNS, min_size=1, max_size=30).filter(lambda t: t.strip()))
@settings(max_examples=60, deadline=None)
def test_text_of_the_job_comes_out_as_the_same_characters(text: str) -> None:
    made = document(
        job("diamond_grinding", {"areas.mainline.name": text}),
        "{% for a in areas %}\n**In {{ a.name }}:** x.\n\n1. {{ a.name }}\n{% endfor %}\n\n"
        "Table: t | T\n| A |\n|---|\n{% for a in areas %}\n| {{ a.name }} |\n{% endfor %}\n",
    )

    expected = re.sub(" +", " ", text)
    paragraph, item, table = made.parts[2].clauses[0].blocks
    plain = "".join(run.text for run in paragraph.runs)  # type: ignore[union-attr]
    assert plain == f"In {expected}: x."
    assert shown(item.runs) == expected  # type: ignore[union-attr]
    assert shown(table.rows[0][0]) == expected  # type: ignore[union-attr]


@pytest.mark.parametrize("name", ["urban-grinding", "rural-grooving", "as-received"])
def test_one_job_makes_one_document(name: str) -> None:
    assert assemble(job(name), load_library()) == assemble(job(name), load_library())
