"""Sentences of the scene `cooling`."""

from demo_app.physics.heat import ZERO_C
from demo_app.physics.material_files import material
from demo_app.physics.materials import Material
from demo_app.physics.stepped import Piece, mean_stress
from demo_app.scenes.cooling_parts.picture import look_of, seen_nm
from demo_app.scenes.cooling_parts.settings import Settings, limit_of, piece_of, proposal_of
from demo_app.scenes.cooling_parts.state import State, acceptable, thickest
from demo_app.scenes.scene import Message

_DARK_NM = 20.0
"""Below this a picture is called dark: at 550 nm, 1.3 % of the light comes through."""

_STIFFENS = 10.0
"""Kelvin above the annealing point from which the glass is said to stiffen: an oven's hold is about
there, and what comes next should be told at once."""

_WHOSE = {
    "optics": "Lenses may keep {limit:.0f} (ISO 10110-2)",
    "magnifier": "Magnifying glasses may keep {limit:.0f} (ISO 10110-2)",
    "ware": "Bottles may keep {limit:.0f} (temper number 4 by ASTM C148)",
}

TEXTS = {
    "soft": "At {inside:.0f} °C the glass still gives way: stress runs out of it as fast as it "
    "comes, and the picture stays dark.",
    "soft_seen": "At {inside:.0f} °C the glass still gives way. What little stress shows comes of "
    "uneven cooling, and would run out again if the cooling stopped.",
    "holding": "The oven holds {hold:.0f} °C. What stress there was runs out of the glass: "
    "{minutes:.0f} minutes to go.",
    "holding_cold": "The oven holds {hold:.0f} °C, too cold to let stress go: the strain point is "
    "{strain:.0f} °C. Hold at {anneal:.0f} °C instead.",
    "birth": "Now the glass stiffens. The inside is {hotter:.1f} °C hotter and has more shrinking "
    "left to do: this is where stress is born.",
    "catching_up": "Stiff through and through. The inside shrinks after the outside: it is pulled "
    "with {pull:.1f} MPa, the outside squeezed with {squeeze:.1f} MPa.",
    "skin_pulled": "The outside is cooler and wants to be smaller than the inside lets it: for now "
    "its skin is pulled with {pull:.1f} MPa.",
    "even": "Stiff, but the inside is only {hotter:.1f} °C hotter than the outside: hardly any "
    "stress is born, and the picture stays dark.",
    "joined_first": "The thin part cools first and shrinks, the thick one holds it back: the thin "
    "part is pulled with {thin:.0f} MPa on average, the thick one squeezed with {thick:.0f}.",
    "joined": "The thin part went stiff first. The thick part still shrinks and is held back: "
    "pulled with {thick:.0f} MPa on average, the thin part squeezed with {thin:.0f}.",
    "face_dark": "Light through the face meets squeeze, pull and squeeze again. They cancel out, "
    "so even a strained plate stays dark face-on.",
    "face_joined_faint": "Joined parts load each other, and face-on that would show. Here it is "
    "only {nm:.0f} nm of retardation: the picture stays dark.",
    "face_joined": "Along the joint one part is pulled, the other squeezed, with equal forces. "
    "Seen face-on that does not cancel out: {nm:.0f} nm in both.",
    "may_crack": "Cold, but it hardly came through whole: cooling pulled the skin with {pull:.0f} "
    "MPa, and handled glass may crack from {strength:.0f} MPa.",
    **{
        f"good_{use}": whose + "; this piece has {nm:.1f} nm on each centimetre. Good enough, "
        "after {hours:.1f} hours."
        for use, whose in _WHOSE.items()
    },
    **{
        f"bad_{use}": "{nm:.0f} nm stay on each centimetre. " + whose + ": too much. Hold at "
        "{hold:.0f} °C, then {slow:.3g} °C an hour: {hours:.1f} hours in all would do."
        for use, whose in _WHOSE.items()
    },
    **{
        f"hopeless_{use}": "{nm:.0f} nm stay on each centimetre. " + whose + ": too much, and no "
        "programme that was tried would do."
        for use, whose in _WHOSE.items()
    },
    "time_h": "time",
    "temperature": "temperature",
    "stress": "stress",
    "outside": "outside",
    "inside": "inside",
    "second_inside": "inside the second part",
    "oven": "oven",
    "surface": "surface",
    "centre": "centre",
    "second_surface": "second part's surface",
    "second_centre": "second part's centre",
    "anneal": "annealing point",
    "strain": "strain point",
    "allowed_pull": "pull allowed at the end",
    "allowed_squeeze": "squeeze allowed at the end",
    "in_plane": "in the plane of the plate",
    "along_joint": "along the joint",
}


def say(settings: Settings, state: State) -> Message:
    """The plain sentence for this instant."""
    if state.cold_s is not None:
        return _verdict(settings, state)
    glass, what, last = material(settings.glass), piece_of(settings), state.history[-1]
    k = thickest(what)
    coolest = min(last.outside) + ZERO_C
    hottest = max(last.inside) + ZERO_C
    if settings.way == "oven" and not state.oven.cooling:
        return _holding(settings, state, glass)
    if settings.look == "face-on" and coolest < glass.strain_point:
        return _face_on(what, state, settings)
    dark = seen_nm(what, state.piece, look_of(settings)) < _DARK_NM
    if coolest > glass.annealing_point + _STIFFENS or state.step == 0:
        # In the air it comes and goes; a sentence that did so too could not be read.
        steady = settings.way == "oven" or settings.look == "face-on" or state.step == 0
        return Message("soft" if dark and steady else "soft_seen", {"inside": last.inside[k]})
    if hottest > glass.strain_point:
        return Message("birth", {"hotter": max(0.0, last.inside[k] - last.outside[k])})
    if dark:
        return Message("even", {"hotter": abs(last.inside[k] - last.outside[k])})
    if len(what.walls) > 1 and what.joined:
        loads = [
            1e-6 * mean_stress(wall, part.stress)
            for wall, part in zip(what.walls, state.piece.parts, strict=True)
        ]
        name = "joined" if loads[k] > 0 else "joined_first"
        return Message(name, {"thick": abs(loads[k]), "thin": abs(loads[1 - k])})
    if last.surface[k] > 0:
        return Message("skin_pulled", {"pull": last.surface[k]})
    return Message("catching_up", {"pull": max(0.0, last.centre[k]), "squeeze": -last.surface[k]})


def _holding(settings: Settings, state: State, glass: Material) -> Message:
    hold = state.told.hold
    if hold < glass.strain_point:
        points = {"strain": glass.strain_point - ZERO_C, "anneal": glass.annealing_point - ZERO_C}
        return Message("holding_cold", {"hold": hold - ZERO_C, **points})
    minutes = max(0.0, state.told.hold_time - state.oven.held) / 60
    return Message("holding", {"hold": hold - ZERO_C, "minutes": minutes})


def _face_on(what: Piece, state: State, settings: Settings) -> Message:
    if len(what.walls) < 2 or not what.joined:
        return Message("face_dark")
    seen = seen_nm(what, state.piece, look_of(settings))
    return Message("face_joined" if seen >= _DARK_NM else "face_joined_faint", {"nm": seen})


def _verdict(settings: Settings, state: State) -> Message:
    """Whether it is good enough, by whose limit, how long it took, and what would do."""
    glass, what, limit = material(settings.glass), piece_of(settings), limit_of(settings)
    assert state.cold_s is not None
    assert state.kept is not None
    if settings.look == "face-on":
        return _face_on(what, state, settings)
    kept = {
        "nm": 1e7 * state.kept,
        "limit": 1e7 * limit.birefringence,
        "hours": state.cold_s / 3600,
    }
    if acceptable(settings, state):
        return Message(f"good_{limit.id}", kept)
    if state.kept <= limit.birefringence:
        strength = 1e-6 * glass.characteristic_strength
        return Message("may_crack", {"pull": 1e-6 * state.peak, "strength": strength})
    proposal = proposal_of(settings)
    if proposal is None:
        return Message(f"hopeless_{limit.id}", kept)
    told = proposal.schedule
    would = {"hold": told.hold - ZERO_C, "slow": 3600 * told.slow, "hours": proposal.seconds / 3600}
    return Message(f"bad_{limit.id}", {**kept, **would})
