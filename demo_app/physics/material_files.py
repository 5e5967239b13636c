"""Material files: read, checked in every value, turned into records in SI units."""

import functools
import itertools
import math
import re
from pathlib import Path
from typing import Any

import numpy as np

from demo_app.base import locate
from demo_app.base.errors import InputError
from demo_app.base.places import data_place
from demo_app.physics.material_fields import (
    CONDUCTIVITY_RANGE,
    CONDUCTIVITY_UNIT,
    HEAT_CAPACITY_RANGE,
    HEAT_CAPACITY_UNIT,
    RELAXATION_VALUES,
    SPECTRA,
    VALUES,
    Field,
)
from demo_app.physics.material_text import Table, parse
from demo_app.physics.materials import HeatCapacity, Material, Prony, RelaxationLaw
from demo_app.physics.relaxation import ANNEALING_VISCOSITY, STRAIN_VISCOSITY

_KINDS = ("glass", "plastic")
_NAME = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*")
LARGEST_BYTES = 1_000_000
_WEIGHT_TOLERANCE = 1e-3
_CHECKED_AT = np.linspace(250.0, 1200.0, 39)


@functools.cache
def material_names() -> tuple[str, ...]:
    """Names of all materials, the venue's own among them, sorted; read once a process."""
    return tuple(sorted(_files()))


def shipped_names() -> tuple[str, ...]:
    """Names of the materials that come with the app, sorted."""
    return tuple(sorted(path.stem for path in _folder().glob("*.toml")))


def site_folder() -> Path:
    """Folder of the venue's own materials, whether it is there or not."""
    return data_place() / "materials"


@functools.cache
def material(name: str) -> Material:
    """The material called `name`; `InputError` names the known ones."""
    if name not in material_names():
        raise InputError(
            f"no material is called '{name}'",
            place="material",
            remedy=f"write one of {', '.join(material_names())}",
        )
    return _loaded(_files()[name])


@functools.cache
def glasses() -> tuple[str, ...]:
    """Names of the materials that are glasses, sorted."""
    return tuple(name for name in material_names() if material(name).kind == "glass")


def load_material(path: Path) -> Material:
    """Read and check a material file.

    Parameters
    ----------
    path : pathlib.Path
        A TOML file; its stem becomes the material's id.

    Returns
    -------
    Material
        Every value in SI units.

    Raises
    ------
    InputError
        For any mistake, naming the file, where possible the line, and what to write instead.
    """
    top = parse(path)
    top.only("name", "kind", "conductivity", "heat_capacity", "relaxation", *VALUES)
    si: dict[str, Any] = {
        key: _number(top, key, field) for key, field in VALUES.items() if _given(top, key, field)
    }
    kind = top.words("kind")
    if kind not in _KINDS:
        raise top.error("kind", f"kind '{kind}' is not known", f"write {' or '.join(_KINDS)}")
    _check_points(top, kind, si)
    if "fracture_energy" not in si:
        si["fracture_energy"] = _fracture_energy(si)
    return Material(
        id=path.stem,
        name=top.words("name"),
        kind=kind,
        conductivity=_conductivity(top),
        heat_capacity=_heat_capacity(top),
        relaxation=_relaxation(top.table("relaxation"), si),
        assumed=top.assumed(),
        **si,
    )


def _folder() -> Path:
    return locate.assets() / "materials"


@functools.cache
def _files() -> dict[str, Path]:
    """Files by material.

    Of the venue's own only those in order, under names of their own: a mistake in one must not
    keep the app from starting, and ``lehrlight check`` names it.
    """
    own = {path.stem: path for path in site_folder().glob("*.toml") if _in_order(path)}
    return own | {name: _folder() / f"{name}.toml" for name in shipped_names()}


_loaded = functools.cache(load_material)


def _in_order(path: Path) -> bool:
    try:
        # A pipe would be waited for, and a huge file read to its end.
        if not path.is_file() or path.stat().st_size > LARGEST_BYTES:
            return False
    except OSError:
        return False
    try:
        _loaded(path)
    except InputError:
        return False
    return _NAME.fullmatch(path.stem) is not None


def _given(table: Table, key: str, field: Field) -> bool:
    return key in table.content or not field.optional


def _number(table: Table, key: str, field: Field) -> float:
    value, unit = table.sourced(key, tuple(field.units))
    if isinstance(value, bool) or not isinstance(value, int | float) or not math.isfinite(value):
        raise table.error(key, f"value {value!r} is not a number", f"write a number in {unit}")
    si = field.units[unit].to_si(float(value))
    slack = 1e-9 * abs(si)
    if not field.low - slack <= si <= field.high + slack:
        scale, offset = field.units[unit].scale, field.units[unit].offset
        low, high = ((end - offset) / scale for end in (field.low, field.high))
        raise table.error(
            key, f"{value:g} {unit} is not believable", f"write {low:.6g} to {high:.6g} {unit}"
        )
    return si


def _check_points(top: Table, kind: str, si: dict[str, float]) -> None:
    strain, annealing, softening = (
        si[f"{name}_point"] for name in ("strain", "annealing", "softening")
    )
    if kind == "glass" and not strain < annealing < softening:
        raise top.error(
            "strain_point",
            "the fixed points are out of order",
            "write strain_point below annealing_point below softening_point",
        )
    if kind == "plastic" and not strain <= annealing <= softening:
        raise top.error(
            "strain_point",
            "the fixed points are out of order",
            "write the glass transition for all three points",
        )


def _fracture_energy(si: dict[str, float]) -> float:
    """Energy of both faces of a crack in plane strain, J/m2 (Irwin 1957)."""
    toughness, poisson = si["fracture_toughness"], si["poisson_ratio"]
    return toughness**2 * (1 - poisson**2) / si["youngs_modulus"]


def _conductivity(top: Table) -> tuple[float, float]:
    value, _ = top.sourced("conductivity", (CONDUCTIVITY_UNIT,))
    form = "write value = [k0, k1] for k0 + k1*T, T in K"
    k0, k1 = top.numbers("conductivity", value, form, count=2)
    _check_range(top, "conductivity", k0 + k1 * _CHECKED_AT, CONDUCTIVITY_RANGE, "W/(m K)")
    return k0, k1


def _heat_capacity(top: Table) -> HeatCapacity:
    key = "heat_capacity"
    value, _ = top.sourced(key, (HEAT_CAPACITY_UNIT,))
    form = "write value as rows [upper end, a, b, c], the last with the upper end inf"
    if not isinstance(value, list) or not value:
        raise top.error(key, "value has no rows", form)
    rows = [top.numbers(key, row, form, count=4, infinite=True) for row in value]
    upto, a, b, c = (tuple(column) for column in zip(*rows, strict=True))
    if upto[-1] != math.inf or any(low >= high for low, high in itertools.pairwise(upto)):
        raise top.error(key, "the upper ends do not rise to inf", form)
    if not np.all(np.isfinite([a, b, c])):
        raise top.error(key, "a coefficient is not finite", form)
    law = HeatCapacity(upto, a, b, c)
    _check_range(top, key, law(_CHECKED_AT), HEAT_CAPACITY_RANGE, "J/(kg K)")
    return law


def _check_range(
    table: Table, key: str, values: np.ndarray, allowed: tuple[float, float], unit: str
) -> None:
    low, high = allowed
    if values.min() < low or values.max() > high:
        raise table.error(
            key,
            f"{key} goes from {values.min():.4g} to {values.max():.4g} {unit} between 250 and"
            " 1200 K, which is not believable",
            f"write coefficients that keep it within {low:g} to {high:g} {unit}",
        )


def _relaxation(table: Table, si: dict[str, float]) -> RelaxationLaw:
    if "like" in table.content:
        return _relaxation_like(table, si)
    table.only(*RELAXATION_VALUES, *SPECTRA)
    numbers = {key: _number(table, key, field) for key, field in RELAXATION_VALUES.items()}
    shear, bulk, structural = (_spectrum(table.table(key), key) for key in SPECTRA)
    return RelaxationLaw(shear=shear, bulk=bulk, structural=structural, **numbers)


def _spectrum(table: Table, kind: str) -> Prony:
    table.only("weights", "times", "lasting", "unit", "source", "status")
    table.check_source(("s",))
    form = "write as many positive weights as rising positive times"
    weights = table.numbers("weights", table.get("weights"), form)
    times = table.numbers("times", table.get("times"), form)
    (lasting,) = table.numbers("lasting", [table.get("lasting")], "write 0 up to below 1")
    if len(weights) != len(times):
        raise table.error("times", f"{len(weights)} weights but {len(times)} times", form)
    if min(weights) <= 0 or min(times) <= 0 or list(times) != sorted(times):
        raise table.error("times", "weights and times must be positive and times rise", form)
    if not 0 <= lasting < 1 or (lasting and kind != "bulk"):
        allowed = "write 0 up to below 1" if kind == "bulk" else "write 0"
        raise table.error("lasting", f"lasting {lasting:g} cannot be", allowed)
    total = math.fsum(weights)
    if abs(total - 1) > _WEIGHT_TOLERANCE:
        raise table.error(
            "weights", f"the weights sum to {total:.5g}", "write weights that sum to 1"
        )
    return Prony(tuple(weight / total for weight in weights), times, lasting)


def _relaxation_like(table: Table, si: dict[str, float]) -> RelaxationLaw:
    """Spectra of another material, shifted to this one's strain and annealing points."""
    table.only("like", "expansion_liquid")
    name, _ = table.sourced("like")
    known = tuple(n for n in shipped_names() if "like" not in _raw_relaxation(n))
    if name not in known:
        raise table.error(
            "like", f"no spectrum is called {name!r}", f"write one of {', '.join(known)}"
        )
    expansion_liquid = _number(table, "expansion_liquid", RELAXATION_VALUES["expansion_liquid"])
    source = _loaded(_folder() / f"{name}.toml").relaxation
    shear_modulus = si["youngs_modulus"] / (2 * (1 + si["poisson_ratio"]))
    reference, activation = _shift_through(
        source.shear, shear_modulus, si["strain_point"], si["annealing_point"]
    )
    return RelaxationLaw(
        reference,
        activation,
        source.share,
        source.shear,
        source.bulk,
        source.structural,
        expansion_liquid,
    )


def _raw_relaxation(name: str) -> dict[str, object]:
    return parse(_folder() / f"{name}.toml").table("relaxation").content


def _shift_through(
    shear: Prony, shear_modulus: float, strain_point: float, annealing_point: float
) -> tuple[float, float]:
    """Reference temperature and activation (K) that give the viscosities of ASTM C336.

    The viscosity in equilibrium is ``G * sum(g_i * tau_i) * exp(H/R * (1/T - 1/reference))``.
    """
    activation = math.log(STRAIN_VISCOSITY / ANNEALING_VISCOSITY) / (
        1 / strain_point - 1 / annealing_point
    )
    at_reference = shear_modulus * math.fsum(
        g * tau for g, tau in zip(shear.weights, shear.times, strict=True)
    )
    inverse = 1 / annealing_point - math.log(ANNEALING_VISCOSITY / at_reference) / activation
    return 1 / inverse, activation
