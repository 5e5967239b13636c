"""Matching: the one unknown of my real piece or burner, from three readings of it."""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date

import numpy as np
from scipy.interpolate import PchipInterpolator

from demo_app import __version__
from demo_app.base.errors import InputError
from demo_app.content.bench.answer import (
    Answer,
    Cancelled,
    Column,
    Figure,
    Page,
    Progress,
    Table,
    never,
    quiet,
)
from demo_app.content.bench.match_models import KINDS, Kind, model_of
from demo_app.content.bench.matching_words import TEXTS
from demo_app.content.bench.words import CAUTIONS, limits_of
from demo_app.content.fitting.fit import fits
from demo_app.content.fitting.records import Fit, Observed
from demo_app.content.site.devices import Device, device_of
from demo_app.physics.material_files import glasses
from demo_app.scenes.scene import Chart, Curve, Message
from demo_app.scenes.settings import choice, number

_TABLE = 3
"""Runs of the first, interpolated answer."""


@dataclass(frozen=True)
class MatchingQuestion:
    """Three readings, and what is known beside them."""

    unknown: str = choice(
        "Unknown", "jets", tuple(KINDS),
        help="jets: cooling of a toughened plate; thickness: of such a plate; flame: a burner's.",
    )  # fmt: skip
    glass: str = choice("Glass", "soda-lime", glasses(), help="What the piece is made of.")
    thickness_mm: float = number(
        "Thickness", "mm", 6, 1.5, 25, step=0.1, help="Of the plate, or the bottle's wall."
    )
    start_C: float = number(
        "Start", "°C", 650, 300, 1800, step=5, help="Heat when the jets start (jets, thickness)."
    )
    jet_W_m2K: float = number(
        "Jets", "W/m²K", 280, 15, 1500, step=5, help="Known cooling (thickness)."
    )
    outer_diameter_mm: float = number(
        "Diameter", "mm", 70, 40, 120, help="Of the bottle over the burner (flame)."
    )
    ring_width_mm: float = number(
        "Flame width", "mm", 8, 4, 30, step=0.5, help="At half its heat (flame)."
    )
    first_reading: float = number(
        "First reading", "", 101, 0, 2000, help="Squeeze at the surface, MPa; or °C at first time."
    )
    second_reading: float = number(
        "Second reading", "", 49.6, 0, 2000, help="Pull in the middle, MPa; or °C at second time."
    )
    third_reading: float = number(
        "Third reading", "", 3900, 0, 60000,
        help="Edge-on at the skin in 15 mm of glass, nm; for thickness, depth without stress in "
        "µm; or °C at the third time.",
    )  # fmt: skip
    first_s: float = number("First time", "s", 4, 0.5, 60, help="After the flame's start (flame).")
    second_s: float = number("Second time", "s", 8, 0.5, 60, help="The same.")
    third_s: float = number("Third time", "s", 12, 0.5, 60, help="The same.")
    reading_pct: float = number(
        "Readings within", "%", 4, 0.5, 30, step=0.5,
        help="Two of three readings are this close to the truth.",
    )  # fmt: skip
    bias_pct: float = number(
        "Instrument within", "%", 2, 0, 30, step=0.5, help="What all readings are off together."
    )
    model_pct: float = number(
        "Model within", "%", 3, 0, 30, step=0.5, help="How far the model itself may be off."
    )

    def __post_init__(self) -> None:
        """Refuse readings that cannot be told apart or cannot be."""
        if self.unknown == "flame":
            self._check_flame()
        elif not (self.first_reading and self.second_reading and self.third_reading):
            raise InputError(
                "a reading of 0 says that nothing was cooled quickly",
                place="first_reading",
                remedy="write what the instrument showed",
            )
        elif self.second_reading > self.first_reading:
            raise InputError(
                f"the pull in the middle ({self.second_reading:g} MPa) cannot be larger than the "
                f"squeeze at the surface ({self.first_reading:g} MPa): they balance each other",
                place="second_reading",
                remedy="look which is which",
            )

    def _check_flame(self) -> None:
        if not self.first_s < self.second_s < self.third_s:
            raise InputError(
                "the times do not follow each other", place="second_s", remedy="write them in order"
            )
        if not self.first_reading < self.second_reading < self.third_reading:
            raise InputError(
                "under the flame the ring only gets hotter",
                place="second_reading",
                remedy="write the temperatures in the order of their times",
            )
        if self.thickness_mm > 6:
            raise InputError(
                f"a bottle's wall of {self.thickness_mm:g} mm",
                place="thickness_mm",
                remedy="write at most 6 for the flame",
            )

    @property
    def kind(self) -> Kind:
        """What is fitted to what."""
        return KINDS[self.unknown]


Predict = Callable[[float], Sequence[float | None]]


def _observed(question: MatchingQuestion) -> tuple[Observed, ...]:
    values = (question.first_reading, question.second_reading, question.third_reading)
    times: tuple[float | None, ...] = (None, None, None)
    if question.unknown == "flame":
        times = (question.first_s, question.second_s, question.third_s)
    return tuple(
        Observed(
            name,
            value,
            question.reading_pct / 100 * abs(value),
            question.bias_pct / 100 * abs(value),
            "instrument",
            at_s,
        )
        for name, value, at_s in zip(question.kind.readings, values, times, strict=True)
    )


def first(question: MatchingQuestion) -> Answer:
    """A fit to the model interpolated between a few coarse runs."""
    kind = question.kind
    exact = model_of(question, coarse=True)
    places = np.geomspace(kind.low, kind.high, _TABLE if question.unknown == "flame" else 7)
    known = [(place, told) for place in places if (told := _try(exact, float(place))) is not None]
    if len(known) < 3:
        raise InputError(
            "the model can run almost nowhere in this range",
            place="start_C",
            remedy="write a start between the glass's strain and softening points",
        )
    curve = PchipInterpolator(np.log([one for one, _ in known]), np.log([two for _, two in known]))
    ends = np.log([known[0][0], known[-1][0]])

    def quick(value: float) -> list[float | None]:
        if not ends[0] - 1e-9 <= np.log(value) <= ends[1] + 1e-9:
            return [None, None, None]
        return [float(one) for one in np.exp(curve(np.clip(np.log(value), *ends)))]

    *_, found = _fits(question, quick, quiet, never)
    return _answer(question, found, 0, quick)


def _try(model: Predict, value: float) -> list[float] | None:
    try:
        found = model(value)
    except InputError:
        return None
    numbers = [one for one in found if one is not None and one > 0]
    return numbers if len(numbers) == len(found) else None


def _fits(
    question: MatchingQuestion, predict: Predict, progress: Progress, cancelled: Cancelled
) -> Iterator[Fit]:
    return fits(
        predict,
        question.kind.unknown,
        _observed(question),
        model_pct=question.model_pct,
        progress=progress,
        cancelled=cancelled,
    )


def full(question: MatchingQuestion, progress: Progress, cancelled: Cancelled) -> Iterator[Answer]:
    """Fits to the model itself, ever finer."""
    known: dict[float, Sequence[float | None]] = {}
    exact = model_of(question)

    def kept(value: float) -> Sequence[float | None]:
        if value not in known:
            known[value] = exact(value)
        return known[value]

    for found in _fits(question, kept, progress, cancelled):
        yield _answer(question, found, found.runs, None, known)


def _answer(
    question: MatchingQuestion,
    found: Fit,
    count: int,
    quick: Predict | None,
    known: dict[float, Sequence[float | None]] | None = None,
) -> Answer:
    kind = question.kind
    verdict = found.verdict
    values: dict[str, float | str] = {
        "name": TEXTS[question.unknown], "value": found.value, "low": found.low,
        "high": found.high, "unit": kind.unit,
    }  # fmt: skip
    table = Table(
        "compared",
        (Column("reading"), Column("read"), Column("fitted"), Column("pull")),
        tuple(
            (one.observed.reading, one.observed.value, one.fitted, one.pull)
            for one in found.compared
        ),
    )
    if known:
        places = sorted(known)
        rows = [known[place] for place in places]
    else:
        assert quick is not None
        places = list(np.geomspace(found.unknown.low, found.unknown.high, 33))
        rows = [quick(place) for place in places]
    curves = []
    for k, name in enumerate(kind.readings):
        points = [
            (place, float(told[k] or 0) / found.compared[k].observed.value)
            for place, told in zip(places, rows, strict=True)
            if told[k] is not None
        ]
        x, y = np.array(points).T
        curves.append(Curve(name, x, y))
    limit = "limit_burner" if question.unknown == "flame" else "limit_plate"
    return Answer(
        "matching",
        question,
        (Figure(question.unknown, found.low, found.value, found.high, kind.unit),),
        (
            Message(verdict, values),
            Message("chance", {"chance": 100 * found.chance}),
            Message("usable" if found.usable else "not_usable"),
        ),
        limits_of(question.glass, limit, ranges="limit_fit"),
        CAUTIONS,
        (table,),
        (Chart("unknown", kind.unit, "modelled", "of what was read", tuple(curves),
               (("read", 1.0),)),),
        runs=count, most=count if found.done else count + 1, fit=found,
    )  # fmt: skip


def device_from(answer: Answer, name: str, today: date) -> Device:
    """The device that a finished answer makes, under a `name` for people.

    Raises
    ------
    InputError
        If the answer is no fit, not finished, or does not settle its unknown.
    """
    if answer.fit is None:
        raise InputError(
            f"an answer of '{answer.page}' is nothing that a scene could use",
            place="--keep",
            remedy="keep an answer of 'matching'",
        )
    if not answer.fit.done:
        raise InputError("the fit is not finished", place="--keep", remedy="wait for its end")
    scene = answer.question.kind.scene
    return device_of(answer.fit, name, scene, today, __version__)


PAGE = Page(
    "matching",
    "Matching my own piece",
    "Which cooling, flame or thickness does my real piece have, by three readings of it?",
    MatchingQuestion,
    TEXTS,
    first,
    full,
)
