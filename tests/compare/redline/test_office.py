"""The same law with an office suite as judge, on a hundred pairs in one start."""

from __future__ import annotations

from pathlib import Path

from specwriter.compare.redline import redline
from tests.compare.redline.accepting import lines
from tests.compare.redline.generated import merged_pair
from tests.compare.redline.office import needs_office, settled
from tests.compare.redline.test_redline import AUTHOR

IN_ONE = 5
PAIRS = 100


def test_an_office_suite_accepts_to_the_new_text_and_rejects_to_the_old(tmp_path: Path) -> None:
    needs_office()
    seeds = range(1000, 1000 + PAIRS, IN_ONE)
    pairs = {f"pair-{s}": merged_pair(range(s, s + IN_ONE)) for s in seeds}
    redlines = {name: redline(old, new, AUTHOR) for name, (old, new) in pairs.items()}

    answers = settled(tmp_path / "office", redlines)

    for name, (old, new) in pairs.items():
        accepted, rejected = answers[name]
        assert lines(accepted) == lines(new), name
        assert lines(rejected) == lines(old), name
