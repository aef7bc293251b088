"""Pay items and submittals."""

from __future__ import annotations

from specwriter.assemble.document import Table
from specwriter.assemble.labels import words
from specwriter.assemble.page import Page, Phrase, blank, plain
from specwriter.assemble.registers.cells import NONE, after, key, table
from specwriter.assemble.view import Many, View, job_view
from specwriter.assemble.wording import in_words


def pay_item_table(areas: Many, page: Page) -> tuple[Table, ...]:
    """Number, name and unit of every pay item; quantities belong to the bid schedule."""
    items = job_view(page.job).read("pay_items")
    rows = [[key(item, "number"), key(item, "name"), key(item, "unit")] for item in items]
    if not rows:
        rows = [[blank("pay_items", text) for text in ("number", "pay item", "unit")]]
    header = ("Item number", "Pay item", "Unit")
    return (table(page, "pay_item_table", "Pay items", header, rows),)


def submittal_table(areas: Many, page: Page) -> tuple[Table, ...]:
    """Every submittal: what, when it is due, what the agency does with it and in which time."""
    items = job_view(page.job).read("submittals")
    rows = [[_what(item), _due(item), _action(item), _response(item)] for item in items]
    if not rows:
        texts = ("submittal", "time due", "action", "response time")
        rows = [[blank("submittals", text) for text in texts]]
    header = ("Submittal", "Due", "Submitted for", "Response within")
    return (table(page, "submittal_table", "Submittals", header, rows),)


def _what(item: View) -> Phrase:
    title = item.read("title")
    name = key(item, "title") if title else plain(words(item.path.split(".")[-1]).capitalize())
    content = item.read("content")
    return name + after(": ", key(item, "content")) if content else name


def _due(item: View) -> Phrase:
    return key(item, "due") + after(" before ", key(item, "due_before"))


def _action(item: View) -> Phrase:
    return in_words(item.read("action"))


def _response(item: View) -> Phrase:
    information = item.read("action") == "information"
    return NONE if information and not item.read("response") else key(item, "response")
