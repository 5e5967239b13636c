"""What is said, in plain words."""

import numpy as np

from demo_app.physics.column.readings import centre_stress
from demo_app.physics.grades import Verdict
from demo_app.physics.toughening import cold_after
from demo_app.scenes.scene import Message
from demo_app.scenes.toughening.pieces import diced, other_shards, piece_count
from demo_app.scenes.toughening.readings import film, read
from demo_app.scenes.toughening.record import (
    RAMP_S,
    STRIKE_S,
    Settings,
    State,
    blown_piece,
    ground_of,
    lets_go,
    lifted,
    load_now,
    new_limit,
    other_piece,
    quench_of,
)

TEXTS = {
    "hot": "The left plate is {start:.0f} °C hot and soft. It holds no stress, so it is dark.",
    "skin": "The jets cool the skin first. It wants to shrink, the soft inside lets it: a pull of "
    "only {pull:.1f} MPa.",
    "brittle": "It was too cold to give way: the skin is pulled with {pull:.0f} MPa, and many a "
    "plate breaks in the jets.",
    "locking": "The skin is stiff, the middle still flows: the squeeze is being locked in.",
    "shrinking": "Now the middle shrinks too, and the stiff skin holds it: the skin is squeezed "
    "with {squeeze:.0f} MPa, the middle pulled with {pull:.0f} MPa.",
    "toughened": "Cold, and toughened: skin squeezed with {squeeze:.0f} MPa. Any load must take "
    "that away first, so it bears {ratio:.1f} times as much.",
    "coarse": "Cold. The skin is squeezed with {squeeze:.0f} MPa, but it would break into "
    "{count:.0f} pieces where {asked:.0f} are asked: not toughened.",
    "heat-strengthened": "Cold, and heat-strengthened: {squeeze:.0f} MPa of squeeze. Stronger "
    "than plain glass, but it will not break into dice.",
    "annealed": "Cold, and hardly stronger than plain glass: {squeeze:.0f} MPa of squeeze.",
    "coming": "Both plates are about to be put to the test.",
    "bending": "Both are bent: {load:.0f} MPa at the face.",
    "none_bend": "Bent to {load:.0f} MPa, both hold.",
    "plain_bend": "Bent to {load:.0f} MPa: the plain plate is in {other} long shards, the blown "
    "one holds.",
    "both_bend": "Bent to {load:.0f} MPa, both break: the plain plate into {other} long shards, "
    "the blown one into {pieces} pieces.",
    "alike_bend": "Bent to {load:.0f} MPa, both break into long shards: the plain plate into "
    "{other}, the blown one into {pieces}. It holds too little energy for dice.",
    "blown_bend": "Bent to {load:.0f} MPa: the blown plate is in {pieces} pieces, the other holds.",
    "none_hit": "A blow of {blow:.1f} J, and both hold.",
    "plain_hit": "A blow of {blow:.1f} J: the plain plate is in {other} long shards, the blown one "
    "holds. It would take {limit:.1f} J.",
    "both_hit": "A blow of {blow:.1f} J breaks both: the plain plate into {other} long shards, the "
    "blown one into {pieces} small pieces.",
    "alike_hit": "A blow of {blow:.1f} J breaks both into long shards: the plain plate into "
    "{other}, the blown one into {pieces}. It holds too little energy for dice.",
    "blown_hit": "A blow of {blow:.1f} J: the blown plate is in {pieces} pieces, the other holds.",
    "film_bend": "The laminated plate has cracked, but its film holds {held:.0f} % of the glass "
    "and {carried:.0f} % of the load.",
    "film_hit": "The laminated plate has cracked, but its film holds {held:.0f} % of the glass, "
    "and it carries {carried:.0f} % of its load.",
    "cut_dices": "One cut reaches the pull inside, and all of it lets go: {pieces} small pieces. "
    "The plain plate is cut in two.",
    "cut_parts": "There is too little energy inside to drive a crack: the cut parts both plates "
    "neatly in two.",
    "grinding": "{ground:.1f} mm are off one face. The squeeze that is gone no longer balances the "
    "other side: off the table, the plate will curl.",
    "ground_dices": "{ground:.1f} mm off, the wheel has met the pull inside: the plate lets go and "
    "breaks into {pieces} pieces.",
    "ground": "{ground:.1f} mm are off, and it still holds: it would break at {limit:.1f} mm. "
    "Lifted off the table it curls, like an arc of {radius:.1f} m radius.",
    "ground_weak": "{ground:.1f} mm are off one face, and it only curls: there is too little pull "
    "inside to let it go.",
    "depth": "depth",
    "stress": "stress",
    "blown": "blown plate",
    "plain": "plain plate",
    "laminated": "laminated plate",
    "limit_toughened": "toughened",
    "limit_strengthened": "heat-strengthened",
    "along": "along the plate",
}


def say(settings: Settings, state: State) -> Message:
    """The plain sentence for this instant."""
    ready, column = quench_of(settings), state.blown.column
    glass = ready.material
    pull, squeeze = 1e-6 * centre_stress(ready.wall, column), -1e-6 * column.stress[0]
    if state.time_s == 0:
        return Message("hot", {"start": settings.start_C})
    if column.time < cold_after(ready):
        middle = float(np.interp(0.0, ready.wall.z, column.temperature))
        if column.stress[0] > 0:
            brittle = state.blown.pull > 0.5 * new_limit(settings)
            return Message("brittle" if brittle else "skin", {"pull": -squeeze})
        if middle > glass.strain_point:
            return Message("locking")
        return Message("shrinking", {"squeeze": squeeze, "pull": max(0.0, pull)})
    if state.began_s is None or state.act not in _ACT_WORDS:
        return _grade_words(settings, state)
    return _ACT_WORDS[state.act](settings, state)


def _grade_words(settings: Settings, state: State) -> Message:
    found = read(settings, state)
    values = {"squeeze": max(0.0, -found["surface_MPa"]), "ratio": found["strength_ratio"]}
    verdict = Verdict(found["grade"], found["grade_limited_by"])
    if verdict.limited_by == "particle count":
        counts = {"count": found["particles_50mm"], "asked": found["particles_asked"]}
        return Message("coarse", {**values, **counts})
    return Message(verdict.grade, values)


def _tried_words(settings: Settings, state: State, kind: str) -> Message:
    """Which of both plates a bending or a blow has broken."""
    broke, other_broke = state.broke_s is not None, state.other_broke_s is not None
    values: dict[str, float | str] = {
        "load": 1e-6 * load_now(settings, state),
        "blow": settings.blow_J,
        "other": str(len(other_shards(settings, state))),
        "pieces": str(piece_count(settings, state)),
        "limit": blown_piece(settings, state).blow_limit(),
    }
    if other_broke and settings.beside == "laminated":
        kept = film(settings, state, other_piece(settings))
        held, carried = kept["laminated_held_pct"], kept["laminated_load_pct"]
        return Message(f"film_{kind}", {"held": held or 0.0, "carried": carried or 0.0})
    if broke and other_broke and not diced(settings, state):
        return Message(f"alike_{kind}", values)
    who = {(True, True): "both", (True, False): "blown", (False, True): "plain"}
    return Message(f"{who.get((broke, other_broke), 'none')}_{kind}", values)


def _bend_words(settings: Settings, state: State) -> Message:
    waits = state.time_s - (state.began_s or 0.0) < RAMP_S
    if waits and state.broke_s is None and state.other_broke_s is None:
        return Message("bending", {"load": 1e-6 * load_now(settings, state)})
    return _tried_words(settings, state, "bend")


def _hit_words(settings: Settings, state: State) -> Message:
    if state.time_s - (state.began_s or 0.0) < STRIKE_S:
        return Message("coming")
    return _tried_words(settings, state, "hit")


def _cut_words(settings: Settings, state: State) -> Message:
    if state.broke_s is None:
        return Message("coming")
    pieces = piece_count(settings, state)
    return Message("cut_dices" if diced(settings, state) else "cut_parts", {"pieces": str(pieces)})


def _grind_words(settings: Settings, state: State) -> Message:
    ground = 1e3 * state.ground
    if state.broke_s is not None:
        pieces = str(piece_count(settings, state))
        return Message("ground_dices", {"ground": ground, "pieces": pieces})
    left, limit = ground_of(settings, state), lets_go(settings, state)
    if left is None or not lifted(state):
        return Message("grinding", {"ground": ground})
    if limit is None:
        return Message("ground_weak", {"ground": ground})
    radius = 1 / max(abs(left.curvature), 1e-6)
    return Message("ground", {"ground": ground, "limit": 1e3 * limit, "radius": radius})


_ACT_WORDS = {
    "bend": _bend_words,
    "hit": _hit_words,
    "cut": _cut_words,
    "grind_one_face": _grind_words,
}
