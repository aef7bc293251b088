"""Drafting against writing the same paragraphs and tables with bare python-docx.

::

    python -m tests.benchmarks.draft

Takes the example with the largest document. One side drafts it: reads the clause library, chooses
and words the clauses, numbers them, draws the figures, fills the registers and writes the Word
file. The other has python-docx write the same texts, which it is given, into paragraphs and
tables, without styles, numbers, fields and figures. Printed are ratios of processor time, the best
of several runs of each side in turn: the first draft of a process, a later one, and whole
processes with their imports (there, drafting also reads and checks the job). At most 1.5 is wanted
of the first two.
"""

from __future__ import annotations

import io
import json
import os
import subprocess
import sys
import tempfile
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path
from time import process_time

import docx
import docx.table

from specwriter.report.result import CheckResult
from specwriter.workflow import check, draft
from tests.benchmarks.bare import Blocks, write
from tests.support import EXAMPLES

WANTED = 1.5
RUNS = 7


@dataclass(frozen=True, slots=True, kw_only=True)
class Ratio:
    """Seconds of a processor in one process, on the example with the largest document.

    ``first`` has read no clause and kept nothing, ``again`` has drafted the same before.
    """

    name: str
    first: float
    again: float
    bare: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Processes:
    """Seconds of a processor that whole processes take, from their start to their end."""

    draft: float
    check: float
    bare: float


def largest() -> tuple[str, CheckResult]:
    """The example whose Word file holds the most paragraphs."""
    names = sorted(path.parent.name for path in EXAMPLES.glob("*/job.yaml"))
    made = [(name, check(EXAMPLES / name / "job.yaml")) for name in names]
    return max(made, key=lambda each: len(content(each[1])))


def content(checked: CheckResult) -> Blocks:
    """Paragraphs and tables of the drafted document as python-docx reads them, in order."""
    file = docx.Document(io.BytesIO(draft(checked, ("docx",)).contents["docx"]))
    blocks: Blocks = []
    for item in file.iter_inner_content():
        if isinstance(item, docx.table.Table):
            blocks.append([[cell.text for cell in row.cells] for row in item.rows])
        else:
            blocks.append(item.text)
    return blocks


def forget() -> None:
    """Empty whatever one draft keeps for the next: a user drafts once in a process.

    What the check of the job has kept stays, as it does for the user.
    """
    rooms = ("specwriter.assemble", "specwriter.render")
    for module in [each for name, each in sys.modules.items() if name.startswith(rooms)]:
        for kept in vars(module).values():
            if hasattr(kept, "cache_clear") and kept.__module__.startswith(rooms):
                kept.cache_clear()


def best(sides: Sequence[Callable[[], float]], runs: int) -> list[float]:
    """The shortest time of each side; the sides take turns, so that noise meets them alike."""
    times = [[side() for side in sides] for _ in range(runs)]
    return [min(column) for column in zip(*times, strict=True)]


def seconds(run: Callable[[], object]) -> float:
    """Seconds of this process that a run takes."""
    start = process_time()
    run()
    return process_time() - start


def measure(runs: int = RUNS) -> Ratio:
    """All sides in this process."""
    name, checked = largest()
    blocks = content(checked)

    def first() -> float:
        forget()
        return seconds(lambda: draft(checked, ("docx",)))

    def again() -> float:
        return seconds(lambda: draft(checked, ("docx",)))

    fresh, later, bare = best((first, again, lambda: seconds(lambda: write(blocks))), runs)
    return Ratio(name=name, first=fresh, again=later, bare=bare)


def process(*arguments: str) -> float:
    """Seconds of a Python process with these arguments."""
    before = os.times()
    subprocess.run([sys.executable, *arguments], check=True, capture_output=True)
    after = os.times()
    return sum(after[2:4]) - sum(before[2:4])


def processes(name: str, blocks: Blocks, runs: int = RUNS) -> Processes:
    """All sides as processes of their own."""
    job = str(EXAMPLES / name / "job.yaml")
    with tempfile.TemporaryDirectory() as folder:
        texts, made = Path(folder, "texts.json"), str(Path(folder, "made.docx"))
        texts.write_text(json.dumps(blocks), encoding="utf-8")
        sides = (
            lambda: process("-m", "specwriter", "draft", job, "--to", made, "--force"),
            lambda: process("-m", "specwriter", "check", job),
            lambda: process("-m", "tests.benchmarks.bare", str(texts), made),
        )
        drafted, checked, bare = best(sides, runs)
    return Processes(draft=drafted, check=checked, bare=bare)


if __name__ == "__main__":
    found = measure()
    whole = processes(found.name, content(check(EXAMPLES / found.name / "job.yaml")))
    print(
        f"{found.name}, bare python-docx being 1: first draft of a process "
        f"{found.first / found.bare:.2f}, a later one {found.again / found.bare:.2f} "
        f"(wanted: at most {WANTED}); as whole processes, 'specwriter draft' with the check of "
        f"the job {whole.draft / whole.bare:.2f}, of which 'specwriter check' takes "
        f"{whole.check / whole.bare:.2f}"
    )
