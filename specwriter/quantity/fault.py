"""The one way in which a written value is refused."""

from __future__ import annotations


class ValueFault(ValueError):
    """A value that cannot be read: what is wrong, what to do, and at which character (from 0)."""

    def __init__(self, says: str, column: int, width: int = 1, todo: str = "") -> None:
        super().__init__(says)
        self.says = says
        self.column = column
        self.width = max(width, 1)
        self.todo = todo
