"""The language of clause bodies: a small, closed part of Jinja over the views of the job.

Jinja reads a body; what it says is then looked up node by node. A body is read once in a
process, so compiling it would take several times longer than this does.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Any

from jinja2 import Environment, nodes

from specwriter.assemble import wording
from specwriter.assemble.document import Block, Run
from specwriter.assemble.page import Page, Phrase
from specwriter.assemble.view import Many

Names = Mapping[str, Any]
"""What the names in a clause stand for."""

_JINJA = Environment(trim_blocks=True, lstrip_blocks=True, keep_trailing_newline=True)

_COMPARISONS: Mapping[str, Callable[[Any, Any], bool]] = {
    "eq": lambda left, right: left == right,
    "ne": lambda left, right: left != right,
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
def parsed(source: str) -> nodes.Template:
    """The syntax tree of a body; raises as Jinja does."""
    return _JINJA.parse(source)


def condition(expression: str) -> str:
    """The template that is not empty when the expression is true."""
    return "{% if " + expression + " %}yes{% endif %}"


def holds(expression: str, names: Names) -> bool:
    """Whether a ``when`` expression is true for a job."""
    (test,) = parsed(condition(expression)).find_all(nodes.If)
    return bool(_value(test.test, names))


def render(source: str, names: Names, page: Page) -> str:
    """The Markdown of a body, with marks where values of the job stand.

    The source must have passed ``subset.check``, which knows the same nodes as this does.
    """
    return "".join(_Writer(page).statements(parsed(source).body, names))


@dataclass(frozen=True, slots=True)
class _Writer:
    page: Page

    def statements(self, body: Sequence[nodes.Node], names: Names) -> Iterator[str]:
        for node in body:
            match node:
                case nodes.Output():
                    yield from (self.output(part, names) for part in node.nodes)
                case nodes.If():
                    yield from self.statements(_branch(node, names), names)
                case nodes.For():
                    yield from self.loop(node, names)

    def output(self, node: nodes.Node, names: Names) -> str:
        if isinstance(node, nodes.TemplateData):
            return node.data
        value = self.phrase(node, names)
        if isinstance(value, Register):
            return self.page.mark(value.build(names["areas"], self.page))
        return self.page.mark(self.page.note(wording.written(value)))

    def loop(self, node: nodes.For, names: Names) -> Iterator[str]:
        assert isinstance(node.target, nodes.Name)
        name, test = node.target.name, node.test
        items = [
            item
            for item in _value(node.iter, names)
            if test is None or _value(test, {**names, name: item})
        ]
        for index, item in enumerate(items):
            turn = _Turn(index == 0, index == len(items) - 1)
            yield from self.statements(node.body, {**names, name: item, "loop": turn})
        if not items:
            yield from self.statements(node.else_, names)

    def phrase(self, node: nodes.Node, names: Names) -> Any:
        """What is printed: a value, or its wording by a filter, or a reference."""
        match node:
            case nodes.Call():
                (target,) = node.args
                return Phrase((Run(text="", kind="reference", target=target.as_const()),))
            case nodes.Filter():
                return self.filtered(node, names)
        return _value(node, names)

    def filtered(self, node: nodes.Filter, names: Names) -> Any:
        assert node.node is not None
        value = self.phrase(node.node, names)
        if node.name == "and_list":
            return wording.and_list(value)
        bound = [item.as_const() for item in node.args]
        word = _FILTERS[node.name]
        if isinstance(value, Many) and value:
            return Many((word(item, self.page, *bound) for item in value), value.path)
        return word(value, self.page, *bound)


def _branch(node: nodes.If, names: Names) -> Sequence[nodes.Node]:
    for case in (node, *node.elif_):
        if _value(case.test, names):
            return case.body
    return node.else_


def _value(node: nodes.Node, names: Names) -> Any:
    """What an expression stands for."""
    match node:
        case nodes.Name():
            return names[node.name]
        case nodes.Getattr():
            return _value(node.node, names).read(node.attr)
        case nodes.Const():
            return node.value
        case nodes.List() | nodes.Tuple():
            return [_value(item, names) for item in node.items]
        case nodes.And():
            return _value(node.left, names) and _value(node.right, names)
        case nodes.Or():
            return _value(node.left, names) or _value(node.right, names)
        case nodes.Not():
            return not _value(node.node, names)
        case nodes.Compare():
            return _compared(node, names)
    raise TypeError(f"clauses hold no {type(node).__name__}")


def _compared(node: nodes.Compare, names: Names) -> bool:
    """A chain of ``==``, ``!=`` and ``in``, which is true when each link is."""
    left = _value(node.expr, names)
    for operand in node.ops:
        right = _value(operand.expr, names)
        if not _COMPARISONS[operand.op](left, right):
            return False
        left = right
    return True
