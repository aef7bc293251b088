from __future__ import annotations

import re
import shutil
import subprocess
from pathlib import Path

import pytest

from specwriter.render import render_docx
from tests.render.sample import SAMPLE


@pytest.mark.skipif(shutil.which("soffice") is None, reason="soffice is not installed")
@pytest.mark.skipif(shutil.which("pdftotext") is None, reason="pdftotext is not installed")
def test_an_office_program_prints_numbers_and_pages_as_the_tree_has_them(tmp_path: Path) -> None:
    (tmp_path / "provision.docx").write_bytes(render_docx(SAMPLE))
    profile = f"-env:UserInstallation={(tmp_path / 'profile').as_uri()}"
    convert = ["soffice", profile, "--headless", "--convert-to", "pdf", "provision.docx"]
    subprocess.run(convert, cwd=tmp_path, check=True, capture_output=True, timeout=180)
    pdf = ["pdftotext", "-layout", "provision.pdf", "-"]
    text = subprocess.run(pdf, cwd=tmp_path, check=True, capture_output=True, text=True).stdout
    pages = re.findall(r"Page (\d+) of (\d+)", text)
    assert len(pages) > 1
    assert pages == [(str(n), str(len(pages))) for n in range(1, len(pages) + 1)]
    for part in SAMPLE.parts:
        for clause in part.clauses:
            assert re.search(rf"^ *{clause.number} +{re.escape(clause.title)}$", text, re.M)
    assert "in Table 1 and as 1.2 requires: see 1.2." in text
    assert re.search(r"\(a\) +A second list begins again", text)
    assert text.count("Area, and what is left out of it") > 1
