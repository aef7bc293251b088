"""Works out every figure of a job and of its alternatives; one that breaks stops no other."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from specwriter.model import Job, with_each_alternative
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
    """Every figure that the job allows, with the alternatives of an area behind its own grooves."""
    chosen = tuple(all_figures() if registered is None else registered)
    own = _worked(job, chosen)
    done, waiting = [*own.figures], [*own.waiting]
    for other, alternative in with_each_alternative(job):
        sheet = _worked(other, chosen)
        done += [
            replace(line, alternative=alternative.name)
            for line in sheet.figures
            if any(each.path.startswith(f"{alternative.path}.") for each in line.inputs)
        ]
        waiting += [
            replace(line, alternative=alternative.name)
            for line in sheet.waiting
            if line not in own.waiting
        ]
    order = [*job.areas, None]
    return Worksheet(
        figures=tuple(sorted(done, key=lambda line: order.index(line.area))),
        waiting=tuple(sorted(waiting, key=lambda line: order.index(line.area))),
        broken=own.broken,
    )


def _worked(job: Job, registered: Iterable[Registered]) -> Worksheet:
    """The figures of the areas' own grooves, topic by topic."""
    done: list[Figure] = []
    waiting: list[Waiting] = []
    broken: list[Broken] = []
    for each in registered:
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
    return Worksheet(figures=tuple(done), waiting=tuple(waiting), broken=tuple(broken))
