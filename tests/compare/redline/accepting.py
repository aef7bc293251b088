"""Accepts or rejects the tracked changes of a Word file, without the code that wrote them.

Works on the XML by the rules of the format alone: what is inserted goes when changes are
rejected, what is deleted goes when they are accepted; a paragraph whose mark goes runs into the
next one; a row whose mark says so goes as a whole.
"""

from __future__ import annotations

import io
import zipfile
from xml.etree import ElementTree
from xml.etree.ElementTree import Element

W = "{http://schemas.openxmlformats.org/wordprocessingml/2006/main}"
DOCUMENT = "word/document.xml"
CAME = {f"{W}ins", f"{W}moveTo"}
WENT = {f"{W}del", f"{W}moveFrom"}
RANGES = {f"{W}{side}Range{end}" for side in ("moveFrom", "moveTo") for end in ("Start", "End")}


def accepted(content: bytes) -> bytes:
    return _settled(content, gone=WENT, kept=CAME)


def rejected(content: bytes) -> bytes:
    return _settled(content, gone=CAME, kept=WENT)


def lines(content: bytes) -> list[str]:
    """The text of each paragraph and row that is not empty, fields by what they show."""
    with zipfile.ZipFile(io.BytesIO(content)) as package:
        body = ElementTree.fromstring(package.read(DOCUMENT))[0]
    return [line for line in _lines(body) if line.strip(" |")]


def _lines(owner: Element) -> list[str]:
    found = []
    for child in owner:
        if child.tag == f"{W}p":
            found.append(_text(child))
        elif child.tag == f"{W}tbl":
            for row in child.iter(f"{W}tr"):
                cells = ["/".join(filter(None, _lines(cell))) for cell in row.iter(f"{W}tc")]
                found.append(" | ".join(cells))
    return found


def _text(paragraph: Element) -> str:
    text = ""
    for each in paragraph.iter():
        if each.tag in (f"{W}t", f"{W}delText"):
            text += each.text or ""
        elif each.tag == f"{W}tab" and not each.attrib:
            text += "\t"
        elif each.tag == f"{W}br" and each.get(f"{W}type") != "page":
            text += "\n"
    return text


def _settled(content: bytes, gone: set[str], kept: set[str]) -> bytes:
    with zipfile.ZipFile(io.BytesIO(content)) as package:
        parts = {name: package.read(name) for name in package.namelist()}
    root = ElementTree.fromstring(parts[DOCUMENT])
    _settle(root, gone, kept)
    parts[DOCUMENT] = ElementTree.tostring(root, encoding="utf-8", xml_declaration=True)
    buffer = io.BytesIO()
    with zipfile.ZipFile(buffer, "w") as package:
        for name, part in parts.items():
            package.writestr(name, part)
    return buffer.getvalue()


def _settle(owner: Element, gone: set[str], kept: set[str]) -> None:
    waiting: list[Element] = []
    children: list[Element] = []
    for child in list(owner):
        if child.tag in gone or child.tag in RANGES:
            continue
        if child.tag == f"{W}tr" and _marked(child.find(f"{W}trPr"), gone):
            continue
        if child.tag in kept:
            _settle(child, gone, kept)
            children.extend(child)
            continue
        if child.tag == f"{W}p" and gone == CAME:
            _set_as_before(child.find(f"{W}pPr"))
        was_gone = child.tag == f"{W}p" and _marked(child.find(f"{W}pPr/{W}rPr"), gone)
        _settle(child, gone, kept)
        for run in child.iter(f"{W}delText"):
            run.tag = f"{W}t"
        if was_gone:
            waiting.append(child)
        elif child.tag == f"{W}p" and waiting:
            children.append(_merged(waiting, child))
            waiting = []
        else:
            children += _flushed(waiting)
            waiting = []
            children.append(child)
    owner[:] = [*children, *_flushed(waiting)]


def _set_as_before(properties: Element | None) -> None:
    """The settings that a tracked change of them holds; mark and section stay."""
    change = None if properties is None else properties.find(f"{W}pPrChange")
    if properties is None or change is None:
        return
    stay = [each for each in properties if each.tag in (f"{W}rPr", f"{W}sectPr")]
    properties[:] = [*change[0], *stay]


def _marked(properties: Element | None, marks: set[str]) -> bool:
    return properties is not None and any(child.tag in marks for child in properties)


def _merged(waiting: list[Element], last: Element) -> Element:
    at = 1 if last.find(f"{W}pPr") is not None else 0
    runs = [each for p in waiting for each in p if each.tag != f"{W}pPr"]
    last[at:at] = runs
    return last


def _flushed(waiting: list[Element]) -> list[Element]:
    return [p for p in waiting if any(each.tag != f"{W}pPr" for each in p)]
