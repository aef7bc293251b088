"""Jinja's reading of a clause body: its own syntax tree, and that tree in terms of clauses."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from jinja2 import Environment, nodes

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
    Statement,
    Text,
    Worded,
)

_JINJA = Environment(trim_blocks=True, lstrip_blocks=True, keep_trailing_newline=True)
_SIGNS = {"eq": "==", "ne": "!=", "in": "in"}


def syntax(source: str) -> nodes.Template:
    """Jinja's tree of a body; raises as Jinja does."""
    return _JINJA.parse(source)


def tree_of(template: nodes.Template) -> Body:
    """The tree of a body that has passed ``subset.check``; ``TypeError`` for another."""
    return _body(template.body)


def _body(body: Sequence[nodes.Node]) -> Body:
    return tuple(each for node in body for each in _statements(node))


def _statements(node: nodes.Node) -> Iterator[Statement]:
    match node:
        case nodes.Output():
            for part in node.nodes:
                yield Text(part.data) if isinstance(part, nodes.TemplateData) else Print(_of(part))
        case nodes.If():
            cases = tuple((_of(case.test), _body(case.body)) for case in (node, *node.elif_))
            yield If(cases, _body(node.else_))
        case nodes.For(target=nodes.Name()):
            test = None if node.test is None else _of(node.test)
            body, otherwise = _body(node.body), _body(node.else_)
            yield For(node.target.name, _of(node.iter), test, body, otherwise)  # type: ignore[attr-defined]
        case _:
            raise TypeError(f"clauses hold no {type(node).__name__}")


def _of(node: nodes.Node) -> Expression:
    match node:
        case nodes.Name():
            return Name(node.name)
        case nodes.Getattr():
            return Key(_of(node.node), node.attr)
        case nodes.Const():
            return Const(node.value)
        case nodes.List() | nodes.Tuple():
            return Items(tuple(map(_of, node.items)))
        case nodes.Not():
            return Not(_of(node.node))
        case nodes.And():
            return And(_of(node.left), _of(node.right))
        case nodes.Or():
            return Or(_of(node.left), _of(node.right))
        case nodes.Compare():
            links = ((_SIGNS[link.op], _of(link.expr)) for link in node.ops)
            return Compared(_of(node.expr), tuple(links))
        case nodes.Filter(node=nodes.Node() as value):
            return Worded(_of(value), node.name, tuple(arg.as_const() for arg in node.args))
        case nodes.Call():
            (target,) = node.args
            return Reference(target.as_const())
    raise TypeError(f"clauses hold no {type(node).__name__}")
