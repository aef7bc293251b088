"""What can hurt people when the texture is cut, and who must settle it; for the front sheet."""

from __future__ import annotations

from specwriter.model import Job

_ALWAYS = (
    "This provision is drafted from a job file by rule. Local codes, the agency's own "
    "specifications and the licensed engineer of record govern; the engineer reviews, completes "
    "and seals it before it is issued.",
    "Pavement that is polished, cut too deep or left with standing water can send vehicles out "
    "of control. Confirm depth, cover to steel, remaining thickness and drainage on the site.",
    "Sawing and grinding concrete set free respirable crystalline silica, which destroys lungs. "
    "The employer chooses the controls of 29 CFR 1926.1153 (read second-hand, undated) or of the "
    "local code.",
    "The slurry is strongly alkaline: it burns skin and eyes and kills fish. Confirm that it is "
    "collected, treated and disposed of as the local authority requires.",
)
_TRAFFIC = (
    "The work lies beside live traffic. Traffic control, lane drop-offs, wet slurry on open "
    "lanes and lighting follow the local code and a plan sealed by an engineer."
)
_STEEL = (
    "Cutting takes cover from reinforcement and can strike embedded items. Locate steel, "
    "detectors and fixtures before any depth is fixed."
)
_AIRFIELD = (
    "Loose concrete, slurry and blade pieces on an airfield are a hazard to aircraft. The "
    "airport operator's safety plan governs."
)


def cautions_for(job: Job) -> tuple[str, ...]:
    """The cautions that belong to a job; what the job does not rule out is kept."""
    places = {area.place for area in job.areas.values()}
    made = list(_ALWAYS)
    if job.conditions.live_traffic is not False:
        made.append(_TRAFFIC)
    if "bridge_deck" in places or job.conditions.loop_detectors is not False:
        made.append(_STEEL)
    if places & {"runway", "taxiway"}:
        made.append(_AIRFIELD)
    return tuple(made)
