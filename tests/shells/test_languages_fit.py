"""Windows in German and Spanish, with texts two fifths longer, and from right to left: no word is
cut and none lies over another, at 1280 × 720."""

import json
import os
import string
import subprocess
import sys
from pathlib import Path

import pytest
from longer import entries, longer

HERE = Path(__file__).resolve().parent
STATES = {"start": 1, "present": 31, "bench": 7, "outreach": 13}


def test_texts_of_the_longer_language_are_longer_and_have_the_same_places():
    assert longer("Go on.") == "Go onina."
    for one in entries():
        if one.source.context != "language":
            english = one.source.english
            assert len(one.said) >= 1.4 * len(english)
            assert [part[1:] for part in string.Formatter().parse(one.said) if part[1]] == [
                part[1:] for part in string.Formatter().parse(english) if part[1]
            ]


USUAL = {("long", "start"), ("long", "present"), ("mirrored", "bench"), ("de", "outreach")}
"""One of each; the others are the long form."""


def cases():
    for how in ("long", "mirrored", "de", "es"):
        for what in STATES:
            marks = () if (how, what) in USUAL else pytest.mark.long
            yield pytest.param(how, what, marks=marks)


@pytest.mark.slow
@pytest.mark.parametrize(("how", "what"), [*cases()])
def test_no_words_are_cut_or_lie_over_one_another(how, what, home):
    done = subprocess.run(
        [sys.executable, "-W", "error", str(HERE / "language_states.py"), how, what],
        env={
            **os.environ,
            "QT_QPA_PLATFORM": "offscreen",
            "LEHRLIGHT_HOME": str(home),
            "PYTHONPATH": os.pathsep.join((str(HERE.parents[1]), str(HERE.parent / "ui"))),
        },
        capture_output=True,
        text=True,
        timeout=300,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    found = [json.loads(line) for line in done.stdout.splitlines()]
    assert len(found) == STATES[what]
    assert [one for one in found if one["cut"] or one["overlapping"] or one["painted"]] == []
