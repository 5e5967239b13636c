"""Outlines on a picture that is drawn without a window."""

import numpy as np

from demo_app.content.lines import INK
from demo_app.content.pictures import draw, drawn
from demo_app.optics.retardation import Placed, RetardationMap, Stage
from demo_app.scenes.scene import Outline, View

SIZE = (200, 100)


def plain_plate():
    zero = np.zeros((2, 2), np.float32)
    half = np.full(2, 20.0)
    plate = RetardationMap(zero, zero, np.array([-1.0, 1.0]), np.array([-40.0, 40.0]), half, False)
    return Stage((Placed(plate),), 100.0, 50.0)


def test_a_dark_piece_is_seen_by_its_outline_alone():
    stage = plain_plate()
    assert draw(stage, SIZE)[..., :3].max() == 0
    picture = drawn(View(stage), SIZE)[..., 0]
    # 80 mm x 40 mm at 2 px per mm, in the middle.
    assert (picture[10, 21:179] == INK).all()
    assert (picture[90, 21:179] == INK).all()
    assert (picture[11:89, 20] == INK).all()
    assert (picture[11:89, 180] == INK).all()
    assert picture[50, 100] == 0


def test_a_crack_is_drawn_open_and_a_shard_closed():
    x, y = np.array([-10.0, 0.0, 10.0]), np.array([0.0, 5.0, 0.0])
    plain = drawn(View(plain_plate()), SIZE)[..., 0]
    crack = drawn(View(plain_plate(), outlines=(Outline("crack", x, y),)), SIZE)[..., 0]
    shard = drawn(View(plain_plate(), outlines=(Outline("shard", x, y),)), SIZE)[..., 0]
    assert crack[45, 90] == INK != plain[45, 90]
    assert crack[50, 100] == 0
    assert shard[50, 100] == INK


def test_lines_outside_the_picture_are_left_out():
    far = Outline("crack", np.array([500.0, 600.0]), np.array([0.0, 900.0]))
    picture = drawn(View(plain_plate(), outlines=(far,)), SIZE)
    assert np.array_equal(picture, drawn(View(plain_plate()), SIZE))
