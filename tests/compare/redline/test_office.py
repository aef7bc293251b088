"""The same law with an office suite as judge, on a hundred pairs in one start."""

from __future__ import annotations

from pathlib import Path

from specwriter.compare.redline import redline
from specwriter.reading.block import OBJECT
from specwriter.render import render_docx
from specwriter.workflow import check, draft
from tests.compare.redline.accepting import lines
from tests.compare.redline.generated import (
    document,
    edited,
    merged_pair,
    numbered,
    pair,
    referring_pair,
)
from tests.compare.redline.office import needs_office, settled
from tests.compare.redline.test_redline import AUTHOR, told
from tests.support import EXAMPLES, patched, text_of

EXAMPLE = EXAMPLES / "rural-grooving" / "job.yaml"
IN_ONE = 5
PAIRS = 100
TELLING = (12, 16, 17, 18, 20, 50, 1061, 1094, 1209)
"""Pairs that an office program once read otherwise, each by another of its habits."""

REFERRING = (3003, 3004, 3007, 3009, 3010, 3012, 3027, 3034)
"""The same for pairs in which clauses and tables are referred to."""

TRACKED = (41, 50, 54, 59)
"""The same where the older file is a redline itself, which is read as accepted."""


def tracked(seed: int) -> tuple[bytes, bytes, bytes]:
    """The redline of two editions, the second of them, and a third."""
    first = numbered(document(seed))
    second = edited(first, seed + 1, 5)
    files = [render_docx(each) for each in (first, second, edited(second, seed + 2, 5))]
    return redline(files[0], files[1], AUTHOR), files[1], files[2]


def examples(folder: Path) -> tuple[bytes, bytes]:
    """An example drafted as it is, and with a depth, a statistic and what becomes of residue."""
    changed = {
        "areas.mainline.groove.depth": "1/8 in to 3/16 in",
        "areas.mainline.testing.groove_spacing.statistic": "each",
        "residue.regime": "haul",
        "conditions.noise_sensitive_neighbours": True,
    }
    other = folder / "new.yaml"
    other.write_text(patched(text_of("rural-grooving"), changed), encoding="utf-8")
    old, new = (draft(check(path)).contents["docx"] for path in (EXAMPLE, other))
    return old, new


def numbers(content: bytes) -> list[tuple[str, str]]:
    """Number and text of each paragraph; where a picture stands is the office's own choice."""
    found = ((label, text.replace(OBJECT, "")) for label, text in told(content))
    return [(label, text) for label, text in found if text.strip()]


def test_an_office_suite_accepts_to_the_new_and_rejects_to_the_old(tmp_path: Path) -> None:
    needs_office()
    seeds = range(1000, 1000 + PAIRS, IN_ONE)
    pairs = {f"pair-{s}": merged_pair(range(s, s + IN_ONE)) for s in seeds}
    pairs |= {f"telling-{seed}": pair(seed) for seed in TELLING}
    pairs |= {f"referring-{seed}": referring_pair(seed) for seed in REFERRING}
    pairs["example"] = examples(tmp_path)
    redlines = {name: redline(old, new, AUTHOR) for name, (old, new) in pairs.items()}
    for seed in TRACKED:
        before, second, third = tracked(seed)
        pairs[f"tracked-{seed}"] = second, third
        redlines[f"tracked-{seed}"] = redline(before, third, AUTHOR)

    answers = settled(tmp_path / "office", redlines)

    for name, (old, new) in pairs.items():
        accepted, rejected = answers[name]
        assert lines(accepted) == lines(new), name
        assert lines(rejected) == lines(old), name
        assert numbers(accepted) == numbers(new), name
        assert numbers(rejected) == numbers(old), name
