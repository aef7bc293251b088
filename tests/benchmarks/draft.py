"""Drafting against writing the same paragraphs and tables with bare python-docx.

::

    python -m tests.benchmarks.draft

prints the ratio of the best of several runs, both in one process; at most 1.5 is wanted. Bare
writing knows its text already: it chooses no clause, checks nothing and draws no figure.
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
    """Seconds of each side on the example with the largest document."""

    name: str
    drafting: float
    bare: float

    @property
    def value(self) -> float:
        return self.drafting / self.bare


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
    from specwriter.render.figure import picture

    for kept in (inspection.clause_faults, language.template, picture._drawn):
        kept.cache_clear()


def best(run: Callable[[], object], runs: int = RUNS) -> float:
    """Seconds of the fastest run, each begun with nothing kept."""
    times = []
    for _ in range(runs):
        forget()
        start = perf_counter()
        run()
        times.append(perf_counter() - start)
    return min(times)


def measure(runs: int = RUNS) -> Ratio:
    """Both sides on the largest example."""
    name, checked = largest()
    blocks = content(checked)
    return Ratio(
        name=name,
        drafting=best(lambda: draft(checked, ("docx",)), runs),
        bare=best(lambda: write(blocks), runs),
    )


if __name__ == "__main__":
    found = measure()
    print(
        f"{found.name}: drafting {found.drafting * 1000:.0f} ms, bare python-docx "
        f"{found.bare * 1000:.0f} ms, ratio {found.value:.2f} (wanted: at most {WANTED})"
    )
