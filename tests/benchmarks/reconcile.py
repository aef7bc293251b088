"""Reconciling a job of many areas against loading and schema-validating its YAML.

::

    python -m tests.benchmarks.reconcile

prints, for each example with its areas repeated to twenty, the time to reconcile as a ratio of the
time to load and validate the same text (at most 1 is wanted where nothing is wrong), and what
1,000 areas cost against 100 (10 is linear).
Each figure is the best of several runs in one process.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from time import process_time

from specwriter.model import build_job
from specwriter.reconcile import reconcile
from specwriter.source import read_text
from tests.support import EXAMPLES

RUNS = 5
WANTED = 1.0
_AREA = re.compile(r"^  (\w+):$", re.MULTILINE)


def repeated(text: str, count: int) -> str:
    """A job text with its areas repeated, under other ids, to at least ``count``."""
    found = re.search(r"^areas:\n(?:[ #].*\n|\n)*", text, re.MULTILINE)
    assert found is not None
    block = found[0].removeprefix("areas:\n")
    times = -(-count // len(_AREA.findall(block)))
    blocks = [_AREA.sub(rf"  \g<1>_{number}:", block) for number in range(times)]
    return text[: found.start()] + "areas:\n" + "".join(blocks) + text[found.end() :]


def best(work: Callable[[], object], runs: int = RUNS) -> float:
    """The shortest of several runs, in seconds of this process."""
    times = []
    for _ in range(runs):
        start = process_time()
        work()
        times.append(process_time() - start)
    return min(times)


def ratio(text: str, runs: int = RUNS) -> float:
    """Reconciling over loading and validating."""
    source = read_text(text, "job.yaml")
    assert source.faults == ()
    job = build_job(source.data or {})
    return best(lambda: reconcile(job), runs) / best(lambda: read_text(text, "job.yaml"), runs)


def growth(text: str) -> float:
    """What ten times as many areas cost."""
    job = build_job(read_text(text, "job.yaml").data or {})
    few, many = (
        replace(
            job, areas={f"{key}_{n}": area for n in range(times) for key, area in job.areas.items()}
        )
        for times in (100, 1000)
    )
    return best(lambda: reconcile(many), 1) / best(lambda: reconcile(few), 1)


def main() -> None:
    """Print the ratios."""
    for path in sorted(EXAMPLES.glob("*/job.yaml")):
        text = path.read_text(encoding="utf-8")
        print(f"{path.parent.name:18} 20 areas: x{ratio(repeated(text, 20)):.2f}")
    text = (EXAMPLES / "urban-grinding" / "job.yaml").read_text(encoding="utf-8")
    print(f"1,000 areas cost x{growth(text):.1f} of 100 areas")


if __name__ == "__main__":
    main()
