"""A scene as a model: from settings that spread to readings."""

from collections.abc import Mapping, Sequence
from typing import Any

from demo_app.content.readings import check_names
from demo_app.content.spread.monte_carlo import Model
from demo_app.scenes.run import state_at
from demo_app.scenes.scene import Scene
from demo_app.scenes.settings import make


def scene_model(
    scene: Scene,
    values: Mapping[str, Any],
    names: Sequence[str] = (),
    at_s: float | None = None,
) -> Model:
    """Model that runs `scene` and reads it, without any picture.

    Parameters
    ----------
    scene : Scene
        What runs.
    values : mapping
        Settings that stay.
    names : sequence of str
        Readings; default: all.
    at_s : float, optional
        Instant, s; default: the end of each story.
    """
    check_names(scene, names)

    def model(spread: Mapping[str, float]) -> Mapping[str, Any]:
        return read_at(scene, {**values, **spread}, names, at_s)

    return model


def read_at(
    scene: Scene, values: Mapping[str, Any], names: Sequence[str] = (), at_s: float | None = None
) -> dict[str, Any]:
    """Readings of one run as plain numbers, yes-nos, words or None; `InputError` if refused."""
    settings: Any = make(scene.settings, values)
    found = scene.read(settings, state_at(scene, settings, at_s))
    return {name: plain(found[name]) for name in (names or found)}


def plain(value: Any) -> Any:
    """NumPy's scalars as Python's own."""
    return value.item() if hasattr(value, "item") else value
