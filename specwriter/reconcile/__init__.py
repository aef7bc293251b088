"""Requirements and relations of an area, solved together."""

from specwriter.diagnostic import Finding
from specwriter.reconcile.explain import findings_from
from specwriter.reconcile.reconcile import reconcile
from specwriter.reconcile.verdict import Reconciliation, Verdict

__all__ = ["Reconciliation", "Verdict", "findings_of", "reconcile"]


def findings_of(reconciliation: Reconciliation) -> tuple[Finding, ...]:
    """Every verdict that somebody must act on, as a finding."""
    return findings_from(each for area in reconciliation.areas for each in area.judged)
