"""The page on one check, for a reader who has never written software."""

from __future__ import annotations

import textwrap

from specwriter.reconcile.joint import Joint
from specwriter.reconcile.relation import Relation
from specwriter.rules import RegisteredRule, acceptance
from specwriter.rules.registry import read_docstring

_WIDTH = 90


def rule_text(rule: RegisteredRule) -> str:
    """What a rule looks at, why, an example that clashes and one that does not."""
    head = [rule.slug, rule.summary, f"Grade: {rule.rule.grade.value}. Basis: {rule.rule.basis}."]
    return "\n".join([*head, "", _sections(rule.sections)])


def relation_text(relation: Relation | Joint) -> str:
    """What a relation ties together, where it is valid, and its source."""
    parts = [
        f"{relation.slug}\n{relation.title}",
        _section("What holds", relation.statement),
        _section("Where it is valid", relation.validity),
        _section("Source", relation.source),
    ]
    return "\n\n".join(parts) + "\n"


def acceptance_text() -> str:
    """What an acceptance covers, and when it ends."""
    summary, sections = read_docstring(acceptance.__doc__ or "")
    return f"{acceptance.SLUG}\n{summary}\n\n{_sections(sections)}"


def _sections(sections: dict[str, str]) -> str:
    return (
        "\n\n".join(f"{name}\n{textwrap.indent(text, '   ')}" for name, text in sections.items())
        + "\n"
    )


def _section(name: str, text: str) -> str:
    body = textwrap.fill(text, _WIDTH, initial_indent="   ", subsequent_indent="   ")
    return f"{name}\n{body}"
