"""The reference chapter holds every check, and its questions name checks that exist."""

from __future__ import annotations

import re

import pytest

from specwriter.reconcile.registry import all_relations
from specwriter.reconcile.relation import Relation, basis_of
from specwriter.report.checklist import QUESTIONS, Question
from specwriter.report.reference import reference_markdown, topics_table
from specwriter.report.relation_page import pages
from specwriter.rules import all_rules
from specwriter.workflow import slugs


def test_every_check_has_its_place_in_the_chapter() -> None:
    chapter = reference_markdown()
    headings = set(re.findall(r"^### (.+)$", chapter, re.MULTILINE))
    named = headings | set(re.findall(r"^Also reported as ([\w-]+):", chapter, re.MULTILINE))

    assert set(slugs()) <= named


def test_a_rule_stands_with_grade_basis_examples_and_sources() -> None:
    chapter = reference_markdown()
    page = chapter.partition("### setback-not-stated\n")[2].partition("\n### ")[0]

    assert "Grade: open. Basis: published. Looks only where the job gives what becomes of" in page
    assert "the residue (`residue.regime`)." in page
    assert "```yaml\nresidue: {regime: spread, permit_by: agency}\n```" in page
    assert "- Ohio CMS 257 and 511, 2010" in page


def test_a_relation_stands_once_with_its_reason_and_a_way_out() -> None:
    chapter = reference_markdown()
    page = chapter.partition("### roughness-of-the-parts\n")[2].partition("\n### ")[0]

    assert chapter.count("### roughness-of-the-parts\n") == 1
    assert "Grade: caution. Basis: arithmetic." in page
    assert "**Why it matters**" in page
    assert "**How to settle it**" in page


@pytest.mark.parametrize("relation", all_relations(), ids=lambda relation: relation.slug)
def test_the_reason_of_a_relation_stands_on_its_page(relation: Relation) -> None:
    assert len(relation.why.split()) >= 8
    assert pages()[relation.slug].sections["Why it matters"] == relation.why


def test_the_table_counts_every_rule_once() -> None:
    names = re.findall(r"[a-z][a-z0-9-]+", topics_table())

    assert all(names.count(rule.slug) >= 1 for rule in all_rules())


@pytest.mark.parametrize("relation", all_relations(), ids=lambda relation: relation.slug)
def test_a_relation_is_called_published_only_by_a_document_that_was_read(
    relation: Relation,
) -> None:
    documents = [each for each in relation.sources if re.search(r"\d{4}|second-hand|UFGS", each)]

    if basis_of([relation]) == "published":
        assert documents
        assert "memory, unverified" not in relation.source
    elif documents and relation.kind != "exact":
        assert re.search("memory, unverified|^project calculation", relation.source)


def test_no_source_stands_twice_on_a_page() -> None:
    for page in pages().values():
        sources = page.sections["Sources"].splitlines()
        assert len(sources) == len(set(sources)) <= 8


@pytest.mark.parametrize("question", QUESTIONS, ids=lambda question: question.asks)
def test_a_question_is_answered_by_checks_or_left_to_a_person(question: Question) -> None:
    assert question.checks or question.person
    assert [each for each in question.checks if each not in slugs()] == []
