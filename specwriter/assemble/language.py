"""The language of clause bodies: a small, closed part of Jinja over the views of the job."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

from jinja2 import StrictUndefined, Template, Undefined, nodes, pass_context
from jinja2.runtime import Context, LoopContext
from jinja2.sandbox import ImmutableSandboxedEnvironment

from specwriter.assemble import wording
from specwriter.assemble.document import Block, Run
from specwriter.assemble.page import Page, Phrase
from specwriter.assemble.view import Figures, Keyed, Many, View

_COMPARISONS: Mapping[str, Callable[[Any, Any], bool]] = {
    "eq": lambda left, right: left == right,
    "ne": lambda left, right: left != right,
    "in": lambda left, right: left in right,
}

PAGE = "_page"
"""The name under which a clause's page rides along; the language has no such name."""


@dataclass(frozen=True, slots=True)
class Register:
    """A table or figure that code builds; it stands alone on a line of a clause."""

    name: str
    build: Callable[[Any, Page], tuple[Block, ...]]
    """Takes the areas of the clause and its page."""


class ClauseEnvironment(ImmutableSandboxedEnvironment):
    """Reads keys of nouns and nothing else: no methods, no items, no globals of Jinja."""

    def getattr(self, obj: Any, attribute: str) -> Any:
        """A key of a noun or list of the job."""
        if isinstance(obj, View | Many | Keyed | Figures):
            return obj.read(attribute)
        if isinstance(obj, LoopContext) and attribute in ("first", "last"):
            return getattr(obj, attribute)
        return self.undefined(obj=obj, name=attribute)

    def getitem(self, obj: Any, argument: Any) -> Undefined:
        """Nothing: clauses read by name only."""
        return self.undefined(obj=obj, name=str(argument))


@cache
def environment() -> ClauseEnvironment:
    """The one environment of a process."""
    made = ClauseEnvironment(
        undefined=StrictUndefined,
        finalize=_finalize,
        autoescape=False,
        trim_blocks=True,
        lstrip_blocks=True,
        keep_trailing_newline=True,
    )
    made.globals = {"ref": _reference, "table": _reference}
    made.filters = {
        "both": _both,
        "limit": _limit,
        "written": _each(wording.written),
        "words": _each(wording.in_words),
        "and_list": wording.and_list,
    }
    made.tests = {}
    return made


@cache
def parsed(source: str) -> nodes.Template:
    """The syntax tree of a body; raises as Jinja does."""
    return environment().parse(source)


@cache
def template(source: str) -> Template:
    """A compiled body; the source must have passed ``subset.check``."""
    return environment().from_string(source)


def render(source: str, names: Mapping[str, Any], page: Page) -> str:
    """The Markdown of a body, with marks where values of the job stand."""
    return template(source).render({**names, PAGE: page})


def holds(expression: str, names: Mapping[str, Any]) -> bool:
    """Whether a ``when`` expression is true for a job."""
    source = condition(expression)
    (test,) = parsed(source).body
    if not isinstance(test, nodes.If) or any(test.test.find_all(nodes.Filter)):
        return bool(template(source).render(names))
    return bool(_value(test.test, names))


def _value(node: nodes.Node, names: Mapping[str, Any]) -> Any:
    """What an expression of a condition stands for; compiling each would take far longer."""
    match node:
        case nodes.Name():
            return names[node.name]
        case nodes.Getattr():
            return environment().getattr(_value(node.node, names), node.attr)
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
    raise TypeError(f"a condition holds no {type(node).__name__}")


def _compared(node: nodes.Compare, names: Mapping[str, Any]) -> bool:
    """A chain of ``==``, ``!=`` and ``in``, which is true when each link is."""
    left = _value(node.expr, names)
    for operand in node.ops:
        right = _value(operand.expr, names)
        if not _COMPARISONS[operand.op](left, right):
            return False
        left = right
    return True


def condition(expression: str) -> str:
    """The template that is not empty when the expression is true."""
    return "{% if " + expression + " %}yes{% endif %}"


@pass_context
def _finalize(context: Context, value: Any) -> str:
    page: Page = context[PAGE]
    if isinstance(value, Register):
        return page.mark(value.build(context["areas"], page))
    return page.mark(page.note(wording.written(value)))


@pass_context
def _both(context: Context, value: Any) -> Any:
    return _over(value, lambda item: wording.both(item, context[PAGE].job.project))


@pass_context
def _limit(context: Context, value: Any, bound: wording.Bound | None = None) -> Any:
    return _over(value, lambda item: wording.limit(item, context[PAGE].job.project, bound))


def _each(wording_of: Callable[[Any], Phrase]) -> Callable[[Any], Any]:
    return lambda value: _over(value, wording_of)


def _over(value: Any, wording_of: Callable[[Any], Phrase]) -> Any:
    """The wording of a value, or of each member of a list that has members."""
    if isinstance(value, Many) and value:
        return Many((wording_of(item) for item in value), value.path)
    return wording_of(value)


def _reference(target: str) -> Phrase:
    return Phrase((Run(text="", kind="reference", target=target),))
