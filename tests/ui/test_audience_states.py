"""Every state of the audience's view, on projectors of two sizes and three scales: no word is cut
and none lies over another."""

import json
import os
import subprocess
import sys
from pathlib import Path

import overlap
import pytest
from PySide6.QtWidgets import QLabel, QPushButton, QWidget

HERE = Path(__file__).resolve().parent
STATES = 23


@pytest.mark.parametrize("scale", ["1", "1.5", "2"])
def test_no_words_are_cut_or_lie_over_one_another(scale):
    done = subprocess.run(
        [sys.executable, "-W", "error", str(HERE / "audience_states.py"), "-", "ring"],
        env={
            **os.environ,
            "QT_SCALE_FACTOR": scale,
            "QT_QPA_PLATFORM": "offscreen",
            "PYTHONPATH": os.pathsep.join((str(HERE.parents[1]), str(HERE))),
        },
        capture_output=True,
        text=True,
        timeout=240,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    found = [json.loads(line) for line in done.stdout.splitlines()]
    assert len(found) == 2 * STATES
    assert {one["shown"] for one in found} == {"live", "frozen", "blank", "question", "card"}
    bad = [one for one in found if one["cut"] or one["overlapping"] or one["painted"]]
    assert bad == []
    assert done.stderr == ""


@pytest.fixture
def board(app, qtbot):
    made = QWidget()
    qtbot.addWidget(made)
    made.resize(300, 200)
    made.show()
    return made


def put(board, kind, said, *box):
    made = kind(said, board)
    made.setGeometry(*box)
    made.show()
    return made


def test_words_that_fit_are_not_found(board):
    put(board, QLabel, "short", 10, 10, 200, 30)
    put(board, QPushButton, "press", 10, 60, 200, 40)
    assert (overlap.cut(board), overlap.overlapping(board), overlap.painted(board)) == ([], [], [])


def test_words_that_are_cut_are_found(board):
    put(board, QLabel, "much too long for this", 10, 10, 40, 20)
    put(board, QPushButton, "much too long for this", 10, 60, 40, 20)
    assert len(overlap.cut(board)) == 2


def test_wrapped_words_that_need_more_lines_are_found(board):
    label = put(board, QLabel, "one two three four five six seven", 10, 10, 60, 30)
    label.setWordWrap(True)
    assert len(overlap.cut(board)) == 1


def test_words_outside_their_parent_are_found(board):
    put(board, QLabel, "over the edge", 260, 10, 120, 20)
    assert "beyond" in overlap.cut(board)[0]


def test_words_on_words_are_found(board):
    put(board, QLabel, "first words", 10, 10, 200, 20)
    put(board, QLabel, "other words", 30, 15, 200, 20)
    assert overlap.overlapping(board) == [("first words", "other words")]
    assert overlap.painted(board) == ["'first words' on 'other words'"]


def test_painted_words_that_stick_out_are_found(board):
    put(board, QLabel, "over the edge", 260, 10, 120, 20)
    assert overlap.painted(board) == ["'over the edge' sticks out"]
