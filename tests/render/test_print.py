from __future__ import annotations

import re
import shutil
import subprocess
from dataclasses import replace
from pathlib import Path

import pytest

from specwriter.assemble.document import Document, Table
from specwriter.render import render_docx
from tests.render.sample import SAMPLE, TEXTURE, plain

TABLE = Table(id="", number=0, caption="Values", header=("a", "b"), rows=())
NEEDED = [
    pytest.mark.skipif(shutil.which(program) is None, reason=f"{program} is not installed")
    for program in ("soffice", "pdftotext")
]
pytestmark = NEEDED


def printed(document: Document, folder: Path) -> str:
    """What an office program prints of the Word file."""
    (folder / "provision.docx").write_bytes(render_docx(document))
    profile = f"-env:UserInstallation={(folder / 'profile').as_uri()}"
    convert = ["soffice", profile, "--headless", "--convert-to", "pdf", "provision.docx"]
    subprocess.run(convert, cwd=folder, check=True, capture_output=True, timeout=180)
    pdf = ["pdftotext", "-layout", "provision.pdf", "-"]
    return subprocess.run(pdf, cwd=folder, check=True, capture_output=True, text=True).stdout


def test_an_office_program_prints_numbers_and_pages_as_the_tree_has_them(tmp_path: Path) -> None:
    text = printed(SAMPLE, tmp_path)
    pages = re.findall(r"Page (\d+) of (\d+)", text)
    assert len(pages) > 1
    assert pages == [(str(n), str(len(pages))) for n in range(1, len(pages) + 1)]
    for part in SAMPLE.parts:
        for clause in part.clauses:
            assert re.search(rf"^ *{clause.number} +{re.escape(clause.title)}$", text, re.M)
    assert "in Table 1 and as 1.2 requires: see 1.2." in text
    assert re.search(r"\(a\) +A second list begins again", text)
    assert text.count("Area, and what is left out of it") > 1


def test_no_line_of_a_narrow_cell_ends_behind_the_hyphen_of_a_number(tmp_path: Path) -> None:
    """Cells of many widths hold a value that the office program would break there."""
    value = "1-1/2 in +1-1/16 in -1-1/8 in, Runway 08-26"
    rows = tuple((plain("x " * size), plain(value)) for size in range(2, 40, 2))
    tables = tuple(
        replace(TABLE, id=f"t{n}", number=n, rows=rows[n - 1 : n], widths=(n, 4))
        for n in range(1, 20)
    )
    part = replace(SAMPLE.parts[0], clauses=(replace(TEXTURE, blocks=tables),))

    text = printed(replace(SAMPLE, parts=(part,), status="", front=False), tmp_path)

    assert text.count("Runway") == len(tables)
    assert re.findall(r"\S*[-‑−](?= |$)", text, re.MULTILINE) == []
