from __future__ import annotations

import re
from dataclasses import replace
from html.parser import HTMLParser

from specwriter.assemble.document import Paragraph
from specwriter.render import render_html
from tests.render.sample import SAMPLE, TEXTURE, plain

PAGE = render_html(SAMPLE)
_VOID = {"meta", "col"}


class Reader(HTMLParser):
    """Elements with their attributes and text; refuses tags that do not close in order."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.open: list[str] = []
        self.elements: list[tuple[str, dict[str, str | None]]] = []
        self.texts: dict[str, list[str]] = {}
        self.feed(page)
        self.close()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.elements.append((tag, dict(attrs)))
        if tag not in _VOID:
            self.open.append(tag)

    def handle_endtag(self, tag: str) -> None:
        assert self.open.pop() == tag

    def handle_data(self, data: str) -> None:
        if self.open:
            self.texts.setdefault(self.open[-1], []).append(data)

    def attributes(self, tag: str, name: str) -> list[str | None]:
        return [found[name] for each, found in self.elements if each == tag and name in found]


READ = Reader(PAGE)


def test_the_page_is_closed_and_says_its_language() -> None:
    assert READ.open == []
    assert READ.attributes("html", "lang") == ["en"]
    assert "".join(READ.texts["title"]) == SAMPLE.title


def test_the_page_fetches_nothing() -> None:
    tags = {tag for tag, _ in READ.elements}
    assert not tags & {"script", "link", "img", "iframe"}
    assert "url(" not in PAGE
    assert "@import" not in PAGE


def test_there_is_one_title_and_a_heading_for_each_part_and_clause() -> None:
    tags = [tag for tag, _ in READ.elements]
    assert tags.count("h1") == 1
    assert tags.count("h2") == 1 + len(SAMPLE.parts)
    text = "".join(READ.texts["h3"])
    assert all(clause.title in text for part in SAMPLE.parts for clause in part.clauses)


def test_every_link_leads_to_one_anchor() -> None:
    anchors = [found["id"] for _, found in READ.elements if "id" in found]
    assert len(anchors) == len(set(anchors))
    links = [link or "" for link in READ.attributes("a", "href")]
    assert len(links) == 3
    assert {link.removeprefix("#") for link in links} <= set(anchors)


def test_a_number_with_a_hyphen_stays_on_one_line() -> None:
    clause = replace(TEXTURE, blocks=(Paragraph(runs=plain("+0 in -1-1/2 in, non-slip, 08-26.")),))
    page = render_html(replace(SAMPLE, parts=(replace(SAMPLE.parts[0], clauses=(clause,)),)))

    assert re.findall(r'<span class="whole">([^<]*)</span>', page) == ["1-1/2", "08-26."]
    assert ".whole { white-space: nowrap; }" in page


def test_tables_have_captions_and_column_headers() -> None:
    assert READ.texts["caption"] == [
        "Table 1. Groove dimensions | limits",
        "Table 2. Limits of work",
    ]
    assert READ.attributes("th", "scope") == ["col"] * 7


def test_the_front_sheet_comes_first_and_the_blank_is_bracketed() -> None:
    assert PAGE.index("Front sheet</h2>") < PAGE.index("<h1>")
    assert '<span class="blank">[groove depth, mm]</span>' in PAGE


def test_markup_in_a_job_stays_text() -> None:
    hostile = '<script>alert("&")</script>'
    page = render_html(replace(SAMPLE, title=hostile, agency=hostile, cautions=(hostile,)))
    read = Reader(page)
    assert "script" not in {tag for tag, _ in read.elements}
    assert "".join(read.texts["h1"]) == hostile


def test_no_status_leaves_no_empty_line() -> None:
    assert 'class="status"' in PAGE
    assert 'class="status"' not in render_html(replace(SAMPLE, status=""))
