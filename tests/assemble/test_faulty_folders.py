"""Mistakes that people make in clause folders of their own: one located message for each."""

from __future__ import annotations

from pathlib import Path

import pytest

from specwriter.workflow import review_clauses

HEAD = "---\nid: own.x\ntitle: Own\npart: construction\norder: 500\n---\n"
PARTS = ", ".join(
    f"{{id: {name}, title: {name}}}"
    for name in ("description", "materials", "construction", "measurement", "payment")
)


def with_front(line: str, body: str = "Text.\n") -> str:
    return HEAD.removesuffix("---\n") + f"{line}\n---\n{body}"


@pytest.mark.parametrize(
    ("text", "line", "column", "says", "todo"),
    [
        ("Text.\n", 1, 1, "no front matter", "begin the file with ---"),
        (HEAD.replace("id: own.x", "id: own.y") + "Text.\n", 2, 5, "own.y", "id: own.x"),
        (HEAD.replace("order: 500", "order: -5") + "Text.\n", 5, 8, "whole number", "such as 20"),
        (HEAD.replace("title: Own", "title: [a]") + "Text.\n", 3, 8, "needs a text", "colon"),
        (HEAD.replace("construction", "works") + "Text.\n", 4, 1, "no part 'works'", "known:"),
        (HEAD.replace("title: Own", 'title: "Own') + "Text.\n", 5, 11, "YAML", "compare"),
        (with_front("textures: []"), 6, 11, "names nothing", "leave it out"),
        (with_front("textures: [grinding]"), 6, 11, "not a texture", "diamond_grinding"),
        (with_front("when: conditions.curbs = true"), 6, 1, "one =", "=="),
        (with_front("when: conditions.curbs and"), 6, 1, "break off", "finish"),
        (with_front("when: \u2018curbs\u2019"), 6, 1, "not understood", "straight quotes"),
        (with_front("expresses: [areas.*.grove]"), 6, 1, "no 'grove'", "'groove'"),
        (
            with_front("needs: [conditions.curbs]", "{{ conditions.pavement }}.\n"),
            6,
            1,
            "never reads",
            "print",
        ),
        (
            with_front("fixed: {far: {value: 3 ft, document: D}}"),
            6,
            1,
            "'far' is never printed",
            "{{ fixed.far }}",
        ),
        (HEAD, 7, 1, "no text", "write a sentence"),
        (HEAD + "Use {{ conditons.curbs }}.\n", 7, 1, "'conditons'", "'conditions'"),
        (HEAD + "{% for a in areas %}\nText.\n", 8, 1, "never closed", "{% endfor %}"),
        (HEAD + "Text.\n{% endif %}\n", 8, 1, "no {% if %}", "take {% endif %} out"),
        (HEAD + 'See {{ ref("common.watr") }}.\n', 7, 1, "no clause", "'common.water'"),
        (HEAD + 'See {{ table("limit_table") }}.\n', 7, 1, "no table", "'limits_table'"),
        (HEAD + "Text.\nStop 3 ft before.\n", 8, 6, "number 3", "fixed"),
        (HEAD + "Stop two feet before.\n", 7, 6, "number two", "fixed"),
        (HEAD + "Text.\nCut as directed.\n", 8, 5, "'as directed'", "the limits"),
        (HEAD + "Cut and/or grind.\n", 7, 5, "three readings", "both"),
        (HEAD + "Cut TBD.\n", 7, 5, "placeholder", "what is meant"),
        (HEAD + "Cut <b>all</b>.\n", 7, 5, "HTML", "**word**"),
        (HEAD + "Unground strips are permitted.\n", 7, 1, "permits", "not"),
        (HEAD + "It shall be cut.\nIt must be dry.\n", 7, 4, "shall and with must", "one way"),
        (HEAD + "# Title\n", 7, 1, "a heading", "front matter"),
    ],
)
def test_a_faulty_clause_gets_one_located_message(
    text: str, line: int, column: int, says: str, todo: str, tmp_path: Path
) -> None:
    path = tmp_path / "own" / "x.md"
    path.parent.mkdir()
    path.write_text(text, "utf-8")

    (fault,), _ = review_clauses(tmp_path)

    assert (fault.place.file, fault.place.line) == (str(path), line)
    assert fault.place.column == column
    assert says in fault.says
    assert todo in fault.todo


@pytest.mark.parametrize(
    ("file", "text", "says"),
    [
        ("x.md", HEAD, "not read"),
        ("own/deep/x.md", HEAD, "not read"),
        ("own/x.MD", HEAD, "not read"),
        ("outline.yml", "default: a\n", "not read"),
        ("notes.txt", "to do", "no clause and no house format"),
        (
            "outline.yaml",
            "default: a\nformats:\n"
            f"  a: {{title: A, numbering: no, not_used: No, parts: [{PARTS}]}}\n",
            "no numbering 'no'",
        ),
    ],
)
def test_a_file_in_a_wrong_place_is_told(file: str, text: str, says: str, tmp_path: Path) -> None:
    path = tmp_path / file
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text(text, "utf-8")

    (fault,), _ = review_clauses(tmp_path)

    assert says in fault.says


def test_a_sound_folder_is_not_complained_of(tmp_path: Path) -> None:
    (tmp_path / "own").mkdir()
    (tmp_path / "README.md").write_text("Our clauses.\n", "utf-8")
    (tmp_path / "own" / "x.md").write_text(
        with_front("needs: [conditions.curbs]", "{% if conditions.curbs %}\nCut.\n{% endif %}\n"),
        "utf-8",
    )

    assert review_clauses(tmp_path) == ((), 1)
