"""A link out of the file stays one where its words stay; what comes or goes has none."""

from __future__ import annotations

import io
from pathlib import Path

import docx
from docx.opc.constants import RELATIONSHIP_TYPE
from docx.oxml import parse_xml
from docx.oxml.ns import nsdecls
from openxml_audit import OpenXmlValidator

from specwriter.compare.redline import redline
from tests.compare.redline.office import needs_office, settled
from tests.compare.redline.test_redline import AUTHOR, document_xml

TARGET = "mailto:tests@example.org"


def linked(words: str) -> bytes:
    """A paragraph with a link in it, and other words behind it."""
    document = docx.Document()
    paragraph = document.add_paragraph("Test as ")
    target = paragraph.part.relate_to(TARGET, RELATIONSHIP_TYPE.HYPERLINK, is_external=True)
    link = f'<w:hyperlink {nsdecls("w", "r")} r:id="{target}"><w:r><w:t>agreed</w:t></w:r>'
    paragraph._p.append(parse_xml(f"{link}</w:hyperlink>"))
    paragraph.add_run(words)
    buffer = io.BytesIO()
    document.save(buffer)
    return buffer.getvalue()


def test_a_link_that_stays_is_a_link_in_the_redline(tmp_path: Path) -> None:
    needs_office()
    old, new = linked(" before noon."), linked(" after noon.")

    marked = redline(old, new, AUTHOR)
    accepted, rejected = settled(tmp_path / "office-links", {"link": marked})["link"]

    (link,) = docx.Document(io.BytesIO(marked)).paragraphs[0].hyperlinks
    assert (link.text, link.address) == ("agreed", TARGET)
    for content, text in ((accepted, "after"), (rejected, "before")):
        (paragraph,) = docx.Document(io.BytesIO(content)).paragraphs
        assert paragraph.text == f"Test as agreed {text} noon."
        assert [each.address for each in paragraph.hyperlinks] == [TARGET]
    # The stock template of python-docx has errors of its own.
    assert errors(tmp_path, marked) == errors(tmp_path, new)


def errors(folder: Path, content: bytes) -> list[str]:
    path = folder / "file.docx"
    path.write_bytes(content)
    return [each.description for each in OpenXmlValidator().validate(str(path)).errors]


def test_a_paragraph_that_comes_is_written_without_its_link() -> None:
    document = docx.Document()
    document.add_paragraph("Cut by day.")
    buffer = io.BytesIO()
    document.save(buffer)

    marked = redline(buffer.getvalue(), linked(" before noon."), AUTHOR)

    assert "<w:hyperlink" not in document_xml(marked)
