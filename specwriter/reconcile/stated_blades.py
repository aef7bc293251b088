"""Where the relations of a blade set have something to say."""

from __future__ import annotations

from specwriter.model import Area, Job
from specwriter.reconcile.requirement import sources


def blades_are_stated(job: Job, area: Area) -> bool:
    """True where a thickness of the blade set is stated, or a groove width set on the blade."""
    return any(
        (
            source.blade is not None
            and (source.blade.segment or source.blade.core or source.blade.spacer)
        )
        or (source.groove is not None and source.groove.width_basis == "blade")
        for source in sources(area)
    )
