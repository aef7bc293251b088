"""Registers of a drafted job, for spreadsheets and other programs."""

from specwriter.report.registers.build import registers_of
from specwriter.report.registers.files import registers_csv, registers_json
from specwriter.report.registers.register import Register

__all__ = ["Register", "registers_csv", "registers_json", "registers_of"]
