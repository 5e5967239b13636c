"""The scene `ring` in words: its sentences, and which of them fits an instant."""

import numpy as np

from demo_app.physics.heat import ZERO_C, outlasts_water
from demo_app.physics.revolve import crackoff
from demo_app.physics.revolve.verdict import Bottle
from demo_app.scenes.crack_off.record import (
    Settings,
    State,
    bottle_for,
    firing_for,
    stresses_MPa,
)
from demo_app.scenes.scene import Message

TEXTS = {
    "cold": "The bottle is evenly cool and free of stress: between the polarizers it stays dark.",
    "heating": "The ring swells by {swell:.0f} µm. Cold glass on both sides holds it back, so it "
    "is squeezed around with {squeeze:.0f} MPa.",
    "evening": "The flame is off. The outside of the ring is still squeezed along the bottle with "
    "{squeeze:.0f} MPa, until the heat has soaked in.",
    "soaking": "The flame is off. The skin cools first and is now pulled along the bottle with "
    "{pull:.0f} MPa.",
    "chilled": "The drop chills the skin. It wants to shrink, the hot glass below does not let it: "
    "a pull of {pull:.0f} MPa, {percent:.0f} % of what the flaw needs.",
    "cracking": "The crack is running through the wall: {depth:.1f} of {wall:.1f} mm.",
    "cracked_drop": "Cracked off {after:.2f} s after the drop, {offset:.1f} mm from the middle of "
    "the ring. The pieces let go of most of their stress.",
    "cracked_drop_middle": "Cracked off {after:.2f} s after the drop, in the middle of the ring. "
    "The pieces let go of most of their stress.",
    "cracked_alone_middle": "It cracked by itself at {at:.1f} s, in the middle of the ring: heat "
    "alone pulled hard enough.",
    "cracked_alone": "It cracked by itself at {at:.1f} s, {offset:.1f} mm from the middle of the "
    "ring: heat alone pulled hard enough.",
    "too_hot": "The ring is too hot: above about {limit:.0f} °C the drop floats on its own steam "
    "and rolls off, so it hardly cools the glass.",
    "held": "It holds: the pull reached {percent:.0f} % of what the flaw needs to become a crack.",
    "fading": "Everything cools together, the stress fades and the picture goes dark again.",
    "soft": "The ring is hot enough to flow. Stress is running out of it now and will come back, "
    "the other way round, as it cools.",
    "locked": "The ring had begun to flow. {stress:.0f} MPa of stress stay locked in although it "
    "is cold again.",
    "along": "along the bottle",
}


def say(settings: Settings, state: State) -> Message:
    """The plain sentence for this instant."""
    ready, moment = bottle_for(settings), state.moment
    crack, firing, now = moment.crack, firing_for(settings), moment.time_s
    stresses = stresses_MPa(ready, moment, state.wall)
    percent = 100 * max(0.0, moment.peaks.ratio)
    if crack is not None:
        return _crack_words(settings, ready, moment)
    if now == 0 or moment.peaks.surface < ZERO_C + 22:
        return Message("cold")
    landed = firing.drop_at is not None and now > firing.drop_at
    if moment.peaks.floated > 0.5:
        limit = outlasts_water(crackoff.effusivity_of(ready, moment)) - ZERO_C
        return Message("too_hot", {"limit": limit})
    if landed and moment.water is not None and now < (firing.drop_at or 0.0) + 3.0:
        return Message(
            "chilled",
            {
                "pull": max(0.0, stresses["axial_outside_MPa"]),
                "percent": 100 * max(0, moment.ratio),
            },
        )
    hottest = float(moment.glass.temperature.max())
    if hottest > ready.piece.material.strain_point:
        return Message("soft")
    burning = now < firing.heat_s and settings.flame_kW_m2 > 0
    if burning:
        squeeze = max(0.0, -stresses["hoop_MPa"])
        return Message("heating", {"swell": stresses["swell_um"], "squeeze": squeeze})
    if moment.peaks.surface > ready.piece.material.strain_point and hottest < ZERO_C + 60:
        stress = 1e-6 * float(np.abs(state.wall.along).max())
        return Message("locked", {"stress": stress})
    if hottest < ZERO_C + 40:
        return Message("fading")
    if landed or now > firing.heat_s + 5:
        # A near miss is still a miss: never round up to 100 %.
        return Message("held", {"percent": min(percent, 99.0)})
    pull = stresses["axial_outside_MPa"]
    return (
        Message("soaking", {"pull": pull}) if pull > 0 else Message("evening", {"squeeze": -pull})
    )


def _crack_words(settings: Settings, ready: Bottle, moment: crackoff.Moment) -> Message:
    crack = moment.crack
    assert crack is not None
    if crack.parted_s is None:
        return Message("cracking", {"depth": 1e3 * crack.depth, "wall": settings.wall_mm})
    offset = abs(1e3 * (crack.s - ready.ring))
    place = "_middle" if offset < 0.05 else ""
    if settings.drop and crack.began_s >= settings.drop_at_s:
        after = crack.parted_s - settings.drop_at_s
        return Message(f"cracked_drop{place}", {"after": after, "offset": offset})
    return Message(f"cracked_alone{place}", {"at": crack.parted_s, "offset": offset})
