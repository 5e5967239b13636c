"""Materials of the venue's own: offered beside the app's, never instead of them."""

import json
import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from demo_app.base import locate

ROOT = Path(__file__).resolve().parent.parent.parent
SHIPPED = locate.assets() / "materials"


@pytest.fixture
def shelf(tmp_path):
    folder = tmp_path / "materials"
    folder.mkdir()
    return folder


def run(shelf, *words):
    return subprocess.run(
        [sys.executable, "-W", "error", "-m", "demo_app", *words],
        cwd=ROOT,
        env={**os.environ, "LEHRLIGHT_HOME": str(shelf.parent)},
        capture_output=True,
        text=True,
        check=False,
    )


def glasses(shelf):
    found = json.loads(run(shelf, "scenes", "--json").stdout)
    (toughen,) = [one for one in found if one["id"] == "toughen"]
    return toughen["settings"][0]["choices"]


def test_scenes_offer_it_and_run_it(shelf):
    shutil.copy(SHIPPED / "soda-lime.toml", shelf / "my-window.toml")
    shutil.copy(SHIPPED / "lead-crystal.toml", shelf / "our-crystal.toml")
    assert glasses(shelf) == [
        *("borosilicate", "fused-silica", "lead-crystal", "my-window", "our-crystal"),
        "soda-lime",
    ]
    words = ["solve", "toughen", "--at", "0.5", "--json", "--set"]
    own, shipped = (
        json.loads(run(shelf, *words, f"glass={name}").stdout)["readings"]
        for name in ("my-window", "soda-lime")
    )
    assert own == shipped


def test_mistakes_keep_nothing_from_starting(shelf):
    """A torn file, one of no believable value, a name that is taken and one that is no name."""
    (shelf / "torn.toml").write_text("name = ")
    text = (SHIPPED / "soda-lime.toml").read_text("utf-8")
    (shelf / "odd.toml").write_text(text.replace("[", "[[", 1), encoding="utf-8")
    shutil.copy(SHIPPED / "borosilicate.toml", shelf / "soda-lime.toml")
    shutil.copy(SHIPPED / "soda-lime.toml", shelf / "My Window.toml")
    assert glasses(shelf) == ["borosilicate", "fused-silica", "lead-crystal", "soda-lime"]
    plain, shadowed = (
        run(folder, "solve", "toughen", "--at", "0.5", "--json").stdout
        for folder in (shelf.parent / "none" / "materials", shelf)
    )
    assert plain == shadowed
    done = run(shelf, "check", str(shelf / "torn.toml"))
    assert done.returncode == 2
    assert "line 1" in done.stderr
