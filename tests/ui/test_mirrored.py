"""From right to left: words and controls are mirrored, what is physical is not."""

import numpy as np
import pytest
from bar_scene import SCENE
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QImage, QPainter
from PySide6.QtWidgets import QApplication

from demo_app.scenes.scene import Section
from demo_app.scenes.settings import settings_of
from demo_app.ui import theme
from demo_app.ui.chart_view import ChartView
from demo_app.ui.fields import Choice, Tick, control_for
from demo_app.ui.marks import arrows
from demo_app.ui.picture_view import PictureView
from demo_app.ui.section_view import SectionView
from demo_app.ui.transport import Transport

LEFT, RIGHT = Qt.LayoutDirection.LeftToRight, Qt.LayoutDirection.RightToLeft


@pytest.fixture(params=[LEFT, RIGHT], ids=["left to right", "right to left"])
def direction(app, request):
    QApplication.setLayoutDirection(request.param)
    yield request.param
    QApplication.setLayoutDirection(LEFT)


def test_pictures_sections_and_charts_are_never_mirrored(direction, qtbot):
    for kind in (PictureView, SectionView, ChartView):
        made = kind()
        qtbot.addWidget(made)
        assert made.layoutDirection() == LEFT
    transport = Transport()
    qtbot.addWidget(transport)
    assert transport.scrub.layoutDirection() == transport.speed.layoutDirection() == LEFT
    assert transport.layoutDirection() == direction


def test_a_number_grows_to_the_right(direction, qtbot):
    number = next(one for one in settings_of(SCENE.settings) if isinstance(one.default, float))
    control = control_for(number)
    qtbot.addWidget(control)
    assert control.slider.layoutDirection() == LEFT


def warm(image):
    """Whether what glows lies in the right half of a picture."""
    shades = [
        sum(QColor(image.pixel(x, y)).red() for x in columns for y in range(image.height()))
        for columns in (range(image.width() // 2), range(image.width() // 2, image.width()))
    ]
    return shades[1] > shades[0]


def section():
    """A wall that is hot at its right end."""
    x, y = np.meshgrid(np.linspace(0, 40, 9), np.linspace(0, 3, 3))
    heat = np.where(x > 20, 500.0, 20.0)
    none = np.zeros_like(x)
    return Section(x, y, none, none, heat, none, "stress", 1.0)


def test_the_hot_end_of_a_wall_stays_where_it_is(direction, qtbot):
    view = SectionView()
    qtbot.addWidget(view)
    view.resize(600, 260)
    view.show_section(section(), "", fresh=True)
    shown = view.grab().toImage()
    assert warm(shown.copy(0, 100, 600, 80))


def test_arrows_of_a_pull_point_apart(direction):
    """Both heads of a pull lie outside its middle, whichever way words run."""
    image = QImage(200, 40, QImage.Format.Format_RGB32)
    image.fill(0)
    with QPainter(image) as painter:
        painter.setLayoutDirection(direction)
        painter.setPen(QColor(theme.TENSION))
        painter.setBrush(QColor(theme.TENSION))
        arrows(painter, QPointF(100, 20), QPointF(1, 0), 60, pull=True, width=4)
    high = [sum(QColor(image.pixel(x, y)).red() > 100 for y in range(40)) for x in range(200)]
    assert max(high[:70]) > max(high[90:110])
    assert max(high[130:]) > max(high[90:110])
    assert high == pytest.approx(high[::-1], abs=3)


def painted(widget, box):
    """Whether anything but the ground is painted in a part of a widget."""
    image = widget.grab(box.toRect()).toImage()
    colours = {image.pixel(x, y) for x in range(image.width()) for y in range(image.height())}
    return len(colours) > 1


def test_ticks_and_lists_are_mirrored_whole(direction, qtbot):
    tick = Tick("Short")
    qtbot.addWidget(tick)
    tick.resize(400, 40)
    near, far = QRectF(0, 0, 100, 40), QRectF(300, 0, 100, 40)
    assert painted(tick, near if direction == LEFT else far)
    assert not painted(tick, far if direction == LEFT else near)
    choice = Choice()
    qtbot.addWidget(choice)
    choice.setStyleSheet(theme.style_sheet(theme.Sizes.of(720)))
    choice.resize(400, 40)
    arrow, words = QRectF(350, 6, 40, 28), QRectF(10, 6, 40, 28)
    assert painted(choice, arrow if direction == LEFT else words)
    assert not painted(choice, words if direction == LEFT else arrow)
