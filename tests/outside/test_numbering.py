"""The numbers of the tree are those that two programs from elsewhere count in the Word file."""

from __future__ import annotations

import io
import re
import shutil
import subprocess
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from docx2python import docx2python
from docx2python.iterators import iter_paragraphs

from specwriter.assemble import Document, assemble, load_library
from specwriter.assemble.counting import letters
from specwriter.assemble.document import ListItem, Run
from specwriter.render import render_docx
from tests.outside.documents import FILES, MADE, NAMES, lines, squeezed, text
from tests.support import job

HOUSES = {
    f"{house} {numbering}": {"settings.house_format": house, "settings.numbering": numbering}
    for house, numbering in (
        ("five_part_equipment", "letters"),
        ("five_part_merged", "section"),
        ("airfield_item", "item"),
        ("three_part", "two_digits"),
    )
}
"""Every numbering of the library but the usual one, each in a format of its own."""


def _past_z() -> Document:
    """A list of thirty items, which runs out of letters."""
    made = MADE[NAMES[0]]
    clause = replace(
        made.parts[0].clauses[0],
        blocks=tuple(
            ListItem(runs=(Run(text=f"item {n}"),), label=f"({letters(n)})", starts=n == 1)
            for n in range(1, 31)
        ),
    )
    return replace(made, parts=(replace(made.parts[0], clauses=(clause,)),), title_tables=())


@pytest.fixture(scope="module")
def documents() -> dict[str, Document]:
    library = load_library()
    others = {name: assemble(job("five-textures", each), library) for name, each in HOUSES.items()}
    return {**MADE, **others, "past z": _past_z()}


@pytest.fixture(scope="module")
def texts(
    documents: dict[str, Document], tmp_path_factory: pytest.TempPathFactory
) -> dict[str, list[str]]:
    """What an office program writes as the text of each document."""
    if shutil.which("soffice") is None:
        pytest.skip("soffice is not installed")
    folder = tmp_path_factory.mktemp("office")
    for name, made in documents.items():
        (folder / f"{name}.docx").write_bytes(render_docx(made))
    profile = f"-env:UserInstallation={(folder / 'profile').as_uri()}"
    files = [f"{name}.docx" for name in documents]
    subprocess.run(
        ["soffice", profile, "--headless", "--convert-to", "txt:Text (encoded):UTF8", *files],
        cwd=folder,
        check=True,
        capture_output=True,
        timeout=300,
    )
    return {name: _read(folder / f"{name}.txt") for name in documents}


def _read(path: Path) -> list[str]:
    return squeezed(path.read_text("utf-8-sig").splitlines())


@pytest.mark.parametrize("name", [*NAMES, *HOUSES, "past z"])
def test_an_office_program_counts_parts_clauses_and_items_as_the_tree_does(
    name: str, documents: dict[str, Document], texts: dict[str, list[str]]
) -> None:
    expected = squeezed(lines(documents[name], numbered=True))

    assert texts[name][-len(expected) :] == expected


@pytest.mark.parametrize("name", NAMES)
def test_a_reader_of_word_files_counts_the_items_as_the_tree_does(name: str) -> None:
    expected = [
        (re.sub(r"\W", "", block.label), " ".join(text(block.runs).split()))
        for part in MADE[name].parts
        for clause in part.clauses
        for block in clause.blocks
        if isinstance(block, ListItem)
    ]

    assert expected
    assert list(_items(FILES[name]))[-len(expected) :] == expected


def _items(content: bytes) -> Iterator[tuple[str, str]]:
    """Letter and text of each item of a list; this reader ends every number with a bracket."""
    for paragraph in iter_paragraphs(docx2python(io.BytesIO(content)).body_pars):
        label, found, rest = "".join(paragraph.run_strings).partition(")\t")
        if found and paragraph.style in ("ListLetter", "ListRoman"):
            yield label.strip(), " ".join(rest.split())
