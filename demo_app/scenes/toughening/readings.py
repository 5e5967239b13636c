"""What the scene reads off an instant."""

import functools
from typing import Any

import numpy as np

from demo_app.physics import fragments
from demo_app.physics.breaking import Piece
from demo_app.physics.column.readings import centre_stress, neutral_depth
from demo_app.physics.grades import THERMAL_DURABILITY, fewest_particles, grade
from demo_app.physics.heat import ZERO_C
from demo_app.physics.laminated import held_share
from demo_app.physics.material_files import material
from demo_app.physics.plates import (
    SHORT,
    STAYS,
    bending_strength,
    break_probability,
    even_bending,
    flaws,
    plain_strength,
    shock,
    strength_ratio,
)
from demo_app.physics.toughening import Quench, surface_compression
from demo_app.scenes.scene import Reading
from demo_app.scenes.toughening.pieces import other_shards, piece_count
from demo_app.scenes.toughening.record import (
    HEIGHT_MM,
    SLICE_PATH,
    WIDTH_MM,
    Settings,
    State,
    blown_piece,
    ground_of,
    lets_go,
    other_piece,
    quench_of,
)

READINGS = (
    Reading("surface_MPa", "Surface", "MPa", "Of the blown plate."),
    Reading("centre_MPa", "Middle", "MPa", "Of the blown plate."),
    Reading("neutral_depth_mm", "No stress at", "mm", "Depth below the surface."),
    Reading("bending_strength_MPa", "Bending strength", "MPa", "New glass, short load."),
    Reading("strength_ratio", "Times as strong", "", "Used glass, a load that stays 30 minutes."),
    Reading("strength_ratio_new", "Times as strong, new", "", "New glass, a load of 5 seconds."),
    Reading("blow_to_break_J", "Blow to break", "J", "Half of used plates break."),
    Reading("blow_to_break_beside_J", "Blow to break, other", "J", "Half of used plates break."),
    Reading("particles_50mm", "Particles", "", "In 50 mm by 50 mm, from the energy."),
    Reading("particles_asked", "Particles asked", "", "By EN 12150-1 for this thickness."),
    Reading("grade", "Grade", "", "The worse of surface compression and particle count."),
    Reading("grade_limited_by", "Grade limited by", ""),
    Reading("runs_by_itself", "A crack runs by itself", "", "Driven by the energy inside."),
    Reading("energy_J_m2", "Energy inside", "J/m²"),
    Reading("quench_pull_MPa", "Pull in the jets", "MPa", "Largest at the surface."),
    Reading("quench_break_probability", "Odds of a break in the jets", "", "New glass."),
    Reading("shock_K", "Sudden chill it bears", "K", "By the model: new glass, held fast."),
    Reading("shock_plain_K", "Sudden chill, plain", "K", "By the model: new glass, held fast."),
    Reading("shock_standard_K", "Sudden chill, standard", "K", "For the grade."),
    Reading("shock_standard_plain_K", "Sudden chill, standard, plain", "K"),
    Reading("breaks", "Breaks", "", "The blown plate, with middling flaws."),
    Reading("break_at_s", "Broke at", "s"),
    Reading("break_probability", "Odds of a break", "", "Of the blown plate, used."),
    Reading("pieces", "Pieces", "", "Of the blown plate; those under 3 mm are drawn as 3."),
    Reading("breaks_beside", "Other breaks", ""),
    Reading("break_probability_beside", "Odds of a break, other", "", "Used."),
    Reading("pieces_beside", "Pieces, other", ""),
    Reading("laminated_load_pct", "Load after cracking", "%", "Of the load that cracked it."),
    Reading("laminated_held_pct", "Glass held", "%", "By the film, after cracking."),
    Reading("ground_mm", "Ground off", "mm"),
    Reading("lets_go_mm", "Lets go at", "mm", "Ground off one face."),
    Reading("curl_per_m", "Curl", "1/m", "Curvature once it is let go."),
    Reading("retardation_peak_nm", "Retardation peak", "nm", "Edge-on, in 5 mm of glass."),
)

TRACES = (
    Reading("surface_MPa", "Surface", "MPa"),
    Reading("centre_MPa", "Middle", "MPa"),
    Reading("surface_C", "Surface", "°C"),
    Reading("centre_C", "Middle", "°C"),
)


def read(settings: Settings, state: State) -> dict[str, Any]:
    """Readings; those of stress are the last before a break."""
    ready, column = quench_of(settings), state.blown.column
    glass, wall = ready.material, ready.wall
    compression = surface_compression(column)
    blown, other = blown_piece(settings, state), other_piece(settings)
    energy = energy_of(ready, column.stress.tobytes())
    count = fragments.particles(fragments.die_side(glass, ready.thickness, energy))
    found = grade(compression, count, ready.thickness)
    neutral = neutral_depth(wall, column)
    peak = glass.stress_optic * SLICE_PATH * float(np.abs(column.stress).max())
    left = ground_of(settings, state)
    limit = lets_go(settings, state) if settings.then == "grind_one_face" else None
    acting = state.began_s is not None
    return {
        "surface_MPa": 1e-6 * column.stress[0],
        "centre_MPa": 1e-6 * centre_stress(wall, column),
        "neutral_depth_mm": None if neutral is None else 1e3 * neutral,
        "bending_strength_MPa": 1e-6 * bending_strength(glass, compression),
        "strength_ratio": strength_ratio(glass, compression, "used", STAYS),
        "strength_ratio_new": strength_ratio(glass, compression, "new", SHORT),
        "blow_to_break_J": blown.blow_limit(),
        "blow_to_break_beside_J": other.blow_limit(),
        "particles_50mm": count,
        "particles_asked": fewest_particles(ready.thickness),
        "grade": found.grade,
        "grade_limited_by": found.limited_by,
        "runs_by_itself": fragments.runs_by_itself(glass, energy),
        "energy_J_m2": energy.total,
        "quench_pull_MPa": 1e-6 * state.blown.pull,
        "quench_break_probability": _quench_odds(settings, state),
        "shock_K": shock(glass, bending_strength(glass, compression)),
        "shock_plain_K": shock(glass, plain_strength(glass, "new", SHORT)),
        "shock_standard_K": THERMAL_DURABILITY[found.grade],
        "shock_standard_plain_K": THERMAL_DURABILITY["annealed"],
        "breaks": state.broke_s is not None,
        "break_at_s": state.broke_s,
        "break_probability": odds(settings, blown) if acting else 0.0,
        "pieces": piece_count(settings, state),
        "breaks_beside": state.other_broke_s is not None,
        "break_probability_beside": odds(settings, other) if acting else 0.0,
        "pieces_beside": len(other_shards(settings, state)),
        **film(settings, state, other),
        "ground_mm": 1e3 * state.ground,
        "lets_go_mm": None if limit is None else 1e3 * limit,
        "curl_per_m": 0.0 if left is None else left.curvature,
        "retardation_peak_nm": 1e9 * peak,
    }


def odds(settings: Settings, piece: Piece) -> float:
    """Probability that what is done breaks the piece."""
    if settings.then == "bend":
        return piece.bend_odds(1e6 * settings.bend_MPa)
    return piece.blow_odds(settings.blow_J) if settings.then == "hit" else 0.0


def _quench_odds(settings: Settings, state: State) -> float:
    """Probability of a break in the jets: both faces pulled alike, new glass, a short load."""
    glass, both = material(settings.glass), 2e-6 * WIDTH_MM * HEIGHT_MM
    load = even_bending(both, 1.0)
    return break_probability(flaws(glass, "new"), load, state.blown.pull, 0.0, SHORT)


def film(settings: Settings, state: State, other: Piece) -> dict[str, float | None]:
    """What a cracked laminated plate still carries and holds."""
    if settings.beside != "laminated" or state.other_broke_s is None:
        return {"laminated_load_pct": None, "laminated_held_pct": None}
    hit = state.act == "hit"
    limit = other.bend_limit()
    energy = settings.blow_J if hit else other.laminate.bending_energy(2 * limit) * other.area
    carried = other.carried_after(limit, both=hit or state.act == "cut")
    return {
        "laminated_load_pct": 100 * carried,
        "laminated_held_pct": 100 * held_share(energy, other.area),
    }


def trace(settings: Settings, state: State) -> dict[str, float]:
    """Values of this instant for the chart over time."""
    wall, column = quench_of(settings).wall, state.blown.column
    return {
        "surface_MPa": 1e-6 * float(column.stress[0]),
        "centre_MPa": 1e-6 * centre_stress(wall, column),
        "surface_C": float(column.temperature[0]) - ZERO_C,
        "centre_C": float(np.interp(0.0, wall.z, column.temperature)) - ZERO_C,
    }


@functools.lru_cache(maxsize=4)
def energy_of(ready: Quench, stress: bytes) -> fragments.Held:
    """Energy in the blown plate; `stress` is its column's, as bytes."""
    return fragments.held(ready.material, ready.wall.point_z, np.frombuffer(stress))
