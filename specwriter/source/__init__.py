"""Text of a job file → data with places, or faults with places."""

from specwriter.source.read import read_carried, read_source, read_text
from specwriter.source.source import Source
from specwriter.source.starter import starter

__all__ = ["Source", "read_carried", "read_source", "read_text", "starter"]
