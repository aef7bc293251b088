"""A clause of the library: its front matter, checked, and its body as written."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from typing import get_args

import yaml

from specwriter.assemble.front_matter import FrontError, fault_at, fault_on, split
from specwriter.diagnostic import Fault
from specwriter.model.area import Texture

TEXTURES: tuple[str, ...] = get_args(Texture)
_TEXT_KEYS = ("id", "title", "part", "order", "when", "note")
_LIST_KEYS = ("textures", "needs", "expresses")
_KEYS = (*_TEXT_KEYS, *_LIST_KEYS, "sources", "fixed")
_REQUIRED = ("id", "title", "part", "order")
_SOURCE_KEYS = ("document", "section", "year", "for")
_FIGURE_KEYS = ("value", "document", "section", "year", "for")
_FIGURE_NAME = re.compile(r"[a-z][a-z0-9_]*")


@dataclass(frozen=True, slots=True, kw_only=True)
class ClauseSource:
    """Where a clause comes from: document, section and year, and what it was used for."""

    document: str
    section: str = ""
    year: str = ""
    use: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class FixedFigure:
    """A figure of the clause itself, such as a legal limit: ``fixed.name`` prints its value."""

    name: str
    value: str
    source: ClauseSource


@dataclass(frozen=True, slots=True, kw_only=True)
class LibraryClause:
    """A clause file, ready to be chosen and drafted.

    ``needs`` and ``expresses`` hold paths in which ``*`` stands for every member; ``lines``
    gives the line in the file of a front matter key.
    """

    id: str
    file: str
    title: str
    part: str
    order: int
    body: str
    body_line: int
    textures: tuple[str, ...] = ()
    when: str = ""
    needs: tuple[str, ...] = ()
    expresses: tuple[str, ...] = ()
    sources: tuple[ClauseSource, ...] = ()
    fixed: tuple[FixedFigure, ...] = ()
    note: str = ""
    lines: tuple[tuple[str, int], ...] = ()

    def line_of(self, key: str) -> int:
        """The line of a front matter key, or the first line."""
        return dict(self.lines).get(key, 1)


def read_clause(text: str, file: str, name: str) -> tuple[LibraryClause | None, list[Fault]]:
    """The clause in a file; ``name`` is the id that its path gives. Faults come all at once.

    A clause with a faulty front matter is read as far as it goes, so that its text is looked at
    in the same run; without a title or a part there is none.
    """
    try:
        parts = split(text, file)
    except FrontError as error:
        return None, [error.fault]
    reader = _FrontReader(file, parts.front)
    values = reader.values()
    faults = [*reader.faults, *_check(values, reader, name)]
    texts = values.texts
    if not texts.get("title") or not texts.get("part"):
        return None, faults
    order = texts.get("order", "")
    lines = tuple((key, node.start_mark.line + 1) for key, node in reader.nodes.items())
    clause = LibraryClause(
        id=name,
        file=file,
        title=texts["title"],
        part=texts["part"],
        order=int(order) if order.isdecimal() else 0,
        body=parts.body,
        body_line=parts.body_line,
        when=values.texts.get("when", ""),
        note=values.texts.get("note", ""),
        textures=values.lists.get("textures", ()),
        needs=values.lists.get("needs", ()),
        expresses=values.lists.get("expresses", ()),
        sources=values.sources,
        fixed=values.fixed,
        lines=lines,
    )
    return clause, faults


@dataclass(frozen=True, slots=True)
class _Values:
    texts: dict[str, str]
    lists: dict[str, tuple[str, ...]]
    sources: tuple[ClauseSource, ...]
    fixed: tuple[FixedFigure, ...]


class _FrontReader:
    """Reads the keys of a front matter and collects what is wrong with them."""

    def __init__(self, file: str, front: yaml.MappingNode) -> None:
        self.file = file
        self.faults: list[Fault] = []
        self.nodes: dict[str, yaml.Node] = {}
        for key, value in front.value:
            self.enter(key, value)

    def enter(self, key: yaml.Node, value: yaml.Node) -> None:
        name = str(key.value) if isinstance(key, yaml.ScalarNode) else "this"
        if name not in _KEYS:
            self.complain(key, f"'{name}' is not a key of a clause", f"known: {', '.join(_KEYS)}")
        elif name in self.nodes:
            self.complain(key, f"'{name}' stands here twice", "keep one of them")
        else:
            self.nodes[name] = value

    def complain(self, node: yaml.Node, says: str, todo: str = "") -> None:
        self.faults.append(fault_on(node, self.file, says, todo))

    def values(self) -> _Values:
        texts = {key: self.text(self.nodes[key], key) for key in _TEXT_KEYS if key in self.nodes}
        lists = {key: tuple(self.items(key)) for key in _LIST_KEYS if key in self.nodes}
        return _Values(texts, lists, tuple(self.sources()), tuple(self.figures()))

    def text(self, node: yaml.Node, key: str) -> str:
        if isinstance(node, yaml.ScalarNode) and node.value.strip():
            return str(node.value).strip()
        self.complain(node, f"'{key}' needs a text", "write the text after the colon")
        return ""

    def items(self, key: str) -> Iterator[str]:
        node = self.nodes[key]
        if not isinstance(node, yaml.SequenceNode):
            self.complain(node, f"'{key}' needs a list", "write [first, second]")
            return
        if not node.value:
            self.complain(node, f"'{key}' names nothing", "name at least one, or leave it out")
        for item in node.value:
            yield self.text(item, key)

    def sources(self) -> Iterator[ClauseSource]:
        node = self.nodes.get("sources")
        if node is None:
            return
        items = node.value if isinstance(node, yaml.SequenceNode) else [node]
        for item in items:
            if isinstance(item, yaml.MappingNode):
                yield self.source(item)
            else:
                self.complain(item, "a source has keys", "write {document: ..., year: ...}")

    def source(self, node: yaml.MappingNode) -> ClauseSource:
        found = self.keyed(node, _SOURCE_KEYS, "source")
        if "document" not in found:
            self.complain(node, "this source names no document", "add document: ...")
        return _source(found)

    def figures(self) -> Iterator[FixedFigure]:
        node = self.nodes.get("fixed")
        if node is None:
            return
        if not isinstance(node, yaml.MappingNode):
            self.complain(node, "'fixed' needs names", "write name: {value: ..., document: ...}")
            return
        for key, value in node.value:
            name = str(key.value) if isinstance(key, yaml.ScalarNode) else ""
            if not _FIGURE_NAME.fullmatch(name) or not isinstance(value, yaml.MappingNode):
                todo = "write name: {value: ..., document: ...}"
                self.complain(key, "a fixed figure has a plain name and keys", todo)
            else:
                yield self.figure(name, value)

    def figure(self, name: str, node: yaml.MappingNode) -> FixedFigure:
        found = self.keyed(node, _FIGURE_KEYS, "fixed figure")
        for key in ("value", "document"):
            if key not in found:
                self.complain(node, f"this fixed figure lacks '{key}'", f"add {key}: ...")
        return FixedFigure(name=name, value=found.get("value", ""), source=_source(found))

    def keyed(self, node: yaml.MappingNode, known: tuple[str, ...], what: str) -> dict[str, str]:
        found: dict[str, str] = {}
        for key, value in node.value:
            name = str(key.value) if isinstance(key, yaml.ScalarNode) else "this"
            if name not in known:
                todo = f"known: {', '.join(known)}"
                self.complain(key, f"'{name}' is not a key of a {what}", todo)
            else:
                found[name] = self.text(value, name)
        return found


def _source(found: dict[str, str]) -> ClauseSource:
    return ClauseSource(
        document=found.get("document", ""),
        section=found.get("section", ""),
        year=found.get("year", ""),
        use=found.get("for", ""),
    )


def _check(values: _Values, reader: _FrontReader, name: str) -> Iterator[Fault]:
    for key in _REQUIRED:
        if key not in reader.nodes:
            says = f"the front matter lacks '{key}'"
            yield fault_at(reader.file, 1, 1, says, f"add {key}: ...")
    texts = values.texts
    if texts.get("id", name) != name:
        says = f"the id '{texts['id']}' does not fit the file's place"
        yield fault_on(reader.nodes["id"], reader.file, says, f"write id: {name}")
    if not texts.get("order", "0").isdecimal():
        todo = "write a whole number such as 20"
        yield fault_on(reader.nodes["order"], reader.file, "'order' is a whole number", todo)
    for texture in values.lists.get("textures", ()):
        if texture and texture not in TEXTURES:
            says = f"'{texture}' is not a texture"
            todo = f"known: {', '.join(TEXTURES)}"
            yield fault_on(reader.nodes["textures"], reader.file, says, todo)
