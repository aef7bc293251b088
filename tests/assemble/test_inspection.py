"""A library's faults: all of them, located in the clause files."""

from __future__ import annotations

from pathlib import Path

import pytest

from specwriter.assemble import LibraryError, assemble, check_library, load_library, select
from specwriter.assemble.library import Library, merged, read_folder
from tests.assemble import OUTLINE, clause, library
from tests.support import job


@pytest.mark.parametrize(
    ("body", "front", "line", "says"),
    [
        ("Good.\n\n{{ conditions.curb }}", {}, 9, "no 'curb'"),
        ("One.\n\n{% if conditions.curbs %}\n- two\n{% endif %}", {}, 10, "bulleted list"),
        ("{{ ref('common.none') }}", {}, 7, "no clause 'common.none'"),
        ("{{ table('none') }}", {}, 7, "no table 'none'"),
        ("Text.", {"part": "annex"}, 4, "no part 'annex'"),
        ("Text.", {"when": "conditions.curb"}, 6, "no 'curb'"),
        ("Text.", {"when": "x %}{% if y"}, 6, "one condition"),
        ("Text.", {"needs": "[areas.*.groove.widht]"}, 6, "no 'widht'"),
        ("Text.", {"expresses": "[area.groove]"}, 6, "no 'area'"),
        ("Text.", {"needs": "[areas.*.groove.width.value]"}, 6, "nothing can be read"),
        ("| a |\n|---|\n{% for a in areas %}\n| b |\n{% endfor %}", {}, 7, "no caption"),
        ("In a line {{ pay_item_table }}.", {}, 7, "inside a line"),
        ("\ue000", {}, 7, "private-use"),
        ("{{ fixed.ph }}", {}, 7, "no fixed figure 'ph'"),
        ("{% if conditions.curbs | written %}a{% endif %}", {}, 7, "a condition asks"),
        ("Text.", {"when": "ref('common.two')"}, 6, "a condition asks"),
        ("{{ fixed }}", {}, 7, "a whole group of values"),
    ],
)
def test_a_fault_is_located(body: str, front: dict[str, str], line: int, says: str) -> None:
    made = clause(body, **front)
    offset = 0 if line < 7 else len(front)

    faults = check_library(library(made))

    assert [(f.place.file, f.place.line) for f in faults] == [
        ("clauses/common/one.md", line + offset)
    ]
    assert says in faults[0].says


def test_a_library_with_faults_drafts_nothing() -> None:
    made = library(clause("{{ nothing }}"), clause("# Title", "common.two"))

    assert len(check_library(made)) == 2
    with pytest.raises(LibraryError, match="nothing"):
        assemble(job("diamond_grinding"), made)


def test_a_folder_adds_and_replaces_by_id(tmp_path: Path) -> None:
    (tmp_path / "common").mkdir()
    text = "---\nid: common.one\ntitle: Ours\npart: construction\norder: 1\n---\nOurs.\n"
    (tmp_path / "common" / "one.md").write_text(text, "utf-8")
    (tmp_path / "common" / "new.md").write_text(text.replace("common.one", "common.new"), "utf-8")

    made = merged(library(clause("Theirs.")), read_folder(tmp_path, "ours"))

    assert [(c.id, c.title, c.file) for c in made.clauses] == [
        ("common.new", "Ours", "ours/common/new.md"),
        ("common.one", "Ours", "ours/common/one.md"),
    ]
    assert made.outline == OUTLINE


@pytest.mark.parametrize(
    ("content", "says"),
    [(b"\xff\xfe\x00", "cannot be read as text"), (b"Text only.", "no front matter")],
)
def test_an_unreadable_clause_is_a_fault(tmp_path: Path, content: bytes, says: str) -> None:
    (tmp_path / "common").mkdir()
    (tmp_path / "common" / "one.md").write_bytes(content)

    made = load_library(tmp_path)

    assert [f.place.file for f in made.faults] == [f"{tmp_path}/common/one.md"]
    assert says in made.faults[0].says


def test_a_missing_folder_is_a_fault(tmp_path: Path) -> None:
    (fault,) = load_library(tmp_path / "none").faults

    assert "no folder of clauses" in fault.says


@pytest.mark.parametrize(
    ("old", "new", "says"),
    [
        ("default: five_part", "", "'default' is missing"),
        ("default: five_part", "default: other", "'other' is missing"),
        ("title: Description", "name: Description", "'name' is not a key"),
        ("not_used: Not used", "empty: x", "'empty' is not a key"),
        ("  five_part:", "  five_part: [", "not readable YAML"),
    ],
)
def test_a_broken_outline_is_a_fault(tmp_path: Path, old: str, new: str, says: str) -> None:
    shipped = (Path(__file__).parents[2] / "clauses" / "outline.yaml").read_text("utf-8")
    (tmp_path / "outline.yaml").write_text(shipped.replace(old, new, 1), "utf-8")

    faults = read_folder(tmp_path, "ours").faults

    assert any(says in fault.says for fault in faults), faults


def test_an_empty_library_says_that_it_has_no_outline() -> None:
    assert (
        "no outline"
        in check_library(Library(clauses=(), formats=read_folder(Path("/none"), "x").formats))[
            0
        ].says
    )


def test_choices_give_their_reason() -> None:
    made = library(
        clause("A.", "common.a"),
        clause("B.", "common.b", when="conditions.curbs"),
        clause("C.", "common.c", textures="[runway_grooving]"),
        clause("D.", "common.d", textures="[diamond_grinding]"),
        clause("E.", "common.e", when="not conditions.curbs"),
        clause("F.", "common.f", textures="[diamond_grinding]", when="areas.smoothness"),
    )

    found = [(c.clause.id[-1], c.chosen, c.because) for c in select(job("diamond_grinding"), made)]

    assert found == [
        ("a", True, "always"),
        ("b", False, "not true: conditions.curbs"),
        ("c", False, "the job has no runway grooving"),
        ("d", True, "the job has diamond grinding"),
        ("e", True, "true: not conditions.curbs"),
        ("f", False, "not true: areas.smoothness"),
    ]
