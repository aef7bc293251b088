"""The job as typed, frozen data: one noun a file, every noun knows its path."""

from specwriter.model.area import Area, Limits
from specwriter.model.build import build_job
from specwriter.model.job import Job
from specwriter.model.node import Node

__all__ = ["Area", "Job", "Limits", "Node", "build_job"]
