"""What a presenter sets, what an instant holds, and which samples lie there."""

import functools
from collections.abc import Callable
from dataclasses import dataclass, replace

from demo_app.optics.instrument import TINT_PLATE_NM, Instrument
from demo_app.optics.light_data import LAMPS
from demo_app.scenes import catalogue
from demo_app.scenes.settings import choice, flag, number, several
from demo_app.scenes.tray.sample import Sample

MOST = 6
"""Places on the table."""
OWN = ("plain", "laminated", "toughened", "toughened-face")
"""Samples that no other scene shows alone."""
KNOWN = OWN + tuple(name for name in catalogue.ids() if name not in {"light-table", "toughen"})
_WANTED = (*OWN, "dish", "bubble")
STAGES = ("lamp", "one-filter", "crossed", "samples")
_FILTERS = {"lamp": 0, "one-filter": 1}
_BUILDING_EXPOSURE = 0.5
"""While there are no samples, the lamp alone, twice the open field, is as bright as the screen."""


@dataclass(frozen=True)
class Settings:
    """What a presenter may change."""

    samples: str = several(
        "Samples",
        ",".join(name for name in _WANTED if name in KNOWN),
        KNOWN,
        MOST,
        help="What lies on the table, up to six; other scenes' pieces as they are by default.",
    )
    turn_deg: float = number(
        "Turn the polarizers", "deg", 45, 0, 180, step=1, help="Angle of the pair of polarizers."
    )
    tint_plate: bool = flag("Tint plate", False, help="Shows small stress and its sign as colour.")
    lamp: str = choice("Lamp", "daylight", LAMPS, help="White light or one colour.")
    built: str = choice(
        "Built up to",
        "samples",
        STAGES,
        help="The lamp alone, one filter, the crossed filter, then the samples.",
        live=False,
    )

    @property
    def names(self) -> tuple[str, ...]:
        """Ids of the samples, in their order."""
        return tuple(self.samples.split(","))

    @property
    def ready(self) -> bool:
        """Whether all is built up, so that samples may be put in."""
        return self.built == "samples"


@dataclass(frozen=True)
class State:
    """One instant.

    Parameters
    ----------
    time_s, step : float, int
        Model time, and steps since the start.
    place : tuple of float or None
        Where the reading glass is held, stage mm.
    """

    time_s: float
    step: int
    place: tuple[float, float] | None = None


def light(settings: Settings, instrument: Instrument) -> Instrument:
    """Filters, lamp, turn and tint plate by the settings, the rest as it was arranged."""
    return replace(
        instrument,
        lamp=settings.lamp,
        polarizer_deg=settings.turn_deg,
        tint_plate_nm=TINT_PLATE_NM if settings.tint_plate else 0.0,
        filters=_FILTERS.get(settings.built, 2),
        exposure=instrument.exposure if settings.ready else _BUILDING_EXPOSURE,
    )


def relit(settings: Settings, instrument: Instrument) -> Settings:
    """Settings that ask for the lamp, the turn and the tint plate of `instrument`."""
    turn = instrument.polarizer_deg
    return replace(
        settings,
        lamp=instrument.lamp,
        turn_deg=turn if 0 <= turn <= 180 else turn % 180,
        tint_plate=instrument.tint_plate_nm > 0,
    )


def on_table(settings: Settings, state: State) -> tuple[str | None, ...]:
    """For each place what lies there: plates from the start, the others one step after another."""
    if not settings.ready:
        return (None,) * len(settings.names)
    waiting = others(settings)[state.step :]
    return tuple(None if name in waiting else name for name in settings.names)


def others(settings: Settings) -> tuple[str, ...]:
    """Samples that must be worked out by their own scenes."""
    return tuple(name for name in settings.names if name not in OWN)


def samples(settings: Settings, state: State) -> tuple[Sample | None, ...]:
    """For each place the sample that lies there."""
    return tuple(None if name is None else sample(name) for name in on_table(settings, state))


@functools.cache
def sample(name: str) -> Sample:
    """The sample called `name`; the first time it takes as long as its scene does."""
    return _maker(name)()


def _maker(name: str) -> Callable[[], Sample]:
    # The scenes' solvers are imported when a sample of theirs is laid down.
    if name in OWN:
        from demo_app.scenes.tray import plates

        own: dict[str, Callable[[], Sample]] = {
            "plain": plates.plain,
            "laminated": plates.laminated,
            "toughened": plates.toughened,
            "toughened-face": plates.toughened_face,
        }
        return own[name]
    from demo_app.scenes.tray.borrowed import borrowed

    return functools.partial(borrowed, name)
