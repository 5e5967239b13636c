"""A show of steps, questions, what-ifs and faults, worked by its keys."""

import dataclasses

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage
from shows import BAR, BEAM, BREAKS, SHARE, SHEET, Key, spin

from demo_app.content.cues.load import own_sheets
from demo_app.content.cues.truth import truth
from demo_app.content.running.records import PHASES
from demo_app.ui import show_words, words

CHEAP = ("three-plates", "push-pull", "strong")
Alt, Shift = Qt.KeyboardModifier.AltModifier, Qt.KeyboardModifier.ShiftModifier


def state(session):
    """All that a step's state is."""
    here = session.here
    return (
        session.settings,
        session.instrument,
        session.speed,
        session.time_s,
        here,
        dict(session.frame.readings),
        session.frame.pixels.tobytes(),
    )


def pixels(widget):
    """What a widget paints, as numbers."""
    image = widget.grab().toImage().convertToFormat(QImage.Format.Format_RGB32)
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), -1, 4)
    return rows[..., :3].astype(np.int16)


def test_next_walks_phases_and_steps(show):
    assert show.view.state == "card"
    assert SHEET.title in show.view.card.card.title
    show.next()
    assert show.running.on
    assert show.view.state == "live"
    walked = [show.at()]
    states = {}
    for _ in range(20):
        before = show.running
        show.next()
        if show.running == before:
            break
        show.wait(lambda: not show.session.restoring and show.session.frame is not None)
        walked.append(show.at())
        states[show.at()] = show.view.state
    asked = [(step.id, phase) for step in SHEET.steps for phase in PHASES]
    wanted = [
        (step, phase) for step, phase in asked if phase == "open" or step in ("breaks", "share")
    ]
    assert walked == wanted
    for step in ("breaks", "share"):
        for phase in ("ask", "count", "bars"):
            assert states[step, phase] == "question"
        assert states[step, "reveal"] == "live"
    show.back()
    assert show.at() == ("more", "open")


def test_votes_are_counted_by_digits_while_a_question_is_put(show):
    show.next(2)
    show.press(Key.Key_1)
    assert show.running.votes == {}
    show.session.pause()
    show.next()
    assert show.at() == ("breaks", "ask")
    for key, held in ((Key.Key_1, None), (Key.Key_2, None), (Key.Key_2, None), (Key.Key_2, Shift)):
        show.press(key, held or Qt.KeyboardModifier.NoModifier)
    show.press(Key.Key_6)
    assert show.running.votes["breaks"] == (1, 1)
    assert [row[2].text() for row in show.window.show_page.hands._rows] == ["1", "1"]
    assert show.view.question.poll.counts == (1, 1)


def test_the_reveal_is_the_live_run_from_the_steps_start(show):
    show.next(2)
    show.wait()
    # What is played or changed before counts for nothing.
    show.session.set_setting("strength_MPa", 190.0)
    show.session.scrub(14.0)
    show.wait()
    show.next(4)
    assert show.at() == ("breaks", "reveal")
    show.wait(lambda: not show.session.restoring)
    assert show.session.settings.strength_MPa == 20.0
    assert show.session.settings.rate_MPa_s == 6.0
    assert show.session.time_s < 3.2
    assert show.session.playing
    assert not show.conductor.astray
    assert show.conductor.outcome is None
    assert show.view.state == "live"
    show.next()
    assert show.at() == ("breaks", "result")
    show.wait(lambda: show.conductor.outcome is not None)
    assert show.conductor.outcome.right == truth(BAR, {"rate_MPa_s": 6.0}, BREAKS).index == 1
    poll = show_words.poll_of(show.running, SHEET, show.conductor.outcome)
    assert (poll.right, poll.phase) == (1, "result")
    assert show.view.state == "question"
    assert show.view.question.poll == poll
    # Back to the bars: the step is as it opened, and nobody knows who was right.
    show.back(2)
    assert show.at() == ("breaks", "bars")
    assert show.conductor.outcome is None
    show.wait()
    assert show.session.settings.strength_MPa == BAR.settings().strength_MPa
    assert show.session.time_s == pytest.approx(3.0)


@pytest.mark.parametrize("wait", [True, False], ids=["after the reveal", "at once"])
def test_the_result_comes_however_one_gets_there(show, wait):
    show.next(2)
    for _ in range(5):
        show.next()
        if wait:
            show.wait(lambda: not show.session.restoring and show.session.frame is not None)
    assert show.at() == ("breaks", "result")
    show.wait(lambda: show.conductor.outcome is not None)
    # From the step after it, by Back.
    show.next()
    assert show.conductor.outcome is None
    show.back()
    assert show.at() == ("breaks", "result")
    show.wait(lambda: show.conductor.outcome is not None)
    assert show.conductor.outcome.right == 1


@pytest.mark.parametrize("settings", [{}, {"rate_MPa_s": 0.4}, {"rate_MPa_s": 1.9}])
@pytest.mark.parametrize("speed", [1.0, 300.0])
def test_the_outcome_is_the_truth_of_the_instant_asked_about(play, settings, speed):
    question = dataclasses.replace(SHARE, settings=settings)
    step = dataclasses.replace(SHEET.steps[2], question=question)
    show = play(dataclasses.replace(SHEET, steps=(step,))).begin()
    show.next(5)
    assert show.at() == ("share", "reveal")
    show.wait(lambda: not show.session.restoring)
    show.session.set_speed(speed)
    if speed == 1.0:
        show.next()
    show.wait(lambda: show.conductor.outcome is not None)
    found = truth(BEAM, step.settings, question)
    assert show.conductor.outcome.right == found.index
    spec = next(one for one in BEAM.readings if one.name == question.reading)
    assert words.reading(spec, found.value) in show.conductor.outcome.said
    show.session.pause()


def test_a_run_that_was_changed_by_hand_answers_nothing(show):
    show.next(6)
    show.wait(lambda: not show.session.restoring)
    show.session.set_setting("strength_MPa", 190.0)
    show.session.scrub(15.0)
    show.wait()
    assert show.session.frame.readings["breaks"] is False
    assert show.conductor.outcome is None
    show.press(Key.Key_F)
    show.wait(lambda: not show.session.restoring)
    show.session.scrub(15.0)
    show.wait(lambda: show.conductor.outcome is not None)
    assert show.conductor.outcome.right == 1


def test_any_change_is_taken_back_exactly(show):
    show.next(2)
    show.wait()
    before = state(show.session)
    assert not show.window.header.buttons["return"].isEnabled()
    show.press(Key.Key_F)
    assert words.text("return.nothing") in show.line
    session = show.session
    session.set_setting("strength_MPa", 90.0)
    session.set_setting("thickness_mm", 14.0)
    session.set_light(quarter_wave=True)
    session.set_speed(20.0)
    show.press(Key.Key_BracketRight)
    session.scrub(9.0)
    show.wait()
    assert state(session) != before
    assert show.window.header.buttons["return"].isEnabled()
    show.press(Key.Key_F)
    show.wait()
    assert state(show.session) == before
    assert not show.conductor.astray
    assert not show.window.header.buttons["return"].isEnabled()


def test_favourites_of_this_and_of_another_scene(show):
    show.next(2)
    show.wait()
    step = state(show.session)
    show.press(Key.Key_F)
    show.session.set_setting("strength_MPa", 60.0)
    show.session.scrub(8.0)
    show.wait()
    wanted = state(show.session)
    show.press(Key.Key_3, Alt | Shift)
    assert words.text("favourite.stored", number=3) in show.line
    show.press(Key.Key_F)
    show.wait()
    assert state(show.session) == step
    # Of the same scene.
    show.press(Key.Key_3, Alt)
    show.wait()
    assert state(show.session) == wanted
    assert show.conductor.astray
    show.press(Key.Key_F)
    show.wait()
    assert state(show.session) == step
    # Of another scene.
    show.window.act("jump.2")
    show.wait()
    there = state(show.session)
    assert show.session.scene.id == "beam"
    for _ in range(2):
        show.press(Key.Key_3, Alt)
        show.wait()
        assert show.session.scene.id == "bar"
        assert state(show.session) == wanted
    assert show.running.id == "share"
    show.session.set_setting("strength_MPa", 61.0)
    show.wait()
    show.press(Key.Key_F)
    show.wait()
    assert state(show.session) == there
    assert not show.conductor.astray
    show.press(Key.Key_9, Alt)
    assert words.text("favourite.none", number=9) in show.line


def test_a_visit_to_another_scene_and_back(show):
    show.next(2)
    show.wait()
    show.session.scrub(5.0)
    show.wait()
    before = state(show.session)
    show.window.show_scene("beam")
    show.wait()
    assert show.session.scene.id == "beam"
    assert show.view.stage.session is show.session
    assert show.running.id == "breaks"
    assert show.conductor.astray
    show.press(Key.Key_F)
    show.wait()
    assert state(show.session) == before
    assert show.view.stage.session is show.session


def test_a_jump_opens_a_step_and_takes_a_cut_one_in(show):
    show.next()
    show.window.cut(4.0)
    assert [SHEET.steps[place].id for place in show.running.kept] == [
        *("still", "breaks"),
        *("share", "end"),
    ]
    show.press(Key.Key_J)
    assert show.window.strip.is_open
    assert len(show.window.strip.entries) == 1 + len(SHEET.steps)
    for _ in range(4):
        show.next()
    show.press(Key.Key_Period)
    assert show.at() == ("more", "open")
    assert not show.window.strip.is_open
    show.wait()
    assert show.session.settings.rate_MPa_s == 8.0
    assert show.session.time_s == pytest.approx(2.0)
    assert 3 in show.running.kept
    assert not show.running.blank
    # Once more to the same step: as it opened.
    show.session.set_setting("rate_MPa_s", 3.0)
    show.wait()
    show.window.steps.list.buttons[3].click()
    show.wait()
    assert show.session.settings.rate_MPa_s == 8.0
    assert not show.conductor.astray


@pytest.mark.parametrize(("down", "strength", "said"), [(1, 6.0, "wait"), (2, 180.0, "scratch")])
def test_contingencies_are_said_and_shown_and_taken_back(show, down, strength, said):
    show.press(Key.Key_C)
    assert words.text("contingency.none") in show.line
    show.next(2)
    show.wait()
    before = state(show.session)
    show.press(Key.Key_C)
    show.next(down)
    show.press(Key.Key_Period)
    show.wait()
    assert said in show.line
    assert show.session.settings.strength_MPa == strength
    assert show.session.settings.rate_MPa_s == 6.0
    assert show.at() == ("breaks", "open")
    show.press(Key.Key_F)
    show.wait()
    assert state(show.session) == before


def test_the_catch_up_line(show):
    show.next()
    show.press(Key.Key_L)
    assert words.text("catch_up.none") in show.line
    show.next()
    show.wait()
    show.press(Key.Key_L)
    assert show.line == "A bar is bent."
    show.next(6)
    show.wait(lambda: show.session.frame is not None)
    assert show.running.id == "share"
    show.press(Key.Key_L)
    assert show.line == "A bar is bent."


def broken_once(scene):
    """`scene` with a view that fails as long as `armed` has anything."""
    armed = []

    def view(settings, state):
        if armed:
            raise ZeroDivisionError(armed.pop())
        return scene.view(settings, state)

    return dataclasses.replace(scene, view=view), armed


@pytest.mark.parametrize("two", [False, True], ids=["one screen", "two screens"])
def test_a_fault_in_the_model_is_told_to_the_presenter_alone(play, two, caplog):
    scene, armed = broken_once(BAR)
    show = play(scenes=(scene, BEAM), two=two).begin()
    show.next(2)
    show.wait()
    with caplog.at_level("CRITICAL", logger="lehrlight"):
        armed.append("a needle came loose")
        show.session.scrub(6.0)
        show.wait(lambda: "needle" in show.line)
        show.wait()
    assert show.session.time_s == 0
    assert show.at() == ("breaks", "open")
    assert show.running.on
    assert not [text for text in audience_texts(show.view) if "needle" in text]
    assert show.view.state == "live"
    # And it goes on.
    show.next(4)
    show.wait(lambda: not show.session.restoring)
    show.next()
    show.wait(lambda: show.conductor.outcome is not None)
    assert show.conductor.outcome.right == 1


def audience_texts(view):
    """All words anywhere in the audience's view, seen or not."""
    from PySide6.QtWidgets import QWidget

    found = []
    for widget in view.findChildren(QWidget):
        found += [widget.accessibleName(), widget.toolTip()]
        if hasattr(widget, "text"):
            found.append(widget.text())
    return found


def test_faults_in_a_row_do_not_let_other_settings_answer(play, caplog):
    scene, armed = broken_once(BAR)
    show = play(scenes=(scene, BEAM)).begin()
    show.next(6)
    show.wait(lambda: not show.session.restoring)
    with caplog.at_level("CRITICAL", logger="lehrlight"):
        armed += ["one", "two"]
        show.wait(lambda: not armed and show.session.frame.time_s == 0 and show.session.settled)
    # After the second fault the scene's own settings hold, under which it does not break.
    assert show.session.settings == scene.settings()
    show.session.scrub(15.0)
    show.wait()
    assert show.conductor.outcome is None


def test_a_scene_that_cannot_be_loaded_leaves_the_one_before(play):
    steps = (SHEET.steps[0], dataclasses.replace(SHEET.steps[1], scene="no-such"), SHEET.steps[2])
    show = play(dataclasses.replace(SHEET, steps=steps)).begin()
    show.next(2)
    assert "no-such" in show.line
    assert show.running.id == "breaks"
    show.wait()
    assert show.view.stage.session is show.session
    show.next(6)
    show.wait(lambda: show.session.frame is not None)
    assert show.session.scene.id == "beam"


class Seen:
    """Every picture of the audience's view, and what each of its pixels may be."""

    def __init__(self, show):
        self.show, self.seen = show, []

    def note(self):
        self.seen.append(pixels(self.show.view))

    def strays(self, still):
        """The largest distance of any pixel from what lies between the still pictures, by 255."""
        low, high = np.minimum.reduce(still), np.maximum.reduce(still)
        return [int(max((low - one).max(), (one - high).max())) for one in self.seen]


@pytest.mark.parametrize("two", [False, True], ids=["one screen", "two screens"])
@pytest.mark.parametrize("motion", [False, True], ids=["at once", "fading"])
def test_between_steps_nothing_but_the_two_pictures_is_seen(play, two, motion):
    """Never black, never another scene's, never a mixture of one's picture with the other's."""
    steps = tuple(
        dataclasses.replace(SHEET.steps[place], question=None, play=False) for place in (1, 2, 3, 4)
    )
    show = play(dataclasses.replace(SHEET, steps=steps), two=two).begin(motion=motion)
    show.next()
    show.wait()
    spin(lambda: show.view.stage.chart.ready)
    calm(show)
    for move in (show.next, show.next, show.back, show.next, show.next):
        seen, before = Seen(show), pixels(show.view)
        move()
        seen.note()
        show.wait(each=seen.note)
        calm(show, seen.note)
        after = pixels(show.view)
        assert np.abs(after - before).max() > 60, "the two pictures are one"
        assert max(seen.strays([before, after])) <= 3
        # And the last word is the new one's.
        assert np.abs(seen.seen[-1] - after).max() == 0


def calm(show, each=lambda: None):
    """Let fades end and charts come."""
    from PySide6.QtCore import QElapsedTimer

    clock = QElapsedTimer()
    clock.start()
    spin(lambda: clock.elapsed() > 450, each=each)


def test_the_audiences_window_may_go_and_come_back(play):
    show = play(two=True).begin()
    show.next(2)
    show.wait()
    out = show.out
    for number in range(6):
        out.hide()
        show.window.set_out(None)
        assert show.window.views == (show.window.show_page.view,)
        if number % 2:
            show.next()
            show.wait(lambda: show.session.frame is not None and not show.session.restoring)
            show.session.pause()
        show.wait()
        running = show.running
        mirrored = []
        show.window.show_page.mirror.copy = lambda *a, found=mirrored, **k: found.append(a)
        out.show()
        show.window.set_out(out)
        assert show.running == running
        show.wait()
        assert out.view.stage.session is show.session
        assert out.view.stage.picture.shape == out.view.stage.picture.picture_size()
        assert out.view.state == ("live" if running.phase in ("open", "reveal") else "question")
        # One copy for one change, however often the cable was pulled.
        mirrored.clear()
        out.view.changed.emit()
        assert len(mirrored) == 1


def test_the_presenter_sees_a_copy_of_the_audiences_window(play):
    show = play(two=True).begin()
    mirror = show.window.show_page.mirror
    assert mirror.isVisible()
    calm(show)
    assert pixels(mirror).max() > 60
    said = [mirror.accessibleName()]
    for act in ("next", "blank", "blank", "next", "next", "emergency"):
        show.window.act(act)
        spin(lambda: not show.view._pace.isActive())
        calm(show)
        said.append(mirror.accessibleName())
    assert len(set(said)) == 4, said
    assert "Blank" in said[2]
    show.window.set_out(None)
    assert not mirror.isVisible()


def test_only_one_view_leads_the_size_of_pictures(play):
    show = play(two=True).begin()
    own, out = show.window.show_page.view, show.out.view
    show.next(2)
    show.wait()
    assert show.session.size == out.stage.picture.picture_size()
    show.window.set_out(None)
    show.wait()
    assert show.session.size == own.stage.picture.picture_size()
    show.out.resize(800, 450)
    show.wait()
    assert show.session.size == own.stage.picture.picture_size()


def test_blank_freeze_and_the_emergency_card(show):
    show.next(2)
    show.wait()
    shown = pixels(show.view.stage.picture)
    assert shown.max() > 60
    show.press(Key.Key_Period)
    assert show.view.state == "blank"
    assert pixels(show.view).max() < 40
    if show.out is not None:
        # The presenter's own copy goes on.
        assert show.window.show_page.view.state == "live"
    spin(lambda: not show.view._pace.isActive())
    show.press(Key.Key_B)
    assert show.view.state == "live"
    spin(lambda: not show.view._pace.isActive())
    show.press(Key.Key_Z)
    assert show.view.state == "frozen"
    show.session.scrub(7.0)
    show.wait(lambda: show.session.settled)
    assert (pixels(show.view.stage.picture) == shown).all()
    show.press(Key.Key_Z)
    show.wait()
    assert not (pixels(show.view.stage.picture) == shown).all()
    show.session.play()
    show.press(Key.Key_E)
    assert not show.session.playing
    assert show.view.state == "card"
    assert show.view.card.card.alert
    # Even a dark stage gives way to it.
    show.press(Key.Key_B)
    spin(lambda: not show.view._pace.isActive())
    assert show.view.state == "card"
    show.press(Key.Key_B)
    show.press(Key.Key_E)
    spin(lambda: not show.view._pace.isActive())
    assert show.view.state == "live"
    assert show.at() == ("breaks", "open")


def test_the_own_sheets_questions_are_answered_as_the_model_does(play):
    """Live, from the step's start, at the end of the run: as `lehrlight check` says it."""
    from demo_app.content.cues.load import load
    from demo_app.content.cues.truth import truth_of

    sheet = load(next(path for path in own_sheets() if path.stem == "fifteen-minutes"))
    cheap = tuple(one for one in sheet.steps if one.id in CHEAP)
    show = play(dataclasses.replace(sheet, steps=cheap), (BAR,)).begin()
    for step in cheap:
        show.window.act(f"jump.{cheap.index(step)}")
        show.next(5 + (not show.running.on))
        show.wait(lambda: show.conductor.outcome is not None)
        assert show.at() == (step.id, "result")
        found = truth_of(step)
        assert show.conductor.outcome.right == found.index
        spec = next(one for one in show.session.scene.readings if one.name == step.question.reading)
        assert words.reading(spec, found.value) in show.conductor.outcome.said
    show.session.pause()
