"""Shows the presenter's window on every page and in every state, and looks for cut words.

Run as a program: ``python window_states.py <folder or ->``; `QT_SCALE_FACTOR` is the screen's
scale. Tells one line of JSON for every state: what is cut, what overlaps.
"""

import dataclasses
import itertools
import json
import os
import sys
from pathlib import Path

import overlap
from PySide6.QtCore import QCoreApplication, QElapsedTimer, QPoint, QRectF
from PySide6.QtWidgets import QScrollArea

from demo_app.content.cues.load import load, own_sheets
from demo_app.content.journal.store import open_journal
from demo_app.shells.audience import AudienceWindow
from demo_app.shells.present import PresentWindow
from demo_app.shells.presenting.choosing import ChooseWindow, shows
from demo_app.shells.presenting.diary import Diary
from demo_app.ui import application
from demo_app.ui.show_header import PAGES

SIZES = ((1280, 720), (1920, 1080))
KEPT = ("strong", "push-pull", "three-plates")
FAULT = "Something went wrong and the scene was reset: a needle of the model came loose at 17.25 s"


def spin(until=lambda: True, least_ms=30, most_ms=20000):
    clock = QElapsedTimer()
    clock.start()
    while clock.elapsed() < most_ms:
        QCoreApplication.processEvents()
        if clock.elapsed() > least_ms and until():
            return
    raise AssertionError("waited in vain")


def sheet_of():
    """The steps of the long sheet with the most to read, whose models are quick."""
    sheet = load(next(path for path in own_sheets() if path.stem == "fifteen-minutes"))
    steps = {step.id: step for step in sheet.steps}
    return dataclasses.replace(sheet, steps=tuple(steps[name] for name in KEPT))


def states(window):
    """Bring the window into each of its states; yields their names."""
    window.set_out(None)
    yield "welcome"
    window.act("next")
    for phase in ("open", "ask", "count", "bars", "reveal", "result"):
        if phase == "reveal":
            spin(lambda: not window.session.restoring and window.session.frame is not None)
            window.session.pause()
        if phase == "result":
            spin(lambda: window.conductor.outcome is not None)
        if phase in ("ask", "count"):
            for act in ("count.1", "count.2", "count.2", "count.3"):
                window.act(act)
        yield phase
        if phase != "result":
            window.act("next")
    window.header.notes.click()
    yield "result with notes"
    window.act("jump.0")
    yield "open with notes"
    window.header.notes.click()
    for act in ("blank", "freeze", "blank", "freeze"):
        window.act(act)
        spin(least_ms=360)
        yield f"after {act} {window.views[0].state}"
    window.act("strip")
    yield "strip"
    window.act("strip")
    window.act("jump")
    yield "strip of steps"
    window.act("strip")
    window.act("contingency")
    yield "strip of contingencies"
    window.act("strip")
    window.act("keys")
    yield "keys in a line"
    window.tell(FAULT)
    yield "fault"
    window.tell("")
    window.act("emergency")
    yield "emergency"
    window.act("emergency")
    for page in PAGES[1:]:
        window.show_page_called(page)
        yield f"page {page}"
    window.show_page_called("show")
    out = AudienceWindow()
    out.resize(640, 360)
    out.show()
    window.set_out(out)
    for name in ("open", "ask", "count"):
        yield f"two screens {name}"
        window.act("next")
    window.act("blank")
    yield "two screens blank"
    window.act("blank")
    window.act("controls")
    yield "two screens without controls"
    window.act("controls")
    window.set_out(None)
    out.close()


def bottom(area):
    """Scroll an area by a page; whether there was anything left to see."""
    bar = area.verticalScrollBar()
    before = bar.value()
    bar.setValue(before + bar.pageStep() // 2)
    return bar.value() != before


def seen(root, widget):
    """Where a widget's words can be seen, in pixels of `root`: what its scroll area shows."""
    box = overlap.needed(widget) & widget.visibleRegion().boundingRect()
    return box.translated(widget.mapTo(root, QPoint(0, 0)))


def overlapping(root):
    """Pairs of words of which one is seen on the other."""
    boxes = [(widget, QRectF(seen(root, widget))) for widget in overlap.texts(root)]
    return {
        (overlap.said(one), overlap.said(other))
        for (one, first), (other, second) in itertools.combinations(boxes, 2)
        if overlap.deep(first, second) and not (one.isAncestorOf(other) or other.isAncestorOf(one))
    }


def look(window, **named):
    """Tell what is cut and what lies over another, however far the pages are scrolled."""
    strip = getattr(window, "strip", None)
    # The strip lies over the controls: what is below it is not seen.
    root = strip if strip is not None and strip.is_open else window
    found = {"cut": set(), "overlapping": set(), "painted": set()}
    areas = [area for area in root.findChildren(QScrollArea) if area.isVisible()]
    for area in areas:
        area.verticalScrollBar().setValue(0)
    while True:
        QCoreApplication.processEvents()
        found["cut"] |= set(overlap.cut(root))
        found["overlapping"] |= overlapping(root)
        if not any(list(map(bottom, areas))):
            break
    if root is window and strip is not None:
        for part in (window.header.clock, window.show_page.view, window.show_page.mirror):
            if part.isVisible():
                found["painted"] |= set(overlap.painted(part))
    shown = {name: sorted(values) for name, values in found.items()}
    size = [window.width(), window.height()]
    sys.stdout.write(json.dumps({**named, "shown": size, **shown}) + "\n")


def show(width, height, scale, folder):
    """All states in one size of the screen."""
    size = (round(width / scale), round(height / scale))
    window = PresentWindow([], "ring", sheet_of())
    window.begin()
    window.resize(*size)
    window.show()
    diary = Diary(window, open_journal(None))
    spin(lambda: window.session.frame is not None and window.session.settled)
    choose = ChooseWindow(shows(None, None))
    choose.resize(*size)
    choose.show()
    named = f"{width}x{height}@{scale:g}"
    look(choose, state="choose", size=named)
    choose.close()
    for state in states(window):
        spin(lambda: window.session.settled)
        if folder != "-":
            name = f"{named}-{state}.png".replace(" ", "-")
            window.grab().save(str(Path(folder) / name))
        look(window, state=state, size=named)
    diary.close()
    window.close()


def main(folder):
    application.make(sys.argv[:1])
    scale = float(os.environ.get("QT_SCALE_FACTOR", "1"))
    for width, height in SIZES:
        show(width, height, scale, folder)


if __name__ == "__main__":
    main(*sys.argv[1:])
