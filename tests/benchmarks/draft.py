"""Drafting against writing the same paragraphs and tables with bare python-docx.

::

    python -m tests.benchmarks.draft

prints ratios of the best of several runs in one process; at most 1.5 is wanted. Bare writing
knows its text already: it reads no library, chooses no clause and draws no figure.
"""

from __future__ import annotations

import io
from collections.abc import Callable
from dataclasses import dataclass
from time import perf_counter

import docx
import docx.table

from specwriter.report.result import CheckResult
from specwriter.workflow import check, draft
from tests.support import EXAMPLES

WANTED = 1.5
RUNS = 5
Row = list[str]


@dataclass(frozen=True, slots=True, kw_only=True)
class Ratio:
    """Seconds on the example with the largest document.

    ``first`` reads every clause and draws every figure anew, ``drafting`` has both at hand.
    """

    name: str
    first: float
    drafting: float
    bare: float


def largest() -> tuple[str, CheckResult]:
    """The example whose Word file holds the most paragraphs."""
    names = sorted(path.parent.name for path in EXAMPLES.glob("*/job.yaml"))
    made = [(name, check(EXAMPLES / name / "job.yaml")) for name in names]
    return max(made, key=lambda each: len(content(each[1])))


def content(checked: CheckResult) -> list[str | list[Row]]:
    """Paragraphs and tables of the drafted document as python-docx reads them, in order."""
    file = docx.Document(io.BytesIO(draft(checked, ("docx",)).contents["docx"]))
    blocks: list[str | list[Row]] = []
    for item in file.iter_inner_content():
        if isinstance(item, docx.table.Table):
            blocks.append([[cell.text for cell in row.cells] for row in item.rows])
        else:
            blocks.append(item.text)
    return blocks


def write(blocks: list[str | list[Row]]) -> bytes:
    """The blocks written with bare python-docx on its own template."""
    file = docx.Document()
    for block in blocks:
        if isinstance(block, str):
            file.add_paragraph(block)
            continue
        table = file.add_table(rows=len(block), cols=len(block[0]))
        for row, texts in zip(table.rows, block, strict=True):
            for cell, text in zip(row.cells, texts, strict=True):
                cell.text = text
    buffer = io.BytesIO()
    file.save(buffer)
    return buffer.getvalue()


def forget() -> None:
    """Empty what one draft leaves for the next: a user drafts once in a process."""
    from specwriter.assemble import inspection, language

    for kept in (inspection.clause_faults, language.parsed):
        kept.cache_clear()


def nothing() -> None:
    """Keep what the draft before has left."""


def best(
    run: Callable[[], object], before: Callable[[], None] = nothing, runs: int = RUNS
) -> float:
    """Seconds of the fastest run; ``before`` is not counted."""
    times = []
    for _ in range(runs):
        before()
        start = perf_counter()
        run()
        times.append(perf_counter() - start)
    return min(times)


def measure(runs: int = RUNS) -> Ratio:
    """All sides on the largest example."""
    name, checked = largest()
    blocks = content(checked)
    return Ratio(
        name=name,
        first=best(lambda: draft(checked, ("docx",)), forget, runs),
        drafting=best(lambda: draft(checked, ("docx",)), runs=runs),
        bare=best(lambda: write(blocks), runs=runs),
    )


if __name__ == "__main__":
    found = measure()
    print(
        f"{found.name}: bare python-docx 1, drafting again {found.drafting / found.bare:.2f} "
        f"(wanted: at most {WANTED}), first draft of a process with its figures "
        f"{found.first / found.bare:.2f}"
    )
