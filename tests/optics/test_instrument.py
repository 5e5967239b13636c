"""Intensities against py_pol 1.3.0, published laws and published colours."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from optics_reference import Mueller, Stokes

from demo_app.base.errors import InputError
from demo_app.optics.instrument import QUARTER_WAVE_NM, Instrument, intensity
from demo_app.optics.light_data import lamp

INSTRUMENTS = {
    "crossed": Instrument(),
    "turned": Instrument(polarizer_deg=17),
    "parallel": Instrument(analyser_deg=0),
    "compensating": Instrument(polarizer_deg=-20, analyser_deg=63),
    "circular": Instrument(quarter_wave=True),
    "circular, bright": Instrument(quarter_wave=True, analyser_deg=0, polarizer_deg=10),
    "lamp alone": Instrument(filters=0, quarter_wave=True),
    "one filter": Instrument(filters=1, tint_plate_nm=565),
    "tint": Instrument(tint_plate_nm=565),
    "tint, turned": Instrument(tint_plate_nm=530, polarizer_deg=71),
    "everything": Instrument(
        quarter_wave=True, tint_plate_nm=565, polarizer_deg=33, analyser_deg=40
    ),
}
WAVELENGTHS = np.array([430.0, 560.0, 589.3, 680.0])
D65 = lamp("daylight")


def by_py_pol(instrument, retardation, axis_deg, wavelength):
    """The same row of plates, each a 4 x 4 matrix of py_pol's; angles are of the slow axes."""

    def retarder(nm, angle):
        matrix = Mueller().retarder_linear(
            ret=2 * np.pi * nm / wavelength, azimuth=np.radians(angle)
        )
        return np.asarray(matrix.M)[..., 0]

    def polarizer(angle):
        return np.asarray(Mueller().diattenuator_perfect(azimuth=np.radians(angle)).M)[..., 0]

    first = instrument.polarizer_deg
    plates = [retarder(retardation, axis_deg)]
    if instrument.filters > 0:
        plates.insert(0, polarizer(first))
    if instrument.quarter_wave:
        plates.insert(-1, retarder(QUARTER_WAVE_NM, first - 45))
        plates.append(retarder(QUARTER_WAVE_NM, first + 45))
    plates.append(retarder(instrument.tint_plate_nm, first - 45))
    if instrument.filters > 1:
        plates.append(polarizer(first + instrument.analyser_deg))
    light = np.asarray(Stokes().general_azimuth_ellipticity(degree_pol=0).M).reshape(4)
    for plate in plates:
        light = plate @ light
    return 2 * light[0]


@pytest.mark.parametrize("name", INSTRUMENTS)
def test_intensity_is_that_of_py_pol(name):
    rng = np.random.default_rng(3)
    for retardation, axis in zip(rng.uniform(0, 3000, 6), rng.uniform(-90, 90, 6), strict=True):
        theirs = [by_py_pol(INSTRUMENTS[name], retardation, axis, w) for w in WAVELENGTHS]
        ours = intensity(INSTRUMENTS[name], np.array(retardation), np.array(axis), WAVELENGTHS)
        np.testing.assert_allclose(ours, theirs, atol=1e-12)


@given(st.floats(0, 6000), st.floats(-90, 90), st.sampled_from(sorted(INSTRUMENTS)))
def test_no_light_is_made(retardation, axis, name):
    seen = intensity(INSTRUMENTS[name], np.array(retardation), np.array(axis), WAVELENGTHS)
    assert (seen > -1e-12).all()
    # One for open parallel polarizers; the lamp without a filter is twice as bright.
    assert (seen < (1 if INSTRUMENTS[name].filters else 2) + 1e-12).all()


@given(st.floats(0, 3000), st.floats(-90, 90), st.floats(-90, 90))
def test_turning_everything_changes_nothing(retardation, axis, turn):
    still = Instrument(quarter_wave=True, tint_plate_nm=565, polarizer_deg=0)
    turned = Instrument(quarter_wave=True, tint_plate_nm=565, polarizer_deg=turn)
    one, other = (
        intensity(i, np.array(retardation), np.array(angle), WAVELENGTHS)
        for i, angle in ((still, axis), (turned, axis + turn))
    )
    np.testing.assert_allclose(one, other, atol=1e-11)


# Theocaris and Gdoutos 1979: sin^2 2t sin^2(G/2) in crossed plane polarizers, t counted from the
# polarizer.
@given(st.floats(0, 3000), st.floats(-90, 90))
def test_plane_dark_field_law(retardation, axis):
    ours = intensity(
        Instrument(polarizer_deg=0), np.array(retardation), np.array(axis), WAVELENGTHS
    )
    law = np.sin(2 * np.radians(axis)) ** 2 * np.sin(np.pi * retardation / WAVELENGTHS) ** 2
    np.testing.assert_allclose(ours, law, atol=1e-12)


@given(st.floats(0, 3000), st.floats(-90, 90))
def test_circular_fields_at_the_wavelength_of_the_plates(retardation, axis):
    at = np.array([4 * QUARTER_WAVE_NM])
    phase = np.pi * retardation / at
    dark, light = (
        intensity(
            Instrument(quarter_wave=True, analyser_deg=a), np.array(retardation), np.array(axis), at
        )
        for a in (90, 0)
    )
    np.testing.assert_allclose(dark, np.sin(phase) ** 2, atol=1e-12)
    np.testing.assert_allclose(light, np.cos(phase) ** 2, atol=1e-12)


def test_spot_values_of_plane_and_circular_light():
    quarter, axis, at = np.array(140.0), np.array(22.5), np.array([560.0])
    plane = intensity(Instrument(polarizer_deg=0), quarter, axis, at)
    circular = intensity(Instrument(quarter_wave=True), quarter, axis, at)
    np.testing.assert_allclose([plane, circular], [[0.25], [0.5]], atol=1e-12)


# Tardy's compensation (ASTM F218, C148 method B): with the axis along the polarizer in a circular
# dark field, turning the analyser by 180 degrees * retardation / wavelength darkens the point.
@pytest.mark.parametrize("retardation", [35.0, 140.0, 260.0, 500.0])
def test_tardy_rotation(retardation):
    at = np.array([560.0])
    turn = 180 * retardation / at[0]
    seen = [
        intensity(
            Instrument(polarizer_deg=0, quarter_wave=True, analyser_deg=90 + way * turn),
            np.array(retardation),
            np.array(0.0),
            at,
        )[0]
        for way in (1, -1)
    ]
    assert min(seen) == pytest.approx(0, abs=1e-12)


# Computed for crossed polarizers, axis at 45 degrees, D65, with colour-science 0.4.7 at 1 nm.
PUBLISHED = {
    50: (7.9, 0.267, 0.283),
    150: (56.5, 0.278, 0.298),
    250: (96.6, 0.307, 0.332),
    300: (96.7, 0.333, 0.359),
    400: (58.3, 0.437, 0.441),
    500: (12.7, 0.444, 0.274),
    551: (5.24, 0.218, 0.085),
    600: (11.8, 0.154, 0.114),
    747: (73.3, 0.256, 0.347),
    866: (85.6, 0.417, 0.489),
    1000: (39.2, 0.422, 0.280),
    1101: (17.7, 0.245, 0.123),
    1300: (64.1, 0.252, 0.507),
    1500: (58.5, 0.381, 0.292),
    1800: (47.1, 0.216, 0.485),
}


@pytest.mark.parametrize("retardation", PUBLISHED)
def test_interference_colours(retardation):
    seen = intensity(Instrument(), np.array(float(retardation)), np.array(0.0), D65.wavelength_nm)
    xyz = seen @ D65.weights
    luminance, x, y = PUBLISHED[retardation]
    assert 100 * xyz[1] == pytest.approx(luminance, abs=0.15)
    np.testing.assert_allclose(xyz[:2] / xyz.sum(), [x, y], atol=0.001)


# Tints of passage, computed with colour-science 0.4.7 (the first is the "sensitive tint", which
# textbooks put near 550 nm).
@pytest.mark.parametrize(
    ("name", "expected"), [("daylight", [551, 1106, 1666, 2226]), ("incandescent", [567, 1136])]
)
def test_luminance_minima(name, expected):
    light = lamp(name)
    retardation = np.arange(1.0, 2400.0)
    seen = intensity(Instrument(), retardation, np.array(0.0), light.wavelength_nm)
    y = seen @ light.weights[:, 1]
    dips = retardation[1:-1][(y[1:-1] < y[:-2]) & (y[1:-1] < y[2:])]
    np.testing.assert_allclose(dips[: len(expected)], expected, atol=1)


def test_glass_in_tension_along_x_adds_to_the_tint_plate():
    # The plate's slow axis lies along x while the polarizers stand at 45 degrees (common practice).
    tint = Instrument(tint_plate_nm=565)
    added = intensity(tint, np.array(60.0), np.array(0.0), WAVELENGTHS)
    taken = intensity(tint, np.array(60.0), np.array(90.0), WAVELENGTHS)
    plain = Instrument()
    np.testing.assert_allclose(
        added, intensity(plain, np.array(625.0), np.array(0.0), WAVELENGTHS), atol=1e-12
    )
    np.testing.assert_allclose(
        taken, intensity(plain, np.array(505.0), np.array(0.0), WAVELENGTHS), atol=1e-12
    )


def test_crossed_or_not():
    assert Instrument().crossed
    assert Instrument(analyser_deg=-90).crossed
    assert not Instrument(analyser_deg=0).crossed


@pytest.mark.parametrize(
    ("change", "place"),
    [
        ({"lamp": "moon"}, "lamp"),
        ({"gain": 0.5}, "gain"),
        ({"gain": 51}, "gain"),
        ({"exposure": 0}, "exposure"),
        ({"tint_plate_nm": -1}, "tint_plate_nm"),
        ({"polarizer_deg": float("nan")}, "polarizer_deg"),
    ],
)
def test_bad_values_say_what_is_allowed(change, place):
    with pytest.raises(InputError, match=f"^{place}: .*; write ") as caught:
        Instrument(**change)
    assert caught.value.place == place


def test_each_filter_that_is_put_in_darkens_the_lamp():
    none = np.array(0.0), np.array(0.0), WAVELENGTHS
    lamp_alone, one, crossed = (intensity(Instrument(filters=k), *none) for k in range(3))
    # Malus, 1809: half of unpolarized light passes one filter, none of that the crossed one.
    np.testing.assert_allclose(one, lamp_alone / 2, rtol=1e-14)
    np.testing.assert_allclose(one, intensity(Instrument(analyser_deg=0), *none), rtol=1e-14)
    np.testing.assert_allclose(crossed, 0, atol=1e-14)
