"""The page on one check, for a reader who has never written software."""

from __future__ import annotations

import re
import textwrap

from specwriter.report.relation_page import Page
from specwriter.rules import RegisteredRule, acceptance
from specwriter.rules.registry import read_docstring

_WIDTH = 77
"""With the indent of a section 80 columns."""
_EXAMPLES = {
    "Conflict": "Raises the finding, when the job says",
    "Settled": "Raises nothing, when the job says",
}
_MEANS = {
    "conflict": "cannot stand in one contract",
    "open": "a decision or a statement is missing",
    "caution": "can stand, but expect trouble",
    "note": "for information",
}
_GONE = re.compile(r"\bnull\b")


def rule_text(rule: RegisteredRule) -> str:
    """What a rule looks at, why, an example that clashes and one that does not."""
    head = [rule.slug, rule.summary, _weight(rule.rule.grade.value, rule.rule.basis)]
    filled = {name: _of_rule(name, text) for name, text in shown(rule.sections).items()}
    return "\n".join([*head, "", _sections(filled)])


def _of_rule(name: str, text: str) -> str:
    """Examples and sources keep their lines; prose is wrapped anew."""
    if name in _EXAMPLES.values():
        return text
    return _filled(text if name == "Sources" else " ".join(text.split()))


def _weight(grade: str, basis: str) -> str:
    return f"Grade: {grade} ({_MEANS[grade]}). Basis: {basis}."


def shown(sections: dict[str, str]) -> dict[str, str]:
    """The sections with their examples named for a reader, and what is taken out said in words."""
    return {
        _EXAMPLES.get(name, name): _GONE.sub("(left out)", text) if name in _EXAMPLES else text
        for name, text in sections.items()
    }


def relation_text(page: Page) -> str:
    """What a relation ties together, why, where it is valid, and its source."""
    head = [page.slug, page.summary, _weight(page.grade, page.basis)]
    filled = {name: _filled(text) for name, text in page.sections.items()}
    return "\n".join([*head, "", _sections(filled)])


def acceptance_text() -> str:
    """What an acceptance covers, and when it ends."""
    summary, sections = read_docstring(acceptance.__doc__ or "")
    filled = {name: _of_rule(name, text) for name, text in sections.items()}
    return f"{acceptance.SLUG}\n{summary}\n\n{_sections(filled)}"


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
