"""Names of a chart's levels, and points of it that a hand drags."""

import dataclasses
import itertools

import bar_scene
import numpy as np
import pytest
from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QApplication

from demo_app.scenes import catalogue
from demo_app.scenes.scene import Chart, Curve, Handle
from demo_app.shells.present import PresentWindow
from demo_app.ui.chart_levels import Box, boxes

ROOM = Box(50, 0, 450, 140)
FALLING = (np.array([50.0, 450.0]), np.array([10.0, 130.0]))


def covers_curve(box, curve):
    x, y = curve
    at = np.linspace(box.left, box.right, 500)
    height = np.interp(at, x, y)
    return bool(((height > box.top) & (height < box.bottom)).any())


@pytest.mark.parametrize("apart", [0.0, 2.0, 7.0, 14.0, 60.0])
@pytest.mark.parametrize("first", [4.0, 30.0, 80.0, 138.0])
@pytest.mark.parametrize("count", [1, 2, 3, 4])
def test_names_never_cover_each_other_and_stay_inside(first, apart, count):
    levels = [min(first + apart * index, 139.0) for index in range(count)]
    found = boxes(levels, [(110.0, 17.0)] * count, ROOM, [FALLING])
    for one, other in itertools.combinations(found, 2):
        assert not one.covers(other)
    for box in found:
        assert ROOM.left <= box.left
        assert box.right <= ROOM.right
        assert ROOM.top <= box.top
        assert box.bottom <= ROOM.bottom


@pytest.mark.parametrize("level", [20.0, 70.0, 120.0])
def test_a_name_keeps_clear_of_a_curve(level):
    (box,) = boxes([level], [(110.0, 17.0)], ROOM, [FALLING])
    assert not covers_curve(box, FALLING)


@pytest.mark.parametrize("size", [(1280, 720), (1920, 1080)])
@pytest.mark.parametrize(("name", "at"), [("cooling", 60.0), ("cooling", 300.0), ("toughen", 20.0)])
def test_level_names_of_the_scenes_do_not_overlap(app, qtbot, settle, size, name, at):
    made = PresentWindow([catalogue.load(name)], name)
    made.begin()
    qtbot.addWidget(made)
    made.resize(*size)
    made.show()
    qtbot.waitUntil(lambda: made.stage.chart.ready)
    made.session.scrub(at)
    settle(made.session)
    over = made.stage.chart._over
    qtbot.waitUntil(lambda: len(over.boxes()) == 2)
    (_, _, one), (_, _, other) = over.boxes()
    assert not one.covers(other)
    for box in (one, other):
        assert box.top >= over._axes.box.top()
        assert box.bottom <= over._axes.box.bottom()
        assert box.right <= over.width()
    made.close()


def chart(rate):
    x = np.linspace(0, 10, 11)
    curve = Curve("bending", x, rate * x)
    handles = (Handle("start", 2.0, 2 * rate), Handle("end", 10.0, 10 * rate))
    return Chart("bending", "h", "bending", "C", (curve,), (), handles)


@pytest.fixture
def window(app, qtbot, settle):
    def view(settings, state):
        return dataclasses.replace(
            bar_scene.view(settings, state), chart=chart(settings.rate_MPa_s)
        )

    def drag(settings, state, name, x, y):
        return dataclasses.replace(settings, rate_MPa_s=min(max(y / max(x, 0.1), 1.0), 20.0))

    made = PresentWindow([dataclasses.replace(bar_scene.SCENE, view=view, drag=drag)], "bar")
    made.begin()
    qtbot.addWidget(made)
    made.resize(1280, 720)
    made.show()
    settle(made.session)
    qtbot.waitUntil(lambda: made.stage.chart.ready and len(made.stage.chart._over._handles) == 2)
    settle(made.session)
    qtbot.wait(50)
    yield made
    made.close()


def mouse(over, kind, at):
    left, none = Qt.MouseButton.LeftButton, Qt.MouseButton.NoButton
    up = kind == QEvent.Type.MouseButtonRelease
    moving = kind == QEvent.Type.MouseMove
    place = QPointF(over.mapToGlobal(at.toPoint()))
    keys = Qt.KeyboardModifier.NoModifier
    event = QMouseEvent(kind, at, place, none if moving else left, none if up else left, keys)
    QApplication.sendEvent(over, event)


def test_a_point_is_dragged_and_the_axes_stand_still_meanwhile(window, qtbot, settle):
    over, session = window.stage.chart._over, window.session
    axes = over._axes
    taken = over.place(over._handles[0])
    mouse(over, QEvent.Type.MouseButtonPress, taken + QPointF(8, -6))
    for step in range(1, 21):
        mouse(over, QEvent.Type.MouseMove, taken + QPointF(8, -6 - step))
    settle(session)
    wanted = axes.value(taken - QPointF(0, 20))
    assert session.settings.rate_MPa_s == pytest.approx(wanted[1] / wanted[0], rel=0.02)
    assert over._axes == axes
    assert over.place(over._handles[0]).y() == pytest.approx(taken.y() - 20, abs=1.5)
    mouse(over, QEvent.Type.MouseButtonRelease, taken)
    assert over._axes != axes
    assert window.controls.controls["rate_MPa_s"].value() == pytest.approx(
        session.settings.rate_MPa_s, abs=0.05
    )


def test_a_point_dragged_out_of_the_window_is_clamped(window, settle):
    over, session = window.stage.chart._over, window.session
    mouse(over, QEvent.Type.MouseButtonPress, over.place(over._handles[1]))
    for at in (QPointF(-4000, -3000), QPointF(9000, 5000), QPointF(0, 0)):
        mouse(over, QEvent.Type.MouseMove, at)
        settle(session)
        assert 1.0 <= session.settings.rate_MPa_s <= 20.0
    mouse(over, QEvent.Type.MouseButtonRelease, QPointF(0, 0))
    assert not window.controls.line.isVisible()


def test_a_press_beside_the_points_does_nothing(window, settle):
    over, session = window.stage.chart._over, window.session
    middle = (over.place(over._handles[0]) + over.place(over._handles[1])) / 2
    mouse(over, QEvent.Type.MouseButtonPress, middle)
    mouse(over, QEvent.Type.MouseMove, middle + QPointF(0, 60))
    assert not over.holding
    assert session.settings == bar_scene.BarSettings()
