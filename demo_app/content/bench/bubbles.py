"""Will my bubbles behave on stage: bear the blow outside, and burst at the scratch inside."""

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

import numpy as np
from scipy.stats import binom

from demo_app.base.errors import InputError
from demo_app.content.bench.answer import (
    Answer,
    Array,
    Cancelled,
    Column,
    Figure,
    Page,
    Progress,
    Table,
    chance,
    ranged,
)
from demo_app.content.bench.bubble_run import Borne, Sizes, borne, cooled_flask
from demo_app.content.bench.bubble_words import TEXTS
from demo_app.content.bench.inputs import check_seed, check_spread, runs, seed, tolerance
from demo_app.content.bench.matters import ranked
from demo_app.content.bench.sampling import drawn, within
from demo_app.content.bench.words import CAUTIONS, limits_of
from demo_app.physics.annealing_search import worked_at
from demo_app.physics.material_files import glasses, material
from demo_app.physics.oven import Programme
from demo_app.physics.revolve.flask import flask_profile
from demo_app.physics.revolve.foreseen import programme_for
from demo_app.physics.revolve.verdict import SCORE_SPREAD
from demo_app.scenes.scene import Chart, Curve, Message
from demo_app.scenes.settings import choice, number

SURELY, GENTLY = 0.9, 0.05
"""Share that the recommended scratch breaks, and that the recommended blow breaks."""
_RARE = 0.002
"""Odds below which a number of flasks is not listed."""
_NINE_TENTHS = 1.2815515655446004
"""Standard normal quantile of 90 %."""


@dataclass(frozen=True)
class BubblesQuestion:
    """What is known of the batch, and what is done to it on stage."""

    glass: str = choice("Glass", "soda-lime", glasses(), help="What they are made of.")
    outer_diameter_mm: float = number(
        "Diameter", "mm", 60, 30, 100, help="Outer diameter of the flask."
    )
    length_mm: float = number(
        "Length", "mm", 130, 60, 250, step=5, help="From the foot to the mouth."
    )
    base_mm: float = number(
        "Foot", "mm", 10, 2, 40, step=0.5, help="Thickness in the middle of the foot."
    )
    wall_mm: float = number("Wall", "mm", 2, 1, 6, step=0.1, help="Thickness of the wall.")
    way: str = choice(
        "Cooled", "air", ("air", "oven"), help="In the open, or by an oven programme."
    )
    blow_J: float = number(
        "Blow", "J", 3, 0, 50, step=0.5, help="Energy of a soft blow on the foot, from outside."
    )
    scratch_um: float = number(
        "Scratch", "µm", 150, 0, 1000, step=10, help="Depth meant for the scratch inside the foot."
    )
    batch: float = number("Batch", "", 10, 1, 100, help="How many are brought on stage.")
    spread_is: str = choice(
        "Spread is from", "flask to flask", ("flask to flask", "batch to batch"),
        help="Whether each flask differs, or all of one batch are alike.",
    )  # fmt: skip
    base_tol_pct: float = tolerance("Foot within", 15, help="To both sides.")
    wall_tol_pct: float = tolerance("Wall within", 15, help="To both sides.")
    air_tol_pct: float = tolerance("Cooling within", 20, help="Draught and hand, to both sides.")
    runs: str = runs("32")
    seed: float = seed()

    def __post_init__(self) -> None:
        """Refuse shapes that cannot be, within the tolerances too."""
        check_seed(self.seed)
        check_spread(self.base_tol_pct, self.wall_tol_pct, self.air_tol_pct, place="base_tol_pct")
        if self.batch != int(self.batch):
            raise InputError(
                f"{self.batch:g} flasks cannot be", place="batch", remedy="write a whole number"
            )
        if self.blow_J == 0 and self.scratch_um == 0:
            raise InputError(
                "neither a blow nor a scratch: nothing would happen on stage",
                place="scratch_um",
                remedy="write a depth, such as 150",
            )
        for sign in (0, -1, 1):
            for other in (-1, 1):
                sizes = _sizes(
                    self,
                    1 + sign * self.base_tol_pct / 100,
                    1 + sign * other * self.wall_tol_pct / 100,
                )
                flask_profile(sizes.diameter, sizes.length, sizes.base, sizes.wall)
        if 1e-3 * self.scratch_um > 0.5 * self.base_mm * (1 - self.base_tol_pct / 100):
            raise InputError(
                "that is half through the foot: no scratch any more",
                place="scratch_um",
                remedy=f"write at most {400 * self.base_mm:g}",
            )


def _sizes(question: BubblesQuestion, base: float = 1.0, wall: float = 1.0) -> Sizes:
    return Sizes(
        1e-3 * question.outer_diameter_mm,
        1e-3 * question.length_mm,
        1e-3 * base * question.base_mm,
        1e-3 * wall * question.wall_mm,
    )


def _programme(question: BubblesQuestion) -> Programme | None:
    if question.way == "air":
        return None
    return programme_for(material(question.glass), 1e-3 * question.base_mm)


def first(question: BubblesQuestion) -> Answer:
    """One flask, coarsely; the range from its stress scaled as the tolerances would."""
    done = cooled_flask(
        material(question.glass), _sizes(question), _programme(question), 1.0, coarse=True
    )
    doubt = math.hypot(question.base_tol_pct, question.air_tol_pct, question.wall_tol_pct / 2) / 150
    return _answer(question, [borne(done, factor) for factor in (1.0, 1 - doubt, 1 + doubt)], 0)


def full(question: BubblesQuestion, progress: Progress, cancelled: Cancelled) -> Iterator[Answer]:
    """Flasks within the tolerances."""
    glass, programme = material(question.glass), _programme(question)
    spread = (
        *within("base", question.base_tol_pct),
        *within("wall", question.wall_tol_pct),
        *within("air", question.air_tol_pct),
    )

    def model(point: Mapping[str, float]) -> Borne:
        sizes = _sizes(question, point.get("base", 1.0), point.get("wall", 1.0))
        return borne(cooled_flask(glass, sizes, programme, point.get("air", 1.0)))

    for found in drawn(
        model, spread, seed=int(question.seed), most=int(question.runs),
        progress=progress, cancelled=cancelled,
    ):  # fmt: skip
        answer = _answer(question, found.results, len(found.results))
        yield ranked(answer, found, [one.base_inside for one in found.results])


def counts(odds: Sequence[float], batch: int, *, alike: bool) -> Array:
    """Probability of 0, 1, ... `batch` that behave, shape (batch + 1,).

    Parameters
    ----------
    odds : sequence of float
        Odds of each of many flasks, all as likely.
    batch : int
        How many are on stage.
    alike : bool
        Whether all of one batch have the same odds; else each is drawn by itself, and only their
        mean counts.
    """
    k = np.arange(batch + 1)
    if alike:
        return np.asarray(np.mean([binom.pmf(k, batch, one) for one in odds], axis=0))
    return np.asarray(binom.pmf(k, batch, float(np.mean(odds))))


def spare(odds: Sequence[float], wanted: int, *, alike: bool) -> int | None:
    """Fewest flasks of which `wanted` behave nineteen times in twenty; None: more than 200."""
    for batch in range(wanted, 201):
        if counts(odds, batch, alike=alike)[wanted:].sum() >= 0.95:
            return batch
    return None


def _answer(question: BubblesQuestion, flasks: Sequence[Borne], count: int) -> Answer:
    blow = np.array([one.blow_odds(question.blow_J) for one in flasks])
    scratch = np.array([one.scratch_odds(1e-6 * question.scratch_um) for one in flasks])
    behave = ((1 - blow) * scratch).tolist()
    batch, alike = int(question.batch), question.spread_is == "batch to batch"
    share = counts(behave, batch, alike=alike)
    figures = (
        chance("behave", behave),
        _count_figure(share),
        chance("blow_breaks", blow),
        chance("scratch_breaks", scratch),
        _depths("scratch_needed", flasks),
        ranged("blow_borne", [one.blow_for(GENTLY) for one in flasks], "J"),
        ranged("base_outside", [one.base_outside for one in flasks], "MPa", 1e-6),
        ranged("base_inside", [one.base_inside for one in flasks], "MPa", 1e-6),
    )
    needed = spare(behave, batch, alike=alike)
    table = Table(
        "counts",
        (Column("number"), Column("odds", "%")),
        tuple((float(k), 100 * float(one)) for k, one in enumerate(share) if one > _RARE),
    )
    k = np.arange(batch + 1, dtype=float)
    hot = worked_at(material(question.glass)) - 273.15
    return Answer(
        "bubbles", question, figures, _say(question, figures, needed),
        (Message("limit_wait"), Message("limit_maker", {"hot": hot}),
         *limits_of(question.glass, "limit_scratch", "limit_blow")),
        CAUTIONS, (table,),
        (Chart("number", "", "odds", "%", (Curve("flasks", k, 100 * share),)),),
        runs=count, most=int(question.runs), seed=int(question.seed),
    )  # fmt: skip


def _count_figure(share: Array) -> Figure:
    total = np.cumsum(share)
    low, middle, high = (float(np.searchsorted(total, at)) for at in (0.05, 0.5, 0.95))
    return Figure("count", low, middle, high, f"of {share.size - 1}")


def _depths(id: str, flasks: Sequence[Borne]) -> Figure:
    """Depth meant for nine of ten scratches to burst the flask, µm; None: no depth does."""
    factor = 1e6 * math.exp(_NINE_TENTHS * SCORE_SPREAD)
    depths = np.sort([math.inf if one.scratch is None else factor * one.scratch for one in flasks])
    ends = [float(depths[min(int(at * depths.size), depths.size - 1)]) for at in (0.05, 0.5, 0.95)]
    low, middle, high = (one if math.isfinite(one) else None for one in ends)
    return Figure(id, low, middle, high, "µm")


def _say(
    question: BubblesQuestion, figures: Sequence[Figure], needed: int | None
) -> tuple[Message, ...]:
    by = {one.id: one for one in figures}
    number, depth, blow = by["count"], by["scratch_needed"], by["blow_borne"]
    found = [
        Message(
            "show" if number.high else "none_behave",
            {
                "batch": question.batch,
                "low": number.low or 0,
                "middle": number.middle or 0,
                "high": number.high or 0,
                "blow": question.blow_J,
                "scratch": question.scratch_um,
            },
        )
    ]
    if depth.middle is None:
        found.append(Message("calm" if question.way == "oven" else "need_none"))
    else:
        deep = depth.high if depth.high is not None else depth.middle
        found.append(Message("need", {"scratch": 10 * math.ceil(deep / 10), "blow": blow.low or 0}))
    if needed is not None and needed > question.batch:
        found.append(Message("spare", {"spare": needed, "batch": question.batch}))
    return tuple(found)


PAGE = Page(
    "bubbles",
    "Bubble batch",
    "How deep a scratch and how hard a blow do my bubbles need, and how many of ten will behave?",
    BubblesQuestion,
    TEXTS,
    first,
    full,
)
