"""Every page and state of the presenter's window, in two sizes and three scales of the screen: no
word is cut, none lies over another, and the window stays as large as the screen."""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

HERE = Path(__file__).resolve().parent
STATES = 31
SCALES, SIZES = ("1", "1.5", "2"), 2
"""1280 × 720 at 2 is 640 × 360: the window scrolls there."""


@pytest.mark.slow
@pytest.mark.parametrize(
    "scale", [one if one == "1.5" else pytest.param(one, marks=pytest.mark.long) for one in SCALES]
)
def test_no_words_are_cut_or_lie_over_one_another(scale, home):
    done = subprocess.run(
        [sys.executable, "-W", "error", str(HERE / "window_states.py"), "-"],
        env={
            **os.environ,
            "QT_SCALE_FACTOR": scale,
            "QT_QPA_PLATFORM": "offscreen",
            "LEHRLIGHT_HOME": str(home),
            "PYTHONPATH": os.pathsep.join((str(HERE.parents[1]), str(HERE.parent / "ui"))),
        },
        capture_output=True,
        text=True,
        timeout=240,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    found = [json.loads(line) for line in done.stdout.splitlines()]
    assert len(found) == SIZES * STATES
    bad = [one for one in found if one["cut"] or one["overlapping"] or one["painted"]]
    assert bad == []
    for one in found:
        width, height = (int(number) for number in one["size"].split("@")[0].split("x"))
        assert one["shown"] == [round(width / float(scale)), round(height / float(scale))], one
