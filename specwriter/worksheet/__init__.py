"""Every figure that can be computed from a job, with its formula, inputs, source and validity."""

from specwriter.worksheet.figure import Figure, Line, Waiting
from specwriter.worksheet.worksheet import Broken, Worksheet, work_out

__all__ = ["Broken", "Figure", "Line", "Waiting", "Worksheet", "work_out"]
