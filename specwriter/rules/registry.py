"""Finds every rule below this folder; there is no list to keep."""

from __future__ import annotations

import importlib
import pkgutil
import textwrap
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from functools import cache
from typing import cast

from specwriter import rules
from specwriter.diagnostic import Finding
from specwriter.model import Job
from specwriter.rules.rule import Rule

SECTIONS = (
    "Looks at",
    "Why it matters",
    "Conflict",
    "Settled",
    "How to settle it",
    "Sources",
)
"""The sections that the docstring of a rule has, in this order."""


@dataclass(frozen=True, slots=True, kw_only=True)
class RegisteredRule:
    """A rule with its slug (the file name), its prose by section, and its check."""

    slug: str
    topic: str
    summary: str
    sections: dict[str, str]
    rule: Rule
    check: Callable[[Job], Iterator[Finding]]

    @property
    def sources(self) -> tuple[str, ...]:
        """The sources, one a line of the section."""
        return tuple(self.sections["Sources"].splitlines())


@cache
def all_rules() -> tuple[RegisteredRule, ...]:
    """Every rule, in the order of topic and slug."""
    found = pkgutil.walk_packages(rules.__path__, f"{rules.__name__}.")
    names = [each.name for each in found if not each.ispkg and each.name.count(".") == 3]
    return tuple(_registered(name) for name in sorted(names) if not _is_helper(name))


def _is_helper(name: str) -> bool:
    return name.rpartition(".")[2].startswith("_")


def _registered(name: str) -> RegisteredRule:
    module = importlib.import_module(name)
    _, _, topic, stem = name.split(".")
    summary, sections = read_docstring(module.__doc__ or "")
    return RegisteredRule(
        slug=stem.replace("_", "-"),
        topic=topic,
        summary=summary,
        sections=sections,
        rule=cast(Rule, module.RULE),
        check=module.check,
    )


def read_docstring(text: str) -> tuple[str, dict[str, str]]:
    """First line, and the text under each heading (a line that is not indented)."""
    summary, *lines = text.strip().splitlines()
    sections: dict[str, list[str]] = {}
    current: list[str] = []
    for line in lines:
        if line and not line.startswith(" "):
            current = sections.setdefault(line.strip(), [])
        else:
            current.append(line)
    return summary, {name: _text(lines) for name, lines in sections.items()}


def _text(lines: list[str]) -> str:
    return textwrap.dedent("\n".join(lines)).strip("\n")
