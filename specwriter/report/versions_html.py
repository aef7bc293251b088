"""Two versions compared, as one web page: requirements and effects, then the texts side by side."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from html import escape
from itertools import groupby

from specwriter.compare.text import (
    Added,
    Clause,
    MatchedTable,
    Part,
    Removed,
    Rewritten,
    Span,
    TextMatch,
)
from specwriter.compare.text.changes import is_changed, is_front_sheet
from specwriter.reading import Block, Paragraph, Table
from specwriter.report.compared import Compared
from specwriter.report.comparison_text import NOTICE, summary
from specwriter.report.versions_markdown import (
    amount_rows,
    finding_rows,
    requirement_rows,
    verdict_rows,
)
from specwriter.report.versions_text import TEXT_NOTICE, by_hand_line, notes_of, text_summary
from specwriter.report.web_page import bullets, rows_table, web_page


def versions_html(compared: Compared) -> str:
    """A page that stands alone; what goes is struck out, what comes is underlined."""
    title = f"{compared.old.name} → {compared.new.name}"
    return web_page(title, _body(compared, title), "versions.css")


def _body(compared: Compared, title: str) -> Iterator[str]:
    yield f"<h1>{escape(title)}</h1>"
    yield from (f"<p>{escape(note)}</p>" for note in notes_of(compared))
    if compared.is_empty:
        yield "<p>Nothing differs.</p>"
        return
    if compared.comparison is not None:
        yield from _requirements(compared)
    for version in (compared.old, compared.new):
        if version.by_hand:
            yield f"<p>{escape(by_hand_line(version))}</p>"
    if compared.match is not None:
        yield "<h2>Text</h2>"
        yield f"<p>{escape(text_summary(compared.text_changes))}</p>"
        yield from _texts(compared.match, compared.old.name, compared.new.name)
    yield f"<p>{escape(NOTICE if compared.comparison else TEXT_NOTICE)}</p>"


def _requirements(compared: Compared) -> Iterator[str]:
    comparison = compared.comparison
    assert comparison is not None
    yield "<h2>Requirements</h2>"
    yield f"<p>{escape(summary(comparison))}</p>"
    header = ("Area", "Requirement", "Old", "New", "Sense", "Who bears it", "Addendum")
    yield rows_table("Requirements that changed", header, requirement_rows(comparison))
    cares = [f"{each.label}: {each.warning}" for each in comparison.changes if each.warning]
    if cares:
        yield "<h3>Take care</h3>"
        yield bullets(cares)
    yield rows_table("Findings", ("What happens", "Grade", "Finding"), finding_rows(comparison))
    yield rows_table("Verdicts", ("Area", "On", "Old", "New"), verdict_rows(comparison))
    amounts = ("What", "Old", "New", "Difference")
    yield rows_table("Quantities, tests and cost", amounts, amount_rows(comparison))
    if comparison.remarks:
        yield "<h3>Remarks</h3>"
        yield bullets(comparison.remarks)


def _texts(match: TextMatch, old: str, new: str) -> Iterator[str]:
    """Both texts in two columns; clauses without a change are only named."""
    yield '<table class="sides">\n<caption>The two texts side by side</caption>'
    yield f'<thead><tr><th scope="col">{escape(old)}</th><th scope="col">{escape(new)}</th></tr>'
    yield "</thead>\n<tbody>"
    clauses = (*match.clauses, *(each.clause for each in match.margins))
    for changed, run in groupby((each for each in clauses if each.parts), key=is_changed):
        if changed:
            parts = (part for clause in run for part in clause.parts)
            yield from (_row(part) for part in parts if not is_front_sheet(part))
        else:
            same = list(run)
            yield f'<tr class="same"><td>{_same(same, 0)}</td><td>{_same(same, 1)}</td></tr>'
    yield "</tbody>\n</table>"


def _same(clauses: Sequence[Clause], side: int) -> str:
    """The first and the last of neighbouring clauses that did not change."""
    headings = [(clause.old, clause.new)[side] for clause in clauses]
    names = [
        " ".join((each.label, each.text)).strip() if each else "The opening" for each in headings
    ]
    many = f" to {names[-1]}" if len(names) > 1 else ""
    return f"{escape(names[0] + many)} (no change)"


def _row(part: Part) -> str:
    return f"<tr><td>{_side(part, 'removed')}</td><td>{_side(part, 'added')}</td></tr>"


def _side(part: Part, kind: str) -> str:
    """One side of a part; ``kind`` is what this side alone shows."""
    if isinstance(part, MatchedTable):
        return _matched_table(part, kind)
    if isinstance(part, Removed | Added):
        if isinstance(part, Removed) != (kind == "removed"):
            return ""
        mark = "del" if kind == "removed" else "ins"
        note = f'<span class="moved">moved ({part.move})</span> ' if part.move else ""
        if part.spans and isinstance(part.block, Paragraph):
            return f"{note}{_paragraph(part.block, _words(part.spans, kind))}"
        return f"{note}{_block(part.block, mark)}"
    block = part.old if kind == "removed" else part.new
    if not isinstance(part, Rewritten):
        return _block(block, "")
    return _paragraph(block, _words(part.spans, kind))


def _words(spans: Sequence[Span], kind: str) -> str:
    """The words of one side, those marked that the other does not have."""
    return "".join(_span(span) for span in spans if span.kind in ("equal", kind))


def _span(span: Span) -> str:
    text = escape(span.shown)
    if span.kind == "equal":
        return text
    mark = "del" if span.kind == "removed" else "ins"
    return f"<{mark}>{text}</{mark}>"


def _paragraph(paragraph: Paragraph, inner: str) -> str:
    label = f'<span class="number">{escape(paragraph.label)}</span> ' if paragraph.label else ""
    if paragraph.heading:
        return f"<p><strong>{label}{inner}</strong></p>"
    return f"<p>{label}{inner}</p>"


def _block(block: Block, mark: str) -> str:
    if isinstance(block, Paragraph):
        text = escape(block.shown)
        return _paragraph(block, f"<{mark}>{text}</{mark}>" if mark else text)
    return _plain_table(block, mark)


def _plain_table(table: Table, mark: str) -> str:
    rows = (
        "".join(f"<td>{''.join(_block(b, mark) for b in cell.blocks)}</td>" for cell in row.cells)
        for row in table.rows
    )
    return "<table>" + "".join(f"<tr>{row}</tr>" for row in rows) + "</table>"


def _matched_table(table: MatchedTable, kind: str) -> str:
    rows = []
    for row in table.rows:
        one = row.old if kind == "removed" else row.new
        if one is None:
            continue
        if row.old is None or row.new is None:
            mark = "del" if kind == "removed" else "ins"
            cells = ["".join(_block(b, mark) for b in cell.blocks) for cell in one.cells]
        else:
            cells = ["".join(_side(part, kind) for part in parts) for parts in row.cells]
        rows.append("".join(f"<td>{cell}</td>" for cell in cells))
    return "<table>" + "".join(f"<tr>{row}</tr>" for row in rows) + "</table>"
