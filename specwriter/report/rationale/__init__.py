"""The rationale memo: why the values are what they are, kept out of the contract text."""

from specwriter.report.rationale.build import memo_of

__all__ = ["memo_of"]
