"""What a presenter sets, and what an instant holds: the quench and both plates."""

import functools
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.base.errors import InputError
from demo_app.physics.breaking import Piece
from demo_app.physics.column.readings import Ground, grind
from demo_app.physics.grinding import lets_go_at
from demo_app.physics.heat import ZERO_C
from demo_app.physics.material_files import glasses, material
from demo_app.physics.plates import SHORT, even_bending, flaws, median_load
from demo_app.physics.toughening import Blown, Quench, quench, surface_compression
from demo_app.scenes.settings import choice, number

Array = NDArray[np.float64]

WIDTH_MM, HEIGHT_MM = 180.0, 120.0
"""Both plates."""
APART_MM = 200.0
"""From the middle of one plate to that of the other."""
PLATE_Y_MM, SLICE_Y_MM = 27.0, -64.0
SLICE_MM = 32.0
"""Height at which the imagined slice is drawn, whatever the plate's thickness."""
SLICE_LENGTH_MM = 120.0
SLICE_PATH = 5e-3
"""Way of the light through the slice, m."""
MAGNIFIED = 30.0
"""Factor by which the curl is drawn."""
ACT_S = 6.0
"""From the beginning of an act to the end of the story."""
RAMP_S = 3.0
"""Time in which a bending grows to its size, or the wheel comes to its depth."""
STRIKE_S = 0.5
"""Time from the beginning of an act to the blow or the cut."""
TICK_S = 0.1
FINEST_MM = 3.0
"""Dice smaller than this are drawn this large; the readings count them."""
ACTS = ("nothing", "hit", "bend", "cut", "grind_one_face")


@dataclass(frozen=True)
class Settings:
    """What a presenter may change."""

    glass: str = choice("Glass", "soda-lime", glasses(), help="What both are made of.", live=False)
    thickness_mm: float = number(
        "Thickness", "mm", 6, 2, 25, step=0.1, help="Thickness of both plates.", live=False
    )
    start_C: float = number(
        "Start", "°C", 650, 300, 1800, step=5, help="Heat when the jets start.", live=False
    )
    jet_W_m2K: float = number(
        "Jets", "W/m²K", 280, 15, 1500, step=5, help="15: hardly more than still air.", live=False
    )
    jet_unevenness_pct: float = number(
        "Uneven by", "%", 5, 0, 50, help="How much stronger a jet's middle cools.", live=False
    )
    beside: str = choice(
        "Beside it", "plain", ("plain", "laminated"), help="The other plate: never toughened."
    )
    then: str = choice("Then", "hit", ACTS, help="What is done to both once they are cold.")
    act_at_s: float = number("Then at", "s", 0, 0, 40000, step=5, help="0: as soon as it is cold.")
    blow_J: float = number("Blow", "J", 1.2, 0.1, 50, step=0.1, help="Energy of a blunt blow.")
    bend_MPa: float = number(
        "Bend to", "MPa", 90, 5, 400, step=5, help="Pull at the face if it were one plain plate."
    )
    grind_mm: float = number(
        "Grind off", "mm", 1, 0.1, 12, step=0.1, help="Taken off one face, held flat; then let go."
    )

    def __post_init__(self) -> None:
        """Refuse what cannot be blown, and a wheel that goes through the plate."""
        quench_of(self)
        if self.then == "grind_one_face" and self.grind_mm > 0.5 * self.thickness_mm:
            raise InputError(
                "the wheel would go beyond the middle of the plate",
                place="grind_mm",
                remedy=f"write at most {0.5 * self.thickness_mm:g}",
            )


@dataclass(frozen=True)
class State:
    """One instant: the quench, and what has been done to both plates since.

    Parameters
    ----------
    time_s : float
        Model time, s.
    step : int
        Number of steps.
    blown : Blown
        The plate in the jets.
    act : str
        What is being done to both plates.
    began_s, broke_s, other_broke_s : float or None
        When the act began, when the toughened plate broke, and when the other one did.
    ground : float
        Depth ground off, m.
    """

    time_s: float
    step: int
    blown: Blown
    act: str = "nothing"
    began_s: float | None = None
    broke_s: float | None = None
    other_broke_s: float | None = None
    ground: float = 0.0


def quench_of(settings: Settings) -> Quench:
    """The plate in its jets; `InputError` where it cannot be blown."""
    return quench(
        material(settings.glass),
        1e-3 * settings.thickness_mm,
        settings.start_C + ZERO_C,
        settings.jet_W_m2K,
    )


def blown_piece(settings: Settings, state: State) -> Piece:
    """The blown plate as something to break."""
    compression = surface_compression(state.blown.column)
    return Piece(
        material(settings.glass),
        1e-3 * WIDTH_MM,
        1e-3 * HEIGHT_MM,
        1e-3 * settings.thickness_mm,
        compression,
    )


def other_piece(settings: Settings) -> Piece:
    """The other plate as something to break."""
    return Piece(
        material(settings.glass),
        1e-3 * WIDTH_MM,
        1e-3 * HEIGHT_MM,
        1e-3 * settings.thickness_mm,
        laminated=settings.beside == "laminated",
    )


def lifted(state: State) -> bool:
    """Whether the wheel has done its work and the table has let the plate go."""
    return state.began_s is not None and state.time_s - state.began_s > RAMP_S + TICK_S


def ground_of(settings: Settings, state: State) -> Ground | None:
    """What is left under the wheel: held flat, then let go; None if nothing was ground off."""
    if state.ground <= 0:
        return None
    wall, column = quench_of(settings).wall, state.blown.column
    return grind(wall, column, state.ground, 0.0, bends=lifted(state) and state.broke_s is None)


def lets_go(settings: Settings, state: State) -> float | None:
    """Depth ground off at which the blown plate breaks, m."""
    return lets_go_at(quench_of(settings).wall, state.blown.column)


def profile(settings: Settings, state: State) -> tuple[Array, Array]:
    """Places (m) and stress (Pa) through the blown plate, a load's share included."""
    ground = ground_of(settings, state)
    if ground is not None:
        return ground.z, ground.stress
    wall = quench_of(settings).wall
    load = load_now(settings, state) if state.broke_s is None else 0.0
    return wall.z, state.blown.column.stress + load * wall.z / (wall.thickness / 2)


def other_profile(settings: Settings, state: State) -> tuple[Array, Array]:
    """The same of the other plate, which holds no stress of its own; panes bend one by one."""
    half = 0.5e-3 * settings.thickness_mm
    load = load_now(settings, state) if state.other_broke_s is None else 0.0
    even = np.linspace(-1.0, 1.0, 21)
    if settings.beside == "plain":
        return half * even, load * even
    panes = np.concatenate([half / 2 * (even - 1) - 1e-6, half / 2 * (even + 1) + 1e-6])
    return panes, 2 * load * np.concatenate([even, even])


def load_now(settings: Settings, state: State) -> float:
    """Bending now, as stress at the upper face of one plain plate, Pa."""
    if state.act != "bend" or state.began_s is None:
        return 0.0
    return 1e6 * settings.bend_MPa * min(1.0, (state.time_s - state.began_s) / RAMP_S)


@functools.lru_cache(maxsize=4)
def new_limit(settings: Settings) -> float:
    """Pull at both faces that breaks half of new plates, Pa."""
    both = even_bending(2e-6 * WIDTH_MM * HEIGHT_MM, 1.0)
    return median_load(flaws(material(settings.glass), "new"), both, 0.0, SHORT)
