"""One instant of the scene `cooling`, and its verdict."""

from dataclasses import dataclass

from demo_app.physics.material_files import material
from demo_app.physics.oven import Oven, Schedule
from demo_app.physics.stepped import Piece, PieceState
from demo_app.scenes.cooling_parts.charts import Instant
from demo_app.scenes.cooling_parts.settings import Settings, limit_of


@dataclass(frozen=True)
class State:
    """One instant.

    Parameters
    ----------
    piece : PieceState
        Temperature and stress.
    oven : Oven
        The oven that runs its programme, with the piece or without.
    way : str
        Where the piece is.
    told : Schedule
        The oven's orders.
    moved_s, turned_s : float
        When the piece last changed its place, and the oven its rate, s.
    peak : float
        Largest pull on any surface so far, Pa.
    cold_s : float or None
        Since when it is cold, s.
    kept : float or None
        Birefringence that it keeps, once cold.
    history : tuple of Instant
        All instants so far, for the chart.
    step : int
        Number of steps.
    """

    piece: PieceState
    oven: Oven
    way: str
    told: Schedule
    moved_s: float
    turned_s: float
    peak: float
    cold_s: float | None
    kept: float | None
    history: tuple[Instant, ...]
    step: int

    @property
    def time_s(self) -> float:
        """Model time, s."""
        return self.piece.time


def acceptable(settings: Settings, state: State) -> bool:
    """Whether the cold piece keeps the limit and was not pulled to its strength on the way."""
    whole = state.peak < material(settings.glass).characteristic_strength
    return whole and state.kept is not None and state.kept <= limit_of(settings).birefringence


def thickest(what: Piece) -> int:
    """Number of the thickest part."""
    return max(range(len(what.walls)), key=lambda k: what.walls[k].thickness)
