"""What a check of one job file came to; every form of the report is made from it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from specwriter.diagnostic import Finding, Grade, NotRun
from specwriter.model import Job
from specwriter.report.grouping import Told, grouped
from specwriter.rules import Defect
from specwriter.rules.acceptance import AcceptedFinding
from specwriter.source import Source

if TYPE_CHECKING:
    from specwriter.reconcile import Verdict
    from specwriter.reconcile.verdict import AreaVerdicts
    from specwriter.report.carried import Carried


@dataclass(frozen=True, slots=True, kw_only=True)
class CheckResult:
    """``job`` is ``None`` when the source has faults; then nothing else was looked at.

    ``findings`` stand, in the order of grade and place; ``ran`` are the slugs of the relations and
    rules that could look at something.
    """

    source: Source
    job: Job | None = None
    findings: tuple[Finding, ...] = ()
    accepted: tuple[AcceptedFinding, ...] = ()
    not_run: tuple[NotRun, ...] = ()
    areas: tuple[AreaVerdicts, ...] = ()
    defects: tuple[Defect, ...] = ()
    ran: tuple[str, ...] = ()
    carried: Carried | None = None
    """Set when the job was carried inside a Word file."""

    @property
    def verdicts(self) -> tuple[Verdict, ...]:
        """What reconciling ended in, in the order of the areas."""
        return tuple(each for area in self.areas for each in area.verdicts)

    @property
    def told(self) -> tuple[Told, ...]:
        """The findings as a report tells them: what holds in several areas is told once."""
        return tuple(grouped(self.findings))

    def places(self, finding: Finding) -> list[tuple[str, str, str]]:
        """Place, name and wording of each requirement that a finding rests on."""
        return [
            (str(self.source.place(each.path, each.offset)), each.label, each.written)
            for each in finding.evidence
        ]

    def at_least(self, grade: Grade) -> tuple[Finding, ...]:
        """The findings that are as serious as ``grade`` or more so."""
        return tuple(each for each in self.findings if each.grade.at_least(grade))
