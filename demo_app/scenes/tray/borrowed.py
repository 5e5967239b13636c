"""Pieces of other scenes: with their default settings, cold or at the liveliest instant."""

import sys
from collections.abc import Callable
from typing import Any

from demo_app.physics.material_files import material
from demo_app.scenes import catalogue
from demo_app.scenes.run import liveliest, state_at
from demo_app.scenes.scene import Scene
from demo_app.scenes.tray.sample import Sample, laid

KEPT = frozenset({"bubble", "cooling", "dish"})
"""Scenes whose piece keeps its stress: it is shown at the end of the story, when it is cold."""

LOOKS = {
    "bubble": "from the side",
    "cooling": "edge-on",
    "dish": "from above",
    "pour": "from the side",
    "push-pull": "from the side",
    "ring": "from the side",
    "touch": "face-on",
}

PATHS = {"cooling": "path_mm", "push-pull": "thickness_mm", "touch": "thickness_mm"}
"""Settings that tell the way of the light; through round walls it differs from place to place."""

_SOLVING = ("demo_app.scenes", "demo_app.optics.sight", "demo_app.physics")

STRETCHED = frozenset({"dish"})
"""Where molecules that froze drawn out make most of the colours."""


def borrowed(name: str) -> Sample:
    """The piece of the scene called `name`; any other is shown at its liveliest instant."""
    scene = catalogue.scene(name)
    before = _remembered()
    try:
        return _borrowed(scene)
    finally:
        for place, (forget, size) in _remembered().items():
            if size > before.get(place, (forget, 0))[1]:
                forget()


def _borrowed(scene: Scene) -> Sample:
    name, settings = scene.id, scene.settings()
    kept = name in KEPT
    state = state_at(scene, settings) if kept else liveliest(scene, settings)
    view = scene.view(settings, state)
    when = "cold" if kept else f"at {state.time_s:.3g} s"
    look = LOOKS.get(name)
    return laid(
        name,
        when if look is None else f"{look}, {when}",
        view.stage.pieces,
        view.outlines,
        material(_material(settings)).stress_optic,
        float(getattr(settings, PATHS[name])) if name in PATHS else None,
        stretched=name in STRETCHED,
    )


def _remembered() -> dict[tuple[str, str], tuple[Callable[[], None], int]]:
    """What scenes and solvers keep for their next run: how to forget it, and how much it is.

    All the solvers' matrices together would take more memory than the rest of the app; the table
    keeps what came out of them.
    """
    return {
        (module, word): (value.cache_clear, value.cache_info().currsize)
        for module, loaded in list(sys.modules.items())
        if module.startswith(_SOLVING) and ".tray." not in module
        for word, value in vars(loaded).items()
        if hasattr(value, "cache_clear")
    }


def _material(settings: Any) -> str:
    """What a scene's piece is made of."""
    names = (getattr(settings, word, None) for word in ("glass", "plastic", "material"))
    return str(next(name for name in names if name is not None))
