"""All scenes: found by walking this folder; a scene is a module with a ``SCENE``.

A scene's id is its module's name with hyphens for underscores, so one scene can be had without
importing the solvers of all the others.
"""

import functools
import importlib
import pkgutil

import demo_app.scenes
from demo_app.base.errors import InputError
from demo_app.scenes.scene import Scene

_NOT_SCENES = {"settings", "scene", "catalogue", "run"}


@functools.cache
def ids() -> tuple[str, ...]:
    """Ids of all scenes, in the order of their module names; nothing is imported."""
    return tuple(
        module.name.replace("_", "-")
        for module in pkgutil.iter_modules(demo_app.scenes.__path__)
        if module.name not in _NOT_SCENES and not module.ispkg
    )


@functools.cache
def load(name: str) -> Scene:
    """Import the scene with the id `name`."""
    module = importlib.import_module(f"demo_app.scenes.{name.replace('-', '_')}")
    found: Scene = module.SCENE
    return found


def scenes() -> dict[str, Scene]:
    """All scenes by id."""
    return {name: load(name) for name in ids()}


def scene(name: str) -> Scene:
    """The scene called `name`; `InputError` names the known ones."""
    if name not in ids():
        raise InputError(
            f"no scene is called '{name}'",
            place="scene",
            remedy=f"write one of {', '.join(ids())}",
        )
    return load(name)
