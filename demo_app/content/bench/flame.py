"""How long my bottle must stay in the flame, so that it cracks when the drop lands."""

import functools
import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

import numpy as np

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
)
from demo_app.content.bench.flame_run import FINE, QUICK, Burn, Course, Fate, Pace, course, fate
from demo_app.content.bench.flame_words import TEXTS
from demo_app.content.bench.inputs import check_seed, check_spread, runs, seed, tolerance
from demo_app.content.bench.matters import ranked
from demo_app.content.bench.sampling import about, drawn, within
from demo_app.content.bench.words import CAUTIONS, limits_of
from demo_app.physics.material_files import glasses, material
from demo_app.scenes.scene import Chart, Curve, Message
from demo_app.scenes.settings import choice, number

TICKS = 121
_STEPS = 50
"""Steps of the longest heating for a first answer, about."""
_ROWS = 9


@dataclass(frozen=True)
class FlameQuestion:
    """What is known of bottle, burner and score."""

    glass: str = choice("Glass", "soda-lime", glasses(), help="What the bottle is made of.")
    outer_diameter_mm: float = number(
        "Diameter", "mm", 70, 40, 120, help="Outer diameter of the bottle's body."
    )
    wall_mm: float = number("Wall", "mm", 3, 1.5, 6, step=0.1, help="Thickness of the wall.")
    ring_width_mm: float = number(
        "Flame width", "mm", 8, 4, 30, step=0.5, help="Width of the flame at half its heat."
    )
    flame_kW_m2: float = number(
        "Flame", "kW/m²", 80, 0, 400, step=5, help="Heat into the ring, averaged over the turn."
    )
    score_depth_um: float = number(
        "Score", "µm", 100, 0, 500, step=10, help="Depth of the scored line; 0: none."
    )
    delay_s: float = number(
        "Drop after", "s", 1, 0.2, 20, step=0.2, help="From the flame's end to the drop."
    )
    longest_s: float = number("Longest", "s", 40, 5, 120, help="Longest heating to look at.")
    want_pct: float = number("Wanted", "%", 80, 50, 99, help="Odds of success that are asked for.")
    wall_tol_pct: float = tolerance("Wall within", 8, help="From bottle to bottle, to both sides.")
    flame_tol_pct: float = tolerance("Flame within", 10, help="From time to time, to both sides.")
    aim_mm: float = number(
        "Drop within", "mm", 1, 0, 6, step=0.5, help="How far the drop may miss the ring's middle."
    )
    runs: str = runs("32")
    seed: float = seed()

    def __post_init__(self) -> None:
        """Refuse what gives no answer."""
        check_seed(self.seed)
        check_spread(self.wall_tol_pct, self.flame_tol_pct, self.aim_mm, place="flame_tol_pct")
        if self.flame_kW_m2 == 0:
            raise InputError(
                "without a flame there is no time in the flame",
                place="flame_kW_m2",
                remedy="write a number above 0, such as 80",
            )
        thickest = self.wall_mm * (1 + self.wall_tol_pct / 100)
        if thickest > 0.12 * self.outer_diameter_mm:
            raise InputError(
                f"a wall of up to {thickest:.3g} mm is too thick for a bottle "
                f"{self.outer_diameter_mm:g} mm wide",
                place="wall_mm",
                remedy=f"write at most {0.12 * self.outer_diameter_mm:.3g} with its tolerance",
            )
        thinnest = 1e3 * self.wall_mm * (1 - self.wall_tol_pct / 100)
        if self.score_depth_um > 0.2 * thinnest:
            raise InputError(
                f"a score of {self.score_depth_um:g} µm goes too far through a wall of "
                f"{thinnest / 1e3:.3g} mm: it is no score any more but a cut",
                place="score_depth_um",
                remedy=f"write at most {0.2 * thinnest:.0f}",
            )
        if self.delay_s >= self.longest_s:
            raise InputError(
                f"the drop would wait {self.delay_s:g} s after at most {self.longest_s:g} s of "
                "flame, and the ring is cool by then",
                place="delay_s",
                remedy="write a shorter wait",
            )


def _burn(question: FlameQuestion, wall: float = 1.0, flame: float = 1.0, aim: float = 0.0) -> Burn:
    return Burn(
        1e-3 * question.outer_diameter_mm,
        1e-3 * wall * question.wall_mm,
        1e-3 * question.ring_width_mm,
        1e-6 * question.score_depth_um,
        1e3 * flame * question.flame_kW_m2,
        question.delay_s,
        1e-3 * aim,
        question.longest_s,
    )


def _ticks(question: FlameQuestion) -> Array:
    return np.linspace(0.0, question.longest_s, TICKS)


@functools.lru_cache(maxsize=4)
def _nominal(question: FlameQuestion, pace: Pace) -> Course:
    return course(material(question.glass), _burn(question), pace)


def first(question: FlameQuestion) -> Answer:
    """One bottle as stated; the range from all of its stress scaled as the tolerances would."""
    doubt = math.hypot(question.flame_tol_pct, 0.5 * question.wall_tol_pct) / 100
    pace = replace(QUICK, longest=max(QUICK.longest, question.longest_s / _STEPS))
    ticks, of = _ticks(question), _nominal(question, pace)
    factors = (1.0, 1 - doubt, 1 + doubt) if doubt else (1.0, 0.97, 1.03)
    return _answer(question, [fate(of, ticks, factor) for factor in factors], 0)


def full(question: FlameQuestion, progress: Progress, cancelled: Cancelled) -> Iterator[Answer]:
    """Bottles, flames and drops within the tolerances."""
    glass, ticks = material(question.glass), _ticks(question)
    spread = (
        *within("wall", question.wall_tol_pct),
        *within("flame", question.flame_tol_pct),
        *about("aim", question.aim_mm),
    )
    for found in drawn(
        lambda point: fate(course(glass, _burn(question, **point), FINE), ticks),
        spread,
        seed=int(question.seed),
        most=int(question.runs),
        progress=progress,
        cancelled=cancelled,
    ):
        answer = _answer(question, found.results, len(found.results))
        best = [float(ticks[int(one.drop.argmax())]) for one in found.results]
        yield ranked(answer, found, best)


def _answer(question: FlameQuestion, fates: Sequence[Fate], count: int) -> Answer:
    ticks, want = _ticks(question), question.want_pct / 100
    drops = np.array([one.drop for one in fates])
    mean = {name: np.mean([getattr(one, name) for one in fates], axis=0)
            for name in ("drop", "alone", "none")}  # fmt: skip
    best = int(mean["drop"].argmax())
    bests = [float(ticks[int(one.argmax())]) for one in drops]
    window = _window(ticks, mean["drop"], want)
    each = [found for one in drops if (found := _window(ticks, one, want))]
    figures = []
    sentences = [Message("no_window", {
        "want": question.want_pct, "odds": 100 * mean["drop"][best], "best": ticks[best]
    })]  # fmt: skip
    if window is not None and each:
        opens, closes = (
            _around(id, [one[k] for one in each], window[k])
            for k, id in enumerate(("opens", "closes"))
        )
        figures = [opens, closes]
        sentences = _window_words(question, opens, closes)
    figures.append(_around("best_s", bests, float(ticks[best])))
    figures += [
        chance(f"best_{id}", [getattr(one, name)[best] for one in fates])
        for id, name in (("odds", "drop"), ("alone", "alone"), ("none", "none"))
    ]
    return Answer(
        "flame", question, tuple(figures), tuple(sentences),
        limits_of(question.glass, "limit_ring", "limit_followed", "limit_score", "limit_sag"),
        CAUTIONS,
        (_table(ticks, mean),),
        (_chart(ticks, mean, question.want_pct),),
        runs=count, most=int(question.runs), seed=int(question.seed),
    )  # fmt: skip


def _window(ticks: Array, odds: Array, want: float) -> tuple[float, float] | None:
    """First and last time of the window around the best one, s; None: never good enough."""
    best = int(odds.argmax())
    if odds[best] < want:
        return None
    low, high = best, best
    while low > 0 and odds[low - 1] >= want:
        low -= 1
    while high < len(ticks) - 1 and odds[high + 1] >= want:
        high += 1
    return _crossing(ticks, odds, want, low, -1), _crossing(ticks, odds, want, high, 1)


def _crossing(ticks: Array, odds: Array, want: float, at: int, way: int) -> float:
    if not 0 <= at + way < len(ticks):
        return float(ticks[at])
    inside, outside = odds[at], odds[at + way]
    return float(ticks[at] + way * (ticks[1] - ticks[0]) * (inside - want) / (inside - outside))


def _around(id: str, values: Sequence[float], middle: float) -> Figure:
    """Range of many bottles about what is best on average."""
    low, high = np.quantile(values, [0.05, 0.95])
    return Figure(id, min(float(low), middle), middle, max(float(high), middle), "s")


def _window_words(question: FlameQuestion, opens: Figure, closes: Figure) -> list[Message]:
    assert opens.middle is not None and opens.high is not None  # noqa: PT018
    assert closes.middle is not None and closes.low is not None  # noqa: PT018
    found = [
        Message("window", {"opens": math.ceil(opens.middle), "closes": math.floor(closes.middle),
                           "want": question.want_pct}),
    ]  # fmt: skip
    if closes.low > opens.high:
        found.append(Message("surest", {"opens": math.ceil(opens.high),
                                        "closes": math.floor(closes.low)}))  # fmt: skip
    else:
        found.append(Message("no_surest"))
    if closes.middle >= question.longest_s:
        found.append(Message("open_end", {"longest": question.longest_s}))
    else:
        found.append(Message("wait_cold"))
    return found


def _table(ticks: Array, mean: dict[str, Array]) -> Table:
    columns = (Column("seconds", "s"), *(Column(name, "%") for name in mean))
    rows = tuple(
        (float(ticks[k]), *(100 * float(odds[k]) for odds in mean.values()))
        for k in np.linspace(0, len(ticks) - 1, _ROWS).astype(int)
    )
    return Table("fates", columns, rows)


def _chart(ticks: Array, mean: dict[str, Array], want: float) -> Chart:
    curves = tuple(Curve(name, ticks, 100 * odds) for name, odds in mean.items())
    return Chart("seconds", "s", "odds", "%", curves, (("want", want),))


PAGE = Page(
    "flame",
    "Time in the flame",
    "How long must my bottle stay in the flame, so that it cracks when the drop lands?",
    FlameQuestion,
    TEXTS,
    first,
    full,
)
