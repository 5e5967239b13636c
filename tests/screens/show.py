"""A presenter's window and the audience's on a real desktop, worked by lines on standard input.

Answers are lines of JSON on standard output; times are those of `time.monotonic`, which this
system's processes share.
"""

import hashlib
import json
import os
import pickle
import sys
import time

import bar_scene
from PySide6.QtCore import QEvent, QObject, QSocketNotifier
from PySide6.QtWidgets import QVBoxLayout, QWidget

from demo_app.shells.audience import AudienceWindow
from demo_app.ui import application
from demo_app.ui.placer import Placer
from demo_app.ui.playing import Session
from demo_app.ui.stage_view import StageView
from demo_app.ui.worker import Worker

TITLE = "Presenter"


class Watch(QObject):
    """Tells whether the audience's window ever stood over the presenter's, and its shows."""

    def __init__(self, audience, presenter):
        super().__init__()
        self.audience, self.presenter = audience, presenter
        self.over = 0
        audience.installEventFilter(self)

    def eventFilter(self, watched, event):
        kind = event.type()
        if kind in {QEvent.Type.Show, QEvent.Type.Hide}:
            tell(event=kind.name)
        if kind in {QEvent.Type.Show, QEvent.Type.Move, QEvent.Type.Resize} and (
            watched.isVisible() and watched.frameGeometry().intersects(self.presenter.geometry())
        ):
            self.over += 1
        return False


def tell(**found):
    sys.stdout.write(json.dumps({"at": time.monotonic(), **found}) + "\n")
    sys.stdout.flush()


def main():
    app = application.make(sys.argv[:1])
    worker = Worker()
    worker.start()
    session = Session(bar_scene.SCENE, worker)
    session.begin()
    presenter = QWidget()
    presenter.setWindowTitle(TITLE)
    copy = StageView(presenter, leads=False)
    QVBoxLayout(presenter).addWidget(copy)
    copy.set_session(session)
    presenter.setGeometry(100, 80, 1000, 560)
    presenter.show()
    audience = AudienceWindow()
    audience.view.set_session(session)
    placer = Placer(audience, presenter)
    watch = Watch(audience, presenter)
    placer.told.connect(lambda said: tell(told=said))
    placer.placed.connect(lambda place: tell(placed=place.name))

    def state():
        frame = session.frame
        parts = (session.settings, session.here, session.timeline.plan, session.time_s)
        whole = pickle.dumps((*parts, session.speed, session.instrument, session.size))
        return hashlib.sha256(whole + frame.pixels.tobytes()).hexdigest()

    def read():
        for word in os.read(sys.stdin.fileno(), 4096).decode().split() or ["quit"]:
            obey(word)

    def obey(word):
        if word == "begin":
            placer.begin()
        elif word == "scrub":
            session.scrub(3.0)
        elif word in {"play", "pause"}:
            getattr(session, word)()
        elif word == "state":
            tell(state=state(), settled=session.settled, time_s=session.time_s, over=watch.over)
        elif word == "grab":
            app.primaryScreen().grabWindow(0).save(sys.argv[1])
        else:
            app.quit()

    lines = QSocketNotifier(sys.stdin.fileno(), QSocketNotifier.Type.Read)
    lines.activated.connect(read)
    tell(ready=True)
    status = app.exec()
    lines.setEnabled(False)
    placer.end()
    session.close()
    worker.end()
    audience.close()
    presenter.close()
    return status


if __name__ == "__main__":
    sys.exit(main())
