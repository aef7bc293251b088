"""Why a document cannot be read."""

from __future__ import annotations


class ReadingFault(ValueError):
    """One sentence on what is wrong with a file, and what to do about it."""

    def __init__(self, says: str, todo: str) -> None:
        super().__init__(f"{says}; {todo}")
        self.says = says
        self.todo = todo
