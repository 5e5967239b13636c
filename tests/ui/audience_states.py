"""Shows the audience's view in every state, in the size of a projector, and looks for cut words.

Run as a program: ``python audience_states.py <folder or -> <scene>``; `QT_SCALE_FACTOR` is the
screen's scale. Tells one line of JSON for every state: what is cut, what overlaps.
"""

import json
import os
import sys
from pathlib import Path

import overlap
from PySide6.QtCore import QElapsedTimer

from demo_app.scenes import catalogue
from demo_app.shells.audience import AudienceWindow
from demo_app.ui import application
from demo_app.ui.cards import Card
from demo_app.ui.playing import Session
from demo_app.ui.question_view import PHASES, Poll
from demo_app.ui.worker import Worker

SIZES = ((1280, 720), (1920, 1080))
ASK = "A flame heats the middle of the plate. Where does the glass want to pull apart first?"
FOUR = (
    "Right under the flame",
    "In the cold glass around it, at the nearest edge",
    "Nowhere: hot glass is soft",
    "At the far corner",
)
SIX = tuple(
    f"{word} the flame, as seen from where you sit"
    for word in ("Under", "Over", "Left of", "Right of", "Behind", "Far from")
)
HAPPENED = "The edge next to the flame was pulled by 31 MPa and cracked after 9 seconds."
CAPTIONS = (
    "The rim is hot now and wants to be longer; the cold glass below it does not let it.",
    "Der Rand ist jetzt heiß und will länger werden; das kalte Glas darunter lässt ihn nicht.",
)
ALERT = Card(
    "Please stay in your seats",
    ("We stop here for a moment.", "The staff in yellow jackets will tell you where to go."),
    alert=True,
)
WELCOME = Card(
    "Welcome to the Millrace Glass House",
    (
        "The show begins at 2 o'clock.",
        "Bright stripes will appear on the screen. Look away if they trouble you.",
        "The exits are on your left and behind you.",
    ),
)


def spin(app, until, milliseconds=20000):
    clock = QElapsedTimer()
    clock.start()
    while not until() and clock.elapsed() < milliseconds:
        app.processEvents()


def states(view, session):
    """Bring the view into each of its states; yields their names."""
    for languages in (0, 2):
        view.set_caption_languages(languages)
        view.set_captions(CAPTIONS)
        yield f"live-{languages}"
        for phase in PHASES:
            view.show_question(Poll(ASK, FOUR, (12, 31, 1, 0), phase, right=1, happened=HAPPENED))
            yield f"question-{phase}-{languages}"
        view.show_question(Poll(ASK, SIX, (120, 31, 1, 0, 7, 200), "result", 5, HAPPENED))
        yield f"question-six-{languages}"
        view.show_question(Poll(ASK, ("Yes", "No"), (8, 9), "bars"))
        yield f"question-two-{languages}"
        view.show_question(None)
        for name, card in (("alert", ALERT), ("welcome", WELCOME)):
            view.show_card(card)
            yield f"card-{name}-{languages}"
        view.show_card(None)
    view.set_caption_languages(1)
    view.set_captions(CAPTIONS[:1])
    yield "live-1"
    view.set_frozen(True)
    session.brighten()
    yield "frozen"
    view.set_frozen(False)
    yield "brightened"
    session.hold()
    yield "held"
    session.hold()
    session.brighten()
    view.set_blank(True)
    yield "blank"
    view.set_blank(False)


def main(folder, scene):
    app = application.make(sys.argv[:1])
    worker = Worker()
    worker.start()
    session = Session(catalogue.load(scene), worker)
    session.begin()
    scale = float(os.environ.get("QT_SCALE_FACTOR", "1"))
    for width, height in SIZES:
        window = AudienceWindow()
        view = window.view
        view.set_motion(False)
        window.resize(round(width / scale), round(height / scale))
        window.show()
        view.set_session(session)
        spin(app, lambda: session.settled and session.frame is not None)
        session.scrub(min(4.0, session.end_s))
        for state in states(view, session):
            spin(app, lambda: session.settled)
            spin(app, lambda: False, 120)
            found = {
                "size": f"{width}x{height}@{scale:g}",
                "state": state,
                "shown": view.state,
                "cut": overlap.cut(window),
                "overlapping": overlap.overlapping(window),
                "painted": overlap.painted(window),
            }
            sys.stdout.write(json.dumps(found) + "\n")
            if folder != "-":
                name = f"{scene}-{width}x{height}@{scale:g}-{state}.png"
                window.grab().save(str(Path(folder) / name))
        view.stages.clear()
        window.close()
    session.close()
    worker.end()


if __name__ == "__main__":
    main(*sys.argv[1:])
