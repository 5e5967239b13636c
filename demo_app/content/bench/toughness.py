"""How tough is my sample: from its cooling, or backwards from what an edge or a face shows."""

import functools
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from demo_app.base.errors import InputError
from demo_app.content.bench.answer import (
    Answer,
    Cancelled,
    Column,
    Figure,
    Page,
    Progress,
    Table,
    chance,
    ranged,
)
from demo_app.content.bench.inputs import check_seed, check_spread, runs, seed, tolerance
from demo_app.content.bench.matters import ranked
from demo_app.content.bench.sampling import about, drawn, within
from demo_app.content.bench.toughness_words import TEXTS, say
from demo_app.content.bench.words import CAUTIONS, limits_of
from demo_app.physics import fragments
from demo_app.physics.breaking import Piece
from demo_app.physics.column.readings import centre_stress
from demo_app.physics.grades import GRADES, grade
from demo_app.physics.heat import ZERO_C
from demo_app.physics.material_files import glasses, material
from demo_app.physics.plates import STAYS, bending_strength, strength_ratio
from demo_app.physics.toughening import Quench, blown, quench, surface_compression
from demo_app.scenes.scene import Chart, Curve, Message
from demo_app.scenes.settings import choice, number

WIDTH, HEIGHT = 0.18, 0.12
"""The sample, m: the plates of the scene."""
MIDDLE_SHARE = 2.1
"""Surface compression over the pull in the middle: 2 for a parabola, 1.7 to 2.5 in toughened plates
by the model."""
_CELLS = 20
_STRONGEST = 600e6
"""Largest compression that is believed, Pa: chemically toughened glass has about as much."""


@dataclass(frozen=True)
class ToughnessQuestion:
    """How the sample was cooled, or what was read off it."""

    known: str = choice(
        "What is known", "cooling", ("cooling", "edge", "face"),
        help="Its cooling; or a reading through its edge; or one of a surface instrument.",
    )  # fmt: skip
    glass: str = choice("Glass", "soda-lime", glasses(), help="What it is made of.")
    thickness_mm: float = number("Thickness", "mm", 6, 2, 25, step=0.1, help="Of the plate.")
    start_C: float = number(
        "Start", "°C", 650, 300, 1800, step=5, help="Heat when the jets start (cooling)."
    )
    jet_W_m2K: float = number(
        "Jets", "W/m²K", 280, 15, 1500, step=5, help="15: hardly more than still air (cooling)."
    )
    edge_at: str = choice(
        "Read at", "middle", ("middle", "skin"), help="Where in the thickness (edge)."
    )
    edge_nm: float = number(
        "Retardation", "nm", 5000, 0, 60000, step=10, help="Read through the edge (edge)."
    )
    path_mm: float = number(
        "Path", "mm", 50, 1, 500, help="Way of the light through the glass (edge)."
    )
    face_MPa: float = number(
        "Surface reading", "MPa", 95, 0, 400, help="Squeeze, by a surface instrument (face)."
    )
    thickness_tol_pct: float = tolerance("Thickness within", 3, help="To both sides.")
    start_tol_C: float = number("Start within", "°C", 10, 0, 50, help="To both sides (cooling).")
    jet_tol_pct: float = tolerance("Jets within", 15, help="To both sides (cooling).")
    reading_tol_pct: float = tolerance("Reading within", 8, help="To both sides (edge, face).")
    runs: str = runs("64")
    seed: float = seed()

    def __post_init__(self) -> None:
        """Refuse what cannot be blown, read or believed."""
        check_seed(self.seed)
        if self.known == "cooling":
            check_spread(
                self.thickness_tol_pct, self.start_tol_C, self.jet_tol_pct, place="jet_tol_pct"
            )
            _quench(self)
            return
        check_spread(self.thickness_tol_pct, self.reading_tol_pct, place="reading_tol_pct")
        squeeze = _read(self)
        if squeeze > _STRONGEST:
            raise InputError(
                f"that would be {1e-6 * squeeze:.0f} MPa of squeeze at the surface, which no "
                "cooling puts into glass",
                place="edge_nm",
                remedy="write a smaller retardation or a longer path",
            )
        if self.known == "edge" and self.path_mm < self.thickness_mm:
            raise InputError(
                f"a way of {self.path_mm:g} mm through the edge is less than the plate is thick, "
                "and that close to an edge the stress is another",
                place="path_mm",
                remedy=f"write at least {self.thickness_mm:g}",
            )


@dataclass(frozen=True)
class Tough:
    """One plate."""

    surface: float
    middle: float
    particles: float
    runs_by_itself: bool
    grade: str
    strength: float
    ratio: float
    blow: float


def _quench(
    question: ToughnessQuestion, thick: float = 1.0, start: float = 0.0, jets: float = 1.0
) -> Quench:
    return quench(
        material(question.glass),
        1e-3 * thick * question.thickness_mm,
        question.start_C + start + ZERO_C,
        jets * question.jet_W_m2K,
        cells=_CELLS,
    )


def _read(question: ToughnessQuestion, reading: float = 1.0, ratio: float = MIDDLE_SHARE) -> float:
    """Surface compression by a reading, Pa."""
    if question.known == "face":
        return 1e6 * reading * question.face_MPa
    optic = abs(material(question.glass).stress_optic)
    stress = reading * 1e-9 * question.edge_nm / (optic * 1e-3 * question.path_mm)
    return stress * (ratio if question.edge_at == "middle" else 1.0)


def _plate(
    question: ToughnessQuestion,
    thick: float = 1.0,
    start: float = 0.0,
    jets: float = 1.0,
    reading: float = 1.0,
    ratio: float = MIDDLE_SHARE,
) -> Tough:
    glass, thickness = material(question.glass), 1e-3 * thick * question.thickness_mm
    if question.known == "cooling":
        ready = _quench(question, thick, start, jets)
        column = blown(ready).column
        surface, middle = surface_compression(column), centre_stress(ready.wall, column)
        energy = fragments.held(glass, ready.wall.point_z, column.stress)
    else:
        surface = _read(question, reading, ratio)
        middle = surface / ratio
        energy = fragments.parabola(glass, thickness, surface)
    count = fragments.particles(fragments.die_side(glass, thickness, energy))
    return Tough(
        surface,
        middle,
        count,
        fragments.runs_by_itself(glass, energy),
        grade(surface, count, thickness).grade,
        bending_strength(glass, surface),
        strength_ratio(glass, surface, "used", STAYS),
        Piece(glass, WIDTH, HEIGHT, thickness, surface).blow_limit(),
    )


@functools.lru_cache(maxsize=4)
def _few(question: ToughnessQuestion) -> tuple[Tough, ...]:
    """Plates at the ends of what is known, and in the middle."""
    if question.known == "cooling":
        found = []
        for sign in (0, -1, 1):
            part = 0.7 * sign
            found.append(
                _plate(
                    question,
                    1 + part * question.thickness_tol_pct / 100,
                    part * _start_room(question),
                    1 + part * question.jet_tol_pct / 100,
                )
            )
        return tuple(found)
    ends = question.reading_tol_pct / 100
    return tuple(
        _plate(question, reading=1 + part * ends, ratio=MIDDLE_SHARE * (1 + 0.1 * part))
        for part in (0, -0.8, 0.8)
    )


def _start_room(question: ToughnessQuestion) -> float:
    """Tolerance of the start that stays within what can be blown, K."""
    glass, start = material(question.glass), question.start_C + ZERO_C
    room = min(start - glass.strain_point, glass.softening_point - start)
    return min(question.start_tol_C, max(0.0, room))


def first(question: ToughnessQuestion) -> Answer:
    """The plate as stated, and those towards the ends of what is known."""
    return _answer(question, _few(question), 0)


def full(question: ToughnessQuestion, progress: Progress, cancelled: Cancelled) -> Iterator[Answer]:
    """Plates, furnaces, jets and readings within the tolerances."""
    spread = within("thick", question.thickness_tol_pct)
    if question.known == "cooling":
        spread += about("start", _start_room(question)) + within("jets", question.jet_tol_pct)
    else:
        spread += within("reading", question.reading_tol_pct)

    def model(point: Mapping[str, float]) -> Tough:
        values = dict(point)
        if "ratio" in values:
            values["ratio"] *= MIDDLE_SHARE
        return _plate(question, **values)

    if question.known == "edge" and question.edge_at == "middle":
        spread += within("ratio", 15)
    for found in drawn(
        model, spread, seed=int(question.seed), most=int(question.runs),
        progress=progress, cancelled=cancelled,
    ):  # fmt: skip
        answer = _answer(question, found.results, len(found.results))
        yield ranked(answer, found, [one.surface for one in found.results])


def _answer(question: ToughnessQuestion, plates: Sequence[Tough], count: int) -> Answer:
    shares: dict[str, float] = {
        one: float(np.mean([plate.grade == one for plate in plates])) for one in GRADES
    }
    figures = (
        ranged("surface", [one.surface for one in plates], "MPa", 1e-6),
        ranged("middle", [one.middle for one in plates], "MPa", 1e-6),
        ranged("particles", [one.particles for one in plates], ""),
        chance("runs_by_itself", [one.runs_by_itself for one in plates]),
        ranged("ratio", [one.ratio for one in plates], ""),
        ranged("strength", [one.strength for one in plates], "MPa", 1e-6),
        ranged("blow", [one.blow for one in plates], "J"),
    )
    table = Table(
        "grades",
        (Column("grade"), Column("odds", "%"), Column("asked", "MPa")),
        tuple(
            (name, 100 * shares[name], asked)
            for name, asked in zip(GRADES, (None, 24.0, 69.0), strict=True)
        ),
    )
    limits = ["limit_surface", "limit_even", "limit_dice"]
    limits += ["limit_face"] if question.known == "face" else []
    found = limits_of(question.glass, *limits)
    if question.known == "edge":
        found = (Message("limit_edge", {"ratio": MIDDLE_SHARE}), *found)
    return Answer(
        "toughness", question, figures,
        say(1e-3 * question.thickness_mm, figures, shares), found, CAUTIONS,
        (table,), (_chart(question, figures[0]),),
        runs=count, most=int(question.runs), seed=int(question.seed),
    )  # fmt: skip


def _chart(question: ToughnessQuestion, surface: Figure) -> Chart:
    """Parabolas through the thickness: the usual course, and what a reading says of it."""
    thickness = question.thickness_mm
    depth = np.linspace(0, thickness, 61)
    course = 1.5 * (1 - (2 * depth / thickness - 1) ** 2) - 1
    curves = tuple(
        Curve(id, depth, (size or 0.0) * course)
        for id, size in (("through", surface.middle), ("low", surface.low), ("high", surface.high))
    )
    return Chart("depth", "mm", "stress", "MPa", curves)


PAGE = Page(
    "toughness",
    "Toughness of a sample",
    "How tough is my sample, which grade is it, and how will it break?",
    ToughnessQuestion,
    TEXTS,
    first,
    full,
)
