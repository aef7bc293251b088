"""What a comparison of two versions came to; every form of the report is made from it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from specwriter.compare.change import Comparison
from specwriter.reading import Text

if TYPE_CHECKING:
    from specwriter.compare.text import TextMatch
    from specwriter.compare.text.changes import TextChange
    from specwriter.report.result import CheckResult


@dataclass(frozen=True, slots=True, kw_only=True)
class Version:
    """One side of a comparison.

    ``checked`` is its job, of the file itself or carried inside a drafted document. ``text`` is the
    document as it reads, ``word`` a Word file of it; both are ``None`` where a job cannot be
    drafted, and ``note`` then says why. ``by_hand`` are the changes made since it was drafted.
    """

    name: str
    checked: CheckResult | None = None
    text: Text | None = None
    word: bytes | None = None
    is_word: bool = False
    by_hand: tuple[TextChange, ...] = ()
    note: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Compared:
    """Two versions side by side.

    ``comparison`` is there when both hold a job that could be read, ``match`` when both have a
    text. ``faulty`` are jobs with faults: nothing is compared then.
    """

    old: Version
    new: Version
    comparison: Comparison | None = None
    match: TextMatch | None = None
    text_changes: tuple[TextChange, ...] = ()

    @property
    def faulty(self) -> tuple[CheckResult, ...]:
        """The jobs that could not be read."""
        checked = (self.old.checked, self.new.checked)
        return tuple(each for each in checked if each is not None and each.job is None)

    @property
    def is_empty(self) -> bool:
        """True when nothing differs, neither in requirements nor in words."""
        same = self.comparison is None or self.comparison.is_empty
        return same and not self.text_changes and not self.old.by_hand and not self.new.by_hand
