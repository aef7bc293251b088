"""Document tree → Word file, from the XML parts in ``template`` and nothing else.

The same document gives the same bytes: no clock, names in fixed order, entries stored and not
compressed, because a compressor may differ from one computer to the next.
"""

from __future__ import annotations

import hashlib
import io
import re
import zipfile
from pathlib import Path
from string import Template

from specwriter.assemble.document import Document, Enclosure
from specwriter.render.docx_body import Body, list_numberings
from specwriter.render.docx_numbers import number_values
from specwriter.render.docx_page import PAPERS, text_width
from specwriter.render.docx_picture import part_name, relations
from specwriter.render.docx_xml import field, paragraph, run, text_digest, xml_text
from specwriter.render.front import (
    FRONT_PURPOSE,
    FRONT_TITLE,
    front_sections,
    lead_in_runs,
    masthead,
)

TEMPLATE = Path(__file__).with_name("template")
_EPOCH = (1980, 1, 1, 0, 0, 0)
_CONTENT_TYPES = "[Content_Types].xml"


def render_docx(document: Document) -> bytes:
    """The provision as a Word file; ``ValueError`` when the text holds a control character."""
    body = Body(document)
    values = _values(document, body)
    parts = {name: Template(text).substitute(values).encode() for name, text in _template_parts()}
    parts |= {part_name(place): emf for place, emf in enumerate(body.pictures, 1)}
    buffer = io.BytesIO()
    with zipfile.ZipFile(buffer, "w", zipfile.ZIP_STORED) as package:
        # The list of content types comes first, as Word expects.
        for name in sorted(parts, key=lambda name: (name != _CONTENT_TYPES, name)):
            entry = zipfile.ZipInfo(name, _EPOCH)
            entry.create_system = 0
            package.writestr(entry, parts[name])
    return buffer.getvalue()


def _template_parts() -> list[tuple[str, str]]:
    """Name and text of every part of the template."""
    return [
        (path.relative_to(TEMPLATE).as_posix(), path.read_text(encoding="utf-8"))
        for path in TEMPLATE.rglob("*")
        if path.suffix in (".xml", ".rels") or path.name == ".rels"
    ]


def _values(document: Document, body: Body) -> dict[str, str]:
    """What stands for each ``$name`` in the template."""
    front = _front(document, body) if document.front else ""
    content = _title(document, body) + "".join(map(body.part, document.parts))
    if document.closing:
        content += paragraph(run(document.closing), "Closing")
    across, down = PAPERS[document.page]
    plain = ("title", "subtitle", "agency", "job_text", "job_digest", "own_clauses")
    return {
        **{name: xml_text(getattr(document, name)) for name in plain},
        "enclosed": "".join(map(_enclosed, document.enclosed)),
        "moment": f"{_day(document.date)}T00:00:00Z",
        "header": _header(document),
        "footer": _footer(document),
        **number_values(document),
        "page_width": str(across),
        "page_height": str(down),
        "text_width": str(text_width(document)),
        "lists": list_numberings(body.lists),
        "pictures": relations(len(body.pictures)),
        "body": front + content,
        "text_digest": text_digest(content),
    }


def _enclosed(file: Enclosure) -> str:
    digest = hashlib.sha256(file.text.encode("utf-8")).hexdigest()
    text = xml_text(file.text)
    return f'<{file.kind} name="{xml_text(file.name)}" sha256="{digest}">{text}</{file.kind}>'


def _day(date: str) -> str:
    """The date of the document, or a fixed one: the clock is never asked."""
    return date if re.fullmatch(r"\d{4}-\d{2}-\d{2}", date) else "1980-01-01"


def _header(document: Document) -> str:
    name = " · ".join(filter(None, (document.provision, document.contract)))
    lines = paragraph(run(f"{document.agency}\t{name}"), "Header")
    if document.status:
        lines += paragraph(run(document.status), "HeaderStatus")
    return lines


def _footer(document: Document) -> str:
    revision = f"Revision {document.revision}" if document.revision else ""
    left = " · ".join(filter(None, (revision, document.date)))
    page = run("Page ") + field("PAGE", "1") + run(" of ") + field("NUMPAGES", "1")
    return paragraph(run(f"{left}\t") + page, "Footer")


def _front(document: Document, body: Body) -> str:
    lines = [paragraph(run(FRONT_TITLE), "FrontTitle"), paragraph(run(FRONT_PURPOSE), "FrontText")]
    for section in front_sections(document):
        lines.append(paragraph(run(section.title), "FrontHeading"))
        lines += [paragraph(body.runs(point), "FrontPoint") for point in section.points]
    return "".join(lines)


def _title(document: Document, body: Body) -> str:
    new_page = "<w:pageBreakBefore/>" if document.front else ""
    lines = [
        paragraph(run(document.agency), "Agency", new_page),
        paragraph(run(document.title), "Title"),
    ]
    if document.subtitle:
        lines.append(paragraph(run(document.subtitle), "Subtitle"))
    lines += [paragraph(run(f"{k}\t{v}"), "Masthead") for k, v in masthead(document)]
    if document.status:
        lines.append(paragraph(run(document.status), "Status"))
    if document.lead_in:
        lines.append(paragraph(body.runs(lead_in_runs(document)), "LeadIn"))
    lines += body.blocks(document.title_blocks)
    return "".join(lines)
