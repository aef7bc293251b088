"""The reference chapter: every check, by topic, as Markdown; and the short table of the README."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from importlib import import_module

from specwriter.model.labels import label_of
from specwriter.reconcile.joint import JOINTS
from specwriter.reconcile.registry import relations_by_topic
from specwriter.reconcile.relation import Relation
from specwriter.report.checklist import QUESTIONS
from specwriter.report.explain_text import shown
from specwriter.report.relation_page import Page, pages, pages_of_topics
from specwriter.rules import RegisteredRule, acceptance, all_rules
from specwriter.rules.registry import read_docstring

_EXAMPLE = "Raises "
"""How the names of the sections with examples begin."""


def reference_markdown() -> str:
    """The whole chapter: rules by topic, relations by topic, and the reviewer's questions."""
    rules = all_rules()
    parts = ["# Every check", _opening(rules)]
    for topic, some in _by_topic(rules).items():
        parts += [f"## {_title(topic)}", _about("rules", topic)]
        parts += [_rule(each) for each in some]
    parts += ["## Acceptance of findings", _acceptance()]
    for topic, pages_of_topic in pages_of_topics().items():
        parts += [f"## Arithmetic: {_title(topic).lower()}", _about("reconcile.relations", topic)]
        parts += [_relation(each) for each in pages_of_topic]
    joint = [pages()[each.slug] for each in JOINTS]
    parts += ["## Arithmetic: several relations at once", *map(_relation, joint)]
    parts += ["## Questions of a reviewer", _questions()]
    return "\n\n".join(parts) + "\n"


def topics_table() -> str:
    """One row a topic: what it is about, how many checks it has, and their names."""
    rows = ["| topic | checks | their names, for `specwriter explain` |", "|---|---|---|"]
    for topic, some in _by_topic(all_rules()).items():
        rows.append(_row(_title(topic), [each.slug for each in some]))
    for topic, ties in relations_by_topic().items():
        rows.append(_row(f"Arithmetic: {_title(topic).lower()}", list(_slugs(ties))))
    rows.append(_row("Arithmetic: several relations at once", [each.slug for each in JOINTS]))
    return "\n".join(rows) + "\n"


def _slugs(ties: tuple[Relation, ...]) -> Iterator[str]:
    for each in ties:
        yield each.slug
        if each.assures:
            yield each.assures.slug


def _row(title: str, slugs: list[str]) -> str:
    unique = list(dict.fromkeys(slugs))
    return f"| {title} | {len(unique)} | {', '.join(unique)} |"


def _opening(rules: tuple[RegisteredRule, ...]) -> str:
    counts = Counter(each.rule.grade.value for each in rules)
    listed = ", ".join(f"{count} {grade}" for grade, count in counts.most_common())
    return (
        f"{len(rules)} rules ({listed}) and "
        f"{sum(map(len, relations_by_topic().values()))} relations between quantities.\n"
        "A conflict cannot stand in one contract; open means that a decision or a statement is "
        "missing; a caution can stand, but expect trouble; a note is for information.\n"
        "The examples change a small job: the place in the job file, and what is written there."
    )


def _by_topic(rules: tuple[RegisteredRule, ...]) -> dict[str, list[RegisteredRule]]:
    found: dict[str, list[RegisteredRule]] = {}
    for each in rules:
        found.setdefault(each.topic, []).append(each)
    return found


def _title(topic: str) -> str:
    return topic.replace("_", " ").capitalize()


def _about(room: str, topic: str) -> str:
    return (import_module(f"specwriter.{room}.{topic}").__doc__ or "").strip()


def _rule(rule: RegisteredRule) -> str:
    needs = ", ".join(f"{label_of(need)} (`{need}`)" for need in rule.rule.needs)
    textures = ", ".join(each.replace("_", " ") for each in rule.rule.applies_to)
    head = [
        f"### {rule.slug}",
        rule.summary,
        f"Grade: {rule.rule.grade.value}. Basis: {rule.rule.basis}."
        + (f" Looks only where the job gives {needs}." if needs else "")
        + (f" Only for {textures}." if textures else ""),
    ]
    return "\n\n".join([*head, *_sections(shown(rule.sections))])


def _sections(sections: dict[str, str]) -> Iterator[str]:
    for name, text in sections.items():
        if name.startswith(_EXAMPLE):
            yield f"**{name}**\n\n```yaml\n{text}\n```"
        elif name == "Sources":
            yield "**Sources**\n\n" + "\n".join(f"- {line}" for line in text.splitlines())
        else:
            yield f"**{name}**\n\n{text}"


def _acceptance() -> str:
    summary, sections = read_docstring(acceptance.__doc__ or "")
    return "\n\n".join([f"### {acceptance.SLUG}", summary, *_sections(sections)])


def _relation(page: Page) -> str:
    head = [f"### {page.slug}", page.summary, f"Grade: {page.grade}. Basis: {page.basis}."]
    head += [f"Also reported as {slug}: {title}" for slug, title in page.also]
    return "\n\n".join([*head, *_sections(_listed(page.sections))])


def _listed(sections: dict[str, str]) -> dict[str, str]:
    """Several lines of a section as a list; the sources are one anyhow."""
    return {
        name: "\n".join(f"- {line}" for line in text.splitlines())
        if "\n" in text and name != "Sources"
        else text
        for name, text in sections.items()
    }


def _questions() -> str:
    rows = ["| question | checks that answer it | what stays with a person |", "|---|---|---|"]
    rows += [f"| {each.asks} | {', '.join(each.checks)} | {each.person} |" for each in QUESTIONS]
    return "\n".join(rows)
