"""Document tree → Markdown, HTML, Word."""
