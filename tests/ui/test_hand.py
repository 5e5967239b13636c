"""The ring of a hand, brightening, a scene without a section, and keys for a scene's buttons."""

import dataclasses
import itertools

import bar_scene
import pytest
from PySide6.QtCore import QPoint, Qt

from demo_app.scenes.scene import Action, Mark
from demo_app.shells.present import PresentWindow
from demo_app.ui import theme
from demo_app.ui.field import Field, outlines
from demo_app.ui.playing import FAINT_GAIN

Key = Qt.Key


@pytest.fixture
def open_scene(app, qtbot, settle):
    opened = []

    def make(**changes):
        made = PresentWindow([dataclasses.replace(bar_scene.SCENE, **changes)], "bar")
        made.begin()
        qtbot.addWidget(made)
        made.resize(1280, 720)
        made.show()
        made.setFocus()
        opened.append(made)
        settle(made.session)
        return made

    yield make
    for made in opened:
        made.close()


def yellow(image, place):
    """Whether a pixel has the ring's hue."""
    colour = image.pixelColor(place)
    return colour.saturation() > 60 and 30 <= colour.hue() <= 60


def test_the_ring_follows_the_hand_at_once_and_is_as_wide_as_the_spot(open_scene, qtbot):
    window = open_scene(
        point=lambda settings, state, place: state, reach_mm=lambda settings: settings.height_mm
    )
    picture = window.stage.picture
    window.session.pause()
    at = picture.rect().center() + QPoint(-150, 40)
    qtbot.mousePress(picture, Qt.MouseButton.LeftButton, pos=at)
    field = Field.of(picture._stage, picture.width(), picture.height())
    radius = round(field.length(bar_scene.BarSettings().height_mm / 2))
    image = picture.grab().toImage()
    assert yellow(image, at + QPoint(radius, 0))
    assert yellow(image, at - QPoint(0, radius))
    assert not yellow(image, at + QPoint(radius // 2, 0))
    qtbot.mouseRelease(picture, Qt.MouseButton.LeftButton, pos=at)
    window.session.pause()


def test_no_ring_where_a_finger_does_nothing(open_scene, qtbot):
    picture = open_scene().stage.picture
    assert not picture.hasMouseTracking()
    assert picture._hand_mm is None


def test_a_tip_that_nobody_leads_has_its_ring_without_a_word(open_scene):
    def view(settings, state):
        shown = bar_scene.view(settings, state)
        return dataclasses.replace(shown, marks=(Mark("touch", 0.0, 0.0, 20.0),))

    picture = open_scene(view=view).stage.picture
    image = picture.grab().toImage()
    field = Field.of(picture._stage, picture.width(), picture.height())
    assert yellow(image, field.point(10.0, 0.0).toPoint())


def test_one_key_or_click_brightens_and_the_stage_says_so(open_scene, qtbot, settle):
    window = open_scene()
    session = window.session
    qtbot.keyClick(window, Key.Key_G)
    qtbot.waitUntil(lambda: session.instrument.gain == FAINT_GAIN)
    settle(session)
    assert window.controls.transport.brighten.isChecked()
    assert window.controls.light.controls["gain"].value() == FAINT_GAIN
    assert window.stage.picture._gain == FAINT_GAIN
    window.controls.transport.brighten.click()
    settle(session)
    assert session.instrument.gain == 1.0


def test_digits_press_the_scenes_buttons(open_scene, qtbot):
    def rate(value):
        return lambda settings, state: dataclasses.replace(settings, rate_MPa_s=value)

    actions = tuple(Action(f"a{i}", f"Act {i}", rate(float(i))) for i in (1, 2, 3))
    window = open_scene(actions=actions)
    for digit in (3, 1, 2):
        qtbot.keyClick(window, Key(Key.Key_0 + digit))
        qtbot.waitUntil(lambda: window.session.settings.rate_MPa_s == digit)  # noqa: B023
    qtbot.keyClick(window, Key.Key_9)
    assert window.session.settings.rate_MPa_s == 2
    window.session.pause()


def test_a_scene_without_a_section_has_a_larger_picture(open_scene):
    def view(settings, state):
        return dataclasses.replace(bar_scene.view(settings, state), section=None)

    with_one, without = open_scene(), open_scene(view=view)
    # Shares of the stage: the header has its row above it.
    assert with_one.stage.picture.height() >= 0.45 * with_one.stage.height()
    assert without.stage.picture.height() >= 0.62 * without.stage.height()
    assert without.stage.chart.height() >= 5 * theme.Sizes.of(720).stage


def test_a_scene_that_cannot_break_offers_no_replay(open_scene):
    readings = tuple(one for one in bar_scene.SCENE.readings if one.name != "break_at_s")

    def read(settings, state):
        found = bar_scene.read(settings, state)
        return {one.name: found[one.name] for one in readings}

    assert open_scene().controls.transport.replay.isVisible()
    assert not open_scene(readings=readings, read=read).controls.transport.replay.isVisible()


def test_tab_goes_through_the_panel_from_top_to_bottom(open_scene, qtbot):
    """Each widget that takes the focus by Tab comes after all that stand above it."""
    window = open_scene()
    qtbot.waitUntil(lambda: window.stage.chart.ready)
    first = at = window.controls.transport.play
    order = []
    while at is not first or not order:
        if at.isVisible() and at.isEnabled() and at.focusPolicy() & Qt.FocusPolicy.TabFocus:
            order.append(at)
        at = at.nextInFocusChain()
    # The window itself has the focus while the keys work the session.
    order.remove(window)
    assert all(
        any(part.isAncestorOf(one) for part in (window.header, window.controls)) for one in order
    )
    order = [one for one in order if window.controls.isAncestorOf(one)]
    tops = [one.mapTo(window, QPoint(0, 0)).y() for one in order]
    assert len(order) > 10
    assert all(after > before - 8 for before, after in itertools.pairwise(tops))


def test_pieces_edge_to_edge_have_one_outline():
    state = dataclasses.replace(bar_scene.start(bar_scene.BarSettings()), broke_at_s=1.0)
    stage = bar_scene.view(bar_scene.BarSettings(), state).stage
    field = Field.of(stage, 800, 400)
    assert len(outlines(stage.pieces, field)) == 2
    whole = [dataclasses.replace(piece, x_mm=0.0) for piece in stage.pieces]
    (path,) = outlines(whole, field)
    assert path.boundingRect().width() == pytest.approx(field.length(160.0))
    assert not path.contains(field.point(81.0, 0.0))
    assert path.contains(field.point(0.0, 0.0))
