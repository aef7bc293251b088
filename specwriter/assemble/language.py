"""The language of clause bodies: a small, closed part of Jinja over the views of the job.

A body is read into its tree, which is then looked up node by node. A body is read once in a
process, so compiling it would take several times longer than this does.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

from specwriter.assemble import wording
from specwriter.assemble.document import Block, Run
from specwriter.assemble.page import Page, Phrase
from specwriter.assemble.template import (
    And,
    Body,
    Compared,
    Const,
    Expression,
    For,
    If,
    Items,
    Key,
    Name,
    Not,
    Or,
    Print,
    Reference,
    Text,
    Worded,
)
from specwriter.assemble.template_reader import UnusualError, read
from specwriter.assemble.view import Many

Names = Mapping[str, Any]
"""What the names in a clause stand for."""

_COMPARISONS: Mapping[str, Callable[[Any, Any], bool]] = {
    "==": lambda left, right: left == right,
    "!=": lambda left, right: left != right,
    "in": lambda left, right: left in right,
}

_FILTERS: Mapping[str, Callable[..., Phrase]] = {
    "both": lambda value, page: wording.both(value, page.job.project),
    "limit": lambda value, page, *bound: wording.limit(value, page.job.project, *bound),
    "written": lambda value, page: wording.written(value),
    "words": lambda value, page: wording.in_words(value),
}
"""Each words one value; over a list with members, each of them."""

FILTERS = (*_FILTERS, "and_list")


@dataclass(frozen=True, slots=True)
class Register:
    """A table or figure that code builds; it stands alone on a line of a clause."""

    name: str
    build: Callable[[Any, Page], tuple[Block, ...]]
    """Takes the areas of the clause and its page."""


@dataclass(frozen=True, slots=True)
class _Turn:
    """Where a loop stands."""

    first: bool
    last: bool

    def read(self, key: str) -> bool:
        return self.first if key == "first" else self.last


@cache
def parsed(source: str) -> Body:
    """The syntax tree of a body that has passed ``subset.check``."""
    try:
        return read(source)
    except UnusualError:
        from specwriter.assemble.template_jinja import syntax, tree_of

        return tree_of(syntax(source))


def condition(expression: str) -> str:
    """The template that is not empty when the expression is true."""
    return "{% if " + expression + " %}yes{% endif %}"


def holds(expression: str, names: Names) -> bool:
    """Whether a ``when`` expression is true for a job."""
    (choice,) = parsed(condition(expression))
    assert isinstance(choice, If)
    return bool(_value(choice.cases[0][0], names))


def render(source: str, names: Names, page: Page) -> str:
    """The Markdown of a body, with marks where values of the job stand.

    The source must have passed ``subset.check``, which knows the same language as this does.
    """
    return "".join(_Writer(page).statements(parsed(source), names))


@dataclass(frozen=True, slots=True)
class _Writer:
    page: Page

    def statements(self, body: Body, names: Names) -> Iterator[str]:
        for node in body:
            match node:
                case Text():
                    yield node.text
                case Print():
                    yield self.output(node.value, names)
                case If():
                    yield from self.statements(_branch(node, names), names)
                case For():
                    yield from self.loop(node, names)

    def output(self, node: Expression, names: Names) -> str:
        value = self.phrase(node, names)
        if isinstance(value, Register):
            return self.page.mark(value.build(names["areas"], self.page))
        return self.page.mark(self.page.note(wording.written(value)))

    def loop(self, node: For, names: Names) -> Iterator[str]:
        items = [
            item
            for item in _value(node.over, names)
            if node.test is None or _value(node.test, {**names, node.name: item})
        ]
        for index, item in enumerate(items):
            turn = _Turn(index == 0, index == len(items) - 1)
            yield from self.statements(node.body, {**names, node.name: item, "loop": turn})
        if not items:
            yield from self.statements(node.otherwise, names)

    def phrase(self, node: Expression, names: Names) -> Any:
        """What is printed: a value, or its wording by a filter, or a reference."""
        match node:
            case Reference():
                return Phrase((Run(text="", kind="reference", target=node.target),))
            case Worded():
                return self.worded(node, names)
        return _value(node, names)

    def worded(self, node: Worded, names: Names) -> Any:
        value = self.phrase(node.value, names)
        if node.filter == "and_list":
            return wording.and_list(value)
        word = _FILTERS[node.filter]
        if isinstance(value, Many) and value:
            return Many((word(item, self.page, *node.bound) for item in value), value.path)
        return word(value, self.page, *node.bound)


def _branch(node: If, names: Names) -> Body:
    for test, body in node.cases:
        if _value(test, names):
            return body
    return node.otherwise


def _value(node: Expression, names: Names) -> Any:
    """What an expression stands for."""
    match node:
        case Name():
            return names[node.name]
        case Key():
            return _value(node.owner, names).read(node.key)
        case Const():
            return node.value
        case Items():
            return [_value(item, names) for item in node.items]
        case And():
            return _value(node.left, names) and _value(node.right, names)
        case Or():
            return _value(node.left, names) or _value(node.right, names)
        case Not():
            return not _value(node.value, names)
        case Compared():
            return _compared(node, names)
    raise TypeError(f"a condition words nothing: {node}")


def _compared(node: Compared, names: Names) -> bool:
    left = _value(node.first, names)
    for sign, operand in node.links:
        right = _value(operand, names)
        if not _COMPARISONS[sign](left, right):
            return False
        left = right
    return True
