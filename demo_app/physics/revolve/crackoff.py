"""Cracking a bottle off: flame ring, drop of water, and the crack that may follow."""

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from demo_app.physics.heat import Water
from demo_app.physics.revolve.body import (
    Body,
    Glass,
    cold,
    cut,
    nodal_stress,
    parted,
    strained,
    tied,
)
from demo_app.physics.revolve.cracking import (
    WallStress,
    at_place,
    grown_depth,
    path,
    wall_stress,
)
from demo_app.physics.revolve.surroundings import (
    Firing,
    dried,
    effusivity,
    heated,
    watered,
)
from demo_app.physics.revolve.verdict import Bottle, Peaks, no_peaks, ordinary_flaw, weighed, worst

Array = NDArray[np.float64]

CRACK_SPEED = 1500.0
"""Terminal crack speed in soda-lime glass, m/s (Schardin 1959, from memory)."""
_AFTERWARDS = 5.0
"""Seconds for which the uncracked twin is followed once the bottle has cracked."""


@dataclass(frozen=True)
class Crack:
    """A crack around the bottle.

    Parameters
    ----------
    s, inside_s : float
        Where it begins outside and comes out inside, arc length, m.
    began_s : float
        When, s.
    depth, target : float
        Where its front is and where it runs to at once, m.
    parted_s : float or None
        When the pieces came apart, s.
    piece : Body
        The bottle with a cut at the crack, held together below `depth`.
    glass : Glass
        Its state.
    """

    s: float
    inside_s: float
    began_s: float
    depth: float
    target: float
    parted_s: float | None
    piece: Body
    glass: Glass


@dataclass(frozen=True)
class Moment:
    """One instant of a crack-off."""

    time_s: float
    step: int
    glass: Glass
    water: Water | None
    crack: Crack | None
    peaks: Peaks
    ratio: float = 0.0


def start(bottle: Bottle) -> Moment:
    """The cold bottle."""
    return Moment(0.0, 0, cold(bottle.piece), None, None, no_peaks(bottle))


def step_seconds(firing: Firing, moment: Moment) -> float:
    """Length of the next step, s: short after each event, growing with the time since then."""
    crack = moment.crack
    if crack is not None and crack.depth < crack.target:
        return _run_seconds(moment, crack)
    now = moment.time_s
    events = [firing.heat_s]
    if firing.drop_at is not None:
        events.append(firing.drop_at)
    if crack is not None:
        events.append(crack.parted_s or crack.began_s)
    last = max([e for e in events if e <= now + 1e-9], default=0.0)
    after_drop = firing.drop_at is not None and abs(last - firing.drop_at) < 1e-9
    grown = (0.01 if after_drop else 0.02) + 0.06 * (now - last)
    burning = now < firing.heat_s - 1e-9
    hot = float(moment.glass.temperature.max()) > 700.0
    length = min(grown, 0.25 if burning or hot else 4.0)
    due = min([e for e in events if e > now + 1e-9], default=np.inf) - now
    return float(due if due < 1.5 * length else length)


def _run_seconds(moment: Moment, crack: Crack) -> float:
    # Speed rises to its limit as v = limit * (1 - 1 / ratio**2) (Mott 1948, Engineering 165, 16).
    speed = CRACK_SPEED * max(0.05, 1 - min(1.0, 1 / max(moment.ratio, 1e-3) ** 2))
    return float((_next_front(crack) - crack.depth) / speed)


def _next_front(crack: Crack) -> float:
    rows = crack.piece.mesh.depth
    further = rows[rows > crack.depth + 1e-9]
    return float(min(further[0] if further.size else crack.target, crack.target))


def step(bottle: Bottle, firing: Firing, moment: Moment) -> Moment:
    """The instant one step later."""
    seconds, now = step_seconds(firing, moment), moment.time_s
    crack, glass = moment.crack, moment.glass
    wetted = shown(bottle, moment)
    water = watered(wetted[0], bottle.ring, firing, moment.water, now)
    followed = crack is None or now < crack.began_s + _AFTERWARDS
    if followed:
        glass = heated(bottle.piece, bottle.ring, firing, glass, water, now, seconds)
        wetted = (bottle.piece, glass)
    if crack is not None:
        pieces = heated(crack.piece, bottle.ring, firing, crack.glass, water, now, seconds)
        crack = replace(crack, glass=pieces)
        wetted = (crack.piece, pieces)
    floating = 0.0
    if water is not None:
        water, floating = dried(*wetted, water, seconds)
    later = replace(
        moment, time_s=now + seconds, step=moment.step + 1, glass=glass, water=water, crack=crack
    )
    if followed:
        later = _followed(bottle, later, floating)
    return _cracked(bottle, later)


def _followed(bottle: Bottle, moment: Moment, floating: float) -> Moment:
    ratio, peaks = weighed(bottle, moment.glass, moment.peaks, floating)
    return replace(moment, ratio=ratio, peaks=peaks)


def shown(bottle: Bottle, moment: Moment) -> tuple[Body, Glass]:
    """Body and state that are to be seen: the bottle, or what the crack made of it."""
    crack = moment.crack
    return (bottle.piece, moment.glass) if crack is None else (crack.piece, crack.glass)


def stress_of(bottle: Bottle, moment: Moment) -> tuple[Body, Glass, WallStress, Array]:
    """Body and state to be seen; their stress in the wall's directions and at the nodes, Pa."""
    piece, glass = shown(bottle, moment)
    nodal = nodal_stress(piece, glass)
    return piece, glass, wall_stress(piece.mesh, nodal), nodal


def effusivity_of(bottle: Bottle, moment: Moment) -> float:
    """``sqrt(k rho c)`` of the bottle's hottest surface, J/(m2 K sqrt(s))."""
    piece, glass = shown(bottle, moment)
    return effusivity(piece.material, piece.heat.outer.value @ glass.temperature)


def _cracked(bottle: Bottle, moment: Moment) -> Moment:
    """Moment after the crack, if there is one, began or ran on."""
    crack = moment.crack
    if crack is None:
        return _begun(bottle, moment) if moment.ratio >= 1.0 else moment
    if crack.depth < crack.target:
        return replace(moment, crack=_run(moment, crack))
    if crack.parted_s is None:
        stress = wall_stress(bottle.piece.mesh, nodal_stress(bottle.piece, moment.glass))
        toughness = bottle.piece.material.fracture_toughness
        along = at_place(bottle.piece.mesh, stress.along, crack.s)
        target = grown_depth(bottle.piece.mesh, along, crack.depth, toughness)
        return replace(moment, crack=replace(crack, target=max(target, crack.target)))
    return moment


def _begun(bottle: Bottle, moment: Moment) -> Moment:
    mesh, material = bottle.piece.mesh, bottle.piece.material
    stress = wall_stress(mesh, nodal_stress(bottle.piece, moment.glass))
    _, where = worst(bottle, stress)
    scored = bottle.score_depth > 0 and where == bottle.score
    depth = bottle.score_depth if scored else ordinary_flaw(material)
    along = at_place(mesh, stress.along, where)
    piece = parted(bottle.piece, where)
    target = grown_depth(mesh, along, depth, material.fracture_toughness)
    glass = cut(moment.glass, int(piece.mesh.split or 0), mesh.depth.size)
    inside = float(path(mesh, stress, where, depth)[-1])
    held = tied(piece, depth)
    crack = Crack(where, inside, moment.time_s, depth, target, None, held, glass)
    return replace(moment, crack=crack)


def _run(moment: Moment, crack: Crack) -> Crack:
    front = _next_front(crack)
    through_wall = front >= crack.piece.mesh.depth[-1] - 1e-12
    loose = tied(crack.piece, front)
    glass = strained(loose, crack.glass, crack.glass.temperature, 1e-7)
    return replace(
        crack,
        depth=front,
        piece=loose,
        glass=glass,
        parted_s=moment.time_s if through_wall else None,
    )
