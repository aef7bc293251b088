"""What a rule says about itself, and how it states a finding."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, fields
from typing import TypeVar

from specwriter.diagnostic import Basis, Evidence, Finding, Grade
from specwriter.model import Area, Node
from specwriter.model.build import key_of

_T = TypeVar("_T")


@dataclass(frozen=True, slots=True, kw_only=True)
class Rule:
    """The metadata of a rule; the prose stands in the docstring of its module.

    ``needs`` are keys below an area (``smoothness.index``): an area that lacks one is not looked
    at, and the report says so. A need that begins with a key of the job itself
    (``conditions.curbs``) is asked of the job: without it the rule does not look at all.
    ``applies_to`` names the textures that the rule is about; areas of another texture are none
    of its business and are not reported as left out.
    ``by_site`` marks a rule on facts that can differ from one area to the next, such as the
    pavement: it looks at the job once for each set of facts, with the areas that lie on them.
    ``quiet_after`` names rules whose finding on the same requirement is the cause: this rule then
    says nothing on it. ``gap`` marks a rule that looks for what is missing: it says nothing on a
    requirement that is part of a conflict, which must be rewritten anyhow. ``echo`` marks a rule on
    how single values are written: it says nothing where the reconciliation reports all of them.
    ``slip`` marks a rule that finds a value not to be what is meant: cautions computed from that
    value are follow-ons, and only a conflict of the reconciliation is told instead of the slip.
    ``base`` is the job that the examples patch.
    """

    title: str
    grade: Grade
    basis: Basis
    needs: tuple[str, ...] = ()
    applies_to: tuple[str, ...] = ()
    by_site: bool = False
    quiet_after: tuple[str, ...] = ()
    gap: bool = False
    echo: bool = False
    slip: bool = False
    base: str = "diamond_grinding"

    def finding(
        self, area: Area | None, says: str, at: Sequence[Evidence], settle: Sequence[str]
    ) -> Finding:
        """A finding of this rule; the registry adds its slug and its sources."""
        return Finding(
            slug="",
            grade=self.grade,
            basis=self.basis,
            title=self.title,
            area=area.id if area else None,
            evidence=tuple(at),
            says=says,
            settle=tuple(settle),
        )


def evidence(node: Node, key: str, label: str) -> Evidence:
    """The requirement under a field of a noun, as it is written in the job."""
    value = getattr(node, key)
    written = str(value).lower() if isinstance(value, bool) else str(value)
    name = next(key_of(field) for field in fields(node) if field.name == key)
    return Evidence(path=node.path_to(name), label=label, written=written)


def given(value: _T | None) -> _T:
    """A value that the rule's ``needs`` promise; anything else is a defect of the rule."""
    if value is None:
        raise LookupError("a rule reads a value that its 'needs' do not name")
    return value
