"""Votes before and after: counts alone."""

import csv
import io
from pathlib import Path

import pytest
from small_lesson import GOOD

from demo_app.base.errors import InputError
from demo_app.content.lessons.load import load
from demo_app.content.lessons.records import Lesson
from demo_app.content.lessons.votes import HEADS, Votes, as_csv, bars, gain, voted, write_csv


@pytest.fixture
def lesson(tmp_path: Path) -> Lesson:
    path = tmp_path / "small.md"
    path.write_text(GOOD, encoding="utf-8")
    return load(path)


def test_counts_become_a_table_without_names(lesson: Lesson, tmp_path: Path) -> None:
    votes = voted(lesson, Votes(lesson.title), "pull", (5, 10, 5))
    votes = voted(lesson, votes, "pull", (0, 18, 2), again=True, right=1)
    rows = list(csv.DictReader(io.StringIO(as_csv(lesson, votes))))
    assert tuple(rows[0]) == HEADS
    assert not {"name", "pupil", "time"} & set(HEADS)
    assert [(row["letter"], row["before"], row["after"], row["right"]) for row in rows] == [
        ("A", "5", "0", "no"),
        ("B", "10", "18", "yes"),
        ("C", "5", "2", "no"),
    ]
    out = tmp_path / "votes.csv"
    write_csv(out, lesson, votes)
    assert out.read_bytes().decode() == as_csv(lesson, votes)


def test_bars_are_shares_and_gain_is_hake_s(lesson: Lesson) -> None:
    votes = voted(lesson, Votes(lesson.title), "pull", (5, 10, 5))
    assert gain(votes.tallies["pull"]) is None
    votes = voted(lesson, votes, "pull", (0, 18, 2), again=True, right=1)
    shown = bars(lesson, votes, "pull")
    assert [bar.before for bar in shown] == [0.25, 0.5, 0.25]
    assert [bar.after for bar in shown] == [0.0, 0.9, 0.1]
    assert [bar.right for bar in shown] == [False, True, False]
    # (0.9 - 0.5) / (1 - 0.5)
    assert gain(votes.tallies["pull"]) == pytest.approx(0.8)


def test_nothing_counted_is_left_empty(lesson: Lesson) -> None:
    rows = list(csv.DictReader(io.StringIO(as_csv(lesson, Votes(lesson.title)))))
    assert {row["before"] for row in rows} == {""}
    assert [bar.before for bar in bars(lesson, Votes(lesson.title), "pull")] == [0.0, 0.0, 0.0]


@pytest.mark.parametrize(
    ("step", "hands", "told"),
    [
        ("pull", (1, 2), "2 counts for 3 answers"),
        ("pull", (1, 2, -1), "no count"),
        ("pull", (1, 2, True), "no count"),
        ("watch", (1,), "no prediction"),
    ],
)
def test_what_is_no_count_is_refused(
    lesson: Lesson, step: str, hands: tuple[int, ...], told: str
) -> None:
    with pytest.raises(InputError, match=told):
        voted(lesson, Votes(lesson.title), step, hands)


def test_no_cell_is_a_formula(tmp_path: Path) -> None:
    path = tmp_path / "small.md"
    path.write_text(GOOD.replace('text = "Nothing"', 'text = "=1+1"'), encoding="utf-8")
    found = load(path)
    rows = list(csv.DictReader(io.StringIO(as_csv(found, Votes(found.title)))))
    assert rows[0]["answer"] == "'=1+1"
