"""What a show writes into its journal by itself, and what is typed on its pages."""

import pytest
from shows import SHEET, Key

from demo_app.content.journal.following import Entry, resumed
from demo_app.content.journal.store import open_journal
from demo_app.content.running import walking
from demo_app.shells.presenting.diary import Diary
from demo_app.ui import words


class Wall:
    """A clock on the wall that a test turns."""

    def __init__(self):
        self.now = 1.7e9

    def __call__(self):
        return self.now


@pytest.fixture
def kept(play, home):
    """A show with its diary, and the clock that both read."""
    show = play(running=walking.ready(SHEET, digest="d1")).begin()
    wall = show.conductor.now = Wall()
    journal = open_journal(home)
    show.diary = Diary(show.window, journal)
    show.wall, show.journal = wall, journal
    yield show
    show.diary.close()


def rows(show, table, *columns):
    found = show.journal.rows(f"SELECT * FROM {table} ORDER BY id")
    return [tuple(row[name] for name in columns) for row in found]


def on(show, times=1, seconds=10.0):
    for _ in range(times):
        show.wall.now += seconds
        show.next()


def test_each_step_is_written_as_it_begins_and_ends(kept):
    show = kept
    assert rows(show, "shows", "id") == []
    on(show)
    assert rows(show, "shows", "title", "sheet_hash", "venue", "rehearsal", "ended") == [
        (SHEET.title, "d1", SHEET.venue, 0, None)
    ]
    assert rows(show, "steps", "step", "title", "seconds", "skipped") == [
        ("still", "A bar", None, 0)
    ]
    on(show)
    assert rows(show, "steps", "step", "seconds") == [("still", 10.0), ("breaks", None)]
    on(show, 6)
    assert rows(show, "steps", "step", "seconds")[1:] == [("breaks", 60.0), ("share", None)]
    show.wall.now += 7
    show.back()
    show.wall.now += 5
    on(show)
    # A second visit is a row of its own, with its own time.
    assert rows(show, "steps", "step", "seconds") == [
        *(("still", 10.0), ("breaks", 60.0), ("share", 7.0), ("breaks", 15.0), ("share", None))
    ]
    # Nothing is written while a hand plays with the model.
    before = show.journal.rows("SELECT count(*) AS n FROM steps")[0]["n"]
    show.session.set_setting("strength_MPa", 77.0)
    show.wait(lambda: show.session.settled)
    assert show.journal.rows("SELECT count(*) AS n FROM steps")[0]["n"] == before


def test_votes_and_who_was_right(kept, monkeypatch):
    show = kept
    on(show, 3)
    for key in (Key.Key_1, Key.Key_2, Key.Key_2):
        show.press(key)
    assert rows(show, "votes", "step", "answer", "hands", "correct") == [
        ("breaks", "It holds", 1, None),
        ("breaks", "It breaks", 2, None),
    ]
    on(show, 4)
    show.wait(lambda: show.conductor.outcome is not None)
    assert rows(show, "votes", "step", "answer", "hands", "correct") == [
        ("breaks", "It holds", 1, 0),
        ("breaks", "It breaks", 2, 1),
    ]
    # The answer is known: no hand that turns a filter writes it again.
    written = []
    for name in ("insert", "change"):
        whole = getattr(show.journal, name)
        monkeypatch.setattr(
            show.journal, name, lambda *a, f=whole, **k: (written.append(a), f(*a, **k))[1]
        )
    for _ in range(5):
        show.press(Key.Key_BracketRight)
    assert written == []


def test_the_end_and_what_was_left_out(kept):
    show = kept
    on(show)
    show.window.cut(4.0)
    on(show, 13)
    assert show.at() == ("end", "open")
    show.wall.now += 30
    show.window.after.end.click()
    assert rows(show, "steps", "step", "skipped")[-1] == ("more", 1)
    assert [step for step, skipped in rows(show, "steps", "step", "skipped") if skipped] == ["more"]
    (seconds,) = [s for step, s in rows(show, "steps", "step", "seconds") if step == "end"]
    assert seconds == pytest.approx(30.0)
    assert rows(show, "shows", "ended") == [(show.wall.now,)]
    # Back at the first step, and ready for the next show.
    assert show.at() == ("still", "open")
    assert not show.running.on
    assert show.running.votes == {}
    assert len(show.running.kept) == len(SHEET.steps)
    show.window.after.heads.setValue(41)
    show.window.after.count.click()
    assert rows(show, "shows", "attendance") == [(41,)]
    on(show)
    assert len(rows(show, "shows", "id")) == 2


def test_what_is_typed(kept):
    show, after = kept, kept.window.after
    on(show, 2)
    for entry, said in (
        (after.question, "Is it  cold?"),
        (after.miss, "A pole fell"),
        (after.breakage, "one bar"),
        (after.note, "lamp is dim"),
    ):
        entry.line.setText(said)
        entry.button.click()
        assert entry.line.text() == ""
    assert rows(show, "questions", "show", "step", "text") == [(1, "breaks", "Is it cold?")]
    assert rows(show, "near_misses", "show", "step") == [(1, "breaks")]
    assert rows(show, "breakages", "show", "step", "meant") == [(1, "breaks", 1)]
    assert rows(show, "notes", "show", "text")[-1] == (1, "lamp is dim")
    show.diary.fault("a needle came loose")
    assert rows(show, "notes", "kind", "text")[-1] == ("fault", "a needle came loose")


def test_glass_is_counted_out_and_in(kept):
    show, between = kept, kept.window.between
    on(show)
    between.new_batch.line.setText("B7; scored bottle; soda-lime; 3,5")
    between.new_batch.button.click()
    between.new_batch.line.setText("no batch")
    between.new_batch.button.click()
    assert words.text("between.batch_form") in show.line
    assert rows(show, "batches", "name") == [("B7",)]
    for way, number in (("delivered", 6), ("out", 3), ("back", 1)):
        between.number.setValue(number)
        between.ways[way].click()
    assert between.balance.objectName() == "alert"
    between.number.setValue(2)
    between.ways["broken"].click()
    assert between.balance.objectName() == ""
    assert "B7" in between.batch.currentText()


def test_an_interrupted_show_goes_on_in_its_own_rows(kept):
    show = kept
    on(show, 3)
    number = rows(show, "shows", "id")[0][0]
    assert resumed(show.journal, "d1") == Entry(show=number)
    assert resumed(show.journal, "another") == Entry()
    on(show, 12)
    show.window.after.end.click()
    assert resumed(show.journal, "d1") == Entry()


def test_without_a_sheet_nothing_is_written(play, home):
    show = play(None).begin()
    diary = Diary(show.window, open_journal(home))
    show.window.show_scene("beam")
    show.wait()
    show.next()
    assert diary._journal.rows("SELECT * FROM shows") == []
    diary.close()
