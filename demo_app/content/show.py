"""The demo show without a screen: each scene's picture and readings in a folder."""

from collections.abc import Callable, Iterable
from pathlib import Path
from typing import Any

from demo_app.base.atomic import make_folder, write_text
from demo_app.content.pictures import FULL_HD, drawn
from demo_app.content.readings import Result, as_json, as_record, result
from demo_app.optics.instrument import Instrument
from demo_app.optics.png import save_png
from demo_app.scenes.run import liveliest, state_at
from demo_app.scenes.scene import Scene


def draw_show(scenes: Iterable[Scene], folder: Path, tell: Callable[[str], None]) -> None:
    """Draw every scene with its defaults.

    Parameters
    ----------
    scenes : iterable of Scene
        What is shown.
    folder : pathlib.Path
        Made if it is missing; gets ``ID.png`` and ``ID.json`` for each scene.
    tell : callable
        Told one line for each scene.

    Raises
    ------
    InputError
        If the folder cannot be made or written.
    """
    make_folder(folder)
    for scene in scenes:
        settings = scene.settings()
        best = liveliest(scene, settings)
        found = result(scene, settings, state_at(scene, settings))
        picture = folder / f"{scene.id}.png"
        light = scene.light(settings, Instrument())
        save_png(picture, drawn(scene.view(settings, best), FULL_HD, light))
        readings = folder / f"{scene.id}.json"
        write_text(readings, as_json(_record(found, picture.name, best.time_s)) + "\n")
        tell(f"{scene.id}: {picture} ({best.time_s:.4g} s), {readings}")
        tell(f"  {found.sentence}")


def _record(found: Result, picture: str, at_s: float) -> dict[str, Any]:
    return {
        **as_record(found),
        "sentence": found.sentence,
        "picture": {"file": picture, "at_s": float(at_s)},
    }
