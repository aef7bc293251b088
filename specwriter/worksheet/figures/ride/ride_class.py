"""Class of ride of the existing surface."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from specwriter.model import Job, sites_of
from specwriter.quantity import Interval
from specwriter.trade.ride.classes import CLASSES, ride_class
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, of_site
from specwriter.worksheet.scale import ROUGHNESS
from specwriter.worksheet.sheet import Sheet

TITLE = "ride class of the existing surface"


def figures(job: Job) -> Iterator[Line]:
    """One line for the job, or for the first area of each site, where a roughness is stated."""
    for site in sites_of(job):
        existing = of_site(site, "existing_mri")
        if isinstance(existing, Given):
            area = None if site.areas == job.areas else next(iter(site.areas.values()))
            span, at = existing.as_one(), existing.evidence
            line = Sheet(site, area).of_span(TITLE, CLASSES, ROUGHNESS, Interval(None, None), at)
            yield replace(line, value=_words(span), unit="")


def _words(span: Interval) -> str:
    ends = [ride_class(float(end)) for end in (span.low, span.high) if end is not None]
    return " to ".join(dict.fromkeys(ends))
