"""The projector card: what it shows is there, true and seen."""

import numpy as np
import pytest
from PySide6.QtGui import QFont, QFontMetricsF, QImage

from demo_app.content.projector import CAPITAL, STEPS_NM, Hall, grey_steps
from demo_app.optics.instrument import Instrument
from demo_app.ui import theme, words
from demo_app.ui.projector_card import ProjectorCard

SIZES = [(1280, 720), (1920, 1080)]


def grabbed(widget):
    image = widget.grab().toImage().convertToFormat(QImage.Format.Format_RGB32)
    flat = np.frombuffer(image.constBits(), np.uint8)
    return flat.reshape(image.height(), image.bytesPerLine() // 4, 4)[:, : image.width()].copy()


@pytest.fixture
def card(app, qtbot):
    made = ProjectorCard()
    qtbot.addWidget(made)
    return made


@pytest.mark.parametrize("size", SIZES, ids=str)
def test_grey_steps_and_edges_are_there(card, size):
    card.resize(*size)
    card.set_hall(Hall(2.0, 9.0))
    seen = grabbed(card)
    colours = {tuple(colour) for colour in seen[..., 2::-1].reshape(-1, 3)}
    for gain in (1.0, 10.0):
        for rgb in grey_steps(Instrument(), gain):
            assert tuple(rgb) in colours
    assert len(STEPS_NM) == 6
    assert (255, 255, 255) in colours
    # Frames at 0, 2.5 and 5 %: on the way in from the left, at half height, one after the other.
    row = seen[size[1] // 2, : round(0.06 * size[0]), :3].max(axis=1) > 60
    found = np.flatnonzero(row)
    for share in (0.0, 0.025, 0.05):
        assert np.abs(found - share * size[0]).min() <= 1


@pytest.mark.parametrize("size", SIZES, ids=str)
def test_what_is_not_known_is_said(card, size):
    card.resize(*size)
    assert words.text("projector.unknown") in card.accessibleName()
    without = grabbed(card)
    card.set_hall(Hall(2.0, 9.0))
    assert words.text("projector.unknown") not in card.accessibleName()
    assert "9 m" in card.accessibleName()
    assert (grabbed(card) != without).any()


@pytest.mark.parametrize(
    "hall", [Hall(), Hall(2.0, 9.0), Hall(1.8, 25.0), Hall(0.5, 60.0)], ids=str
)
@pytest.mark.parametrize("size", [(854, 480), *SIZES], ids=str)
def test_nothing_is_cut_off(card, size, hall):
    card.resize(*size)
    card.set_hall(hall)
    seen = grabbed(card)
    # Inside the innermost frame there is a margin that nothing reaches.
    left, right = round(0.053 * size[0]), round(0.065 * size[0])
    for columns in (slice(left, right), slice(size[0] - right, size[0] - left)):
        assert seen[round(0.08 * size[1]) : round(0.92 * size[1]), columns, :3].max() < 40


def test_capitals_are_as_high_as_assumed(app):
    font = QFont(theme.FONT)
    font.setPixelSize(1000)
    assert QFontMetricsF(font).tightBoundingRect("H").height() == pytest.approx(
        1000 * CAPITAL, rel=0.01
    )
