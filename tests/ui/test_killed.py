"""A show that is killed -9 in its middle: a restart offers the same step, bit by bit."""

import json
import os
import random
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

TESTS = Path(__file__).resolve().parent.parent
SCRIPT = TESTS / "show_in_process.py"
PATHS = os.pathsep.join(map(str, (TESTS.parent, TESTS, TESTS / "ui")))
KILLS = int(os.environ.get("LEHRLIGHT_KILLS", "5"))
"""Set it to 50 for the long form."""


class Show:
    """A process whose words go into a file, so that none is lost with it."""

    def __init__(self, folder, *words):
        self.said = folder / f"said-{'-'.join(map(str, words))}.txt"
        with self.said.open("wb") as out, self.said.with_suffix(".err").open("wb") as errors:
            self.process = subprocess.Popen(
                [sys.executable, str(SCRIPT), words[0], str(folder), *map(str, words[1:])],
                stdout=out,
                stderr=errors,
                env={**os.environ, "QT_QPA_PLATFORM": "offscreen", "PYTHONPATH": PATHS},
            )

    def heard(self, word):
        """What followed `word`, once for each whole line that begins with it."""
        lines = self.said.read_text("utf-8").split("\n")[:-1]
        return [line[len(word) + 1 :] for line in lines if line.startswith(word + " ")]

    def wait_for(self, word, seconds=200):
        """Wait until it has said `word`; the last of what followed."""
        end = time.monotonic() + seconds
        while not self.heard(word):
            assert self.process.poll() is None, self.said.with_suffix(".err").read_text()
            assert time.monotonic() < end
            time.sleep(0.02)
        return self.heard(word)[-1]

    def kill(self):
        """Kill -9: no handler, no last word."""
        self.process.send_signal(signal.SIGKILL)
        assert self.process.wait(60) == -signal.SIGKILL


@pytest.fixture
def show(tmp_path):
    made = []

    def start(*words):
        made.append(Show(tmp_path, *words))
        return made[-1]

    yield start
    for one in made:
        if one.process.poll() is None:
            one.process.kill()
            one.process.wait(60)


@pytest.mark.slow
def test_a_restart_offers_the_step_that_was_seen(show):
    """Each process goes on from what the one before has left, and is killed at any moment."""
    chance = random.Random(17)
    expected = set()
    seen = set()
    for number in range(KILLS + 1):
        now = show("steps", number)
        now.wait_for("shown")
        time.sleep(chance.uniform(0, 0.6))
        now.kill()
        assert now.heard("told") == []
        offered = now.heard("offered")
        assert len(offered) == (1 if number else 0)
        assert set(offered) <= expected
        # What was seen last; killed while the next one was being saved, also that.
        expected = {now.heard("shown")[-1], now.heard("to")[-1]}
        seen |= set(now.heard("shown"))
    assert len(seen) > 4


@pytest.mark.slow
def test_what_was_changed_in_the_flame_is_taken_back_after_a_kill(show):
    first = show("flame")
    was = json.loads(first.wait_for("done"))
    first.kill()
    assert was["passed"] >= 30
    assert was["after"]["picture"] != was["before"]["picture"]
    second = show("back")
    now = json.loads(second.wait_for("done"))
    assert second.process.wait(60) == 0
    assert now["after"] == was["after"]
    assert now["before"] == was["before"]
    assert now["held"]
