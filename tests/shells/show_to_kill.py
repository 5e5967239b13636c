"""`lehrlight present` in a process of its own, offscreen, to be killed: see `test_kill.py`.

``show_to_kill.py SHEET SEED`` opens the show as the command does, goes on with what was
interrupted, and walks through it by its acts until it is killed. It says each place before it goes
there and after it is shown, and how many rows the journal holds.
"""

import json
import random
import sys

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication

from demo_app.content.running import walking
from demo_app.shells import present
from demo_app.shells.presenting.diary import Diary
from demo_app.shells.presenting.keeping import Keeping
from demo_app.ui import application

TABLES = ("shows", "steps", "votes")


def say(word, value):
    sys.stdout.write(f"{word} {json.dumps(value)}\n")
    sys.stdout.flush()


def place(running):
    """Where a show is, and all hands counted."""
    votes = {step: list(counts) for step, counts in running.votes.items()}
    return [running.id, running.phase, votes, running.blank]


class Driver:
    """Does one act after another, as keys would."""

    def __init__(self, seed):
        self.chance = random.Random(seed)
        self.window = self.diary = None
        self.timer = QTimer(interval=25)
        self.timer.timeout.connect(self.on)
        self.timer.start()

    def on(self):
        if self.diary is None:
            self.find()
        else:
            self.act()

    def find(self):
        """The window with all that stands around it, once that is there."""
        found = [w for w in QApplication.topLevelWidgets() if isinstance(w, present.PresentWindow)]
        if found and found[0].findChild(Keeping) is not None:
            self.window, self.diary = found[0], found[0].findChild(Diary)
            say("began", place(self.window.conductor.running))
            self.rows()

    def act(self):
        conductor = self.window.conductor
        running, sheet, now = conductor.running, conductor.sheet, conductor.now()
        name = self.chance.choice(["next"] * 5 + ["count.1", "count.2", "hand"])
        later = running
        if not running.on:
            name = "next"
        if name == "next":
            later = walking.next_(running, sheet, now) if running.on else running
            if running.on and later is running:
                name, later = "jump.0", walking.jump(running, sheet, now, 0)
        elif name == "hand":
            self.by_hand()
            return
        else:
            later = walking.vote(running, sheet, int(name[-1]) - 1)
        say("to", place(later))
        self.window.act(name)
        assert place(conductor.running) == place(later)
        say("shown", place(conductor.running))
        self.rows()
        self.timer.setInterval(self.chance.randint(15, 90))

    def by_hand(self):
        """Somebody turns a filter."""
        self.window.act(self.chance.choice(["turn_on", "turn_back", "quarter"]))

    def rows(self):
        journal = self.diary._journal
        assert journal.on_disk
        say("rows", [journal.rows(f"SELECT count(*) AS n FROM {t}")[0]["n"] for t in TABLES])


def main():
    execute, drivers = application.execute, []

    def driven(app, closing):
        drivers.append(Driver(int(sys.argv[2])))
        return execute(app, closing)

    application.execute = driven
    return present.run(sys.argv[1], sys.argv[:1], go_on=True)


if __name__ == "__main__":
    sys.exit(main())
