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


def assurance_text(relation: Relation) -> str:
    """The finding that the rest of the job does not assure the output of a relation."""
    named = relation.assures
    assert named is not None
    return (
        f"{named.slug}\n{named.title}\n\n"
        + _section(
            "What is looked for",
            "A choice that obeys everything else in the job and fails the required result. The "
            "report shows the worst one, and for each dimension the least change that alone would "
            "assure the result.",
        )
        + "\n\n"
        + relation_text(relation).partition("\n\n")[2]
    )


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
