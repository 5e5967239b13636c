"""The ground rules that every change keeps: layers, no Qt below ui, clean code."""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent

WITHOUT_QT = """
import importlib, json, pkgutil, sys
for name in ("PySide6", "shiboken6", "pyqtgraph"):
    sys.modules[name] = None
import demo_app
names = ["demo_app.cli"]
for layer in ("base", "physics", "optics", "scenes", "content"):
    package = importlib.import_module(f"demo_app.{layer}")
    found = pkgutil.walk_packages(package.__path__, f"demo_app.{layer}.")
    names += [module.name for module in found]
for name in names:
    importlib.import_module(name)
from demo_app.content.readings import solve
from demo_app.scenes.catalogue import scenes
from small_scene import SCENE
solved = [solve(one, one.settings(), at).scene.id
          for one, at in [(SCENE, None), *((scene, 0.5) for scene in scenes().values())]]
print(json.dumps({"modules": names, "solved": solved}))
"""

LIGHT = """
import sys
from demo_app.cli import main
status = main(sys.argv[1:])
heavy = {name.partition(".")[0] for name in sys.modules} & set(%r)
sys.exit(status or (f"imported {heavy}" if heavy else 0))
"""


def run(*words, **changes):
    """Run this Python in the repository, warnings as errors."""
    return subprocess.run(
        [sys.executable, *words],
        cwd=ROOT,
        env={**os.environ, **changes},
        capture_output=True,
        text=True,
        timeout=240,
        check=False,
    )


def passes(*words):
    done = run("-m", *words)
    assert done.returncode == 0, done.stdout + done.stderr


def test_imports_keep_the_layers():
    # Its own cache may be half written by another run.
    command = "from importlinter.cli import lint_imports_command as c; c(['--no-cache'])"
    done = run("-c", command)
    assert done.returncode == 0, done.stdout + done.stderr
    assert "0 broken" in done.stdout


def test_an_import_to_the_right_breaks_a_contract(tmp_path):
    """The contracts see a breach: a copy in which physics reaches for content, and base for Qt."""
    import shutil

    shutil.copytree(ROOT / "demo_app", tmp_path / "demo_app")
    shutil.copy(ROOT / "pyproject.toml", tmp_path)
    with (tmp_path / "demo_app/base/errors.py").open("a") as file:
        file.write("import PySide6\nimport demo_app.content\n")
    command = "from importlinter.cli import lint_imports_command as c; c(['--no-cache'])"
    done = subprocess.run(
        [sys.executable, "-c", command],
        cwd=tmp_path,
        env={**os.environ, "PYTHONPATH": str(tmp_path)},
        capture_output=True,
        text=True,
        timeout=240,
        check=False,
    )
    assert done.returncode == 1
    assert "2 broken" in done.stdout


def test_all_below_the_window_works_without_qt():
    done = run("-W", "error", "-c", WITHOUT_QT, PYTHONPATH=f"{ROOT}{os.pathsep}{ROOT / 'tests'}")
    assert done.returncode == 0, done.stderr
    found = json.loads(done.stdout)
    assert "bar" in found["solved"]
    assert "demo_app.cli" in found["modules"]
    assert "demo_app.physics.materials" in found["modules"]
    assert "demo_app.content.readings" in found["modules"]


@pytest.mark.parametrize(
    ("words", "heavy"),
    [
        (["--version"], ["PySide6", "pyqtgraph", "numpy", "scipy", "skfem"]),
        (["scenes"], ["PySide6", "pyqtgraph"]),
    ],
)
def test_small_commands_import_little(words, heavy):
    done = run("-c", LIGHT % (heavy,), *words)
    assert done.returncode == 0, done.stderr


def test_ruff_finds_nothing():
    passes("ruff", "check", "--no-cache", ".")


def test_the_code_is_formatted():
    passes("ruff", "format", "--no-cache", "--check", ".")


def test_types_hold():
    passes("mypy")
