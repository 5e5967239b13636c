"""Whole pictures: darkness, places, mirror images, angles, speed-ups that must not be seen."""

import dataclasses

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from optics_reference import ciede2000

from demo_app.optics.fading import contrast
from demo_app.optics.instrument import Instrument
from demo_app.optics.picture import colour, peak_nm, point_reading
from demo_app.optics.retardation import Placed, RetardationMap, Stage
from demo_app.optics.sampling import plan_for, view_of
from demo_app.optics.table import exact_signal

BLACK = [0, 0, 0, 255]


def piece(
    v1=lambda x, t: 0 * x,
    v2=lambda x, t: 0 * x,
    *,
    length=40.0,
    half_width=lambda x: 10 + 0 * x,
    rows=24,
    columns=50,
    mirrored=True,
):
    """A map from functions of x (mm) and the fraction t of the half width, graded to the limb."""
    across = 1 - (1 - np.linspace(0, 1, rows)) ** 1.5
    if not mirrored:
        across = np.concatenate([-across[:0:-1], across])
    along = np.linspace(-length / 2, length / 2, columns)
    x, t = np.meshgrid(along, across)
    return RetardationMap(
        np.asarray(v1(x, t), np.float32),
        np.asarray(v2(x, t), np.float32),
        across,
        along,
        np.asarray(half_width(along), float),
        mirrored,
    )


def bulge(x):
    return 10 - 6 * (x / 20) ** 2


def wavy(**rest):
    """A piece with smooth stress: v1 even, v2 odd across its axis."""
    return piece(
        lambda x, t: 300 * np.cos(x / 8) * (1 - t**2),
        lambda x, t: 250 * np.sin(x / 6) * t,
        **rest,
    )


def stage(*pieces, width=48.0, height=24.0, centre=(0.0, 0.0)):
    placed = tuple(p if isinstance(p, Placed) else Placed(p) for p in pieces)
    return Stage(placed, width, height, centre)


@pytest.mark.parametrize("mirrored", [True, False])
def test_no_stress_is_dark(mirrored):
    picture = colour(stage(piece(mirrored=mirrored)), Instrument(gain=50), 96, 48)
    assert (picture == BLACK).all()


def test_an_empty_stage_is_the_bare_field():
    empty = Stage((), 10.0, 10.0)
    assert (colour(empty, Instrument(), 9, 7) == BLACK).all()
    bright = colour(empty, Instrument(analyser_deg=0), 9, 7)
    assert (bright == bright[0, 0]).all()
    assert bright[0, 0, :3].min() > 220


def test_outside_is_the_bare_field_for_a_tint_plate_too():
    tint = Instrument(tint_plate_nm=565)
    picture = colour(stage(wavy(half_width=bulge)), tint, 480, 240)
    bare = colour(Stage((), 10.0, 10.0), tint, 1, 1)[0, 0]
    view = view_of(stage(wavy()), 480, 240)
    x, y = np.meshgrid(view.x_mm(np.arange(480) + 0.5), view.y_mm(np.arange(240) + 0.5))
    outside = (np.abs(x) > 20) | (np.abs(y) > np.where(np.abs(x) < 20, bulge(x), 0) + 0.06)
    assert outside.sum() > 1000
    assert (picture[outside] == bare).all()


# A piece squeezed along a polarizer's direction stays dark between crossed polarizers; at 45
# degrees to them it is as bright as can be (Theocaris and Gdoutos 1979).
@pytest.mark.parametrize("axis", [0.0, 30.0, 45.0, -60.0, 90.0])
def test_axis_along_a_polarizer_is_dark(axis):
    angle = np.radians(2 * axis)
    squeezed = stage(
        piece(
            lambda x, t: 250 * np.cos(angle) + 0 * x,
            lambda x, t: 250 * np.sin(angle) + 0 * x,
            mirrored=False,
        )
    )
    for polarizer in (axis, axis + 90):
        assert colour(squeezed, Instrument(polarizer_deg=polarizer), 48, 24)[..., :3].max() <= 1
    bright = colour(squeezed, Instrument(polarizer_deg=axis + 45), 48, 24)
    assert bright[12, 24, :3].min() > 200


def test_positive_v2_turns_the_axis_up_to_the_right():
    # With the polarizer at 30 degrees an axis at +30 is dark and one at -30 is not.
    angle = np.radians(60)
    halves = piece(
        lambda x, t: 250 * np.cos(angle) + 0 * x, lambda x, t: 250 * np.sin(angle) + 0 * x
    )
    picture = colour(stage(halves), Instrument(polarizer_deg=30), 96, 48)
    assert picture[10:20, 20:70, :3].max() <= 1
    assert picture[28:38, 20:70, :3].min() > 100


@pytest.mark.parametrize("half_width", [bulge, lambda x: 10 + 0 * x])
@pytest.mark.parametrize("size", [(96, 48), (97, 49), (480, 200), (60, 110)])
@pytest.mark.parametrize("centre", [(0.0, 0.0), (3.3, 4.7), (-9.0, -8.1)])
def test_a_mirrored_piece_looks_like_the_whole_one(half_width, size, centre):
    half = wavy(half_width=half_width)
    whole = wavy(half_width=half_width, mirrored=False)
    for instrument in (Instrument(), Instrument(polarizer_deg=20, quarter_wave=True)):
        one = colour(stage(half, centre=centre), instrument, *size).astype(int)
        other = colour(stage(whole, centre=centre), instrument, *size).astype(int)
        different = np.abs(one - other).max(axis=-1)
        # Rounding may tip a pixel into the next cell of the table, which differs by a little.
        assert different.max() <= 6
        assert (different > 0).mean() < 0.01


def test_columns_with_a_straight_outline_are_not_told_apart():
    # The long straight middle is sampled by whole rows, the shoulders pixel by pixel.
    def shoulders(x):
        return np.clip(20 - np.abs(x), 2, 10)

    plan = plan_for(stage(wavy(half_width=shoulders)), 960, 480)
    assert plan.pieces[0] is not None
    assert [block.straight for block in plan.pieces[0].blocks] == [False, True, False]
    bent = stage(wavy(half_width=lambda x: shoulders(x) + 1e-4 * np.cos(x)))
    assert not any(block.straight for block in plan_for(bent, 960, 480).pieces[0].blocks)
    one = colour(stage(wavy(half_width=shoulders)), Instrument(), 960, 480).astype(int)
    other = colour(bent, Instrument(), 960, 480).astype(int)
    assert (np.abs(one - other).max(axis=-1) > 8).mean() < 1e-3


@given(st.floats(-15, 15), st.floats(-8, 8), st.booleans())
@settings(max_examples=25, deadline=None)
def test_a_piece_lies_where_it_was_placed(x_mm, y_mm, mirrored):
    lit = piece(
        lambda x, t: 260 + 0 * x, length=6, half_width=lambda x: 2 + 0 * x, mirrored=mirrored
    )
    picture = colour(stage(Placed(lit, x_mm, y_mm), width=48, height=27), Instrument(), 480, 270)
    rows, columns = np.nonzero(picture[..., 1] > 100)
    # 10 px/mm; y counts upward, rows downward; places are good to half a pixel.
    for found, expected, low, high in (
        (columns, 240 + 10 * x_mm, 30, 480),
        (rows, 135 - 10 * y_mm, 20, 270),
    ):
        assert abs(found.min() - max(0, expected - low)) <= 1
        assert abs(found.max() + 1 - min(high, expected + low)) <= 1


def test_colour_of_a_pixel_is_that_of_its_place():
    shown = stage(wavy(half_width=bulge, rows=40, columns=120), centre=(1.0, -0.5))
    instrument = Instrument(polarizer_deg=25, tint_plate_nm=565)
    width, height = 640, 320
    picture = colour(shown, instrument, width, height)
    view = view_of(shown, width, height)
    rng = np.random.default_rng(6)
    seen, exact = [], []
    for row, column in zip(rng.integers(0, height, 400), rng.integers(0, width, 400), strict=True):
        # The piece's axis is moved to the next half row.
        moved = (round(2 * view.row(0.0)) / 2 - view.row(0.0)) / view.px_per_mm
        read = point_reading(
            shown, float(view.x_mm(column + 0.5)), float(view.y_mm(row + 0.5)) + moved
        )
        if read is not None:
            seen.append(picture[row, column, 2::-1] / 255)
            exact.append(exact_signal(instrument, np.array(read[0]), np.array(read[1])))
    assert len(seen) > 150
    assert ciede2000(np.array(seen), np.array(exact)).max() < 1.5


def test_the_field_of_view_fits_both_ways():
    assert view_of(Stage((), 100.0, 50.0), 1000, 1000).px_per_mm == 10
    assert view_of(Stage((), 100.0, 50.0), 3000, 500).px_per_mm == 10


def test_a_later_piece_hides_an_earlier_one_only_where_it_is():
    wide = piece(lambda x, t: 260 + 0 * x, half_width=lambda x: 10 + 0 * x)
    ball = piece(length=8, half_width=lambda x: np.sqrt(np.maximum(16 - x**2, 0)), columns=81)
    picture = colour(stage(wide, Placed(ball, 5.0, 2.0)), Instrument(), 480, 240)
    assert (picture[100, 290, :3] == 0).all()
    assert picture[100 - 36, 290 - 36, 1] > 200
    assert picture[100 + 36, 290 + 36, 1] > 200


def test_a_piece_out_of_sight_is_left_out():
    away = stage(Placed(wavy(), 500.0, 0.0), Placed(wavy(), 0.0, 500.0))
    assert plan_for(away, 96, 48).pieces == (None, None)
    assert (colour(away, Instrument(), 96, 48) == BLACK).all()


def test_beyond_the_table():
    far = stage(piece(lambda x, t: 9000 + 0 * x))
    white = colour(far, Instrument(), 96, 48)[24, 48]
    assert np.ptp(white[:3].astype(int)) <= 1
    # One-colour fringes go on: 20 1/2 wavelengths are bright, 21 dark.
    sodium = Instrument(lamp="sodium")
    for waves, bright in ((20.5, True), (21.0, False)):
        shown = stage(piece(lambda x, t, waves=waves: 589.3 * waves + 0 * x))
        assert (colour(shown, sodium, 96, 48)[24, 48, 2] > 200) == bright


def test_fringes_finer_than_the_pixels_fade_to_their_mean():
    steep = piece(lambda x, t: 1000 * (x + 20), columns=400)
    assert contrast(steep, 1.0, 589.3) is not None
    coarse = colour(stage(steep), Instrument(lamp="sodium"), 48, 24)
    inside = coarse[4:20, 6:42, 2].astype(int)
    assert np.ptp(inside) <= 4
    fine = colour(stage(steep), Instrument(lamp="sodium"), 48 * 40, 24 * 40)
    assert np.ptp(fine[480, 200:-200, 2].astype(int)) > 200


def test_fading_comes_gradually_and_only_where_it_is_needed():
    chirp = piece(lambda x, t: (x + 20) ** 2 * 10, columns=400)
    scale = 2.0
    kept = contrast(chirp, scale, 560.0)
    assert kept is not None
    gradient = 20 * (chirp.along_mm + 20) / scale
    np.testing.assert_allclose(kept[0], np.sinc(np.minimum(gradient / 560, 1)), atol=0.01)
    assert contrast(chirp, 100.0, 560.0) is None


def test_a_buffer_is_painted_into():
    shown = stage(wavy())
    buffer = np.empty((48, 96, 4), np.uint8)
    assert colour(shown, Instrument(), 96, 48, buffer) is buffer
    np.testing.assert_array_equal(buffer, colour(shown, Instrument(), 96, 48))
    with pytest.raises(ValueError, match="shape"):
        colour(shown, Instrument(), 96, 49, buffer)
    with pytest.raises(ValueError, match="no pixels"):
        colour(shown, Instrument(), 0, 49)


def test_the_same_stage_gives_the_same_bytes():
    shown = stage(wavy(half_width=bulge, rows=40), wavy())
    first = colour(shown, Instrument(), 1300, 700)
    for _ in range(3):
        np.testing.assert_array_equal(colour(shown, Instrument(), 1300, 700), first)


def test_the_plan_is_kept_while_only_stress_changes():
    shown = stage(wavy())
    placed = shown.pieces[0]
    hotter = dataclasses.replace(placed.map, v1=2 * placed.map.v1)
    assert plan_for(stage(hotter), 96, 48) is plan_for(shown, 96, 48)
    assert plan_for(shown, 96, 49) is not plan_for(shown, 96, 48)


def test_the_largest_picture():
    picture = colour(stage(wavy(half_width=bulge), width=42, height=21), Instrument(), 3840, 2160)
    assert picture.shape == (2160, 3840, 4)
    small = colour(stage(wavy(half_width=bulge), width=42, height=21), Instrument(), 768, 432)
    # Pixel centres coincide at every fifth pixel.
    near = np.abs(picture[2::5, 2::5].astype(int) - small.astype(int)).max(axis=-1)
    assert np.median(near) <= 1


def test_reading_at_a_point():
    slant = piece(lambda x, t: 30 + 0 * x, lambda x, t: 40 * t)
    shown = stage(Placed(slant, 2.0, 1.0))
    retardation, axis = point_reading(shown, 2.0, 11.0)
    assert retardation == pytest.approx(50, rel=1e-6)
    assert axis == pytest.approx(np.degrees(np.arctan2(40, 30)) / 2, rel=1e-6)
    assert point_reading(shown, 2.0, -9.0)[1] == pytest.approx(-axis, rel=1e-6)
    assert point_reading(shown, 2.0, 11.2) is None
    assert point_reading(shown, 22.5, 1.0) is None
    assert peak_nm(shown) == pytest.approx(50)
    assert peak_nm(Stage((), 1.0, 1.0)) == 0
