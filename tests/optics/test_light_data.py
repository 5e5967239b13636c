"""The spectra against colour-science 0.4.7, from which they were copied."""

import numpy as np
import pytest
from optics_reference import colour

from demo_app.base.errors import InputError
from demo_app.base.locate import assets
from demo_app.optics.light_data import LAMPS, lamp

WHITE_LAMPS = {"daylight": "D65", "incandescent": "A", "white-led": "LED-B1"}


def columns(name):
    return np.loadtxt(
        [
            line
            for line in (assets() / "light" / name).read_text().splitlines()
            if line[:1].isdigit()
        ],
        delimiter=",",
        ndmin=2,
    )


def test_the_observer_is_that_of_colour_science():
    ours = columns("observer.csv")
    theirs = colour.MSDS_CMFS["CIE 1931 2 Degree Standard Observer"]
    # Asking it for single wavelengths interpolates, which leaves rounding behind.
    np.testing.assert_allclose(ours[:, 1:], theirs[ours[:, 0]], rtol=1e-12, atol=1e-14)


@pytest.mark.parametrize("name", WHITE_LAMPS)
def test_a_lamp_is_that_of_colour_science(name):
    ours = columns(f"{name}.csv")
    theirs = colour.SDS_ILLUMINANTS[WHITE_LAMPS[name]]
    np.testing.assert_array_equal(ours[:, 1], theirs[ours[:, 0]])


def test_every_lamp_file_is_offered_and_says_its_source():
    files = {path.stem: path.read_text() for path in (assets() / "light").glob("*.csv")}
    assert set(files) == {*LAMPS, "observer"}
    assert all("# Source: " in text for text in files.values())


def test_sums_are_those_of_colour_science():
    light = lamp("white-led")
    shape = colour.SpectralShape(380, 780, 5)
    spectra = 0.5 + 0.5 * np.cos(np.outer(np.arange(1, 6), light.wavelength_nm / 50))
    theirs = colour.msds_to_XYZ(
        spectra,
        cmfs=colour.MSDS_CMFS["CIE 1931 2 Degree Standard Observer"].copy().align(shape),
        illuminant=colour.SDS_ILLUMINANTS["LED-B1"].copy().align(shape),
        method="Integration",
        shape=shape,
    )
    np.testing.assert_allclose(spectra @ light.weights, theirs / 100, rtol=1e-12)


# CIE 015: chromaticities of the illuminants, as colour-science 0.4.7 gives them.
@pytest.mark.parametrize(
    ("name", "x", "y"), [("daylight", 0.3127, 0.3290), ("incandescent", 0.44758, 0.40745)]
)
def test_white_points(name, x, y):
    white = lamp(name).white
    np.testing.assert_allclose(white[:2] / white.sum(), [x, y], atol=2e-4)


def test_one_colour_lamps_are_one_colour():
    assert [lamp(name).one_colour for name in LAMPS] == [False, False, False, True, True]
    assert lamp("sodium").middle_nm == pytest.approx(589.3)


def test_an_unknown_lamp_names_the_known_ones():
    with pytest.raises(InputError, match="daylight, incandescent"):
        lamp("candle")


def test_a_broken_file_is_one_clear_line(tmp_path, monkeypatch):
    (tmp_path / "light").mkdir()
    (tmp_path / "light" / "daylight.csv").write_text("wavelength_nm,power\n380,much\n")
    monkeypatch.setattr("demo_app.optics.light_data.assets", lambda: tmp_path)
    with pytest.raises(InputError, match=r"daylight\.csv: cannot be read"):
        lamp.__wrapped__("daylight")
