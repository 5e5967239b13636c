"""What a colour in the real polariscope means: retardation, order and stress."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

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
    Strip,
    Table,
)
from demo_app.content.bench.colour_chart import (
    FURTHEST,
    Candidate,
    candidates,
    colours,
    differences,
)
from demo_app.content.bench.colour_words import TEXTS
from demo_app.content.bench.inputs import tolerance
from demo_app.content.bench.tardy import order
from demo_app.content.bench.words import CAUTIONS, limits_of
from demo_app.optics.instrument import TINT_PLATE_NM, Instrument
from demo_app.optics.light_data import LAMPS, lamp
from demo_app.optics.words import interference_colour
from demo_app.physics.material_files import glasses, material
from demo_app.scenes.scene import Message
from demo_app.scenes.settings import choice, flag, number

ORDER_NM = 565.0
"""One order in white light, nm: the first red-violet, and the usual tint plate (ASTM F218)."""
_QUICK, _FINE = 2.0, 0.5
_FAR = 3.0
"""Differences this many times the match are no match any more."""
_MOST = 6
_STRIP = 600
OPTIC_TOL_PCT = 3.0
"""How well a glass's stress-optic coefficient is known, % (makers' sheets differ by that)."""


@dataclass(frozen=True)
class ColourQuestion:
    """What was seen, and through what."""

    method: str = choice(
        "Read by", "colour", ("colour", "turning"),
        help="The colour itself, or by turning the analyser until the place is dark.",
    )  # fmt: skip
    lamp: str = choice("Lamp", "daylight", LAMPS, help="The polariscope's.")
    bare: bool = flag("Seen without plate", True, help="Whether it was looked at plainly (colour).")
    seen_nm: float = number(
        "Colour at", "nm", 320, 0, FURTHEST, step=5, help="Where on the chart, without the plate."
    )
    plate: bool = flag("Seen with plate", False, help="Whether the tint plate was tried (colour).")
    plate_seen_nm: float = number(
        "Colour with plate at", "nm", 880, 0, FURTHEST, step=5,
        help="Where on the same chart its colour lies with the tint plate in.",
    )  # fmt: skip
    plate_way: str = choice(
        "The plate", "unknown", ("adds", "takes away", "unknown"),
        help="Turn the piece by a quarter: higher colours where it adds, lower where it takes.",
    )  # fmt: skip
    plate_nm: float = number(
        "Plate", "nm", TINT_PLATE_NM, 500, 600, help="Retardation of the tint plate."
    )
    match: float = number(
        "Match within", "", 4, 1, 20,
        help="CIEDE2000: 1 side by side, some 4 against a chart, 8 from memory.",
    )  # fmt: skip
    whole_order: float = number(
        "Lower fringe", "", 0, 0, 8, help="Whole order below the place (turning)."
    )
    lower_came: bool = flag("Lower fringe came", True, help="One way round (turning).")
    lower_deg: float = number("By a turn of", "°", 60, 0, 180, help="Analyser's turn (turning).")
    higher_came: bool = flag("Higher fringe came", False, help="The other way round (turning).")
    higher_deg: float = number("By a turn of", "°", 120, 0, 180, help="Analyser's turn (turning).")
    turn_tol_deg: float = number(
        "Turn within", "°", 2, 0.5, 20, step=0.5, help="How closely dark is found, to both sides."
    )
    glass: str = choice("Glass", "soda-lime", glasses(), help="What the piece is made of.")
    path_mm: float = number("Path", "mm", 10, 0.5, 500, help="Way of the light through the glass.")
    path_tol_pct: float = tolerance("Path within", 3, help="To both sides.")

    def __post_init__(self) -> None:
        """Refuse looks that say nothing or contradict each other."""
        one_colour = lamp(self.lamp).one_colour
        if self.method == "turning":
            self._check_turning()
            return
        if one_colour:
            raise InputError(
                "light of one colour has no colours to read",
                place="lamp",
                remedy="write daylight, incandescent or white-led, or read by turning",
            )
        if not (self.bare or self.plate):
            raise InputError(
                "nothing was looked at", place="bare", remedy="write yes for one of both looks"
            )
        if _misfit(self, _QUICK).min() > _FAR**2:
            raise InputError(
                "no single retardation shows both colours: the two looks contradict each other",
                place="plate_seen_nm",
                remedy="look again, at the same place and with the plate the right way round",
            )

    def _check_turning(self) -> None:
        if self.whole_order != int(self.whole_order):
            raise InputError(
                f"{self.whole_order:g} is no whole order",
                place="whole_order",
                remedy="write the order of the fringe below the place, such as 0",
            )
        _turned(self)


def _misfit(question: ColourQuestion, step: float) -> Array:
    """Sum of squared differences over the match, at 0, `step`, ... nm."""
    count = round(FURTHEST / step) + 1
    total = np.zeros(count)
    if question.bare:
        total += (differences(question.lamp, question.seen_nm, step, 0.0, 1) / question.match) ** 2
    if question.plate:
        ways = {"adds": (1,), "takes away": (-1,), "unknown": (1, -1)}[question.plate_way]
        each = [
            differences(question.lamp, question.plate_seen_nm, step, question.plate_nm, sign)
            for sign in ways
        ]
        total += np.min(each, axis=0) ** 2 / question.match**2
    return total


def _turned(question: ColourQuestion) -> Candidate:
    found = order(
        int(question.whole_order),
        question.lower_deg if question.lower_came else None,
        question.higher_deg if question.higher_came else None,
        question.turn_tol_deg,
    )
    wave = wave_of(question.lamp)
    return Candidate(wave * found.low, wave * found.middle, wave * found.high, 1.0)


def wave_of(name: str) -> float:
    """Wavelength that the dark fringe of a lamp stands for, nm."""
    light = lamp(name)
    return light.middle_nm if light.one_colour else ORDER_NM


def first(question: ColourQuestion) -> Answer:
    """Candidates on a coarse grid."""
    return _answer(question, _QUICK, 0)


def full(question: ColourQuestion, progress: Progress, cancelled: Cancelled) -> Iterator[Answer]:
    """The same on a grid four times as fine; nothing is drawn by chance."""
    if cancelled():
        return
    answer = _answer(question, _FINE, 1)
    progress(1, 1)
    yield answer


def _answer(question: ColourQuestion, step: float, done: int) -> Answer:
    turning = question.method == "turning"
    likely = np.exp(-0.5 * _misfit(question, step)) if not turning else np.ones(1)
    found = (_turned(question),) if turning else candidates(likely, step)
    best, wave = found[0], wave_of(question.lamp)
    figures = (
        Figure("retardation", best.low, best.middle, best.high, "nm"),
        _odds(best),
        Figure("order", best.low / wave, best.middle / wave, best.high / wave, ""),
        stress(question, best),
    )
    limits = ["limit_difference", "limit_turning"] if turning else [
        "limit_difference", "limit_axis", "limit_dispersion", "limit_match"
    ]  # fmt: skip
    strips = () if lamp(question.lamp).one_colour else _strips(question, found)
    return Answer(
        "colour", question, figures, _say(question, found, figures),
        limits_of(question.glass, *limits), CAUTIONS,
        (_table(question, found[:_MOST]),), (), strips, runs=done, most=1,
    )  # fmt: skip


def _odds(best: Candidate) -> Figure:
    """Odds of the best candidate; at the ends, were the others twice or half as likely.

    The eye's likelihood is a guess, so the odds are no better than that.
    """
    rest = 1 - best.odds
    low, high = (best.odds / (best.odds + factor * rest) for factor in (2.0, 0.5))
    return Figure("odds_of_it", 100 * low, 100 * best.odds, 100 * high, "%")


def stress(question: ColourQuestion, found: Candidate) -> Figure:
    """Stress (MPa) of a candidate; relative errors add by their squares."""
    optic = abs(material(question.glass).stress_optic)
    scale = 1e-6 * 1e-9 / (optic * 1e-3 * question.path_mm)
    known = np.hypot(question.path_tol_pct, OPTIC_TOL_PCT) / 100 * found.middle
    low = max(0.0, found.middle - float(np.hypot(found.middle - found.low, known)))
    high = found.middle + float(np.hypot(found.high - found.middle, known))
    return Figure("stress", scale * low, scale * found.middle, scale * high, "MPa")


def _table(question: ColourQuestion, found: Sequence[Candidate]) -> Table:
    plain, grey = Instrument(lamp=question.lamp), lamp(question.lamp).one_colour
    rows = []
    for one in found:
        told = stress(question, one)
        rows.append(
            (
                one.low,
                one.middle,
                one.high,
                one.middle / wave_of(question.lamp),
                told.low,
                told.high,
                100 * one.odds,
                *(
                    interference_colour(abs(total), plain)
                    for total in (
                        one.middle,
                        question.plate_nm + one.middle,
                        question.plate_nm - one.middle,
                    )
                    if not grey
                ),
            )
        )
    columns: tuple[Column, ...] = (
        Column("low", "nm"), Column("middle", "nm"), Column("high", "nm"), Column("order"),
        Column("weak", "MPa"), Column("strong", "MPa"), Column("odds", "%"),
    )  # fmt: skip
    if not grey:
        columns += (Column("bare_word"), Column("adds_word"), Column("takes_word"))
    return Table("candidates", columns, tuple(rows))


def _strips(question: ColourQuestion, found: Sequence[Candidate]) -> tuple[Strip, ...]:
    spans = tuple((one.low, one.high) for one in found[:_MOST])
    plate = question.plate_nm
    looks = (
        ("chart", colours(question.lamp, 0.0, FURTHEST, _STRIP)),
        ("chart_adds", colours(question.lamp, 0.0, FURTHEST, _STRIP, plate)),
        ("chart_takes", colours(question.lamp, 0.0, FURTHEST, _STRIP, plate, adds=False)),
    )
    return tuple(Strip(id, 0.0, FURTHEST, shown, spans) for id, shown in looks)


def _say(
    question: ColourQuestion, found: Sequence[Candidate], figures: Sequence[Figure]
) -> tuple[Message, ...]:
    best, told = found[0], figures[3]
    values: dict[str, float | str] = {
        "colour": interference_colour(best.middle, Instrument(lamp=question.lamp)).capitalize(),
        "order": best.middle / wave_of(question.lamp),
        "wave": wave_of(question.lamp),
        "low": best.low,
        "high": best.high,
        "weak": told.low or 0.0,
        "strong": told.high or 0.0,
        "path": question.path_mm,
    }
    if question.method == "turning":
        return Message("turned", values), Message("which")
    rivals = [one for one in found if one.odds > 0.05]
    said = [Message("one", values)]
    if len(rivals) > 1:
        told_list = "; ".join(f"{one.low:.0f} to {one.high:.0f} nm" for one in rivals)
        said = [Message("several", {"list": told_list})]
    elif question.bare and question.plate:
        said.append(Message("told_apart"))
    if best.middle < 60 and not question.plate:
        said.append(Message("dark"))
    return (*said, Message("which"))


PAGE = Page(
    "colour",
    "Reading a colour",
    "Which retardation, order and stress does a colour in my polariscope mean?",
    ColourQuestion,
    TEXTS,
    first,
    full,
)
