"""Reconciling a job of many areas against loading and schema-validating its YAML.

::

    python -m tests.benchmarks.reconcile

prints, for each example with its areas repeated to twenty, the time to reconcile as a ratio of the
time to load and validate the same text (at most 1 is wanted where nothing is wrong), and what
1,000 areas cost against 100 (10 is linear). Then, for each kind of system that the laws generate
(most of them contradictory or near it), a job of one area against loading and validating its own
text: the middle, the 95th percentile and the worst, which is written to standard error; and the
worst against loading and validating twenty such areas (below 10 is wanted).
Each figure is the best of several runs in one process.
"""

from __future__ import annotations

import re
import sys
from collections.abc import Callable
from dataclasses import replace
from time import process_time
from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from specwriter.model import build_job
from specwriter.reconcile import reconcile
from specwriter.source import read_text
from tests.laws.count import cases
from tests.laws.systems import areas, contracts, machines, patches
from tests.support import EXAMPLES, patched, text_of

RUNS = 5
WANTED, WORST = 1.0, 10.0
GENERATED = 300
Drawn = tuple[str, dict[str, Any]]
KINDS: dict[str, st.SearchStrategy[Drawn]] = {
    "whole areas": areas(),
    "grooves": contracts().map(lambda keys: ("longitudinal_grooving", patches(keys))),
    "machines": machines().map(lambda keys: ("next_generation_concrete_surface", keys)),
}
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
    return best(lambda: reconcile(job), runs) / loading(text, runs)


def loading(text: str, runs: int = RUNS) -> float:
    """The time to load and validate a job, in seconds."""
    return best(lambda: read_text(text, "job.yaml"), runs)


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


def generated(drawn: st.SearchStrategy[Drawn], count: int) -> list[tuple[float, str]]:
    """The ratio of each of so many generated jobs, where valid, with its text; the least first."""
    found: list[tuple[float, str]] = []

    @cases(count)
    @given(drawn)
    def look(each: Drawn) -> None:
        texture, keys = each
        text = patched(text_of(texture), keys)
        if not read_text(text, "job.yaml").faults:
            found.append((ratio(text, runs=2), text))

    look()
    return sorted(found)


def main() -> None:
    """Print the ratios."""
    for path in sorted(EXAMPLES.glob("*/job.yaml")):
        text = path.read_text(encoding="utf-8")
        print(f"{path.parent.name:18} 20 areas: x{ratio(repeated(text, 20)):.2f}")
    text = (EXAMPLES / "urban-grinding" / "job.yaml").read_text(encoding="utf-8")
    print(f"1,000 areas cost x{growth(text):.1f} of 100 areas")
    for kind, drawn in KINDS.items():
        found = generated(drawn, GENERATED)
        ratios = [each for each, _ in found]
        beyond = sum(each > WORST for each in ratios)
        print(
            f"{kind:18} {len(ratios)} generated: x{ratios[len(ratios) // 2]:.1f} in the middle, "
            f"x{ratios[len(ratios) * 95 // 100]:.0f} at 95 percent, x{ratios[-1]:.0f} at worst, "
            f"{beyond} above x{WORST:.0f}"
        )
        worst = found[-1][1]
        twenty = ratio(worst) * loading(worst) / loading(repeated(worst, 20))
        print(f"{'':18} the worst against loading twenty such areas: x{twenty:.1f}")
        print(f"worst of the {kind}:\n{worst}", file=sys.stderr)


if __name__ == "__main__":
    main()
