"""The page on one check, for a reader who has never written software."""

from __future__ import annotations

import textwrap

from specwriter.report.relation_page import Page
from specwriter.rules import RegisteredRule, acceptance
from specwriter.rules.registry import read_docstring

_WIDTH = 90


def rule_text(rule: RegisteredRule) -> str:
    """What a rule looks at, why, an example that clashes and one that does not."""
    head = [rule.slug, rule.summary, f"Grade: {rule.rule.grade.value}. Basis: {rule.rule.basis}."]
    return "\n".join([*head, "", _sections(rule.sections)])


def relation_text(page: Page) -> str:
    """What a relation ties together, why, where it is valid, and its source."""
    head = [page.slug, page.summary, f"Grade: {page.grade}. Basis: {page.basis}."]
    filled = {name: _filled(text) for name, text in page.sections.items()}
    return "\n".join([*head, "", _sections(filled)])


def acceptance_text() -> str:
    """What an acceptance covers, and when it ends."""
    summary, sections = read_docstring(acceptance.__doc__ or "")
    return f"{acceptance.SLUG}\n{summary}\n\n{_sections(sections)}"


def _sections(sections: dict[str, str]) -> str:
    return (
        "\n\n".join(f"{name}\n{textwrap.indent(text, '   ')}" for name, text in sections.items())
        + "\n"
    )


def _filled(text: str) -> str:
    """Each line of a text wrapped; of several lines, each is set in after its first words."""
    lines = text.splitlines()
    inset = "   " if len(lines) > 1 else ""
    return "\n".join(textwrap.fill(line, _WIDTH, subsequent_indent=inset) for line in lines)
