"""The contract that the provision belongs to, and the base text that it changes."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from specwriter.model.node import Node


@dataclass(frozen=True, slots=True, kw_only=True)
class SectionChange(Node):
    """What is done at one place of the base section, and by which clauses of the provision."""

    at: str
    action: Literal["new_article", "add_after", "replace", "delete_and_substitute", "delete"]
    clauses: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Revision(Node):
    """A revision of the provision: what changed, in a few words."""

    revision: str
    change: str
    date: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Approval(Node):
    """A line of the approval block; what is left out is filled in by hand."""

    role: str
    name: str | None = None
    date: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class BaseSection(Node):
    """The section of the standard specifications that the provision adds to or changes."""

    number: str | None = None
    title: str | None = None
    edition: str | None = None
    action: Literal["new_section", "add_after", "replace", "amend"] | None = None
    changes: tuple[SectionChange, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Project(Node):
    """Contract, agency and house settings."""

    title: str
    agency: str
    contract: str | None = None
    provision: str | None = None
    revision: str | None = None
    date: str | None = None
    location: str | None = None
    governing_units: Literal["us", "si"] = "us"
    dual_units: bool = True
    base_section: BaseSection | None = None
    federal_aid: bool | None = None
    revisions: tuple[Revision, ...] = ()
    approvals: tuple[Approval, ...] = ()
