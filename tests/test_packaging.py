"""Installed from a wheel or editable, started from another folder: the app finds its files."""

import os
import re
import shutil
import subprocess
import sys
import tomllib
from pathlib import Path

import pytest

import demo_app
from demo_app.base import locate

ROOT = Path(__file__).resolve().parent.parent
CONFIG = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
FORCED = CONFIG["tool"]["hatch"]["build"]["targets"]["wheel"]["force-include"]


@pytest.fixture
def installed(tmp_path):
    """A folder laid out as a wheel unpacks, by the same table that the wheel is built from."""
    site = tmp_path / "site"
    skipped = shutil.ignore_patterns("__pycache__")
    shutil.copytree(ROOT / "demo_app", site / "demo_app", ignore=skipped)
    for source, target in FORCED.items():
        shutil.copytree(ROOT / source, site / target, ignore=skipped)
    return site


def started(site, elsewhere, *words):
    """Run ``python -m demo_app`` with `site` on the path, from the folder `elsewhere`."""
    return subprocess.run(
        [sys.executable, "-m", "demo_app", *words],
        cwd=elsewhere,
        env={**os.environ, "PYTHONPATH": str(site)},
        capture_output=True,
        text=True,
        timeout=120,
        check=False,
    )


def test_the_wheel_takes_both_folders_with_it():
    assert set(FORCED) == {"assets", "lesson_plans"}
    for folder in FORCED:
        assert any(path.is_file() for path in (ROOT / folder).rglob("*")), folder


@pytest.mark.parametrize("words", [["--version"], ["scenes"], ["scenes", "--json"]])
def test_an_installed_copy_runs_from_another_folder(installed, tmp_path, words):
    done = started(installed, tmp_path, *words)
    assert done.returncode == 0, done.stderr
    assert done.stderr == ""
    if words == ["--version"]:
        assert done.stdout == f"lehrlight {demo_app.__version__}\n"


@pytest.mark.parametrize("folder", ["assets", "lesson_plans"])
def test_an_installed_copy_uses_its_own_files(installed, tmp_path, folder):
    words = f"from demo_app.base import locate; print(locate.{folder}())"
    done = subprocess.run(
        [sys.executable, "-c", words],
        cwd=tmp_path,
        env={**os.environ, "PYTHONPATH": str(installed)},
        capture_output=True,
        text=True,
        timeout=60,
        check=True,
    )
    assert Path(done.stdout.strip()) == (installed / "demo_app" / folder).resolve()


def test_an_editable_install_uses_the_repository(monkeypatch, tmp_path):
    monkeypatch.chdir(tmp_path)
    if not (ROOT / "demo_app" / "assets").exists():
        assert locate.assets() == ROOT / "assets"
        assert locate.lesson_plans() == ROOT / "lesson_plans"


def test_a_copy_without_its_files_says_so(installed, tmp_path):
    shutil.rmtree(installed / "demo_app" / "assets")
    (tmp_path / "bad.toml").write_text("")
    words = "from demo_app.base import locate; locate.assets()"
    done = subprocess.run(
        [sys.executable, "-c", words],
        cwd=tmp_path,
        env={**os.environ, "PYTHONPATH": str(installed)},
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )
    assert "assets/ is missing; install Lehrlight again" in done.stderr


def test_the_entry_points_lead_to_the_command():
    from demo_app.cli import main

    scripts = CONFIG["project"]["scripts"] | CONFIG["project"]["gui-scripts"]
    assert set(scripts) == {"lehrlight", "lehrlight-gui"}
    assert set(scripts.values()) == {f"{main.__module__}:{main.__name__}"}


def test_every_range_has_both_ends():
    """What has not been tried is not promised."""
    for needed in CONFIG["project"]["dependencies"]:
        assert re.search(r"==|>=.*,<", needed), needed


def test_ci_calls_the_test_command_of_the_readme():
    readme = (ROOT / "README.md").read_text(encoding="utf-8").splitlines()
    ci = (ROOT / ".ci" / "run").read_text(encoding="utf-8").splitlines()
    assert ci[-1].endswith("python -m pytest")
    assert ci[-1] in readme
