"""The syntax tree of a clause body: text, values that are printed, choices and loops."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Name:
    """A name of the job, or of a loop."""

    name: str


@dataclass(frozen=True, slots=True)
class Key:
    """What stands under a key: ``owner.key``."""

    owner: Expression
    key: str


@dataclass(frozen=True, slots=True)
class Const:
    """A word in quotes, or a number, true, false, none."""

    value: str | int | None


@dataclass(frozen=True, slots=True)
class Items:
    """A list that is written out."""

    items: tuple[Expression, ...]


@dataclass(frozen=True, slots=True)
class Not:
    """The opposite."""

    value: Expression


@dataclass(frozen=True, slots=True)
class And:
    """Both."""

    left: Expression
    right: Expression


@dataclass(frozen=True, slots=True)
class Or:
    """One of both, or both."""

    left: Expression
    right: Expression


@dataclass(frozen=True, slots=True)
class Compared:
    """A chain of ``==``, ``!=`` and ``in``, which is true when each link is."""

    first: Expression
    links: tuple[tuple[str, Expression], ...]


@dataclass(frozen=True, slots=True)
class Worded:
    """A value worded by a filter."""

    value: Expression
    filter: str
    bound: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Reference:
    """The number of a clause or table: ``ref("...")`` or ``table("...")``."""

    target: str


Expression = Name | Key | Const | Items | Not | And | Or | Compared | Worded | Reference


@dataclass(frozen=True, slots=True)
class Text:
    """Markdown as it stands."""

    text: str


@dataclass(frozen=True, slots=True)
class Print:
    """A value that is printed."""

    value: Expression


@dataclass(frozen=True, slots=True)
class If:
    """The body of the first case that is true, or the one for all others."""

    cases: tuple[tuple[Expression, Body], ...]
    otherwise: Body = ()


@dataclass(frozen=True, slots=True)
class For:
    """A body for each member that passes the test, or one for none."""

    name: str
    over: Expression
    test: Expression | None
    body: Body
    otherwise: Body = ()


Statement = Text | Print | If | For
Body = tuple[Statement, ...]
