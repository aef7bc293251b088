"""How many generated cases a law is held against.

Here some hundreds, the same at each run; ``LAWS=10`` in the environment takes ten times as many, as
``.ci/outside`` does, drawn by pytest's ``--hypothesis-seed``. A failing case is shown as it was
drawn, because making systems smaller takes minutes.
"""

from __future__ import annotations

import os

from hypothesis import HealthCheck, Phase, settings

TIMES = int(os.environ.get("LAWS", "1"))


def cases(count: int) -> settings:
    """Settings for so many cases, times ``LAWS``."""
    return settings(
        max_examples=count * TIMES,
        deadline=None,
        derandomize=TIMES == 1,
        database=None,
        phases=(Phase.explicit, Phase.generate),
        suppress_health_check=list(HealthCheck),
    )
