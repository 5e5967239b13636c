"""The cut through the wall: glass where there is glass, and a crack as deep as it is."""

import numpy as np
import pytest
from PySide6.QtCore import QRectF, QSizeF

from demo_app.scenes.ring import SCENE, Settings
from demo_app.scenes.run import states
from demo_app.scenes.scene import Seam
from demo_app.ui.section_labels import covers, label_box
from demo_app.ui.section_picture import Drawn, edges, place, shade

ROWS, COLUMNS, SEAM = 5, 9, 4
WIDTH, HEIGHT = 90, 60


def opened(deep):
    """A plate of 80 by 40 pixels whose crack of ten pixels' width has parted `deep` rows."""
    x = np.tile(np.array([0.0, 10, 20, 40, 40, 50, 60, 70, 80]) + 5, (ROWS, 1))
    y = np.tile(np.linspace(10, 50, ROWS)[:, None], (1, COLUMNS))
    x[:deep, SEAM - 1] -= 5
    x[:deep, SEAM] += 5
    return Drawn(x, y, 1)


def glass(drawn, deep):
    _, found = shade(drawn, np.ones_like(drawn.x), (Seam(SEAM, deep),), WIDTH, HEIGHT)
    return found


def turned(drawn, *, across=False, along=False):
    rows = slice(None, None, -1) if across else slice(None)
    x, y = (drawn.x, HEIGHT - drawn.y) if across else (drawn.x, drawn.y)
    return Drawn(WIDTH - x if along else x, y, 1), rows


@pytest.mark.parametrize("deep", range(ROWS + 1))
def test_a_crack_is_as_deep_as_its_rows_have_parted(deep):
    found = glass(opened(deep), deep)
    column = found[:, 45]
    tip = 10 + 10 * min(deep, ROWS - 1)
    if deep == 0:
        assert column[10:50].all()
    else:
        assert not column[: tip - 3].any()
    assert column[tip:50].all()
    assert found[10:50, 20].all()
    assert not found[:10].any()


@pytest.mark.parametrize(("across", "along"), [(True, False), (False, True), (True, True)])
def test_a_crack_is_the_same_from_behind_and_upside_down(across, along):
    seen, rows = turned(opened(2), across=across, along=along)
    expected = glass(opened(2), 2)[rows, :: -1 if along else 1]
    np.testing.assert_array_equal(glass(seen, 2), expected)


@pytest.mark.parametrize(("deep", "pieces"), [(0, 1), (1, 1), (3, 1), (ROWS, 2)])
def test_only_a_crack_through_the_wall_parts_the_outline(deep, pieces):
    found = edges(opened(deep), (Seam(SEAM, deep),))
    assert len(found) == pieces
    points = np.concatenate(found)
    faces = points[(points[:, 0] >= 40) & (points[:, 0] <= 50)]
    reach = faces[faces[:, 1] < 50, 1].max(initial=10)
    assert reach == pytest.approx(10 + 10 * min(deep, ROWS - 2))


def test_outline_encloses_the_glass():
    """Area of the outline (the shoelace formula) against the pixels that are glass."""
    for deep in range(ROWS + 1):
        area = sum(
            abs(np.sum(x * np.roll(y, 1) - y * np.roll(x, 1))) / 2
            for x, y in (around.T for around in edges(opened(deep), (Seam(SEAM, deep),)))
        )
        assert area == pytest.approx(glass(opened(deep), deep).sum(), rel=0.02)


def test_the_ring_s_crack_is_drawn_as_it_runs():
    """Open behind its front, closed before it; parted pieces touch and do not overlap."""
    settings, seen = Settings(), []
    for state in states(SCENE, settings):
        crack = state.moment.crack
        if crack is None:
            continue
        section = SCENE.view(settings, state).section
        (seam,) = section.seams
        drawn = place(section, 600, 200)
        gap = drawn.x[:, seam.column] - drawn.x[:, seam.column - 1]
        assert gap.min() > -0.05
        assert np.abs(gap[seam.rows :]).max(initial=0) < 0.05
        if seen and crack.parted_s is None:
            assert (gap[: seam.rows] > 0.05).all()
        seen.append(seam.rows)
        if crack.parted_s is not None and state.time_s > crack.parted_s + 0.5:
            break
    assert gap.min() == pytest.approx(0, abs=1e-6)
    assert gap.max() > 3
    assert seen == sorted(seen)
    assert len(set(seen)) > 8
    assert seen[-1] == section.x_mm.shape[0]


def test_labels_of_an_upright_foot_cover_neither_each_other_nor_the_glass():
    # The foot of a flask: columns run from left to right, in the lower left corner of the room.
    x = np.tile(np.linspace(20.0, 60, ROWS)[:, None], (1, COLUMNS))
    drawn = Drawn(x, np.tile(np.linspace(198.0, 20, COLUMNS), (ROWS, 1)), 1)
    room, size, taken = QRectF(0, 0, 400, 200), QSizeF(120, 22), []
    for row in (0, ROWS - 1):
        taken.append(label_box(drawn, row * COLUMNS, size, room, taken, 8.0))
    assert not taken[0].intersects(taken[1])
    for box in taken:
        assert not covers(box, drawn)
        assert room.contains(box)


def test_a_label_keeps_off_the_wall_between_its_nodes():
    drawn = Drawn(np.array([[0.0, 400], [0, 400]]), np.array([[90.0, 90], [110, 110]]), 1)
    assert covers(QRectF(110, 85, 120, 10), drawn)
    assert covers(QRectF(110, 92, 120, 22), drawn)
    assert not covers(QRectF(110, 70, 120, 15), drawn)


def test_a_label_of_a_level_wall_stands_on_the_side_of_its_place():
    x = np.tile(np.linspace(20.0, 380, COLUMNS), (ROWS, 1))
    drawn = Drawn(x, np.tile(np.linspace(90.0, 110, ROWS)[:, None], (1, COLUMNS)), 1)
    room, size = QRectF(0, 0, 400, 200), QSizeF(120, 22)
    upper = label_box(drawn, 4, size, room, [], 8.0)
    lower = label_box(drawn, (ROWS - 1) * COLUMNS + 4, size, room, [upper], 8.0)
    assert upper.bottom() == 82
    assert lower.top() == 118


def test_a_wall_that_turns_round_is_filled_to_its_end():
    # A quarter of a ring from pointing down to level, radii 30 and 45 pixels.
    angle = np.linspace(np.pi, np.pi / 2, COLUMNS)
    radius = np.linspace(45.0, 30.0, ROWS)[:, None]
    drawn = Drawn(50 + radius * np.cos(angle), 55 - radius * np.sin(angle), 1)
    values, found = shade(drawn, np.broadcast_to(radius, drawn.x.shape), (), WIDTH, HEIGHT)
    x, y = np.meshgrid(np.arange(WIDTH) + 0.5, np.arange(HEIGHT) + 0.5)
    away = np.hypot(x - 50, y - 55)
    quarter = (x < 49) & (y < 54)
    # Chords of an arc of 11 degrees lie up to half a percent within it.
    assert found[quarter & (away > 31) & (away < 43.5)].all()
    assert not found[(away < 29) | (away > 46) | (x > 52)].any()
    inner = found & (away > 31) & (away < 44)
    np.testing.assert_allclose(values[inner], away[inner], atol=1.2)


def test_a_disk_is_filled_to_its_rim():
    u, v = np.meshgrid(np.linspace(-1, 1, 17), np.linspace(-1, 1, 17))
    x, y = u * np.sqrt(1 - v**2 / 2), v * np.sqrt(1 - u**2 / 2)
    drawn = Drawn(45 + 25 * x, 30 + 25 * y, 1)
    _, found = shade(drawn, x, (), WIDTH, HEIGHT)
    away = np.hypot(*np.meshgrid(np.arange(WIDTH) + 0.5 - 45, np.arange(HEIGHT) + 0.5 - 30))
    assert found[away < 24].all()
    assert not found[away > 26].any()
