"""Front matter: every fault at its line and column, all of them in one reading."""

from __future__ import annotations

import pytest

from specwriter.assemble.clause import ClauseSource, read_clause

GOOD = """---
id: common.one
title: One
part: construction
order: 10
textures: [diamond_grinding]
when: conditions.curbs
needs: [areas.*.groove.width]
expresses: [areas.*.groove]
sources:
  - {document: ASTM E965, section: scope, year: "2015", for: sand patch}
note: For the writer.
---
Body.
"""


def test_a_complete_front_matter_is_read() -> None:
    clause, faults = read_clause(GOOD, "clauses/common/one.md", "common.one")

    assert faults == []
    assert clause is not None
    assert (clause.title, clause.part, clause.order) == ("One", "construction", 10)
    assert clause.textures == ("diamond_grinding",)
    assert clause.sources == (
        ClauseSource(document="ASTM E965", section="scope", year="2015", use="sand patch"),
    )
    assert clause.body == "Body.\n"
    assert clause.body_line == 14
    assert clause.line_of("when") == 7


@pytest.mark.parametrize(
    ("old", "new", "place", "says"),
    [
        ("---\nid", "id", "1:1", "no front matter"),
        ("id: common.one", "id: common.two", "2:5", "does not fit the file's place"),
        ("title: One\n", "", "1:1", "lacks 'title'"),
        ("title: One", "titel: One", "3:1", "'titel' is not a key of a clause"),
        ("title: One", "title: One\ntitle: Two", "4:1", "stands here twice"),
        ("title: One", "? {a: b}\n: One", "3:3", "'this' is not a key of a clause"),
        ("title: One", "title: []", "3:8", "'title' needs a text"),
        ("title: One", "title: &a One", "3:8", "anchors and aliases"),
        ("title: One", 'title: "One', "", "not readable YAML"),
        ("order: 10", "order: ten", "5:8", "'order' is a whole number"),
        ("[diamond_grinding]", "[polishing]", "6:11", "'polishing' is not a texture"),
        ("[diamond_grinding]", "diamond_grinding", "6:11", "'textures' needs a list"),
        ("document: ASTM E965, ", "", "11:5", "names no document"),
        ("for: sand", "fro: sand", "11:57", "'fro' is not a key of a source"),
    ],
)
def test_a_front_matter_fault_is_located(old: str, new: str, place: str, says: str) -> None:
    assert old in GOOD
    _, faults = read_clause(GOOD.replace(old, new, 1), "one.md", "common.one")

    found = {f"{fault.place.line}:{fault.place.column}": fault.says for fault in faults}
    assert any(says in text for text in found.values()), found
    if place:
        assert says in found[place]


def test_all_faults_come_at_once() -> None:
    text = GOOD.replace("order: 10", "order: ten").replace("title: One", "titel: One")

    clause, faults = read_clause(text, "one.md", "common.one")

    assert len(faults) == 3
    assert clause is None


def test_a_clause_with_a_faulty_front_matter_is_read_as_far_as_it_goes() -> None:
    text = GOOD.replace("order: 10", "order: ten").replace("id: common.one", "id: common.two")

    clause, faults = read_clause(text, "one.md", "common.one")

    assert len(faults) == 2
    assert clause is not None
    assert (clause.id, clause.body) == ("common.one", "Body.\n")


FIGURES = "fixed:\n  ph: {value: 12.5, document: 40 CFR, section: 261.22, year: undated}\nnote:"


def test_a_fixed_figure_is_read_with_its_source() -> None:
    clause, faults = read_clause(GOOD.replace("note:", FIGURES), "one.md", "common.one")

    assert faults == []
    assert clause is not None
    (figure,) = clause.fixed
    assert (figure.name, figure.value) == ("ph", "12.5")
    assert figure.source == ClauseSource(document="40 CFR", section="261.22", year="undated")


@pytest.mark.parametrize(
    ("old", "new", "place", "says"),
    [
        ("fixed:\n  ph: {", "fixed: {", "12:9", "a fixed figure has a plain name and keys"),
        ("  ph: {value: 12.5, document", "  - {document", "13:3", "'fixed' needs names"),
        ("value: 12.5, ", "", "13:7", "lacks 'value'"),
        ("document: 40 CFR, ", "", "13:7", "lacks 'document'"),
        ("section: ", "page: ", "13:39", "'page' is not a key of a fixed figure"),
        ("  ph:", "  pH:", "13:3", "a fixed figure has a plain name and keys"),
    ],
)
def test_a_fault_in_a_fixed_figure_is_located(old: str, new: str, place: str, says: str) -> None:
    text = GOOD.replace("note:", FIGURES.replace(old, new))

    _, faults = read_clause(text, "one.md", "common.one")

    assert (f"one.md:{place}", True) in [(str(f.place), says in f.says) for f in faults]
