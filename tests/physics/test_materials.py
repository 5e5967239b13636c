"""Material files: what they say, and that every kind of mistake is one clear line."""

import math
from pathlib import Path

import numpy as np
import pytest

from demo_app.base import locate
from demo_app.base.errors import InputError
from demo_app.physics.material_files import glasses, load_material, material, material_names
from demo_app.physics.relaxation import viscosity

_ZERO_C = 273.15
_FILE = locate.assets() / "materials" / "soda-lime.toml"
_LIKE = locate.assets() / "materials" / "borosilicate.toml"


def _line(text: str, start: str) -> int:
    return next(n for n, line in enumerate(text.splitlines(), 1) if line.startswith(start))


def test_the_five_materials_are_there() -> None:
    assert material_names() == (
        "borosilicate",
        "fused-silica",
        "lead-crystal",
        "polystyrene",
        "soda-lime",
    )
    assert glasses() == ("borosilicate", "fused-silica", "lead-crystal", "soda-lime")


@pytest.mark.parametrize("name", material_names())
def test_every_material_is_believable(name: str) -> None:
    glass = material(name)
    hot = np.linspace(250.0, 1200.0, 200)
    assert glass.id == name
    assert np.all(glass.conductivity_at(hot) > 0.1)
    assert np.all(glass.heat_capacity(hot) > 300)
    assert glass.strain_point <= glass.annealing_point <= glass.softening_point
    law = glass.relaxation
    for spectrum in (law.shear, law.bulk, law.structural):
        assert math.fsum(spectrum.weights) == pytest.approx(1.0, abs=1e-12)
    assert law.shear.lasting == law.structural.lasting == 0


@pytest.mark.parametrize(
    ("name", "attribute", "published", "share"),
    [
        # EN 572-1 design set: 2500 kg/m3, 70 GPa, 9.0e-6 /K, 45 MPa
        ("soda-lime", "density", 2500, 0.01),
        ("soda-lime", "youngs_modulus", 70e9, 0.03),
        ("soda-lime", "expansion", 9.0e-6, 0.05),
        ("soda-lime", "characteristic_strength", 45e6, 0.001),
        # Pilkington ATS-129: psi = 2.18 * nm / inch (nm: its micrometres are a misprint)
        ("soda-lime", "stress_optic", 1e-9 / (2.18 * 6894.757 * 0.0254), 0.01),
        # ISO 3585 (from memory): 3.3e-6 +- 0.1e-6 /K, 2.23 +- 0.02 g/cm3
        ("borosilicate", "expansion", 3.3e-6, 0.03),
        ("borosilicate", "density", 2230, 0.01),
        # makers' tables of fused quartz
        ("fused-silica", "expansion", 0.55e-6, 0.1),
        # Directive 69/493/EEC, lead crystal: at least 2.90 g/cm3 (from memory)
        ("lead-crystal", "density", 2950, 0.017),
        # Rudd and Gurnee 1957: 3.21 GPa and +10e-12 /Pa at 24 degC
        ("polystyrene", "youngs_modulus", 3.21e9, 0.01),
        ("polystyrene", "stress_optic", 10e-12, 0.15),
    ],
)
def test_published_value(name: str, attribute: str, published: float, share: float) -> None:
    assert getattr(material(name), attribute) == pytest.approx(published, rel=share, abs=0)


def test_shear_and_bulk_modulus_of_float_glass() -> None:
    # Pilkington ATS-129: G 30 GPa, K 43 GPa for E 72 GPa and nu 0.23 (rounded from psi)
    glass = material("soda-lime")
    assert glass.shear_modulus == pytest.approx(30e9, rel=0.05)
    assert glass.bulk_modulus == pytest.approx(43e9, rel=0.05)


def test_fracture_energy_follows_from_the_toughness() -> None:
    # Griffith with K_IC 0.75 MPa m^0.5: 2 * 3.8 J/m2 (from memory)
    assert material("soda-lime").fracture_energy == pytest.approx(7.65, rel=0.02)


def test_room_temperature_heat_of_float_glass() -> None:
    # 720 to 880 J/kgK and 0.94 to 1.0 W/mK in EN 572-1 and ATS-129
    glass = material("soda-lime")
    room = np.array([293.0])
    assert 720 < glass.heat_capacity(room)[0] < 880
    assert 0.9 < glass.conductivity_at(room)[0] < 1.05


@pytest.mark.parametrize("name", material_names())
def test_heat_capacity_jumps_at_the_glass_transition_alone(name: str) -> None:
    law = material(name).heat_capacity
    transition = material(name).annealing_point
    for end in law.upto[:-1]:
        below, above = law(np.array([end - 1e-6, end + 1e-6]))
        if abs(end - transition) < 40:
            assert 1.05 < above / below < 1.3  # the liquid stores more
        else:
            assert above == pytest.approx(below, rel=0.005)


@pytest.mark.parametrize("name", glasses())
def test_viscosity_at_the_fixed_points(name: str) -> None:
    # ASTM C336: 10^13.5 Pa s at the strain point, 10^12 at the annealing point
    glass = material(name)
    for point, published in ((glass.strain_point, 10**13.5), (glass.annealing_point, 1e12)):
        around = np.array([point - 3, point + 3])
        thick, thin = viscosity(glass, around)
        assert thin < published < thick  # within 3 K


def test_loading_again_gives_the_same_record() -> None:
    assert load_material(_FILE) == material("soda-lime")
    assert material("soda-lime") is material("soda-lime")


def test_assumed_values_are_named() -> None:
    assert material("soda-lime").assumed == ()
    assert "relaxation.like" in material("fused-silica").assumed
    assert "relaxation.shear" in material("polystyrene").assumed


def test_unknown_material_names_the_known_ones() -> None:
    with pytest.raises(InputError, match=r"no material is called 'glas'.*soda-lime"):
        material("glas")


# what is wrong, text to replace, text to put in, start of the line named, what the message says
_BROKEN = [
    ("unknown key", "density =", "densitty =", "densitty", "densitty: unknown key.*density"),
    ("missing key", "density =", "#density =", None, "density: missing; add density"),
    ("unit", 'unit = "GPa"', 'unit = "MPa"', "youngs_modulus", 'unit = "GPa"'),
    ("no unit", 'value = 70, unit = "GPa"', "value = 70", "youngs_modulus", "unit: missing"),
    ("too large", "value = 70,", "value = 70000,", "youngs_modulus", "believable; write 0.1 to"),
    ("negative", "value = 2500,", "value = -1,", "density", "-1 kg/m3 is not believable"),
    ("text", "value = 2500,", 'value = "much",', "density", "'much' is not a number"),
    ("nan", "value = 2500,", "value = nan,", "density", "nan is not a number"),
    ("yes", "value = 2500,", "value = true,", "density", "True is not a number"),
    ("bare", "refractive_index = {", "emissivities = {", "emissivities", "unknown key"),
    ("order", "value = 511,", "value = 560,", "strain_point", "out of order"),
    ("softening", "value = 715,", "value = 530,", "strain_point", "out of order"),
    ("weights", "0.2860, 0.2266]", "0.2860, 0.3266]", "weights", "the weights sum to 1.1"),
    ("counts", "1.514e-2, 0.1672,", "0.1672,", "times", "6 weights but 5 times"),
    ("times", "[6.658e-5, 1.197e-3", "[1.197e-3, 6.658e-5", "times", "times rise"),
    ("lasting", "lasting = 0.18", "lasting = 1.8", "lasting = 1.8", "write 0 up to below 1"),
    ("shear lasts", "lasting = 0.0", "lasting = 0.1", "lasting = 0.1", "write 0"),
    ("no source", ', source = "EN 572-1:2012, table of properties"', "", "density", "no source"),
    ("empty", "EN 572-1:2012, table of properties", " ", "density", "no source"),
    ("kind", 'kind = "glass"', 'kind = "metal"', "kind", "write glass or plastic"),
    ("name", 'name = "Soda', 'name = ""  # Soda', "name", "is not a text"),
    ("rows", "[850, 893, 0.4, -1.8e7]", "[850, 893, 0.4]", "heat_capacity", "wrong form"),
    ("ends", "[[850,", "[[inf,", "heat_capacity", "do not rise"),
    ("cold", "893, 0.4", "-893, 0.4", "heat_capacity", "not believable"),
    ("flow", "[0.741, 8.58e-4]", "[0.741, -8.58e-4]", "conductivity", "not believable"),
    ("status", "value = 2500,", 'status = "guess", value = 2500,', "density", "'guess'"),
    ("no table", "[relaxation.bulk]", "[relaxation.bulky]", "[relaxation.bulky]", "unknown key"),
    ("flat", "[relaxation.bulk]", "[relaxation.shear.bulk]", "[relaxation.shear.bulk]", "unknown"),
    ("broken", "value = 2500, unit", "value = 2500 unit", "density", "is not TOML"),
    ("twice", "density =", "name =", "name = { v", "is not TOML: cannot overwrite"),
    ("quotes", 'kind = "glass"', "kind = glass", "kind", "is not TOML"),
]  # fmt: skip


@pytest.mark.parametrize(
    ("old", "new", "named", "says"), [row[1:] for row in _BROKEN], ids=[row[0] for row in _BROKEN]
)
def test_broken_file(tmp_path: Path, old: str, new: str, named: str | None, says: str) -> None:
    original = _FILE.read_text(encoding="utf-8")
    assert old in original
    text = original.replace(old, new, 1)
    path = tmp_path / "my-glass.toml"
    path.write_text(text, encoding="utf-8")
    with pytest.raises(InputError, match=says) as caught:
        load_material(path)
    assert "\n" not in str(caught.value)
    place = str(path) if named is None else f"{path}, line {_line(text, named)}"
    assert caught.value.place == place
    assert caught.value.remedy


def test_spectrum_like_an_unknown_material(tmp_path: Path) -> None:
    text = _LIKE.read_text(encoding="utf-8").replace('value = "soda-lime"', 'value = "opal"')
    (path := tmp_path / "my-glass.toml").write_text(text, encoding="utf-8")
    with pytest.raises(InputError, match=r"'opal'; write one of .*soda-lime"):
        load_material(path)


def test_file_that_is_not_there(tmp_path: Path) -> None:
    with pytest.raises(InputError, match="cannot be read"):
        load_material(tmp_path / "none.toml")


def test_file_that_is_not_text(tmp_path: Path) -> None:
    (path := tmp_path / "glass.toml").write_bytes(b"\xff\xfe\x00d")
    with pytest.raises(InputError, match="not text in UTF-8"):
        load_material(path)
