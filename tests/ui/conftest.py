"""Windows, sessions and workers for the tests, ended whatever a test does."""

import bar_scene
import pytest
from PySide6.QtCore import QThread, QTimer

from demo_app.shells.present import PresentWindow
from demo_app.ui import application
from demo_app.ui.playing import Session
from demo_app.ui.worker import Worker

# Qt's offscreen platform says so at every window with a least size; it means nothing.
IGNORED = "This plugin does not support propagateSizeHints"


def pytest_collection_modifyitems(items):
    for item in items:
        item.add_marker(pytest.mark.qt_log_ignore(IGNORED, extend=True))


@pytest.fixture
def app(qapp):
    return application.make([])


@pytest.fixture
def worker(app):
    made = Worker()
    made.start()
    yield made
    made.end()
    assert made.isFinished()


@pytest.fixture
def session(worker):
    made = Session(bar_scene.SCENE, worker)
    made.size = (240, 120)
    yield made
    made.close()


@pytest.fixture
def window(app, qtbot):
    made = PresentWindow([bar_scene.SCENE], "bar")
    qtbot.addWidget(made)
    made.begin()
    made.resize(1280, 720)
    made.show()
    made.setFocus()
    settled(qtbot, made.session)
    yield made
    made.close()
    assert made.worker.isFinished()
    running = [t for t in made.findChildren(QTimer) if t.isActive() and not t.isSingleShot()]
    assert not running
    assert not [t for t in made.findChildren(QThread) if t.isRunning()]


def settled(qtbot, session):
    """Wait until every picture that was asked for has come."""
    qtbot.waitUntil(lambda: session.settled and session.frame is not None, timeout=20000)


@pytest.fixture
def settle(qtbot):
    def wait(session):
        settled(qtbot, session)

    return wait


@pytest.fixture
def count():
    """Lists of what signals have brought."""

    def listen(signal):
        calls = []

        def note(*values):
            calls.append(values)

        signal.connect(note)
        return calls

    return listen
