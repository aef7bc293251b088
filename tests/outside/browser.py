"""Runs an accessibility checker on HTML pages in a real browser, without a window.

::

    python -m tests.outside.browser AXE.JS PAGE.html...

Prints every violation and ends with 1 when there is one, with 2 when the checker did not answer.
"""

from __future__ import annotations

import html
import json
import re
import subprocess
import sys
import tempfile
from pathlib import Path
from typing import Any

_RUN = """
axe.run(document, {resultTypes: ["violations"]}).then(found => {
  const out = document.createElement("pre");
  out.id = "outcome";
  out.textContent = JSON.stringify({passes: found.passes.length, violations: found.violations.map(
    each => [each.id, each.impact, each.nodes.length, each.nodes[0].html.slice(0, 160)])});
  document.body.appendChild(out);
});
"""
_OUTCOME = re.compile(r'<pre id="outcome">(.*?)</pre>', re.DOTALL)
_BROWSER = ("chromium", "--headless", "--no-sandbox", "--virtual-time-budget=30000", "--dump-dom")


def judged(page: Path, checker: str) -> dict[str, Any] | None:
    """What the checker says of a page; ``None`` when it says nothing."""
    scripts = f"<script>{checker}</script><script>{_RUN}</script></body>"
    with tempfile.TemporaryDirectory() as folder:
        copy = Path(folder) / "page.html"
        copy.write_text(page.read_text("utf-8").replace("</body>", scripts), "utf-8")
        done = subprocess.run(
            [*_BROWSER, copy.as_uri()], capture_output=True, text=True, check=False, timeout=120
        )
    found = _OUTCOME.search(done.stdout)
    return json.loads(html.unescape(found[1])) if found else None


def main(checker: Path, pages: list[Path]) -> int:
    code = 0
    for page in pages:
        found = judged(page, checker.read_text("utf-8"))
        if found is None or not found["passes"]:
            print(f"{page}: the checker did not answer")
            return 2
        for name, impact, count, sample in found["violations"]:
            print(f"{page}: {name} ({impact}), {count} places, such as {sample}")
            code = 1
        print(f"{page}: {found['passes']} rules hold, {len(found['violations'])} are broken")
    return code


if __name__ == "__main__":
    sys.exit(main(Path(sys.argv[1]), [Path(name) for name in sys.argv[2:]]))
