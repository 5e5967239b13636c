"""Pieces of other scenes: with their default settings, cold or at the liveliest instant."""

from typing import Any

from demo_app.physics.material_files import material
from demo_app.scenes import catalogue
from demo_app.scenes.run import liveliest, state_at
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

STRETCHED = frozenset({"dish"})
"""Where molecules that froze drawn out make most of the colours."""


def borrowed(name: str) -> Sample:
    """The piece of the scene called `name`; any other is shown at its liveliest instant."""
    scene = catalogue.scene(name)
    settings = scene.settings()
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


def _material(settings: Any) -> str:
    """What a scene's piece is made of."""
    names = (getattr(settings, word, None) for word in ("glass", "plastic", "material"))
    return str(next(name for name in names if name is not None))
