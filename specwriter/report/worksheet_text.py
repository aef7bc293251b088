"""A worksheet as text: each figure with the values that it rests on, to be checked by hand.

::

    groove spacing, centre to centre                                    0.215 in (5.46 mm)
       p = core + spacer
       job.yaml:40:13   blade core   0.105 in
       job.yaml:41:15   spacer       0.110 in
       Source: geometry. Valid: always.
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.report.fault_text import fault_text
from specwriter.report.sentences import INDENT, WIDTH, counted, wrapped
from specwriter.report.worksheet_result import WorksheetResult
from specwriter.source import Source
from specwriter.worksheet import Figure, Waiting, Worksheet

NOTICE = (
    "Every figure is computed from the values of the job as they are written, and is as good as "
    "its formula where it is valid. Indications prove nothing. Local codes and the licensed "
    "engineer of record govern."
)


def worksheet_text(result: WorksheetResult) -> str:
    """The whole worksheet: figures by area, then what waits for an input."""
    if result.worksheet is None:
        return fault_text(result.source)
    blocks = [*_figures(result.source, result.worksheet), *_waiting(result.worksheet)]
    blocks += [
        f"DEFECT OF THIS PROGRAM: the figures {each.slug} broke ({each.error})."
        for each in result.worksheet.broken
    ]
    blocks.append(_closing(result.source, result.worksheet))
    return "\n\n".join(blocks) + "\n"


def _figures(source: Source, worksheet: Worksheet) -> Iterator[str]:
    heading = ""
    for figure in worksheet.figures:
        if heading != (heading := _heading(figure)):
            yield heading
        yield "\n".join(_figure(source, figure))


def _heading(figure: Figure) -> str:
    title = f"AREA {figure.area}" if figure.area else "THE WHOLE JOB"
    title += f", ALTERNATIVE {figure.alternative}" if figure.alternative else ""
    return f"{title}\n{'=' * len(title)}"


def _figure(source: Source, figure: Figure) -> Iterator[str]:
    room = WIDTH - len(figure.title)
    if len(figure.value) + 2 > room:
        yield figure.title
        yield figure.value.rjust(WIDTH)
    else:
        yield figure.title + figure.value.rjust(room)
    yield wrapped(figure.formula)
    yield from _inputs(source, figure)
    yield wrapped(f"Source: {figure.source}. Valid: {figure.validity}.")
    if figure.note:
        yield wrapped(f"Note: {figure.note}.")


def _inputs(source: Source, figure: Figure) -> Iterator[str]:
    rows = [(str(source.place(each.path)), each.label, each.written) for each in figure.inputs]
    place = max((len(row[0]) for row in rows), default=0)
    label = max((len(row[1]) for row in rows), default=0)
    for row in rows:
        yield f"{INDENT}{row[0]:{place}}   {row[1]:{label}}   {row[2]}"


def _waiting(worksheet: Worksheet) -> Iterator[str]:
    if worksheet.waiting:
        title = "NOT COMPUTED"
        yield f"{title}\n{'=' * len(title)}\n" + "\n".join(map(_wait, worksheet.waiting))


def _wait(each: Waiting) -> str:
    where = f" in {each.area}" if each.area else ""
    where += f", alternative {each.alternative}" if each.alternative else ""
    return wrapped(f"{each.title}{where}: {each.because}.", "", INDENT)


def _closing(source: Source, worksheet: Worksheet) -> str:
    done = counted(len(worksheet.figures), "figure", "figures")
    return f"{source.file}: {done}; {len(worksheet.waiting)} not computed.\n" + wrapped(NOTICE, "")
