"""The contract that the provision belongs to, and the base text that it changes."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from specwriter.model.node import Node


@dataclass(frozen=True, slots=True, kw_only=True)
class BaseSection(Node):
    """The section of the standard specifications that the provision adds to or changes."""

    number: str | None = None
    title: str | None = None
    edition: str | None = None
    action: Literal["new_section", "add_after", "replace", "amend"] | None = None


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
