"""Residue without a place to go.

Looks at
    Whether the job says what becomes of the residue: hauled or spread, to which place, with
    which pH.

Why it matters
    Grinding a lane-mile at 3/16 in makes about 990 cubic feet of concrete powder, in water that is
    strongly alkaline. Where it may go is the most expensive unknown of such a contract, and in a
    drain it harms what lives downstream and plugs the pipe.

Conflict
    residue.regime: haul

Settled
    residue.regime: haul
    residue.disposal_site: a site permitted for concrete residue, named in the residue plan

How to settle it
    State the regime; the place, where it is hauled; and the range of pH that may leave the site.
    The local authority's permit governs.

Sources
    Minnesota Pollution Control Agency slurry guidance, 2012: spreading only under best practices
    Ohio DOT Construction and Material Specifications, section 511.20, 2010: residue kept off drains
    project calculation: 5280 ft by 12 ft by 3/16 in
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.model.contract import Residue
from specwriter.rules.prose import listed
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="it is not settled what becomes of the residue",
    grade=Grade.OPEN,
    basis="published",
    gap=True,
    base="complete/longitudinal_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for a job that does not say where its residue goes."""
    residue = job.residue
    missing = list(_missing(residue)) if residue else ["whether it is hauled or spread (regime)"]
    if not missing:
        return
    if residue is not None and residue.regime is not None:
        at = [evidence(residue, "regime", "residue")]
    else:
        area = next(iter(job.areas.values()))
        at = [Evidence(path=area.path_to("texture"), label="texture", written=area.texture)]
    says = f"Cutting makes caustic residue, and the job does not say {listed(missing)}."
    yield RULE.finding(None, says, at, ("state it under residue",))


def _missing(residue: Residue) -> Iterator[str]:
    if residue.regime is None:
        yield "whether it is hauled or spread (regime)"
    if residue.regime in ("haul", "haul_and_spread") and residue.disposal_site is None:
        yield "to which place it is hauled (disposal_site)"
    if residue.ph is None:
        yield "with which pH it may leave the site (ph)"
