"""A show in a process of its own, offscreen, to be killed by a test: see `test_killed.py`.

``show_in_process.py steps FOLDER SEED`` runs through a sheet of four steps until it is killed; it
says each step before and after that is saved. ``flame FOLDER`` puts a ring into the flame, changes
five settings, lets 30 s pass and waits; ``back FOLDER`` restores that and takes it back.
"""

import json
import random
import sys
import time
from pathlib import Path

import bar_scene
from exact import all_of
from PySide6.QtCore import QEventLoop, QTimer
from PySide6.QtWidgets import QApplication

from demo_app.content.cues.records import Answer, Question, Sheet, Step
from demo_app.content.running import walking
from demo_app.content.running.clock import wanted
from demo_app.scenes import catalogue
from demo_app.scenes.settings import make
from demo_app.ui.autosave import Autosave, hold
from demo_app.ui.playing import Session
from demo_app.ui.saved import Saved, offer
from demo_app.ui.worker import Worker

ASKED = Question("Will it break?", "breaks", (Answer("yes", equals=True), Answer("no")))
SHEET = Sheet(
    "Bars",
    "Millrace Glass House",
    5,
    (
        Step("still", "Still", "bar"),
        Step("asked", "Asked", "bar", {"rate_MPa_s": 6.0}, question=ASKED),
        Step("runs", "Runs", "bar", {"rate_MPa_s": 8.0}, at_s=2.0, play=True),
        Step("late", "Late", "bar", {"strength_MPa": 20.0}, at_s=9.0),
    ),
)
FIVE = {
    "ring_width_mm": 14.0,
    "flame_kW_m2": 120.0,
    "heat_s": 30.0,
    "drop_at_s": 34.0,
    "drop_offset_mm": 3.0,
}


def say(word, value=""):
    sys.stdout.write(f"{word} {value}\n")
    sys.stdout.flush()


def settle(session, until=lambda: True):
    """Let Qt run until all pictures have come."""
    loop = QEventLoop()
    timer = QTimer(interval=2)
    timer.timeout.connect(
        lambda: session.settled and session.frame is not None and until() and loop.quit()
    )
    timer.start()
    loop.exec()


def steps(folder, worker, seed):
    """Walk on at random moments, with a hand that changes things in between."""
    chance = random.Random(seed)
    lock = hold(folder)
    assert lock is not None, "the lock of a killed process was not taken over"
    found = offer(folder, lambda line: say("told", line))
    running = found.running if found is not None else walking.ready(SHEET)
    session = Session(bar_scene.SCENE, worker)
    session.size = (96, 54)
    session.begin()
    if found is not None:
        say("offered", f"{running.id}/{running.phase}/{len(running.votes)}")
        session.restore(found.shown, back=found.back)
        settle(session)
    save = Autosave(folder, lambda: Saved(session.snapshot(), session.point_of_return, running))
    save.told.connect(lambda line: say("told", line))
    save.watch(session)

    def on():
        nonlocal running
        later = walking.next_(running, SHEET, time.time())
        if later is running:
            later = walking.jump(running, SHEET, time.time(), 0)
        later = walking.vote(later, SHEET, 0)
        running = later
        say("to", f"{running.id}/{running.phase}/{len(running.votes)}")
        if save.save_now(60):
            say("shown", f"{running.id}/{running.phase}/{len(running.votes)}")
        due = wanted(running, SHEET)
        session.set_settings(make(bar_scene.BarSettings, due.settings))
        session.scrub(due.at_s)
        session.mark_return()
        if due.play:
            session.play()
        if chance.random() < 0.7:
            session.set_setting("rate_MPa_s", chance.uniform(1, 20))

    timer = QTimer(interval=chance.randint(15, 60))
    timer.timeout.connect(on)
    timer.start()
    QApplication.exec()


def flame(folder, worker):
    """In the flame, then far away from it; everything is saved."""
    session = Session(catalogue.scene("ring"), worker)
    session.size = (320, 180)
    for name in ("heat_s", "drop_at_s"):
        session.set_setting(name, 60.0)
    session.scrub(6.0)
    settle(session)
    session.mark_return()
    assert "flame" in {mark.kind for mark in session.frame.marks}
    before, when = all_of(session, 100), session.time_s
    for name, value in FIVE.items():
        session.set_setting(name, value)
        settle(session)
    session.set_speed(1000.0)
    session.play()
    settle(session, lambda: session.time_s >= when + 30 or not session.playing)
    session.pause()
    settle(session)
    session.hold()
    settle(session)
    passed = session.time_s - when
    save = Autosave(folder, lambda: Saved(session.snapshot(), session.point_of_return))
    save.save_now(60)
    say("done", json.dumps({"before": before, "after": all_of(session, 10), "passed": passed}))
    QApplication.exec()


def back(folder, worker):
    """Restore what `flame` has left, then take it back."""
    found = offer(folder)
    session = Session(catalogue.scene(found.shown.scene), worker)
    session.size = (320, 180)
    session.begin()
    began = time.perf_counter()
    session.restore(found.shown, back=found.back)
    settle(session)
    restored = time.perf_counter() - began
    after, held = all_of(session, 10), session.held is not None
    session.return_back()
    settle(session)
    before = all_of(session, 100)
    say("done", json.dumps({"before": before, "after": after, "held": held, "took": restored}))
    session.close()


def main():
    """Run one of the three."""
    app = QApplication([])
    worker = Worker()
    worker.start()
    folder = Path(sys.argv[2])
    if sys.argv[1] == "steps":
        steps(folder, worker, int(sys.argv[3]))
    else:
        {"flame": flame, "back": back}[sys.argv[1]](folder, worker)
    worker.end()
    app.quit()


if __name__ == "__main__":
    main()
