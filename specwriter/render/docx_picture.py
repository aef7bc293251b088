"""A figure → a picture in WordprocessingML, with its text for those who cannot see it."""

from __future__ import annotations

from specwriter.assemble.document import Figure
from specwriter.render.docx_page import INDENT
from specwriter.render.docx_xml import paragraph, xml_text
from specwriter.render.figure.metafile import extent, figure_emf

_TWIP = 635
"""English metric units in a twip."""

_PICTURE = "http://schemas.openxmlformats.org/drawingml/2006/picture"
_RELATION = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/image"


def picture_xml(figure: Figure, emf: bytes, number: int, page: int) -> str:
    """A paragraph with the picture, as wide as the text of a clause.

    ``number`` is that of the part and of the relation, ``page`` the twips between the margins.
    """
    across, down = extent(emf)
    width = (page - INDENT) * _TWIP
    height = width * down // across
    name, text = f"Figure {figure.number}", xml_text(figure.description)
    size = f'cx="{width}" cy="{height}"'
    drawing = (
        f'<w:r><w:drawing><wp:inline distT="0" distB="0" distL="0" distR="0"><wp:extent {size}/>'
        f'<wp:docPr id="{number}" name="{name}" descr="{text}"/>'
        '<wp:cNvGraphicFramePr><a:graphicFrameLocks noChangeAspect="1"/></wp:cNvGraphicFramePr>'
        f'<a:graphic><a:graphicData uri="{_PICTURE}"><pic:pic>'
        f'<pic:nvPicPr><pic:cNvPr id="{number}" name="{name}" descr="{text}"/><pic:cNvPicPr/>'
        f'</pic:nvPicPr><pic:blipFill><a:blip r:embed="{relation_id(number)}"/>'
        "<a:stretch><a:fillRect/></a:stretch></pic:blipFill><pic:spPr>"
        f'<a:xfrm><a:off x="0" y="0"/><a:ext {size}/></a:xfrm>'
        '<a:prstGeom prst="rect"><a:avLst/></a:prstGeom></pic:spPr></pic:pic>'
        "</a:graphicData></a:graphic></wp:inline></w:drawing></w:r>"
    )
    return paragraph(drawing, "Picture")


def picture_of(figure: Figure) -> bytes:
    """The picture itself."""
    return figure_emf(figure)


def part_name(number: int) -> str:
    """The name of the part that holds a picture."""
    return f"word/media/figure{number}.emf"


def relation_id(number: int) -> str:
    """The id of the relation from the document to a picture; the template owns those below."""
    return f"rId{100 + number}"


def relations(count: int) -> str:
    """The relations to all pictures."""
    return "".join(
        f'<Relationship Id="{relation_id(number)}" Type="{_RELATION}"'
        f' Target="{part_name(number).removeprefix("word/")}"/>'
        for number in range(1, count + 1)
    )
