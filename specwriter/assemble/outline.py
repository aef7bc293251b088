"""House formats: their parts in order, what each part holds, and how everything is numbered."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from fnmatch import fnmatchcase

import yaml

from specwriter.assemble.clause import LibraryClause
from specwriter.assemble.counting import FIELD
from specwriter.assemble.document import Numbering
from specwriter.assemble.front_matter import FrontError, fault_on, read_mapping
from specwriter.diagnostic import Fault

_ROOT_KEYS = ("default", "numberings", "formats")
_KEYS = ("title", "section", "numbering", "not_used", "parts")
_SECTION = "Section"
_PART_KEYS = ("id", "title", "holds")
_NUMBERING_KEYS = ("part", "clause", "item", "subitem")
_FIELDS = {
    "part": ("part", "section", "provision"),
    "clause": ("part", "clause", "section", "provision"),
    "item": ("item",),
    "subitem": ("item",),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class OutlinePart:
    """A part of the format. ``holds`` names parts of clauses, and clauses by id or pattern."""

    id: str
    title: str
    holds: tuple[str, ...] = ()

    @property
    def held(self) -> tuple[str, ...]:
        """What the part holds: what it says, else the clauses of its own name."""
        return self.holds or (self.id,)


@dataclass(frozen=True, slots=True, kw_only=True)
class Outline:
    """A house format.

    ``not_used`` is the title of the one clause of a part without clauses: the part stays, so
    that the numbers of the parts behind it never shift. ``section`` is what the agency calls a
    section of its standard specifications.
    """

    name: str = "five_part"
    title: str = ""
    section: str = _SECTION
    parts: tuple[OutlinePart, ...]
    numbering: str = "plain"
    not_used: str = "Not used"
    file: str = "outline.yaml"
    line: int = 1

    def place_of(self, clause: LibraryClause) -> tuple[int, int] | None:
        """Index of the part that a clause goes into, and its rank there; a named clause first."""
        by_part = None
        for index, part in enumerate(self.parts):
            for rank, held in enumerate(part.held):
                if "." in held and fnmatchcase(clause.id, held):
                    return index, rank
                if held == clause.part and by_part is None:
                    by_part = index, rank
        return by_part


@dataclass(frozen=True, slots=True, kw_only=True)
class Formats:
    """Every house format and every numbering, by name; ``default`` is one of the formats."""

    default: str
    outlines: dict[str, Outline] = field(default_factory=dict)
    numberings: dict[str, Numbering] = field(default_factory=lambda: {"plain": Numbering()})

    @property
    def usual(self) -> Outline:
        """The format that is used where the job names none."""
        return self.outlines.get(self.default, NO_OUTLINE)

    def over(self, base: Formats) -> Formats:
        """These formats put over others of the same name."""
        return replace(
            self,
            outlines={**base.outlines, **self.outlines},
            numberings={**base.numberings, **self.numberings},
        )


NO_OUTLINE = Outline(parts=())
NO_FORMATS = Formats(default="")


def single(outline: Outline) -> Formats:
    """One format and the plain numbering."""
    return Formats(default=outline.name, outlines={outline.name: outline})


def read_outline(text: str, file: str) -> tuple[Formats, list[Fault]]:
    """The formats of an outline file, with the first fault found in it."""
    try:
        root = _keyed(read_mapping(text, file), _ROOT_KEYS, file)
        listed = _mapping(_need(root, "formats", file), file)
        outlines = {str(key.value): _format(str(key.value), node, file) for key, node in listed}
        named = _need(root, "default", file)
        default = _scalar(named, file)
        if default not in outlines:
            todo = f"there are: {', '.join(outlines)}"
            raise FrontError(fault_on(named, file, f"'{default}' is missing here", todo))
        numberings = dict(_numberings(root.get("numberings"), file))
        return Formats(default=default, outlines=outlines, numberings=numberings), []
    except FrontError as error:
        return NO_FORMATS, [error.fault]


def _format(name: str, node: yaml.Node, file: str) -> Outline:
    keys = _keyed(node, _KEYS, file)
    listed = _need(keys, "parts", file)
    if not isinstance(listed, yaml.SequenceNode) or not listed.value:
        raise FrontError(fault_on(listed, file, "'parts' needs a list", "list the parts in order"))
    return Outline(
        name=name,
        title=_scalar(keys["title"], file) if "title" in keys else name.replace("_", " "),
        section=_scalar(keys["section"], file) if "section" in keys else _SECTION,
        parts=tuple(_part(item, file) for item in listed.value),
        numbering=_scalar(_need(keys, "numbering", file), file),
        not_used=_scalar(_need(keys, "not_used", file), file),
        file=file,
        line=node.start_mark.line,
    )


def _part(node: yaml.Node, file: str) -> OutlinePart:
    keys = _keyed(node, _PART_KEYS, file)
    holds: tuple[str, ...] = ()
    if held := keys.get("holds"):
        if not isinstance(held, yaml.SequenceNode):
            raise FrontError(fault_on(held, file, "'holds' needs a list", "write [first, second]"))
        holds = tuple(_scalar(item, file) for item in held.value)
    return OutlinePart(
        id=_scalar(_need(keys, "id", file), file),
        title=_scalar(_need(keys, "title", file), file),
        holds=holds,
    )


def _numberings(node: yaml.Node | None, file: str) -> Iterator[tuple[str, Numbering]]:
    yield "plain", Numbering()
    for key, value in _mapping(node, file) if node else ():
        keys = _keyed(value, _NUMBERING_KEYS, file)
        patterns = {name: _pattern(name, inner, file) for name, inner in keys.items() if name}
        made = Numbering(**patterns)
        _agree(made, value, file)
        yield str(key.value), made


def _pattern(name: str, node: yaml.Node, file: str) -> str:
    text = _scalar(node, file)
    known = _FIELDS[name]
    for found in FIELD.finditer(text):
        if found[1] not in known:
            todo = f"known: {', '.join(known)}"
            says = f"'{found[0]}' has no meaning in the number of a {name}"
            raise FrontError(fault_on(node, file, says, todo))
    if "{" in FIELD.sub("", text) or "}" in FIELD.sub("", text):
        says = "these braces cannot be read"
        raise FrontError(fault_on(node, file, says, "write {part}, {clause:02}, {item:a}, ..."))
    return text


def _agree(made: Numbering, node: yaml.Node, file: str) -> None:
    """A clause is found by its number alone, and Word writes a level in one way everywhere."""
    forms = {found[1]: found[2] for found in FIELD.finditer(made.clause)}
    if not {"part", "clause"} <= set(forms):
        says = "the number of a clause names its part and its place there"
        raise FrontError(fault_on(node, file, says, "write clause with {part} and {clause}"))
    own = {found[1]: found[2] for found in FIELD.finditer(made.part)}
    if "part" in own and own["part"] != forms["part"]:
        says = "the part is written in two ways"
        raise FrontError(fault_on(node, file, says, "write {part} alike in 'part' and 'clause'"))


def _keyed(node: yaml.Node, known: tuple[str, ...], file: str) -> dict[str, yaml.Node]:
    """The values of a mapping by key; a key that is not known is a fault."""
    found: dict[str, yaml.Node] = {}
    for key, value in _mapping(node, file):
        if key.value not in known:
            todo = f"known: {', '.join(known)}"
            raise FrontError(fault_on(key, file, f"'{key.value}' is not a key here", todo))
        found[str(key.value)] = value
    found[""] = node
    return found


def _need(keys: dict[str, yaml.Node], name: str, file: str) -> yaml.Node:
    if name in keys:
        return keys[name]
    raise FrontError(fault_on(keys[""], file, f"'{name}' is missing here", f"add {name}: ..."))


def _scalar(node: yaml.Node, file: str) -> str:
    if isinstance(node, yaml.ScalarNode) and node.value:
        return str(node.value)
    raise FrontError(fault_on(node, file, "a text is needed here", "write it after the colon"))


def _mapping(node: yaml.Node, file: str) -> list[tuple[yaml.Node, yaml.Node]]:
    if isinstance(node, yaml.MappingNode):
        return list(node.value)
    raise FrontError(fault_on(node, file, "keys are needed here", "write key: value"))
