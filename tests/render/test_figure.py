"""Drawings: every label is there, to scale, the same bytes each time."""

from __future__ import annotations

import re
import shutil
import struct
import subprocess
from dataclasses import replace
from pathlib import Path
from xml.etree import ElementTree

import pytest

from specwriter.assemble.document import Dimension, Figure, Plan, Section
from specwriter.render import render_docx, render_html, render_markdown
from specwriter.render.figure import figure_emf, figure_svg
from specwriter.render.figure.metafile import extent
from tests.render import word
from tests.render.sample import SAMPLE

SECTION = Figure(
    id="texture",
    number=1,
    caption="Cross-section <of> the texture",
    drawing=Section(width=6.35, bottom=6.35, depth=6.35, lands=(31.75, 31.75)),
    dimensions=(
        Dimension(at="groove.width", name="groove width", label="1/4 in", text="1/4 in (6.4 mm)"),
        Dimension(at="groove.depth", name="groove depth", label="1/4 in", text="1/4 in (6.4 mm)"),
        Dimension(
            at="groove.spacing",
            name="groove spacing",
            label="1-1/2 in +0 in -1/8 in",
            text="1-1/2 in +0 in -1/8 in (38.1 mm)",
        ),
    ),
    notes=("Drawn to one scale.", "A note that is longer than the drawing is wide. " * 4),
    description='Cross-section: groove width 1/4 in (6.4 mm) & "more".',
)
PLAN = replace(
    SECTION,
    id="plan",
    number=2,
    drawing=Plan(skew=10.0, edge=True, joint=True, random=True),
    dimensions=(
        Dimension(at="groove.skew", name="skew", label="10 degrees", text="10 degrees"),
        Dimension(at="coverage.edge_offset", name="edge", label="5 ft", text="5 ft (1.5 m)"),
        Dimension(at="coverage.joint_offset", name="joint", label="3 in", text="3 in (76 mm)"),
    ),
)


def _with(figure: Figure) -> object:
    part = SAMPLE.parts[0]
    clause = replace(part.clauses[0], blocks=(*part.clauses[0].blocks, figure))
    return replace(
        SAMPLE, parts=(replace(part, clauses=(clause, *part.clauses[1:])), *SAMPLE.parts[1:])
    )


DOCUMENT = _with(SECTION)


@pytest.mark.parametrize("figure", [SECTION, PLAN])
def test_every_value_is_a_label_as_the_job_writes_it(figure: Figure) -> None:
    root = ElementTree.fromstring(figure_svg(figure))
    texts = " | ".join(each.text or "" for each in root.iter("text"))

    for each in figure.dimensions:
        assert each.name in texts
        assert each.label in texts
    assert root.get("aria-label") == figure.description


@pytest.mark.parametrize("figure", [SECTION, PLAN])
def test_no_label_leaves_the_drawing(figure: Figure) -> None:
    root = ElementTree.fromstring(figure_svg(figure))
    width, height = (float(n) for n in (root.get("viewBox") or "").split()[2:])
    for each in root.iter("text"):
        x, y = float(each.get("x", "")), float(each.get("y", ""))
        # Half its size is the mean width of a letter of this font.
        room = 0.5 * float(each.get("font-size", "")) * len(each.text or "")
        start = {"start": x, "middle": x - room / 2}[each.get("text-anchor", "")]
        assert 0 <= start <= start + room <= width
        assert 0 <= y <= height


def test_widths_and_depths_are_drawn_to_one_scale() -> None:
    root = ElementTree.fromstring(figure_svg(SECTION))
    surface = next(each for each in root.iter("polyline") if each.get("stroke-width") == "1.6")
    points = [tuple(map(float, p.split(","))) for p in (surface.get("points") or "").split()]
    top, bottom = min(y for _, y in points), max(y for _, y in points)
    floor = [x for x, y in points if y == bottom]

    assert len(floor) == 6
    assert floor[1] - floor[0] == pytest.approx(bottom - top, abs=0.05)
    assert floor[2] - floor[1] == pytest.approx(5 * (bottom - top), abs=0.05)


def records(emf: bytes) -> list[tuple[int, bytes]]:
    """Kind and content of each record of a metafile."""
    found, at = [], 0
    while at < len(emf):
        kind, size = struct.unpack("<II", emf[at : at + 8])
        found.append((kind, emf[at + 8 : at + size]))
        at += size
    return found


@pytest.mark.parametrize("figure", [SECTION, PLAN])
def test_the_picture_in_a_word_file_is_a_drawing_six_inches_wide(figure: Figure) -> None:
    emf = figure_emf(figure)
    found = records(emf)
    signature, _, size, count, objects = struct.unpack("<4sIIIH", emf[40:58])

    assert (signature, size, count) == (b" EMF", len(emf), len(found))
    assert [found[0][0], found[-1][0]] == [1, 14]
    assert extent(emf)[0] == 6 * 2540
    assert objects == 1 + sum(kind in (39, 82, 95) for kind, _ in found)
    assert emf == figure_emf(replace(figure))


@pytest.mark.parametrize("figure", [SECTION, PLAN])
def test_it_holds_every_label_and_stroke_of_the_svg(figure: Figure) -> None:
    root = ElementTree.fromstring(figure_svg(figure))
    found = records(figure_emf(figure))
    texts = []
    for kind, content in found:
        if kind == 84:
            count, start = struct.unpack("<II", content[36:44])
            texts.append(content[start - 8 : start - 8 + 2 * count].decode("utf-16-le"))
    whole = [each for each in root.iter("line") if not each.get("stroke-dasharray")]

    assert texts == [each.text for each in root.iter("text")]
    assert sum(kind == 3 for kind, _ in found) == len(
        [each for each in root if each.tag in ("rect", "polygon")]
    )
    assert sum(kind == 4 for kind, _ in found) >= len(whole) + len([*root.iter("polyline")])


@pytest.mark.skipif(
    not (shutil.which("soffice") and shutil.which("pdftotext")),
    reason="the office suite or pdftotext is not installed",
)
def test_an_office_suite_prints_lines_and_letters_and_no_dots(tmp_path: Path) -> None:
    (tmp_path / "figure.docx").write_bytes(render_docx(_with(PLAN)))  # type: ignore[arg-type]
    subprocess.run(
        [
            *("soffice", f"-env:UserInstallation=file://{tmp_path}/profile", "--headless"),
            *("--convert-to", "pdf", "--outdir", str(tmp_path), str(tmp_path / "figure.docx")),
        ],
        check=True,
        capture_output=True,
    )

    printed = tmp_path / "figure.pdf"
    text = subprocess.run(["pdftotext", str(printed), "-"], capture_output=True, check=True).stdout

    assert b"/Subtype/Image" not in printed.read_bytes()
    for label in ("centerline", "edge", "joint 3 in", "skew 10 degrees"):
        assert label in text.decode()


def test_word_holds_the_picture_its_words_and_a_caption_that_is_counted() -> None:
    made = render_docx(DOCUMENT)  # type: ignore[arg-type]
    body = word.part(made, "word/document.xml")
    wp = "{http://schemas.openxmlformats.org/drawingml/2006/wordprocessingDrawing}"

    assert "word/media/figure1.emf" in word.names(made)
    assert [each.get("descr") for each in body.iter(f"{wp}docPr")] == [SECTION.description]
    (caption,) = (p for p in body.iter(f"{word.W}p") if word.style_of(p) == "FigureCaption")
    assert word.text_of(caption) == "Figure 1. Cross-section <of> the texture"
    assert word.fields(caption) == [r"SEQ Figure \* ARABIC"]


def test_web_page_and_markdown_hold_the_figure_in_their_own_way() -> None:
    page = render_html(DOCUMENT)  # type: ignore[arg-type]
    text = render_markdown(DOCUMENT)  # type: ignore[arg-type]

    assert re.search(r"<figure id=\"ref-texture\">.*<svg .*</svg>", page, re.DOTALL)
    assert "Figure 1. Cross-section &lt;of&gt; the texture</figcaption>" in page
    assert "**Figure 1. Cross-section \\<of\\> the texture**" in text
    assert "groove width 1/4 in (6.4 mm)" in text
