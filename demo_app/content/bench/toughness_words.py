"""What the answers of the page `toughness` say in plain words."""

from collections.abc import Mapping, Sequence

from demo_app.content.bench.answer import Figure
from demo_app.physics.grades import GRADES, fewest_particles
from demo_app.scenes.scene import Message

TEXTS = {
    "surface": "Squeeze at the surface",
    "middle": "Pull in the middle",
    "particles": "Particles in 50 mm by 50 mm",
    "ratio": "Times as strong, used",
    "strength": "Bending strength, new",
    "blow": "Blow that breaks half of them",
    "runs_by_itself": "A crack runs by itself",
    **{f"is_{one}": f"Grade: {one}" for one in GRADES},
    "sure": "Within what is known, it is {grade}: {odds:.0f} of 100 such plates are.",
    "unsure": "It may be {grade} ({odds:.0f} of 100 such plates) or {other} ({rest:.0f}): measure "
    "again, or treat it as whichever breaks worse.",
    "dice": "When it breaks, all of it goes at once, into some {low:.0f} to {high:.0f} particles "
    "in 50 mm by 50 mm.",
    "coarse": "When it breaks, cracks run by themselves, but into pieces larger than the standard "
    "asks of toughened glass: {asked:.0f} in 50 mm by 50 mm.",
    "shards": "When it breaks, it parts into long sharp shards like plain glass: it holds too "
    "little energy for dice.",
    "load": "Under a load that stays, used, it bears {low:.1f} to {high:.1f} times as much as a "
    "plain plate.",
    "grades": "Grades",
    "grade": "grade",
    "odds": "odds",
    "asked": "least squeeze",
    "annealed": "annealed",
    "heat-strengthened": "heat-strengthened",
    "toughened": "toughened",
    "depth": "depth below the surface",
    "stress": "stress",
    "through": "most likely",
    "low": "weakest of twenty",
    "high": "strongest of twenty",
    "limit_surface": "By surface compression: heat-strengthened from 24, toughened from 69 MPa "
    "(ASTM C1048); by particles: EN 12150-1. A grade is what a factory's tests give, not this.",
    "limit_even": "The plate is wide, cooled alike on both faces, and has no holes; edges and "
    "corners are weaker.",
    "limit_edge": "Through the edge, the stress in the middle stands for that at the surface by "
    "{ratio:.1f} to 1; light that is not parallel to the faces blurs the skin's reading.",
    "limit_face": "A surface instrument reads the tin side of float alone (ASTM C1279).",
    "limit_dice": "Particles follow from the energy inside, by one fraction that was fitted to "
    "plates of 6 mm; patterns differ from plate to plate.",
}  # fmt: skip


def say(
    thickness: float, figures: Sequence[Figure], shares: Mapping[str, float]
) -> tuple[Message, ...]:
    """Grade, kind of break and strength of a plate of `thickness` (m), by figures and shares."""
    by = {one.id: one for one in figures}
    ranks = sorted(shares, key=lambda name: -shares[name])
    top, other = ranks[0], ranks[1]
    values: dict[str, float | str] = {"grade": top, "odds": 100 * shares[top]}
    verdict = Message("sure", values)
    if shares[top] < 0.9:
        verdict = Message("unsure", {**values, "other": other, "rest": 100 * shares[other]})
    count, alone, ratio = by["particles"], by["runs_by_itself"], by["ratio"]
    asked = fewest_particles(thickness)
    if (alone.middle or 0) < 50:
        breaks = Message("shards")
    elif (count.middle or 0) < asked:
        breaks = Message("coarse", {"asked": asked})
    else:
        breaks = Message("dice", {"low": count.low or 0, "high": count.high or 0})
    load = Message("load", {"low": ratio.low or 0, "high": ratio.high or 0})
    return verdict, breaks, load
