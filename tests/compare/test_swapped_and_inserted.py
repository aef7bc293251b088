"""Two clauses swapped and a row inserted in the middle of a table, in every form of the report."""

from __future__ import annotations

import json
import re
from copy import deepcopy
from pathlib import Path

import pytest
from docx.document import Document

from specwriter.cli.main import outcome
from tests.compare.redline.accepting import accepted, lines, rejected
from tests.compare.redline.test_beside import DRAFTED, edited
from tests.compare.redline.test_redline import document_xml


def swapped(document: Document) -> None:
    """The second clause of the first part before its first."""
    styled = [p for p in document.paragraphs if p.style is not None]
    heads = [p._p for p in styled if p.style.name == "Heading 2"]
    first, second, third = heads[:3]
    moved = [second]
    while moved[-1].getnext() is not third:
        moved.append(moved[-1].getnext())
    for element in moved:
        first.addprevious(element)


def row_inserted(document: Document) -> None:
    """A row in the middle of the first table."""
    rows = document.tables[1].rows
    middle = rows[len(rows) // 2]._tr
    new = deepcopy(middle)
    texts = list(new.iter("{*}t"))
    texts[0].text, texts[1].text = "Width of the shoulder strip", "4 ft"
    for text in texts[2:]:
        text.text = ""
    middle.addprevious(new)


@pytest.fixture
def files(tmp_path: Path) -> dict[str, tuple[Path, Path]]:
    """Name of the edit → the drafted document, and the edited one."""
    old = tmp_path / "old.docx"
    old.write_bytes(DRAFTED)
    found = {}
    for name, edit in (("swapped", swapped), ("inserted", row_inserted)):
        new = tmp_path / f"{name}.docx"
        new.write_bytes(edited(edit))
        found[name] = old, new
    return found


def told(files: tuple[Path, Path], form: str, capsys: pytest.CaptureFixture[str]) -> str:
    capsys.readouterr()
    outcome(["compare", *map(str, files), "--format", form])
    return " ".join(capsys.readouterr().out.split())


SWAPPED = {
    "text": "1.1 Work → 1.2 Work MOVED: the clause It now follows",
    "md": "### 1.1 Work → 1.2 Work - moved, the clause",
    "html": '<span class="moved">moved (1)</span> <p><strong><span class="number">1.2</span>',
}
INSERTED = {
    "text": 'ROW ADDED: Table 2, row "Width of the shoulder strip"',
    "md": '- row added, Table 2, row "Width of the shoulder strip"',
    "html": "<tr><td><p><ins>Width of the shoulder strip</ins></p></td><td><p><ins>4 ft</ins></p>",
}


@pytest.mark.parametrize("form", SWAPPED)
def test_two_clauses_swapped_are_one_move_in_every_form(
    form: str, files: dict[str, tuple[Path, Path]], capsys: pytest.CaptureFixture[str]
) -> None:
    assert SWAPPED[form] in told(files["swapped"], form, capsys)


@pytest.mark.parametrize("form", INSERTED)
def test_a_row_inserted_in_the_middle_is_one_row_in_every_form(
    form: str, files: dict[str, tuple[Path, Path]], capsys: pytest.CaptureFixture[str]
) -> None:
    assert INSERTED[form] in told(files["inserted"], form, capsys)


@pytest.mark.parametrize(("name", "kind"), [("swapped", "moved"), ("inserted", "row added")])
def test_json_tells_one_change_and_its_kind(
    name: str,
    kind: str,
    files: dict[str, tuple[Path, Path]],
    capsys: pytest.CaptureFixture[str],
) -> None:
    changes = json.loads(told(files[name], "json", capsys))["text"]["changes"]

    assert [each["kind"] for each in changes] == [kind]


def redline_of(files: tuple[Path, Path], folder: Path) -> bytes:
    target = folder / "redline.docx"
    outcome(["compare", *map(str, files), "--redline", str(target)])
    return target.read_bytes()


def test_the_redline_of_two_clauses_swapped_is_one_move(
    files: dict[str, tuple[Path, Path]], tmp_path: Path
) -> None:
    marked = redline_of(files["swapped"], tmp_path)

    names = re.findall(r'<w:move(?:From|To)RangeStart [^>]*w:name="(\w+)"', document_xml(marked))
    assert names == ["move1", "move1"]
    assert lines(accepted(marked)) == lines(files["swapped"][1].read_bytes())
    assert lines(rejected(marked)) == lines(DRAFTED)


def test_the_redline_of_a_row_inserted_is_one_row(
    files: dict[str, tuple[Path, Path]], tmp_path: Path
) -> None:
    marked = redline_of(files["inserted"], tmp_path)

    assert len(re.findall(r"<w:trPr>(?:(?!</w:trPr>).)*<w:ins ", document_xml(marked))) == 1
    assert "<w:del " not in document_xml(marked)
    assert lines(accepted(marked)) == lines(files["inserted"][1].read_bytes())
    assert lines(rejected(marked)) == lines(DRAFTED)


BEFORE = """# 1 Work

Cut the grooves across the lane before noon of each day, and clean them in the same shift.

# 2 Tests

Measure the depth of ten grooves in each lot with a gauge that reads 1/64 in.
"""
AFTER = """# 1 Tests

Measure the depth of twenty grooves in each lot with a gauge that reads 1/64 in.

# 2 Work

Cut the grooves across the lane after noon of each day, and clean them in the same shift.
"""


def test_of_two_swapped_clauses_that_both_changed_each_word_is_told(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    old, new = tmp_path / "old.md", tmp_path / "new.md"
    old.write_text(BEFORE, "utf-8")
    new.write_text(AFTER, "utf-8")

    page, text = told((old, new), "html", capsys), told((old, new), "text", capsys)

    for was, now in (("before", "after"), ("ten", "twenty")):
        assert f"<del>{was}</del>" in page
        assert f"<ins>{now}</ins>" in page
        assert f"[−{was}−] [+{now}+]" in text or f"[−{was}−][+{now}+]" in text
    # The heading and the paragraph, on each side.
    assert page.count("moved (1)") == 4
