"""A whole show by a remote's four buttons, one of which is pressed astray thirty times."""

import itertools
import random

import numpy as np
import pytest
from PySide6.QtCore import QCoreApplication
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from shows import BAR, Key, spin
from test_conductor import pixels

from demo_app.content.cues.load import load, own_sheets
from demo_app.content.running.records import RESULT

STRAYS = 30


class Hand:
    """A remote in a hand: four buttons, one of which sends F5 and Esc by turns.

    The remote does not know which window has the focus; with two screens either may.
    """

    def __init__(self, show, chance):
        self.show, self.chance, self.pressed = show, chance, 0
        self.turns = itertools.cycle([Key.Key_F5, Key.Key_Escape])

    def press(self, key):
        targets = [QApplication.focusWidget() or self.show.window]
        if self.show.out is not None:
            targets.append(self.show.out)
        QTest.keyClick(self.chance.choice(targets), key)
        QCoreApplication.processEvents()
        self.pressed += 1

    def next(self):
        self.press(Key.Key_PageDown)

    def back(self):
        self.press(Key.Key_PageUp)

    def blank(self):
        self.press(Key.Key_Period)

    def strip(self):
        self.press(next(self.turns))


@pytest.mark.parametrize(("two", "seed"), [(False, 5), (True, 8)], ids=["one screen", "two"])
def test_fifteen_minutes_by_remote(play, two, seed):
    sheet = load(next(path for path in own_sheets() if path.stem == "fifteen-minutes"))
    show = play(sheet, (BAR,), two=two).begin()
    chance = random.Random(seed)
    hand = Hand(show, chance)
    total = 1 + sum(1 if step.question is None else 6 for step in sheet.steps)
    strays = sorted(chance.sample(range(total), STRAYS))
    reached, seen, wanted = [], [], 0
    window = show.window

    def look():
        """The hand's owner looks up: what is open is closed, what is dark is lit."""
        if window.strip.is_open:
            hand.strip()
        assert not window.strip.is_open
        if show.running.blank:
            hand.blank()
        assert not show.running.blank

    while True:
        step, phase = show.at()
        if step not in reached:
            reached.append(step)
        seen.append((step, phase))
        if strays and strays[0] <= wanted:
            strays.pop(0)
            assert not window.strip.is_open
            hand.strip()
            assert window.strip.is_open
            before = show.running
            # Without looking: whatever was due anyway. Nothing of it reaches the show.
            for blind in chance.choice([[], [hand.next], [hand.back], [hand.blank]]):
                blind()
            assert show.running == before
            look()
        elif wanted % 9 == 8 and (step, phase) not in seen[:-1]:
            # In between the room is darkened, and a step is taken twice.
            hand.blank()
            assert show.running.blank
            look()
            hand.back()
            hand.next()
            assert show.at() == (step, phase)
        before = show.running
        hand.next()
        wanted += 1
        assert window.isVisible()
        if show.running == before:
            break
    assert strays == []
    assert reached == [step.id for step in sheet.steps]
    asked = {step.id for step in sheet.steps if step.question is not None}
    assert {step for step, phase in seen if phase == RESULT} == asked
    assert hand.pressed > total + 2 * STRAYS - 10
    # At its last step the show stands there, live and lit, and has not ended.
    assert show.at() == (sheet.steps[-1].id, "open")
    assert show.running.on
    assert (show.running.blank, show.running.frozen) == (False, False)
    assert not window.strip.is_open
    spin(lambda: not show.view._pace.isActive())
    show.wait()
    assert show.view.state == "live"
    assert show.view.stage.session is show.session
    assert show.session.scene.id == sheet.steps[-1].scene
    assert np.percentile(pixels(show.view.stage.picture), 99) > 100


def test_a_strip_left_open_closes_by_itself(play):
    show = play().begin()
    window = show.window
    window.strip.set_seconds(0.05)
    show.press(Key.Key_F5)
    assert window.strip.is_open
    spin(lambda: not window.strip.is_open)
    show.next()
    assert show.running.on
