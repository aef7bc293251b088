"""Works out every figure of a job; one that breaks stops no other."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from specwriter.model import Job
from specwriter.worksheet.figure import Figure, Waiting
from specwriter.worksheet.reach import NoValue
from specwriter.worksheet.registry import Registered, all_figures
from specwriter.worksheet.sheet import NO_VALUE


@dataclass(frozen=True, slots=True, kw_only=True)
class Broken:
    """Figures that could not be computed for a fault of this program."""

    slug: str
    error: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Worksheet:
    """The figures of a job in the order of area and topic, and what still waits."""

    figures: tuple[Figure, ...] = ()
    waiting: tuple[Waiting, ...] = ()
    broken: tuple[Broken, ...] = ()


def work_out(job: Job, registered: Iterable[Registered] | None = None) -> Worksheet:
    """Every figure that the job allows."""
    done: list[Figure] = []
    waiting: list[Waiting] = []
    broken: list[Broken] = []
    for each in all_figures() if registered is None else registered:
        try:
            for line in each.figures(job):
                if isinstance(line, Figure):
                    done.append(replace(line, slug=each.slug))
                else:
                    waiting.append(replace(line, slug=each.slug))
        except NoValue:
            title = each.slug.replace("-", " ")
            waiting.append(Waiting(slug=each.slug, area=None, title=title, because=NO_VALUE))
        except Exception as error:
            broken.append(Broken(slug=each.slug, error=f"{type(error).__name__}: {error}"))
    order = [*job.areas, None]
    return Worksheet(
        figures=tuple(sorted(done, key=lambda line: order.index(line.area))),
        waiting=tuple(sorted(waiting, key=lambda line: order.index(line.area))),
        broken=tuple(broken),
    )
