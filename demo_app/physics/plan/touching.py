"""A plate that a warm tip touches: its warmth, its stress, its old crack, and how it all fades."""

import math
from dataclasses import dataclass, replace

import numpy as np

from demo_app.physics.heat import ROOM
from demo_app.physics.materials import Array, Material
from demo_app.physics.plan.cut import Cut, intensity, line_load, runs_to
from demo_app.physics.plan.sheet import Sheet, displacement, nodal_stress, warmed
from demo_app.physics.plan.spot import Place, spot_flux, tip_share

TICK = 1 / 30
"""Step while the tip touches, s."""
_MOST_DOUBLINGS = 8
"""The longest step of a plate that is left alone is this power of two, in ticks."""
_PATIENCE = 40.0
"""Time since the tip was lifted, over the length of a step."""


@dataclass(frozen=True)
class Tip:
    """A warm tip.

    Parameters
    ----------
    power : float
        Heat that it gives, both faces together, W.
    diameter : float
        Within which 63 % of the heat falls, m.
    rests : float
        How long a tip that nobody moves stays in the middle, s.
    """

    power: float
    diameter: float
    rests: float


@dataclass(frozen=True)
class Peaks:
    """Largest values over the run, of the plate without its crack.

    Parameters
    ----------
    rise : float
        Above the room, K.
    tension, compression : float
        Principal stresses, Pa, tension positive.
    retardation : float
        m.
    ratio : float
        K over K_IC of the crack.
    """

    rise: float = 0.0
    tension: float = 0.0
    compression: float = 0.0
    retardation: float = 0.0
    ratio: float = 0.0


@dataclass(frozen=True)
class Fade:
    """What happened since the tip was lifted.

    Parameters
    ----------
    since_s : float
        Time at which it was lifted, s.
    retardation : float
        Largest retardation then, m.
    half_s : float or None
        Time in which the largest retardation fell to half, s; None until it has.
    """

    since_s: float
    retardation: float
    half_s: float | None = None


@dataclass(frozen=True)
class Moment:
    """One instant.

    Parameters
    ----------
    time_s, step : float, int
        Time, s, and steps since the start.
    rise : numpy.ndarray
        Shape (nodes,): temperature above the room, K, mean through the thickness.
    moved : numpy.ndarray
        Shape (2 * nodes,): displacement of the whole plate, m.
    stress : numpy.ndarray
        Shape (3, columns, rows): its stress at the nodes, Pa.
    crack : float
        Length of the crack, m.
    ran_at_s : float or None
        When the crack first ran.
    tip : tuple of float or None
        Where the tip is, m; None while it is lifted.
    was : tuple of float or None
        Where it was at the end of the last step.
    led : bool
        Whether somebody has moved the tip; else it rests in the middle for its time.
    retardation, ratio : float
        Largest retardation, m, and K over K_IC of the crack, of this instant.
    peaks : Peaks
        Of the run.
    fade : Fade or None
        None while the tip touches.
    """

    time_s: float
    step: int
    rise: Array
    moved: Array
    stress: Array
    crack: float
    ran_at_s: float | None = None
    tip: Place | None = None
    was: Place | None = None
    led: bool = False
    retardation: float = 0.0
    ratio: float = 0.0
    peaks: Peaks = Peaks()
    fade: Fade | None = None


def begin(plate: Sheet, crack: float) -> Moment:
    """The cold plate with an old crack of a length `crack` (m; 0: none)."""
    nodes = plate.mesh.nodes
    stress = np.zeros((3, *plate.mesh.x.shape))
    return Moment(0.0, 0, np.zeros(nodes), np.zeros(2 * nodes), stress, crack)


def pointed(now: Moment, place: Place | None) -> Moment:
    """The tip put down at or moved to `place` (m), or lifted (None)."""
    # A tip that was in the air, or nobody's, does not come sliding over the plate.
    slides = place is not None and now.led and now.tip is not None
    return replace(now, tip=place, was=now.was if slides else None, led=True)


def touched(tip: Tip, now: Moment) -> Place | None:
    """Where the tip touches in the coming step, m; None if it does not."""
    if now.led:
        return now.tip
    # Half a tick, so that a sum of many ticks ends where it is meant to.
    return (0.0, 0.0) if now.time_s < tip.rests - TICK / 2 else None


def ticks(now: Moment) -> int:
    """Length of the next step: one tick while the tip touches, then longer and longer."""
    if now.fade is None:
        return 1
    patience = (now.time_s - now.fade.since_s) / _PATIENCE / TICK
    return int(2 ** min(_MOST_DOUBLINGS, math.floor(math.log2(max(1.0, patience)))))


def step(plate: Sheet, line: Cut | None, tip: Tip, now: Moment) -> Moment:
    """One step later.

    Parameters
    ----------
    plate : Sheet
        The plate.
    line : Cut or None
        Where its crack is; None if there is none.
    tip : Tip
        The warm tip.
    now : Moment
        Before the step.
    """
    place = touched(tip, now)
    fade = None if place is not None else now.fade
    if place is None and fade is None:
        fade = Fade(now.time_s, now.retardation)
    now = replace(now, fade=fade)
    seconds = ticks(now) * TICK
    flux = np.zeros(plate.mesh.nodes)
    if place is not None and tip.power > 0:
        flux = spot_flux(plate.mesh, tip.power, tip.diameter, now.was or place, place)
        flux *= tip_share(now.rise)
    rise = warmed(plate, now.rise, seconds, flux)
    moved = displacement(plate, rise)
    later = replace(
        now,
        time_s=now.time_s + seconds,
        step=now.step + 1,
        rise=rise,
        moved=moved,
        stress=nodal_stress(plate, rise, moved),
        was=place,
    )
    return _cracked(line, _weighed(plate.material, plate.thickness, now, later))


def principal(stress: Array) -> tuple[Array, Array]:
    """Larger and smaller principal stress of (xx, yy, xy), Pa; shapes of one component."""
    xx, yy, xy = stress
    spread = np.hypot(xx - yy, 2 * xy)
    return (xx + yy + spread) / 2, (xx + yy - spread) / 2


def _weighed(material: Material, thickness: float, before: Moment, now: Moment) -> Moment:
    """`now` with its peaks, and how far it has faded since `before`."""
    larger, smaller = principal(now.stress)
    retardation = material.stress_optic * thickness * float((larger - smaller).max())
    old, fade = now.peaks, now.fade
    waits = fade is not None and fade.half_s is None and fade.retardation > 0
    if fade is not None and waits and retardation <= fade.retardation / 2:
        fallen = before.retardation - fade.retardation / 2
        share = fallen / (before.retardation - retardation)
        reached = before.time_s + share * (now.time_s - before.time_s)
        fade = replace(fade, half_s=reached - fade.since_s)
    peaks = Peaks(
        max(old.rise, float(now.rise.max())),
        max(old.tension, float(larger.max())),
        min(old.compression, float(smaller.min())),
        max(old.retardation, retardation),
        old.ratio,
    )
    return replace(now, retardation=retardation, peaks=peaks, fade=fade)


def _cracked(line: Cut | None, now: Moment) -> Moment:
    """`now` with its crack where it stops."""
    if line is None:
        return now
    load = line_load(line, now.rise, now.moved, now.stress)
    ratio = intensity(line, load, now.crack) / line.piece.material.fracture_toughness
    length = runs_to(line, load, now.crack)
    ran = now.ran_at_s
    if length > now.crack and ran is None:
        ran = now.time_s
    peaks = replace(now.peaks, ratio=max(now.peaks.ratio, ratio))
    return replace(now, crack=length, ran_at_s=ran, ratio=ratio, peaks=peaks)


def spreading_time(material: Material, diameter: float) -> float:
    """Time in which a Gaussian spot's middle cools to half by spreading alone, s.

    Its temperature falls as ``1 / (1 + t / T)``, ``T = diameter**2 / (16 diffusivity)`` (Carslaw
    and Jaeger, section 10.3, plane source).
    """
    return diameter**2 / (16 * material.diffusivity(ROOM))
