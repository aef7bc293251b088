"""What a clause body may say: checked on its syntax tree, before anything is drafted."""

from __future__ import annotations

import re
from collections.abc import Collection, Iterator
from dataclasses import dataclass, field

from jinja2 import TemplateSyntaxError, nodes

from specwriter.assemble.front_matter import nearest
from specwriter.assemble.language import FILTERS
from specwriter.assemble.shape import BASE, BOOL, TEXT, Shape, ShapeError
from specwriter.assemble.template_jinja import syntax

LENGTH_CAP = 20_000
_BRACES = (
    (
        r"Unexpected end of template.*needs to be closed is '(\w+)'",
        r"a {% \1 %} is never closed",
        r"write {% end\1 %} where it ends",
    ),
    (r"unknown tag 'end(\w+)'", r"there is no {% \1 %} to end here", r"take {% end\1 %} out"),
    (
        r"unknown tag '(\w+)'",
        r"'\1' is not used in clauses",
        "use if, elif, else, for, endif and endfor",
    ),
    (r"unexpected 'end of", "the words in braces break off", "finish them"),
    (r"got '='", "one = compares nothing", "compare with =="),
    (
        r"unexpected char '(\W)'",
        r"\1 is not understood in braces",
        "write straight quotes, names, == or !=",
    ),
)
"""Messages of the parser of braces, what they mean, and what to do."""
_LOOP = Shape("loop")
_WORDED = (nodes.Filter, nodes.Call)
_BOUNDS = ("at_least", "at_most")


@dataclass(frozen=True, slots=True)
class Complaint:
    """What is wrong in a body, at which of its lines (from 1), and what to do."""

    line: int
    says: str
    todo: str = ""


@dataclass(slots=True)
class Checked:
    """The outcome of a check: complaints, what the body refers to, and the paths that it reads."""

    complaints: list[Complaint] = field(default_factory=list)
    clauses: list[tuple[int, str]] = field(default_factory=list)
    tables: list[tuple[int, str]] = field(default_factory=list)
    reads: set[str] = field(default_factory=set)
    """Paths with ``*`` for every member; for a table that code builds, its name."""


def check(source: str, figures: Collection[str] = ()) -> Checked:
    """Read a body and complain about everything that is not in the language of clauses.

    ``figures`` are the names of the fixed figures of the clause.
    """
    outcome = Checked()
    if len(source) > LENGTH_CAP:
        says = f"this clause has more than {LENGTH_CAP:,} characters"
        outcome.complaints.append(Complaint(1, says, "split it into several clauses"))
        return outcome
    try:
        tree = syntax(source)
    except TemplateSyntaxError as error:
        outcome.complaints.append(Complaint(error.lineno, *_in_words(error.message or "")))
        return outcome
    except RecursionError:
        outcome.complaints.append(Complaint(1, "the braces are nested too deeply", "simplify"))
        return outcome
    _Walker(outcome).statements(tree.body, {**BASE, "fixed": Shape("figures", tuple(figures))})
    return outcome


@dataclass(frozen=True, slots=True)
class _Walker:
    outcome: Checked

    def complain(self, node: nodes.Node, says: str, todo: str = "") -> None:
        self.outcome.complaints.append(Complaint(node.lineno, says, todo))

    def statements(self, body: list[nodes.Node], names: dict[str, Shape]) -> None:
        for node in body:
            match node:
                case nodes.Output():
                    for part in node.nodes:
                        self.output(part, names)
                case nodes.If():
                    self.condition(node.test, names)
                    for branch in (node.body, node.elif_, node.else_):
                        self.statements(list(branch), names)
                case nodes.For():
                    self.loop(node, names)
                case _:
                    kind = type(node).__name__.lower()
                    self.complain(node, f"'{kind}' is not used in clauses", "use if and for only")

    def loop(self, node: nodes.For, names: dict[str, Shape]) -> None:
        if not isinstance(node.target, nodes.Name) or node.recursive:
            self.complain(node, "a loop names one thing", "write {% for area in areas %}")
            return
        if not isinstance(node.iter, nodes.Name | nodes.Getattr):
            self.complain(node, "a loop goes over a list of the job", "name the list")
            return
        shape = self.expression(node.iter, names)
        if shape.kind not in ("many", "keyed", "unknown"):
            self.complain(node, "a loop goes over a list of the job", "name a list")
        inner = {**names, node.target.name: shape.member, "loop": _LOOP}
        if node.test is not None:
            self.condition(node.test, inner)
        self.statements(node.body, inner)
        self.statements(node.else_, names)

    def condition(self, node: nodes.Node, names: dict[str, Shape]) -> None:
        self.expression(node, names)
        if isinstance(node, _WORDED) or any(node.find_all(_WORDED)):
            self.complain(node, "a condition asks and words nothing", "leave the filter out")

    def output(self, node: nodes.Node, names: dict[str, Shape]) -> None:
        if isinstance(node, nodes.TemplateData):
            return
        shape = self.expression(node, names)
        if shape.kind in ("noun", "keyed", "figures"):
            todo = "print one of its values: " + ", ".join(shape.keys()[:6])
            self.complain(node, "a whole group of values cannot be printed", todo)
        elif shape.kind == "many":
            self.complain(node, "a list cannot be printed as it is", "add | and_list")
        elif shape == BOOL:
            self.complain(node, "a yes-or-no value cannot be printed", "use it in {% if %}")

    def expression(self, node: nodes.Node, names: dict[str, Shape]) -> Shape:
        match node:
            case nodes.Name():
                return self.name(node, names)
            case nodes.Getattr():
                return self.key(node, self.expression(node.node, names))
            case nodes.Const() if node.value is None or isinstance(node.value, str | int):
                return TEXT
            case nodes.List() | nodes.Tuple() if all(
                isinstance(item, nodes.Const) for item in node.items
            ):
                return TEXT
            case nodes.And() | nodes.Or():
                self.expression(node.left, names)
                self.expression(node.right, names)
                return BOOL
            case nodes.Not():
                self.expression(node.node, names)
                return BOOL
            case nodes.Compare():
                return self.comparison(node, names)
            case nodes.Filter():
                return self.filter(node, names)
            case nodes.Call():
                return self.call(node)
        self.complain(
            node,
            "this is not in the language of clauses",
            "use names of the job, comparisons, and, or, not, the filters "
            f"{', '.join(FILTERS)}, ref() and table()",
        )
        return Shape("unknown")

    def name(self, node: nodes.Name, names: dict[str, Shape]) -> Shape:
        if node.name in names:
            self.outcome.reads.add(names[node.name].path or node.name)
            return names[node.name]
        self.complain(node, f"'{node.name}' is not known here", nearest(node.name, sorted(names)))
        return Shape("unknown")

    def key(self, node: nodes.Getattr, owner: Shape) -> Shape:
        try:
            read = owner.read(node.attr)
            self.outcome.reads.add(owner.path_to(node.attr))
            return read
        except ShapeError as fault:
            self.complain(node, fault.says, fault.todo)
            return Shape("unknown")

    def comparison(self, node: nodes.Compare, names: dict[str, Shape]) -> Shape:
        self.expression(node.expr, names)
        for operand in node.ops:
            if operand.op not in ("eq", "ne", "in"):
                self.complain(node, "clauses do no arithmetic", "compare with ==, != or in only")
            self.expression(operand.expr, names)
        return BOOL

    def filter(self, node: nodes.Filter, names: dict[str, Shape]) -> Shape:
        shape = self.expression(node.node, names) if node.node is not None else TEXT
        bound = [item.value for item in node.args if isinstance(item, nodes.Const)]
        plain = not (node.kwargs or node.dyn_args or node.dyn_kwargs)
        fits = not node.args or (
            node.name == "limit" and len(node.args) == 1 and bound and bound[0] in _BOUNDS
        )
        if node.name not in FILTERS:
            self.complain(node, f"there is no filter '{node.name}'", f"use {', '.join(FILTERS)}")
        elif not plain or not fits:
            self.complain(node, f"the filter '{node.name}' cannot take this in parentheses")
        if node.name == "and_list" and shape.kind not in ("many", "unknown"):
            self.complain(node, "and_list joins a list", "leave it out for a single value")
        if node.name != "and_list" and shape.kind == "many":
            return shape
        return TEXT

    def call(self, node: nodes.Call) -> Shape:
        called = node.node.name if isinstance(node.node, nodes.Name) else ""
        targets = list(_constants(node))
        if called not in ("ref", "table") or len(targets) != 1 or not targets[0]:
            todo = 'write ref("folder.clause") or table("name")'
            self.complain(node, "only ref and table can be called, with one name", todo)
        else:
            kept = self.outcome.clauses if called == "ref" else self.outcome.tables
            kept.append((node.lineno, targets[0]))
        return TEXT


def _in_words(message: str) -> tuple[str, str]:
    """What the parser of braces says, in words of clauses, and what to do."""
    for pattern, says, todo in _BRACES:
        if found := re.search(pattern, message):
            return found.expand(says), found.expand(todo)
    return f"the braces cannot be read: {message}", "see how other clauses do it"


def _constants(node: nodes.Call) -> Iterator[str]:
    if node.kwargs or node.dyn_args or node.dyn_kwargs:
        return
    for item in node.args:
        yield item.value if isinstance(item, nodes.Const) and isinstance(item.value, str) else ""
