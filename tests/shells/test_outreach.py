"""Every lesson runs to its end: with keys alone, with touches alone, on one screen and on two."""

import csv
import dataclasses
import datetime

import pytest
from lessons import LESSONS, Class, Keys, Touches, taught_to_the_end
from shows import spin

from demo_app.base.errors import InputError
from demo_app.base.places import data_folder
from demo_app.content.lessons.load import load
from demo_app.content.running.records import phases_of
from demo_app.shells import outreach
from demo_app.shells.teaching.choosing import ChooseLesson, lessons
from demo_app.shells.teaching.window import OutreachWindow


@pytest.fixture
def teach(app):
    """Opens lessons, and ends them whatever a test does."""
    opened = []

    def open_lesson(*args, **kwargs):
        opened.append(Class(*args, **kwargs))
        return opened[-1]

    yield open_lesson
    for one in opened:
        one.close()


def whole(taught):
    """All parts of all steps, as they have to be walked through."""
    steps = taught.window.taught.sheet.steps
    return [("cover", "open"), *((step.id, phase) for step in steps for phase in phases_of(step))]


TRIED = ("ages-07-09-squash-bend-glow", "ages-11-14-why-glass-cracks")
"""Lessons in whose challenges the model's verdict is waited for; of the others it takes longer."""


def cases():
    """Each pair of hands with half of the lessons; the long form is every lesson with both."""
    for hands in (Keys, Touches):
        for place, name in enumerate(LESSONS):
            usual = place % 2 == (hands is Touches)
            yield pytest.param(hands, name, marks=() if usual else pytest.mark.long)


@pytest.mark.parametrize(("hands", "name"), [*cases()])
def test_a_lesson_runs_to_its_end(teach, name, hands):
    taught = teach(name, two=hands is Touches)
    tries = TRIED[hands is Keys] == name
    assert taught_to_the_end(taught, hands(taught), tries=tries) == whole(taught)
    for step in taught.window.taught.lesson.steps:
        if step.question is None:
            continue
        tally = taught.window.votes.tallies[step.id]
        hands_shown = tuple(range(1, len(step.question.answers) + 1))
        assert (tally.before, tally.after) == (hands_shown, hands_shown)
        assert tally.right is not None


def test_a_prediction_is_written_down_before_hands_are_counted(teach):
    taught = teach("ages-09-11-hidden-push-and-pull", two=True)
    for step in taught.window.taught.sheet.steps:
        if step.question is None:
            continue
        taught.go_to(step.id, "ask")
        poll = taught.view.question.poll
        assert "paper" in poll.note or "second letter" in poll.note
        assert taught.view.question.happened.text() == poll.note
        assert not taught.view.question.rows[0].hands.text()
        taught.window.act("next")
        assert taught.running.phase == "count"


def test_a_challenge_counts_tries_and_ranks_groups(teach):
    taught = teach("ages-11-14-why-glass-cracks")
    window = taught.window
    taught.go_to("crack-it-at-40-mm", "drive")
    step = taught.step
    assert step.challenge.ask in window.bar.goal.text()
    assert not window.header.isVisible()

    def try_(**changes):
        for name, value in changes.items():
            taught.session.set_setting(name, value)
        before = window.group.tries(step).count
        window.panel.tries.try_.click()
        taught.wait(lambda: window.group.state != "ready")
        window.panel.tries.try_.click()
        taught.wait(lambda: window.group.tries(step).count == before + 1)
        return window.group.tries(step)

    missed = try_()
    assert (missed.count, missed.last.reached, missed.reached_at) == (1, False, None)
    assert "✗" in window.panel.tries.result.text()
    reached = try_(**step.challenge.solution)
    assert (reached.count, reached.last.reached, reached.reached_at) == (2, True, 2)
    assert "try 2" in window.panel.tries.count.text()
    window.panel.tries.next.click()
    taught.wait()
    fresh = window.group.tries(step)
    assert (fresh.count, fresh.reached_by, fresh.groups) == (0, 1, 1)
    for name, value in step.settings.items():
        assert getattr(taught.session.settings, name) == value
    window.bar.back.click()
    assert taught.running.phase == "share"
    assert window.header.isVisible()
    assert not window.bar.isVisible()


def test_the_goal_stands_below_the_classs_picture(teach):
    taught = teach("ages-11-14-why-glass-cracks", two=True)
    taught.go_to("crack-it-at-40-mm", "drive")
    assert taught.step.challenge.ask in " ".join(taught.view.captions.shown())
    assert taught.view.state == "live"
    taught.window.act("next")
    assert taught.view.state == "card"
    assert taught.view.captions.languages == 0


@pytest.mark.parametrize("size", [(1280, 720), (1920, 1080)])
def test_everything_is_large_enough_for_a_finger(teach, size):
    taught = teach("ages-09-11-hidden-push-and-pull", size=size)
    for step in taught.window.taught.sheet.steps:
        for phase in phases_of(step):
            taught.go_to(step.id, phase)
            assert taught.small() == [], (step.id, phase)
    for page in ("votes", "handout", "screens"):
        taught.window.show_page_called(page)
        assert taught.small() == [], page


@pytest.fixture(params=["missing", "closed"])
def no_home(monkeypatch, request):
    """A data folder that cannot be made, or not written, by anybody: the system's own list of
    processes."""
    place = {"missing": "/proc/lehrlight", "closed": "/proc/self"}[request.param]
    monkeypatch.setenv("LEHRLIGHT_HOME", place)


@pytest.mark.usefixtures("no_home")
def test_a_lesson_needs_no_folder_to_write_in(teach, tmp_path):
    try:
        folder = data_folder()
    except InputError:
        folder = None
    taught = teach("ages-07-09-squash-bend-glow")
    house = outreach.House(taught.window, folder)
    try:
        assert taught_to_the_end(taught, Keys(taught)) == whole(taught)
        assert taught.window.unkept
        assert "not on the disk" in taught.window.votes_page.line.text()
        house.papers.save_votes(tmp_path / "votes.csv")
        assert not taught.window.unkept
        assert (tmp_path / "votes.csv").stat().st_size > 100
    finally:
        house.close()


def test_votes_are_kept_and_exported_without_names(teach, home, tmp_path):
    taught = teach("ages-11-14-why-glass-cracks")
    taught.window.conductor.now = lambda: datetime.datetime(2026, 5, 4, 10, 0).timestamp()
    house = outreach.House(taught.window, home)
    try:
        step = next(one for one in taught.window.taught.lesson.steps if one.question is not None)
        taught.go_to(step.id, "count")
        for answer, hands in enumerate((3, 14)):
            for _ in range(hands):
                taught.window.act(f"count.{answer + 1}")
        taught.window.act("less.2")
        assert list((home / "votes").glob("*")) == [] if (home / "votes").exists() else True
        taught.window.act("next")
        (kept,) = (home / "votes").iterdir()
        assert kept.name == "2026-05-04-100000-ages-11-14-why-glass-cracks.csv"
        house.papers.save_votes(tmp_path / "by-hand.csv")
        assert (tmp_path / "by-hand.csv").read_bytes() == kept.read_bytes()
        with kept.open(encoding="utf-8", newline="") as file:
            rows = list(csv.DictReader(file))
        mine = [row for row in rows if row["step"] == step.id]
        assert [row["before"] for row in mine] == ["3", "13"]
        assert [row["after"] for row in mine] == ["", ""]
        assert [row["answer"] for row in mine] == [one.text for one in step.question.answers]
        assert not {"name", "pupil", "time"} & set(rows[0])
    finally:
        house.close()


def test_the_chart_shows_both_votes(teach):
    taught = teach("ages-11-14-why-glass-cracks")
    step = next(one for one in taught.window.taught.lesson.steps if one.question is not None)
    for name, hands in ((step.id, (1, 3)), (f"{step.id}-again", (3, 1))):
        taught.go_to(name, "count")
        for answer, count in enumerate(hands):
            for _ in range(count):
                taught.window.act(f"count.{answer + 1}")
    (chart,) = taught.window.votes_page.charts
    assert [bar.share for bar in chart.bars] == [0.25, 0.75, 0.75, 0.25]
    assert [bar.solid for bar in chart.bars] == [False, True, False, True]


def test_worksheet_and_key_come_from_one_number(teach, home, tmp_path):
    taught = teach("ages-09-11-hidden-push-and-pull")
    house = outreach.House(taught.window, home)
    try:
        taught.window.handout.seed.setValue(7)
        house.papers.save_handout(tmp_path / "paper.txt")
        assert ".pdf" in taught.window.handout.line.text()
        house.papers.save_handout(tmp_path / "paper.html")
        assert not taught.window.handout.save.isEnabled()
        spin(taught.window.handout.save.isEnabled)
        sheet = (tmp_path / "paper.html").read_text("utf-8")
        key = (tmp_path / "paper-key.html").read_text("utf-8")
        assert "Sheet 7" in sheet
        assert "Sheet 7" in key
        assert sheet != key
    finally:
        house.close()


def test_lessons_to_choose_from(app, qtbot, tmp_path):
    window = ChooseLesson(lessons())
    qtbot.addWidget(window)
    window.resize(1280, 720)
    window.show()
    taken = []
    window.chosen.connect(taken.append)
    assert [button.show_.path for button in window.buttons] == list(LESSONS.values())
    window.buttons[2].click()
    assert taken == [list(LESSONS.values())[2]]
    broken = tmp_path / "broken.md"
    broken.write_text("no lesson")
    window.take(broken)
    assert len(taken) == 1
    assert "header" in window.line.text()


def test_what_a_profile_shuts_out_does_not_open(app):
    lesson = load(LESSONS["ages-11-14-why-glass-cracks"])
    for changed in (
        dataclasses.replace(lesson, allows=()),
        dataclasses.replace(lesson, profile="nothing-simulated"),
        dataclasses.replace(lesson, profile="unheard-of"),
        dataclasses.replace(
            lesson,
            steps=(dataclasses.replace(lesson.steps[0], hazards=("flame",)), *lesson.steps[1:]),
        ),
        dataclasses.replace(
            lesson, kit=(dataclasses.replace(lesson.kit[0], hazards=("breakage",)),)
        ),
    ):
        with pytest.raises(InputError, match="not allowed in this lesson"):
            OutreachWindow(changed)
