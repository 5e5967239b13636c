"""Kills at random moments of saving, updating and counting: the old or the new, never half.

``LEHRLIGHT_LONG=1`` makes a hundred of them, else ten.
"""

import os
import random
import shutil
import subprocess
import sys
import time
from pathlib import Path

import pytest

from demo_app.content.kiosk import site_file, update
from demo_app.content.kiosk.counts import Counts
from demo_app.content.kiosk.fallback import load_or_last_good
from demo_app.content.kiosk.site import Site
from demo_app.content.kiosk.texts import own_folder

KILLS = 100 if os.environ.get("LEHRLIGHT_LONG") else 10
WAYS = ("update", "save", "count", "update")
HERE = Path(__file__).parent
ROOT = HERE.parents[2]


def killed(way, data, sticks, after_s):
    """Let it work for a while, kill it; returns what it said and when it was killed."""
    process = subprocess.Popen(
        [sys.executable, str(HERE / "kiosk_victim.py"), way, str(data), *map(str, sticks)],
        stdout=subprocess.PIPE,
        cwd=ROOT,
        env={**os.environ, "PYTHONPATH": str(ROOT)},
    )
    assert process.stdout is not None
    with process.stdout:
        assert process.stdout.readline() == b"ready\n"
        time.sleep(after_s)
        assert process.poll() is None
        at_s = time.monotonic()
        process.kill()
        process.wait()
        return process.stdout.read().decode().splitlines(), at_s


@pytest.mark.skipif(sys.platform == "win32", reason="clocks of two processes are compared")
@pytest.mark.timeout(1500)
def test_kills_leave_the_old_or_the_new(tmp_path):
    data, sticks = tmp_path / "data", []
    data.mkdir()
    site_file.save(Site(brightness=0.6), data / site_file.NAME)
    load_or_last_good(data)
    for word in ("One", "Two", "Three"):
        stick = tmp_path / word
        shutil.copytree(own_folder(), stick)
        for file in stick.glob("texts.*.toml"):
            text = file.read_text(encoding="utf-8")
            file.write_text(text.replace('title = "', f'title = "{word} ', 1), encoding="utf-8")
        sticks.append(stick)
    picked = random.Random(11)
    counted, seen = 0, set()
    for number in range(KILLS):
        way = WAYS[number % len(WAYS)]
        longest = 2.5 if way == "count" else 0.6
        lines, at_s = killed(way, data, sticks, picked.uniform(0.0, longest))
        site, problems = load_or_last_good(data)
        assert problems == ()
        assert site.brightness in (0.4, 0.6, 0.8)
        assert site.path == data / site_file.NAME
        texts, problems = update.open_texts(data)
        assert all("failed" in one for one in problems)  # A start that was killed is taken back.
        words = {spoken.words["staff.title"].split()[0] for spoken in texts.spoken.values()}
        assert words in ({"One"}, {"Two"}, {"Three"}, {"Staff", "Personal"})
        seen |= words
        update.started(data)
        said = [line.split() for line in lines if line.count(" ") == 1]
        old = [int(count) for at, count in said if float(at) < at_s - 1.0]
        counts = Counts(data)
        kept = counts.since(0).get(("step", "dish", -1), 0)
        counts.close()
        assert counts.problems == ()
        assert counted + max(old, default=0) <= kept
        # One may be counted and not yet said.
        assert kept <= counted + len(said) + 1
        counted = kept
    assert counted > 0
    assert seen - {"Staff", "Personal"}
