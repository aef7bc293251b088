"""Title, subtitle and lead-in: which text of the standard specifications changes, and how."""

from __future__ import annotations

from dataclasses import dataclass

from specwriter.assemble.labels import short_label
from specwriter.model import Job
from specwriter.model.project import BaseSection

_ACTIONS = {
    "new_section": "The following {a_section} is added to the {edition} Standard Specifications as "
    "{section} {number}, {title}.",
    "add_after": "{section} {number}, {title}, of the {edition} Standard Specifications is "
    "supplemented by the following, which is added after its text. "
    "Where the following differs from that text, the following governs; the rest of the text "
    "remains in force.",
    "replace": "{section} {number}, {title}, of the {edition} Standard Specifications is deleted "
    "and replaced by the following.",
    "amend": "{section} {number}, {title}, of the {edition} Standard Specifications is amended as "
    "follows. What the following does not change remains in force.",
}
_NO_ACTION = "{section} {number}, {title}, of the {edition} Standard Specifications is {action}:"


@dataclass(frozen=True, slots=True, kw_only=True)
class Opening:
    """The lines above the first part, and the paths that they lack."""

    title: str
    subtitle: str
    lead_in: str
    missing: tuple[str, ...]


def opening_of(job: Job, section: str) -> Opening:
    """The lines above the first part; what is absent stands in square brackets.

    ``section`` is what the house calls a section of its standard specifications.
    """
    project = job.project
    missing = [
        f"project.{key}"
        for key in ("contract", "provision", "revision", "date")
        if getattr(project, key) is None
    ]
    provision = project.provision or _bracket("project.provision")
    lead_in, lacking = _lead_in(project.base_section, section)
    return Opening(
        title=project.title,
        subtitle=f"Special Provision {provision}",
        lead_in=lead_in,
        missing=(*missing, *lacking),
    )


def _lead_in(base: BaseSection | None, section: str) -> tuple[str, list[str]]:
    if base is None:
        return _bracket("project.base_section"), ["project.base_section"]
    texts = {"number": base.number, "title": base.title, "edition": base.edition}
    lacking = [
        base.path_to(key) for key, text in {**texts, "action": base.action}.items() if not text
    ]
    shown = {key: text or _bracket(base.path_to(key)) for key, text in texts.items()}
    pattern = _ACTIONS.get(base.action or "", _NO_ACTION)
    shown |= {"section": section, "a_section": section.lower()}
    return pattern.format(**shown, action=_bracket(base.path_to("action"))), lacking


def _bracket(path: str) -> str:
    return f"[{short_label(path)}]"
