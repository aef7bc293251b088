"""The language of clauses, held against Jinja's own rendering of every clause of the library."""

from __future__ import annotations

from typing import Any

import pytest
from jinja2 import Environment, StrictUndefined, pass_context
from jinja2.runtime import Context, LoopContext

from specwriter.assemble import load_library, wording
from specwriter.assemble.document import Run
from specwriter.assemble.language import Register, condition, holds, render
from specwriter.assemble.page import Page, Phrase
from specwriter.assemble.select import names_for, names_of
from specwriter.assemble.view import Many
from tests.support import job

JOBS = (
    "urban-grinding",
    "rural-grooving",
    "five-textures",
    "runway_grooving",
    "transverse_grooving",
    "next_generation_concrete_surface",
)


class Reference(Environment):
    """Jinja's compiler over the same views."""

    def getattr(self, obj: Any, attribute: str) -> Any:
        return getattr(obj, attribute) if isinstance(obj, LoopContext) else obj.read(attribute)


def reference(source: str, names: Any, page: Page) -> str:
    """The Markdown of a body as Jinja renders it."""

    @pass_context
    def finalize(context: Context, value: Any) -> str:
        if isinstance(value, Register):
            return page.mark(value.build(context["areas"], page))
        return page.mark(page.note(wording.written(value)))

    def each(word: Any) -> Any:
        def over(value: Any, *bound: Any) -> Any:
            if isinstance(value, Many) and value:
                return Many((word(item, *bound) for item in value), value.path)
            return word(value, *bound)

        return over

    def refer(target: str) -> Phrase:
        return Phrase((Run(text="", kind="reference", target=target),))

    project = page.job.project
    jinja = Reference(
        undefined=StrictUndefined,
        finalize=finalize,
        trim_blocks=True,
        lstrip_blocks=True,
        keep_trailing_newline=True,
    )
    jinja.globals = {"ref": refer, "table": refer}
    jinja.filters = {
        "both": each(lambda value: wording.both(value, project)),
        "limit": each(lambda value, *bound: wording.limit(value, project, *bound)),
        "written": each(wording.written),
        "words": each(wording.in_words),
        "and_list": wording.and_list,
    }
    return jinja.from_string(source).render(names)


@pytest.mark.parametrize("name", JOBS)
def test_a_clause_says_what_jinja_makes_of_it(name: str) -> None:
    made = job(name)
    for clause in load_library().clauses:
        names, ours, theirs = names_for(clause, names_of(made)), Page(made), Page(made)

        assert render(clause.body, names, ours) == reference(clause.body, names, theirs)
        assert ours == theirs, clause.id
        if clause.when:
            shown = reference(condition(clause.when), names, theirs)
            assert holds(clause.when, names) is bool(shown), clause.id


@pytest.mark.parametrize(
    ("body", "means"),
    [
        ("{% if not areas %}a{% elif areas in [1] %}b{% else %}c{% endif %}", "c"),
        ("{% if project.title == 'x' or project.title != 'y' %}a{% endif %}", "a"),
        ("{% for a in areas if a.coverage.pattern == 'none' %}a{% else %}b{% endfor %}", "b"),
        ("{% for a in areas %}{% if loop.first and loop.last %}a{% endif %}{% endfor %}", "a"),
        ("a\n  {% if areas %}\n b\n  {% endif %}\nc\n", "a\n b\nc\n"),
        ("{%- for a in areas -%} a {%- endfor -%} ", "a"),
        ("{# nothing #}a{% if areas and not pay_items == areas %}b{% endif %}", "ab"),
    ],
)
def test_statements_mean_what_jinja_means(body: str, means: str) -> None:
    made = job("diamond_grinding")
    (clause, *_) = load_library().clauses
    names = names_for(clause, names_of(made))

    assert render(body, names, Page(made)) == means == reference(body, names, Page(made))
