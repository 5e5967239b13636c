"""What a scene is: a frozen record of settings, functions and texts."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from typing import Any, Protocol

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.instrument import Instrument
from demo_app.optics.retardation import Stage

Array = NDArray[np.float64]


class State(Protocol):
    """One instant of a run. States are frozen; each scene adds its own fields."""

    @property
    def time_s(self) -> float:
        """Model time since the start of the run, s."""

    @property
    def step(self) -> int:
        """Number of steps since the start."""


@dataclass(frozen=True)
class Reading:
    """A number (or a verdict) that a scene states, with its unit."""

    name: str
    label: str
    unit: str
    help: str = ""


@dataclass(frozen=True)
class Message:
    """A sentence as data: an id of the scene's texts, and the values to put into it."""

    id: str
    values: Mapping[str, float | str] = field(default_factory=dict)

    def words(self, texts: Mapping[str, str]) -> str:
        """The sentence in the language of `texts`."""
        return texts[self.id].format(**self.values)


@dataclass(frozen=True)
class Mark:
    """A word or an arrow on the picture, in stage millimetres.

    Parameters
    ----------
    kind : str
        "drop", "flame", "score", "ring", "crack", "squeeze" (arrows towards each other),
        "pull" (arrows apart), "touch" (a soft ring where something warm touches).
    x_mm, y_mm : float
        Where.
    size_mm : float
        How large (width of the ring, radius of the drop).
    angle_deg : float
        Direction of the arrows, counted from x.
    """

    kind: str
    x_mm: float
    y_mm: float
    size_mm: float = 0.0
    angle_deg: float = 0.0


@dataclass(frozen=True)
class Seam:
    """Where a crack runs in a section, from the first row of nodes inwards.

    Parameters
    ----------
    column : int
        First column of nodes beyond the crack: its faces are the columns ``column - 1`` and
        ``column``.
    rows : int
        How many rows of nodes have parted; the next row is the crack's tip.
    """

    column: int
    rows: int


@dataclass(frozen=True)
class Section:
    """A cut through the wall, on a grid of nodes that move with the glass.

    Parameters
    ----------
    x_mm, y_mm : numpy.ndarray
        Shape (rows, cols): nodes, along the piece and across it; undeformed.
    moved_x_um, moved_y_um : numpy.ndarray
        Shape (rows, cols): displacement, micrometres.
    temperature_C : numpy.ndarray
        Shape (rows, cols).
    stress_MPa : numpy.ndarray
        Shape (rows, cols): the stress that the scene is about, tension positive.
    stress_id : str
        Text id of that stress's name.
    magnified : float
        Factor by which the window shows the displacement.
    seams : tuple of Seam
        Cracks: between their faces there is no glass.
    """

    x_mm: Array
    y_mm: Array
    moved_x_um: Array
    moved_y_um: Array
    temperature_C: Array
    stress_MPa: Array
    stress_id: str
    magnified: float
    seams: tuple[Seam, ...] = ()


@dataclass(frozen=True)
class Outline:
    """A line drawn on the picture, in stage millimetres: a crack, a shard's edge, a programme.

    Parameters
    ----------
    kind : str
        "crack", "shard" (closed), "interlayer" (an edge within the piece), "cut" (where a slice
        was imagined, or how far a melt has come), "hand" (what presses or pulls, and how hard),
        "gate" (where a melt comes in).
    x_mm, y_mm : numpy.ndarray
        Shape (points,).
    """

    kind: str
    x_mm: Array
    y_mm: Array


@dataclass(frozen=True)
class Curve:
    """One curve of a chart; `id` is the text id of its name."""

    id: str
    x: Array
    y: Array


@dataclass(frozen=True)
class Handle:
    """A point of a chart that a person may drag; see `Scene.drag`. In the axes' units."""

    id: str
    x: float
    y: float


@dataclass(frozen=True)
class Span:
    """A range along the horizontal axis of a chart; `id` is the text id of its name."""

    id: str
    low: float
    middle: float
    high: float


@dataclass(frozen=True)
class Chart:
    """A chart of this instant, shown in place of the traces over time.

    Parameters
    ----------
    x_id, y_id : str
        Text ids of the axes' names.
    x_unit, y_unit : str
        Their units.
    curves : tuple of Curve
        At most four.
    levels : tuple of (str, float)
        Horizontal lines with the text ids of their names (strain point, a limit).
    handles : tuple of Handle
        Points that may be dragged.
    spans : tuple of Span
        Ranges along x, one below the other, each named; then there are no curves.
    colours : bool
        Whether x is a retardation in nm, under which its interference colours are shown as the
        instrument in use makes them.
    reach : float
        End of the horizontal axis of ranges, which begins at zero.
    """

    x_id: str
    x_unit: str
    y_id: str
    y_unit: str
    curves: tuple[Curve, ...]
    levels: tuple[tuple[str, float], ...] = ()
    handles: tuple[Handle, ...] = ()
    spans: tuple[Span, ...] = ()
    colours: bool = False
    reach: float = 1.0


@dataclass(frozen=True)
class View:
    """All that can be seen of one instant."""

    stage: Stage
    section: Section | None = None
    marks: tuple[Mark, ...] = ()
    outlines: tuple[Outline, ...] = ()
    chart: Chart | None = None


@dataclass(frozen=True)
class Action:
    """A button that changes settings at this instant (drop now), e.g. {"drop_at_s": now}."""

    id: str
    label: str
    apply: Callable[[Any, Any], Any]


def real_speed(_settings: Any, _state: Any) -> float:
    """The pace of a story that takes as long as it really does."""
    return 1.0


def as_arranged(_settings: Any, instrument: Instrument) -> Instrument:
    """The light of a scene that leaves it to whoever shows it."""
    return instrument


def as_before(settings: Any, _instrument: Instrument) -> Any:
    """Settings of a scene that say nothing of the light."""
    return settings


def round_pace(pace: float) -> float:
    """The largest of a few round numbers that is not above `pace`, and at least 1."""
    steps = (1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0, 1000.0)
    return max(one for one in steps if one <= max(pace, 1.0))


@dataclass(frozen=True)
class Scene:
    """One thing to show.

    Parameters
    ----------
    id : str
        Name on the command line.
    title : str
        Name on the screen, in English.
    settings : type
        Frozen dataclass whose fields come from `demo_app.scenes.settings`.
    readings : tuple of Reading
        What `read` returns, in order.
    traces : tuple of Reading
        What `trace` returns, in order: the curves of the chart over time.
    texts : mapping
        English texts by message id.
    start : callable
        ``start(settings) -> state``.
    advance : callable
        ``advance(settings, state) -> state``, one step; its length depends on the settings and
        the state alone, so the same settings and number of steps give the same bytes.
    seconds : callable
        ``seconds(settings) -> float``: model time after which nothing more is expected.
    read : callable
        ``read(settings, state) -> dict`` from reading name to number, text, bool or None.
    trace : callable
        ``trace(settings, state) -> dict`` from trace name to number.
    view : callable
        ``view(settings, state) -> View``.
    say : callable
        ``say(settings, state) -> Message``: one plain sentence that says what is seen.
    actions : tuple of Action
        Buttons beside play and reset.
    point : callable or None
        ``point(settings, state, place) -> state``: a finger or the mouse is at ``place`` (x, y) on
        the stage, mm, or was lifted (None). It stays there until the next call.
    reach_mm : callable or None
        ``reach_mm(settings) -> float``: diameter of what a finger touches, for the ring that
        follows it. Only with `point`.
    drag : callable or None
        ``drag(settings, state, handle_id, x, y) -> settings``: a handle of the chart was dragged
        to (x, y), in the chart's units. What cannot be is moved to the nearest that can: a
        drag is never an error.
    pace : callable
        ``pace(settings, state) -> float``: model seconds per second that suit this part of the
        story, for as long as no person has chosen a speed. A few round numbers.
    section_shows : str
        What the colours of a section mean until a person chooses: "temperature" or "stress".
    light : callable
        ``light(settings, instrument) -> Instrument``: what stands around the stage, where the
        settings have a say in it; `instrument` is what whoever shows the scene has arranged.
    relit : callable
        ``relit(settings, instrument) -> settings``: the settings that ask for what `instrument`
        has, where they have a say in it: the way back from `light`.
    """

    id: str
    title: str
    settings: type
    readings: tuple[Reading, ...]
    traces: tuple[Reading, ...]
    texts: Mapping[str, str]
    start: Callable[[Any], Any]
    advance: Callable[[Any, Any], Any]
    seconds: Callable[[Any], float]
    read: Callable[[Any, Any], dict[str, Any]]
    trace: Callable[[Any, Any], dict[str, float]]
    view: Callable[[Any, Any], View]
    say: Callable[[Any, Any], Message]
    actions: tuple[Action, ...] = ()
    point: Callable[[Any, Any, tuple[float, float] | None], Any] | None = None
    reach_mm: Callable[[Any], float] | None = None
    drag: Callable[[Any, Any, str, float, float], Any] | None = None
    pace: Callable[[Any, Any], float] = real_speed
    section_shows: str = "temperature"
    light: Callable[[Any, Instrument], Instrument] = as_arranged
    relit: Callable[[Any, Instrument], Any] = as_before
