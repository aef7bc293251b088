"""Tables and figures that code builds from the job: limits, dimensions, tests, pay items, ..."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from specwriter.assemble.document import Block
from specwriter.assemble.page import Page
from specwriter.assemble.registers.contract import pay_item_table, submittal_table
from specwriter.assemble.registers.figures import alternative_figure, texture_figure
from specwriter.assemble.registers.limits import limits_table
from specwriter.assemble.registers.requirements import requirement_table
from specwriter.assemble.registers.testing import testing_table
from specwriter.assemble.view import Many

REGISTERS: Mapping[str, Callable[[Many, Page], tuple[Block, ...]]] = {
    "limits_table": limits_table,
    "requirement_table": requirement_table,
    "testing_table": testing_table,
    "submittal_table": submittal_table,
    "pay_item_table": pay_item_table,
    "texture_figure": texture_figure,
    "alternative_figure": alternative_figure,
}
"""Name in a clause → builder, which takes the areas of the clause and its page."""

TABLE_IDS: Mapping[str, tuple[str, ...]] = {
    name: (name, "remedy_table") if name == "testing_table" else (name,)
    for name in REGISTERS
    if name.endswith("_table")
}
"""The ids of the tables that each name gives."""
