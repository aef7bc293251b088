"""A clause file split into its front matter and its body, every fault at its line and column."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from difflib import get_close_matches
from typing import Any

import yaml

from specwriter.diagnostic import Fault, Place

_FENCE = "---"
_ANCHOR = re.compile(r"(?<![^\s\[{,:])[&*]")
"""Where an anchor or an alias may stand; most files have no such place."""


# The reader in C is some ten times faster, and every draft reads the whole library.
_Fastest: Any = getattr(yaml, "CSafeLoader", yaml.SafeLoader)


class _Loader(_Fastest):  # type: ignore[misc]
    """Every plain scalar stays text."""

    yaml_implicit_resolvers: dict[str, list[tuple[str, Any]]] = {}  # noqa: RUF012 (as PyYAML has it)


@dataclass(frozen=True, slots=True)
class Split:
    """The front matter as a node, the body, and the number of the body's first line."""

    front: yaml.MappingNode
    body: str
    body_line: int


class FrontError(ValueError):
    """A clause file whose front matter cannot be read."""

    def __init__(self, fault: Fault) -> None:
        super().__init__(fault.says)
        self.fault = fault


def split(text: str, file: str) -> Split:
    """Front matter and body of a clause file; raises ``FrontError``."""
    lines = text.split("\n")
    ends = [i for i, line in enumerate(lines) if line.rstrip() == _FENCE]
    if len(ends) < 2 or ends[0] != 0:
        todo = "begin the file with ---, the front matter, and another ---"
        raise FrontError(fault_at(file, 1, 1, "this clause has no front matter", todo))
    front = "\n" + "\n".join(lines[1 : ends[1]])
    return Split(read_mapping(front, file), "\n".join(lines[ends[1] + 1 :]), ends[1] + 2)


def read_mapping(text: str, file: str) -> yaml.MappingNode:
    """YAML text as a mapping node without anchors; raises ``FrontError``."""
    try:
        _refuse_anchors(text, file)
        node = yaml.compose(text, Loader=_Loader)
    except yaml.MarkedYAMLError as error:
        mark = error.problem_mark or error.context_mark
        line, column = (mark.line + 1, mark.column + 1) if mark else (1, 1)
        says = f"this is not readable YAML: {error.problem or error.context}"
        raise FrontError(fault_at(file, line, column, says, "compare other clauses")) from None
    except (yaml.YAMLError, RecursionError):
        says = "this is not readable YAML"
        raise FrontError(fault_at(file, 1, 1, says, "look for unusual characters")) from None
    if not isinstance(node, yaml.MappingNode):
        raise FrontError(fault_at(file, 1, 1, "there are no keys here", "write key: value"))
    return node


def fault_at(file: str, line: int, column: int, says: str, todo: str = "") -> Fault:
    """A fault at a line and column, both counted from 1."""
    return Fault(place=Place(file=file, line=line, column=column), says=says, todo=todo)


def fault_on(node: yaml.Node, file: str, says: str, todo: str = "") -> Fault:
    """A fault at a node of the front matter."""
    mark = node.start_mark
    return fault_at(file, mark.line + 1, mark.column + 1, says, todo)


def nearest(name: str, known: Iterable[str]) -> str:
    """What to write in place of a name that is not known: the one most like it, or any."""
    listed = list(known)
    near = get_close_matches(name, listed, 1)
    return f"did you mean '{near[0]}'?" if near else f"known: {', '.join(listed)}"


def _refuse_anchors(text: str, file: str) -> None:
    for event in yaml.parse(text, Loader=_Loader) if _ANCHOR.search(text) else ():
        mark = event.start_mark
        if mark and (isinstance(event, yaml.AliasEvent) or getattr(event, "anchor", None)):
            says = "anchors and aliases (& and *) are not used here"
            todo = "write the value out, or put it in quotes"
            raise FrontError(fault_at(file, mark.line + 1, mark.column + 1, says, todo))
