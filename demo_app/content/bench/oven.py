"""The shortest oven programme for my thickest section, and what an opened door does to it."""

import functools
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np

from demo_app.base.errors import InputError
from demo_app.content.bench.answer import (
    Answer,
    Cancelled,
    Figure,
    Page,
    Progress,
    chance,
    ranged,
)
from demo_app.content.bench.door import Door, Fired, celsius, fired
from demo_app.content.bench.inputs import check_seed, check_spread, runs, seed, tolerance
from demo_app.content.bench.matters import ranked
from demo_app.content.bench.oven_table import segments
from demo_app.content.bench.oven_words import TEXTS, say
from demo_app.content.bench.sampling import about, drawn, within
from demo_app.content.bench.words import CAUTIONS, limits_of
from demo_app.content.spread.estimates import odds
from demo_app.physics.annealing import LIMITS, temper_number
from demo_app.physics.annealing_search import Proposal, fastest, propose
from demo_app.physics.material_files import glasses, material
from demo_app.physics.oven import Programme, whole
from demo_app.scenes.scene import Chart, Curve
from demo_app.scenes.settings import choice, flag, number

NM_PER_CM = 1e7
"""nm/cm in a retardation over path of one."""


@dataclass(frozen=True)
class OvenQuestion:
    """What goes into the oven, and how good it must come out."""

    glass: str = choice("Glass", "soda-lime", glasses(), help="What it is made of.")
    thickness_mm: float = number(
        "Thickest", "mm", 10, 1, 50, step=0.5, help="The thickest section of the piece."
    )
    faces: str = choice(
        "Heat leaves by", "both", ("both", "one"),
        help="Both faces, or one alone: a hollow piece, or one that stands on its shelf.",
    )  # fmt: skip
    limit: str = choice(
        "Good enough for", "optics", tuple(LIMITS),
        help="optics: 10 nm/cm; magnifier: 20 nm/cm; ware: temper number 4, bottles.",
    )  # fmt: skip
    comes_cold: bool = flag(
        "Comes in cold", False, help="Whether the piece must first be heated up with the oven."
    )
    door: bool = flag("Door is opened", False, help="Whether somebody opens it on the way.")
    door_at_min: float = number(
        "Door opens at", "min", 30, 0, 6000, step=5, help="Minutes after the hold begins."
    )
    door_for_min: float = number(
        "Door open for", "min", 2, 0.1, 120, help="How long air and walls stay cooler."
    )
    door_C: float = number(
        "Falls to", "°C", 300, 20, 800, step=10, help="What air and walls fall to meanwhile."
    )
    thickness_tol_pct: float = tolerance("Thickness within", 5, help="To both sides.")
    oven_tol_C: float = number(
        "Oven within", "°C", 5, 0, 30, help="Error of the oven's thermometer, to both sides."
    )
    air_tol_pct: float = tolerance("Air within", 30, help="How well its fan stirs, to both sides.")
    runs: str = runs("64")
    seed: float = seed()

    def __post_init__(self) -> None:
        """Refuse a door that opens too late, or warms the oven."""
        check_seed(self.seed)
        check_spread(
            self.thickness_tol_pct, self.oven_tol_C, self.air_tol_pct, place="thickness_tol_pct"
        )
        if self.faces == "one" and self.thickness_mm > 25:
            raise InputError(
                "such a block cooled from one face alone takes longer than this was made for",
                place="thickness_mm",
                remedy="write at most 25, or let heat leave by both faces",
            )
        if self.door:
            self._check_door()

    def _check_door(self) -> None:
        programme = whole(proposal_of(self).schedule)
        if 60 * self.door_at_min >= programme.duration:
            raise InputError(
                f"the programme is over after {programme.duration / 60:.0f} minutes",
                place="door_at_min",
                remedy=f"write less than {programme.duration / 60:.0f}",
            )
        told = celsius(programme.at(60 * self.door_at_min))
        if self.door_C >= told:
            raise InputError(
                f"an opened door cools: the oven is at {told:.0f} °C by then",
                place="door_C",
                remedy=f"write less than {told:.0f}",
            )


def _thickness(question: OvenQuestion) -> float:
    """Thickness of the plate that cools by both faces like the piece, m."""
    return 1e-3 * question.thickness_mm * (2 if question.faces == "one" else 1)


def proposal_of(question: OvenQuestion) -> Proposal:
    """The shortest programme for the thickest of the pieces; `InputError` if none was found."""
    limit = LIMITS[question.limit].birefringence
    thickest = _thickness(question) * (1 + question.thickness_tol_pct / 100)
    found = propose(material(question.glass), (thickest,), False, limit)
    if found is None:
        raise InputError(
            f"no programme was found for {question.thickness_mm:g} mm of {question.glass}",
            place="thickness_mm",
            remedy="write a thinner section or a milder limit",
        )
    return found


def _door(question: OvenQuestion) -> Door | None:
    if not question.door:
        return None
    opens = 60 * question.door_at_min
    return Door(opens, opens + 60 * question.door_for_min, question.door_C + 273.15)


def _programme(question: OvenQuestion) -> Programme:
    return whole(proposal_of(question).schedule)


Pair = tuple[Fired, Fired | None]


def _pair(question: OvenQuestion, thick: float = 1.0, error: float = 0.0, air: float = 1.0) -> Pair:
    """The piece after a quiet programme, and after one with the door opened."""
    glass, programme = material(question.glass), _programme(question)
    wide, door = thick * _thickness(question), _door(question)
    calm = fired(glass, wide, programme, error=error, air=air)
    if door is None:
        return calm, None
    return calm, fired(glass, wide, programme, door, error=error, air=air)


@functools.lru_cache(maxsize=4)
def _nominal(question: OvenQuestion) -> Pair:
    return _pair(question)


def first(question: OvenQuestion) -> Answer:
    """The programme and what it leaves; the range by the square of the thickness.

    Stress of slow cooling goes as the square of the thickness (Adams and Williamson 1920).
    """
    half, ends = max(question.thickness_tol_pct, 1.0) / 100, _programme(question).duration
    pairs = [
        tuple(None if one is None else _thicker(one, factor, ends) for one in _nominal(question))
        for factor in (1 - half, 1.0, 1 + half)
    ]
    return _answer(question, [(calm, opened) for calm, opened in pairs if calm is not None], 0)


def _thicker(one: Fired, factor: float, ends: float) -> Fired:
    """Estimate for a plate `factor` as thick; it lags behind the `ends` (s) in proportion."""
    square, last = factor**2, one.times[-1]
    return replace(
        one,
        times=(*one.times[:-1], last + (factor - 1) * max(0.0, last - ends)),
        birefringence=square * one.birefringence,
        surface=square * one.surface,
        pull=square * one.pull,
    )


def full(question: OvenQuestion, progress: Progress, cancelled: Cancelled) -> Iterator[Answer]:
    """Pieces and ovens within the tolerances."""
    spread = (
        *within("thick", question.thickness_tol_pct),
        *about("error", question.oven_tol_C),
        *within("air", question.air_tol_pct),
    )

    def model(point: Mapping[str, float]) -> Pair:
        return _pair(question, **point)

    for found in drawn(
        model, spread, seed=int(question.seed), most=int(question.runs),
        progress=progress, cancelled=cancelled,
    ):  # fmt: skip
        answer = _answer(question, found.results, len(found.results))
        yield ranked(answer, found, [(two or one).birefringence for one, two in found.results])


def _answer(question: OvenQuestion, pairs: Sequence[Pair], count: int) -> Answer:
    told, limit = proposal_of(question), LIMITS[question.limit].birefringence
    up = fastest(material(question.glass), _thickness(question)) if question.comes_cold else None
    rows, seconds = segments(told.schedule, up)
    calm = [one for one, _ in pairs]
    opened = [one for _, one in pairs if one is not None]
    kept = [one.birefringence for one in calm]
    heated = seconds - _programme(question).duration
    figures = [
        ranged("hours", [one.times[-1] + heated for one in calm], "h", 1 / 3600),
        ranged("birefringence", kept, "nm/cm", NM_PER_CM),
        ranged("temper", [temper_number(one) for one in kept], ""),
        *_verdicts("", calm, limit),
    ]
    if opened:
        after = [one.birefringence for one in opened]
        figures += [
            ranged("door_birefringence", after, "nm/cm", NM_PER_CM),
            *_verdicts("door_", opened, limit),
        ]
    by = {one.id: one for one in figures}
    limits = ["limit_design", "limit_plate", "limit_rest"]
    limits += ["limit_cold"] if question.comes_cold else []
    limits += ["limit_one"] if question.faces == "one" else []
    limits += ["limit_door"] if opened else []
    return Answer(
        "oven", question, tuple(figures), tuple(say(NM_PER_CM * limit, told.schedule, seconds, by)),
        limits_of(question.glass, *limits), CAUTIONS,
        (rows,), (_chart(question),),
        runs=count, most=int(question.runs), seed=int(question.seed),
    )  # fmt: skip


def _verdicts(prefix: str, found: Sequence[Fired], limit: float) -> list[Figure]:
    return [
        _share(f"{prefix}passes", [one.birefringence <= limit for one in found]),
        ranged(f"{prefix}pull", [one.pull for one in found], "MPa", 1e-6),
        chance(f"{prefix}cracks", [one.odds for one in found]),
    ]


def _share(id: str, verdicts: Sequence[bool]) -> Figure:
    """Share of the runs for which something holds, with the doubt of their number."""
    found = odds(sum(verdicts), len(verdicts))
    return Figure(id, 100 * found.low, 100 * found.share, 100 * found.high, "%")


def _chart(question: OvenQuestion) -> Chart:
    programme, glass = _programme(question), material(question.glass)
    calm, opened = _nominal(question)
    shown = opened or calm
    hours = np.array(programme.times) / 3600
    curves = [Curve("oven", hours, celsius(np.array(programme.temperatures)))]  # type: ignore[arg-type]
    if opened is not None:
        times = np.array(shown.times) / 3600
        curves += [
            Curve("inside", times, np.array(shown.inside) - 273.15),
            Curve("outside", times, np.array(shown.outside) - 273.15),
        ]
    return Chart(
        "time", "h", "temperature", "°C", tuple(curves),
        (("strain", celsius(glass.strain_point)),),
    )  # fmt: skip


PAGE = Page(
    "oven",
    "Oven programme",
    "Which oven programme is the shortest for my piece, and what does an opened door do?",
    OvenQuestion,
    TEXTS,
    first,
    full,
)
