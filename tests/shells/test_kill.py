"""A show that is killed -9 in its middle: on restart the same step, and every journal row."""

import json
import os
import random
import signal
import sqlite3
import subprocess
import sys
import time
from pathlib import Path

import pytest

from demo_app.content.running.records import PHASES
from demo_app.ui.saved import offer

HERE = Path(__file__).resolve().parent
KILLS = 50 if os.environ.get("LEHRLIGHT_LONG") else 5
"""The long form is what the promise says."""
PATIENCE_S = 100


class Process:
    """The show, and what it has said; its words go into a file, so that none is lost with it."""

    def __init__(self, home, sheet, seed):
        self.said = home.parent / f"said-{seed}.txt"
        with self.said.open("wb") as out, self.said.with_suffix(".err").open("wb") as errors:
            self.process = subprocess.Popen(
                [sys.executable, str(HERE / "show_to_kill.py"), sheet, str(seed)],
                stdout=out,
                stderr=errors,
                env={
                    **os.environ,
                    "QT_QPA_PLATFORM": "offscreen",
                    "LEHRLIGHT_HOME": str(home),
                    "PYTHONPATH": str(HERE.parents[1]),
                },
            )

    def heard(self, word):
        """What followed `word`, once for each whole line that begins with it."""
        lines = self.said.read_text("utf-8").split("\n")[:-1]
        return [json.loads(line[len(word) + 1 :]) for line in lines if line.startswith(word + " ")]

    def wait_for(self, word):
        end = time.monotonic() + PATIENCE_S
        while not self.heard(word):
            assert self.process.poll() is None, self.said.with_suffix(".err").read_text()
            assert time.monotonic() < end, self.said.with_suffix(".err").read_text()
            time.sleep(0.02)

    def kill(self):
        """No handler, no last word."""
        self.process.send_signal(signal.SIGKILL)
        assert self.process.wait(60) == -signal.SIGKILL


def rows(home):
    """All rows of the journal as another program reads them, by table."""
    path = home / "journal.sqlite"
    with sqlite3.connect(f"file:{path}?mode=ro", uri=True) as db:
        assert db.execute("PRAGMA integrity_check").fetchone() == ("ok",)
        return {
            table: db.execute(f"SELECT * FROM {table} ORDER BY id").fetchall()
            for table in ("shows", "steps", "votes")
        }


@pytest.mark.slow
@pytest.mark.timeout(1800)
def test_a_killed_show_goes_on_where_it_was(home):
    chance = random.Random(23)
    expected, before, phases, steps = [], None, set(), set()
    for number in range(KILLS + 1):
        now = Process(home, "eight-minutes", number)
        try:
            now.wait_for("shown")
            time.sleep(chance.uniform(0, 0.9))
        finally:
            now.kill()
        began, shown, to = now.heard("began"), now.heard("shown"), now.heard("to")
        if number:
            assert began[0] in expected
        # On the disk: what was seen last; killed on the way to the next place, perhaps that.
        found = offer(home, lambda line: pytest.fail(line))
        kept = [
            found.running.id,
            found.running.phase,
            {step: list(counts) for step, counts in found.running.votes.items()},
            found.running.blank,
        ]
        # Hands are written within a second, places at once.
        places = {tuple(one[:2]) for one in (shown[-1], to[-1])}
        assert tuple(kept[:2]) in places
        assert found.running.on
        expected = [kept]
        after = rows(home)
        for table, least in zip(after, now.heard("rows")[-1], strict=True):
            assert len(after[table]) >= least
        for table, found_rows in (before or {}).items():
            known = {row[0]: row for row in after[table]}
            for row in found_rows:
                assert row[0] in known, f"a row of {table} is gone"
                # Ends are written later, and hands are counted on; nothing else changes.
                same = [
                    mine == yours
                    for mine, yours in zip(row, known[row[0]], strict=True)
                    if mine is not None
                ]
                assert all(same) or (table == "votes" and row[1:4] == known[row[0]][1:4])
        before = after
        phases |= {one[1] for one in shown}
        steps |= {one[0] for one in shown}
    assert len(before["shows"]) == 1, "one show, however often it was interrupted"
    assert len(steps) > 2
    assert phases >= set(PHASES) or KILLS < 50
