"""Shows windows in another language, in one that is longer than any, or from right to left.

Run as a program: ``python language_states.py HOW WHAT [FOLDER]``: HOW is "de", "es", "long" or
"mirrored", WHAT one of `WINDOWS`. Tells one line of JSON for every state: what is cut, what
overlaps.
"""

import sys
import tempfile
from pathlib import Path

import window_states
from longer import install
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from window_states import look, spin

from demo_app.ui import application
from demo_app.ui.languages import use

SIZE = (1280, 720)


def grab(window, folder, name):
    if folder:
        window.grab().save(str(Path(folder) / f"{name}.png".replace(" ", "-")))


def start(folder):
    from demo_app.shells.start import DOORS, StartWindow

    window = StartWindow(list(DOORS))
    window.resize(*SIZE)
    window.show()
    spin()
    grab(window, folder, "start")
    look(window, state="start")
    window.close()


def present(folder):
    window_states.show(*SIZE, 1, folder or "-")


def bench(folder):
    from demo_app.shells.bench import PAGES, BenchWindow

    window = BenchWindow(workers=1)
    window.resize(*SIZE)
    window.begin()
    window.show()
    for page in PAGES:
        window.open(page)
        if page != "map":
            spin(lambda: window.page.view.answer is not None, most_ms=60000)
            window.stop()
        spin(least_ms=200)
        grab(window, folder, page)
        look(window, state=page)
    window.close()


def outreach(folder):
    from demo_app.content.lessons.load import load, own_lessons
    from demo_app.shells.teaching.choosing import ChooseLesson, lessons
    from demo_app.shells.teaching.window import OutreachWindow

    choose = ChooseLesson(lessons())
    choose.resize(*SIZE)
    choose.show()
    spin()
    grab(choose, folder, "lessons")
    look(choose, state="lessons")
    choose.close()
    window = OutreachWindow(load(own_lessons()[2]))
    window.begin()
    window.resize(*SIZE)
    window.show()
    for number in range(12):
        spin(least_ms=400)
        grab(window, folder, f"lesson {number}")
        look(window, state=f"lesson {number}")
        window.act("next")
    window.close()


WINDOWS = {"start": start, "present": present, "bench": bench, "outreach": outreach}


def main(how, what, folder=""):
    app = application.make(sys.argv[:1])
    if how == "long":
        with tempfile.TemporaryDirectory() as made:
            install(Path(made))
    elif how == "mirrored":
        QApplication.setLayoutDirection(Qt.LayoutDirection.RightToLeft)
    else:
        use(how)
    WINDOWS[what](folder)
    app.processEvents()


if __name__ == "__main__":
    main(*sys.argv[1:])
