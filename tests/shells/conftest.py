"""Shows for the tests, ended whatever a test does."""

import sys
from pathlib import Path

import pytest

# Bars, and words that are cut: from the tests beside these.
sys.path.append(str(Path(__file__).parent.parent / "ui"))

from demo_app.ui import application

# Qt's offscreen platform says so at every window with a least size; it means nothing.
IGNORED = "This plugin does not support propagateSizeHints"


def pytest_collection_modifyitems(items):
    for item in items:
        item.add_marker(pytest.mark.qt_log_ignore(IGNORED, extend=True))


@pytest.fixture
def app(qapp):
    return application.make([])


@pytest.fixture
def home(tmp_path, monkeypatch):
    """A data folder of its own."""
    monkeypatch.setenv("LEHRLIGHT_HOME", str(tmp_path / "home"))
    (tmp_path / "home").mkdir()
    return tmp_path / "home"


@pytest.fixture
def play(app):
    """Opens shows: `play(...)` makes one that has not begun."""
    made = []

    def open_show(*args, **kwargs):
        from shows import Played

        made.append(Played(*args, **kwargs))
        return made[-1]

    yield open_show
    for show in made:
        show.close()


@pytest.fixture(params=[False, True], ids=["one screen", "two screens"])
def show(play, request):
    """The small show at its first step."""
    return play(two=request.param).begin()
