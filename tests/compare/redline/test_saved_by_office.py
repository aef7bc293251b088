"""A provision that somebody opened in an office suite, changed by hand and saved."""

from __future__ import annotations

import io
import subprocess
from copy import deepcopy
from pathlib import Path

import docx
import pytest
from docx.document import Document
from docx.text.paragraph import Paragraph

from specwriter.compare.instructions import instructions
from specwriter.compare.redline import redline
from specwriter.compare.text import compare_texts
from specwriter.compare.text.changes import text_changes
from specwriter.reading import read_word
from tests.compare.redline.accepting import lines
from tests.compare.redline.office import needs_office, settled
from tests.compare.redline.test_beside import DRAFTED
from tests.compare.redline.test_office import numbers
from tests.compare.redline.test_redline import AUTHOR, document_xml


@pytest.fixture(scope="module")
def saved(tmp_path_factory: pytest.TempPathFactory) -> bytes:
    """The drafted example, opened and saved."""
    needs_office()
    folder = tmp_path_factory.mktemp("saved")
    (folder / "provision.docx").write_bytes(DRAFTED)
    profile = f"-env:UserInstallation={(folder / 'profile').as_uri()}"
    command = ["soffice", profile, "--headless", "--convert-to", "docx", "--outdir", "out"]
    subprocess.run(
        [*command, "provision.docx"], cwd=folder, check=True, capture_output=True, timeout=120
    )
    return (folder / "out" / "provision.docx").read_bytes()


def changed(content: bytes) -> bytes:
    """An item gone, another new, a word changed, and a row gone."""
    document = docx.Document(io.BytesIO(content))
    items = [each for each in document.paragraphs if _is_item(each)]
    items[3]._p.getparent().remove(items[3]._p)
    items[8]._p.addnext(deepcopy(items[8]._p))
    items[8].runs[0].text = "A new item of its own: "
    items[1].runs[0].text = f"Not {items[1].runs[0].text}"
    _lose_a_row(document)
    buffer = io.BytesIO()
    document.save(buffer)
    return buffer.getvalue()


def _is_item(paragraph: Paragraph) -> bool:
    return paragraph.style is not None and "List" in (paragraph.style.name or "")


def _lose_a_row(document: Document) -> None:
    table = document.tables[1]
    table._tbl.remove(table.rows[2]._tr)


def test_opening_and_saving_changes_no_word_and_no_number(saved: bytes) -> None:
    match = compare_texts(read_word(DRAFTED), read_word(saved))
    assert match.is_same
    assert text_changes(match) == ()
    marked = document_xml(redline(DRAFTED, saved, AUTHOR))
    assert not [mark for mark in ("w:ins ", "w:del ", "PrChange") if f"<{mark}" in marked]


def test_what_was_changed_by_hand_is_marked_and_nothing_else(saved: bytes, tmp_path: Path) -> None:
    new = changed(saved)
    marked = {
        "drafted to saved": redline(DRAFTED, new, AUTHOR),
        "saved to drafted": redline(new, DRAFTED, AUTHOR),
    }

    answers = settled(tmp_path / "office-saved", marked)

    assert all(document_xml(each).count("<w:ins ") < 15 for each in marked.values())
    for name, (old, end) in {
        "drafted to saved": (DRAFTED, new),
        "saved to drafted": (new, DRAFTED),
    }.items():
        accepted, rejected = answers[name]
        assert (lines(accepted), lines(rejected)) == (lines(end), lines(old)), name
        assert (numbers(accepted), numbers(rejected)) == (numbers(end), numbers(old)), name


def test_a_changed_look_is_marked_and_settled_both_ways(tmp_path: Path) -> None:
    needs_office()
    old, new = _with_a_bold_stretch(bold=False), _with_a_bold_stretch(bold=True)

    marked = redline(old, new, AUTHOR)
    accepted, rejected = settled(tmp_path / "office-look", {"look": marked})["look"]

    assert "<w:ins " not in document_xml(marked)
    assert [_bold(each) for each in (accepted, rejected)] == [["before noon"], []]


def test_a_changed_look_is_told_in_words() -> None:
    old, new = _with_a_bold_stretch(bold=False), _with_a_bold_stretch(bold=True)

    (told,) = text_changes(compare_texts(read_word(old), read_word(new)))
    (memo,) = instructions((told,), {})

    assert (told.kind, told.place, told.old, told.new) == ("look", "paragraph 1", "plain", "bold")
    assert [span.text for span in told.spans] == ["before noon"]
    assert memo.says == 'In the opening, paragraph 1, set "before noon" bold.'


def _with_a_bold_stretch(*, bold: bool) -> bytes:
    document = docx.Document()
    paragraph = document.add_paragraph("Cut the grooves ")
    paragraph.add_run("before noon").bold = bold
    paragraph.add_run(" of each day.")
    buffer = io.BytesIO()
    document.save(buffer)
    return buffer.getvalue()


def _bold(content: bytes) -> list[str]:
    paragraph = docx.Document(io.BytesIO(content)).paragraphs[0]
    return [run.text for run in paragraph.runs if run.bold]
