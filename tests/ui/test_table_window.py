"""The light table in the window: its light in two places, its choices, its chart."""

import numpy as np
import pytest
from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtGui import QColor

from demo_app.optics.instrument import Instrument
from demo_app.optics.strip import colour_strip
from demo_app.scenes import catalogue
from demo_app.scenes.scene import Chart, Span
from demo_app.scenes.settings import settings_of
from demo_app.shells.present import PresentWindow
from demo_app.ui import theme
from demo_app.ui.fields import SeveralControl, control_for
from demo_app.ui.playing import Session
from demo_app.ui.ranges_view import RangesView, _round_step

TABLE = catalogue.scene("light-table")
TEXTS = {"one": "one", "here": "here", "nm": "retardation"}


def bytes_of(widget):
    image = widget.grab().toImage()
    return np.array(
        [
            [QColor(image.pixel(x, y)).getRgb()[:3] for x in range(image.width())]
            for y in range(image.height())
        ]
    )


@pytest.fixture
def table(worker, settle):
    made = Session(TABLE, worker)
    made.size = (160, 90)
    made.begin()
    settle(made)
    yield made
    made.close()


def test_what_is_put_in_goes_into_the_settings(table, settle):
    table.set_light(lamp="sodium", polarizer_deg=20.0)
    settle(table)
    assert (table.settings.lamp, table.settings.turn_deg) == ("sodium", 20.0)
    assert (table.frame.instrument.lamp, table.frame.instrument.polarizer_deg) == ("sodium", 20.0)
    table.set_setting("lamp", "daylight")
    table.set_light(gain=2.0)
    settle(table)
    # A gain changes the gain alone.
    assert table.settings.lamp == table.frame.instrument.lamp == "daylight"
    assert table.frame.instrument.gain == 2.0
    assert table.light == table.frame.instrument


def test_button_builds_it_up(table, settle):
    filters = []
    for _ in range(4):
        table.act(TABLE.actions[0])
        settle(table)
        table.pause()
        settle(table)
        filters.append(table.frame.instrument.filters)
    assert filters == [0, 1, 2, 2]
    assert len(table.frame.stage.pieces) >= 4


def test_the_window_shows_the_ranges_and_its_keys_work(app, qtbot, settle):
    window = PresentWindow([TABLE], "light-table")
    qtbot.addWidget(window)
    window.begin()
    window.resize(1280, 720)
    window.show()
    window.setFocus()
    settle(window.session)
    assert window.stage.ranges.isVisible()
    assert not window.stage.chart.isVisible()
    assert "toughened edge-on" in window.stage.ranges.accessibleName()
    qtbot.keyClick(window, Qt.Key.Key_T)
    QCoreApplication.processEvents()
    settle(window.session)
    assert window.session.settings.tint_plate
    assert window.controls.light.controls["tint"].value()
    assert window.controls.controls["tint_plate"].value()
    qtbot.keyClick(window, Qt.Key.Key_BracketRight)
    qtbot.keyClick(window, Qt.Key.Key_T)
    QCoreApplication.processEvents()
    settle(window.session)
    assert window.session.settings.turn_deg == 50
    assert not window.session.settings.tint_plate
    window.session.set_setting("built", "lamp")
    settle(window.session)
    assert not window.stage.ranges.isVisible()
    window.close()


def test_only_so_many_can_be_ticked(qtbot, count):
    setting = next(s for s in settings_of(TABLE.settings) if s.name == "samples")
    control = control_for(setting)
    assert isinstance(control, SeveralControl)
    qtbot.addWidget(control)
    chosen = count(control.chosen)
    assert not control.checks["ring"].isEnabled()
    control.checks["dish"].click()
    assert control.checks["ring"].isEnabled()
    control.checks["ring"].click()
    assert [value.split(",")[-1] for _, value in chosen] == ["bubble", "ring"]
    assert setting.check(control.value()) == chosen[-1][1]
    control.show_value("plain")
    assert not control.checks["plain"].isEnabled()
    assert len(chosen) == 2


def test_ranges_stand_over_their_colours(qtbot):
    view = RangesView()
    qtbot.addWidget(view)
    view.resize(600, 160)
    view.set_type_size(14)
    spans = (Span("one", 0.0, 500.0, 1000.0), Span("here", 250.0, 250.0, 250.0))
    chart = Chart("nm", "nm", "one", "", (), spans=spans, colours=True, reach=1000.0)
    view.show_ranges(chart, TEXTS, Instrument())
    seen = bytes_of(view).astype(int)
    bar = (seen == QColor(theme.COMPRESSION).getRgb()[:3]).all(axis=2)
    columns = np.flatnonzero(bar.any(axis=0))
    left, right = columns[0], columns[-1]
    # The line of the one place stands at a quarter of the way.
    line = (seen == QColor(theme.ALERT).getRgb()[:3]).all(axis=2)
    place = np.flatnonzero(line.any(axis=0)).mean()
    assert (place - left) / (right - left) == pytest.approx(0.25, abs=0.01)
    # Somewhere below the bar lies a row of the strip's own colours.
    strip = colour_strip(Instrument(), chart.reach).astype(int)[0]
    wanted = [strip[round(share * 399)] for share in (0.1, 0.45, 0.6, 0.9)]
    at = [round(left + share * (right - left)) for share in (0.1, 0.45, 0.6, 0.9)]
    apart = np.abs(seen[:, at] - np.array(wanted)).max(axis=(1, 2))
    assert apart.min() < 25
    assert "one 0–1" in view.accessibleName()


@pytest.mark.parametrize(
    ("reach", "most", "step"), [(1200, 12, 100), (630, 5, 200), (6000, 4, 2000)]
)
def test_ticks_are_round(reach, most, step):
    assert _round_step(reach, most) == pytest.approx(step)
    assert reach / _round_step(reach, most) <= most
