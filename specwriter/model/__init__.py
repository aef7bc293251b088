"""The job as typed, frozen data: one noun a file, every noun knows its path."""

from specwriter.model.alternative import with_each_alternative
from specwriter.model.area import Alternative, Area, Limits
from specwriter.model.build import build_job
from specwriter.model.job import Job
from specwriter.model.node import Node
from specwriter.model.site import at_area, sites_of

__all__ = [
    "Alternative",
    "Area",
    "Job",
    "Limits",
    "Node",
    "at_area",
    "build_job",
    "sites_of",
    "with_each_alternative",
]
