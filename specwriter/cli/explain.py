"""``specwriter explain``: the page on one check, or on all."""

from __future__ import annotations

from difflib import get_close_matches

import click

from specwriter.cli import exit_codes
from specwriter.cli.output import emit


@click.command()
@click.argument("slug", required=False)
@click.option("--all", "every", is_flag=True, help="The pages on all checks, one after the other.")
@click.option(
    "--format",
    "form",
    type=click.Choice(["text", "md"]),
    default="text",
    help="Plain text, or with --all the reference chapter as Markdown.",
)
def command(slug: str | None, every: bool, form: str) -> int:
    """Explain a check by its name, as the report prints it: what it looks at, why, the way out."""
    from specwriter.workflow import explanations, reference

    if form == "md":
        if not every or slug is not None:
            raise click.UsageError("Markdown is made of all checks: --all --format md")
        emit(reference())
        return exit_codes.OK
    pages = explanations()
    if every and slug is None:
        emit(f"\n{'-' * 90}\n\n".join(page() for page in pages.values()))
        return exit_codes.OK
    if slug is None or every:
        raise click.UsageError("give the name of one check, or --all")
    if slug not in pages:
        near = get_close_matches(slug, pages, 1)
        hint = f"did you mean {near[0]}?" if near else "'specwriter explain --all' shows them all"
        raise click.UsageError(f"no check is called '{slug}'; {hint}")
    emit(pages[slug]())
    return exit_codes.OK
