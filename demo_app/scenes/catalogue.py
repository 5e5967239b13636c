"""All scenes: found by walking this folder; a scene is a module with a ``SCENE``."""

import functools
import importlib
import pkgutil

import demo_app.scenes
from demo_app.base.errors import InputError
from demo_app.scenes.scene import Scene

_NOT_SCENES = {"settings", "scene", "catalogue", "run"}


@functools.cache
def scenes() -> dict[str, Scene]:
    """Scenes by id, in the order of their module names."""
    found: dict[str, Scene] = {}
    for module in pkgutil.iter_modules(demo_app.scenes.__path__):
        if module.name in _NOT_SCENES or module.ispkg:
            continue
        scene: Scene = importlib.import_module(f"demo_app.scenes.{module.name}").SCENE
        found[scene.id] = scene
    return found


def scene(name: str) -> Scene:
    """The scene called `name`; `InputError` names the known ones."""
    if name not in scenes():
        raise InputError(
            f"no scene is called '{name}'",
            place="scene",
            remedy=f"write one of {', '.join(scenes())}",
        )
    return scenes()[name]
