"""The command line: what it prints, what it writes, and one clear line for what it cannot use."""

import csv
import dataclasses
import json
import os
import subprocess
import sys
from pathlib import Path

import pytest
from small_scene import SCENE

from demo_app import __version__
from demo_app.cli import main
from demo_app.scenes import catalogue

ROOT = Path(__file__).resolve().parent.parent
SOLVE = {
    "scene": "bar",
    "settings": {"load_N": 50.0, "width_mm": 20.0, "glass": "soda-lime", "held": True},
    "at_s": 2.0,
    "readings": {"tension_MPa": 0.5, "verdict": "holds", "whole": True, "break_at_s": None},
}


@pytest.fixture(autouse=True)
def _one_small_scene(monkeypatch, tmp_path):
    monkeypatch.setattr(catalogue, "ids", lambda: (SCENE.id,))
    monkeypatch.setattr(catalogue, "load", lambda name: SCENE)
    monkeypatch.chdir(tmp_path)
    for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        monkeypatch.delenv(name, raising=False)


def run(capsys, *words):
    """Exit status, standard output, standard error."""
    status = main([str(word) for word in words])
    out, err = capsys.readouterr()
    return status, out, err


def test_version(capsys):
    assert run(capsys, "--version") == (0, f"lehrlight {__version__}\n", "")


def test_python_m_is_the_same_program():
    done = subprocess.run(
        [sys.executable, "-m", "demo_app", "--version"],
        cwd=ROOT,
        capture_output=True,
        text=True,
        timeout=60,
        check=True,
    )
    assert done.stdout == f"lehrlight {__version__}\n"


@pytest.mark.parametrize("words", [["--help"], ["solve", "--help"], ["sweep", "--help"]])
def test_help_goes_to_standard_output(capsys, words):
    status, out, err = run(capsys, *words)
    assert (status, err) == (0, "")
    assert out.startswith("usage: lehrlight")


def test_scenes_in_json_state_units_ranges_and_defaults(capsys):
    status, out, err = run(capsys, "scenes", "--json")
    assert (status, err) == (0, "")
    (bar,) = json.loads(out)
    load, width, glass, held = bar["settings"]
    assert load == {
        "name": "load_N",
        "label": "Load",
        "unit": "N",
        "kind": "number",
        "low": 0,
        "high": 500,
        "step": 1,
        "default": 100,
        "help": "Pull at the ends.",
    }
    assert width["default"] == 20
    assert glass["choices"] == ["soda-lime", "borosilicate"]
    assert held["kind"] == "yes-no"
    assert held["default"] is False
    assert bar["readings"][0] == {
        "name": "tension_MPa",
        "label": "Tension",
        "unit": "MPa",
        "help": "",
    }


def test_scenes_for_people_name_everything(capsys):
    _, out, _ = run(capsys, "scenes")
    for word in ("bar: A bar, let go", "load_N", "0 to 500 N", "yes or no", "tension_MPa"):
        assert word in out


def test_solve_in_json(capsys):
    words = ["solve", "bar", "--set", "load_N=50", "--set", "held=yes", "--at", "2", "--json"]
    status, out, err = run(capsys, *words)
    assert (status, err) == (0, "")
    assert json.loads(out) == SOLVE


def test_solve_for_people_is_an_aligned_table(capsys):
    status, out, err = run(capsys, "solve", "bar", "--at", "0")
    assert (status, err) == (0, "")
    assert out.splitlines() == [
        "A bar, let go, 0 s after the start",
        "",
        "Tension             1  MPa  tension_MPa",
        "What it does  lets go       verdict",
        "Whole             yes       whole",
        "Breaks after     none  s    break_at_s",
        "",
        "The pull of 1.0 MPa fades.",
    ]


def test_the_end_of_the_story_is_the_default_instant(capsys):
    assert json.loads(run(capsys, "solve", "bar", "--json")[1])["at_s"] == 6


def test_some_readings_alone(capsys):
    words = ["solve", "bar", "--reading", "verdict", "--reading", "break_at_s", "--json"]
    found = json.loads(run(capsys, *words)[1])
    assert found["readings"] == {"verdict": "lets go", "break_at_s": None}


def test_picture_has_the_size_that_was_asked_for(capsys):
    assert run(capsys, "picture", "bar", "--out", "bar.png", "--size", "320x180")[0] == 0
    assert png_size(Path("bar.png")) == (320, 180)
    assert [path.name for path in Path().iterdir()] == ["bar.png"]


def test_picture_is_full_hd_otherwise(capsys):
    assert run(capsys, "picture", "bar", "--out", "bar.png") == (0, "", "")
    assert png_size(Path("bar.png")) == (1920, 1080)


@pytest.mark.parametrize(
    "words",
    [["--turn", "0"], ["--tint-plate"], ["--lamp", "green"], ["--gain", "8"], ["--parallel"]],
)
def test_the_instrument_changes_the_picture(capsys, words):
    shared = ["picture", "bar", "--at", "0", "--set", "load_N=500", "--size", "64x36"]
    assert run(capsys, *shared, "--out", "plain.png")[0] == 0
    assert run(capsys, *shared, *words, "--out", "other.png")[0] == 0
    assert Path("plain.png").read_bytes() != Path("other.png").read_bytes()


def test_a_picture_replaces_an_older_file_and_keeps_a_link(capsys):
    Path("real.png").write_text("older")
    Path("link.png").symlink_to("real.png")
    assert run(capsys, "picture", "bar", "--out", "link.png", "--size", "64x36")[0] == 0
    assert Path("link.png").is_symlink()
    assert png_size(Path("real.png")) == (64, 36)


def test_sweep_states_settings_and_one_row_a_point(capsys):
    words = ["sweep", "bar", "--vary", "load_N=0:100:3", "--set", "held=yes", "--out", "bar.csv"]
    assert run(capsys, *words) == (0, "", "")
    lines = Path("bar.csv").read_text().splitlines()
    head = [line for line in lines if line.startswith("#")]
    assert head == [
        f"# Lehrlight {__version__}, scene bar",
        "# width_mm = 20",
        "# glass = soda-lime",
        "# held = yes",
    ]
    assert list(csv.DictReader(lines[len(head) :])) == [
        {
            "load_N": load,
            "at_s": "6",
            "tension_MPa": tension,
            "verdict": "holds",
            "whole": "yes",
            "break_at_s": "",
        }
        for load, tension in [("0", "0"), ("50", "0.5"), ("100", "1")]
    ]


def test_without_a_screen_the_demo_show_is_drawn(capsys):
    status, out, err = run(capsys)
    assert (status, err) == (0, "")
    assert "lehrlight-show" in out.splitlines()[0]
    show = Path("lehrlight-show")
    assert sorted(path.name for path in show.iterdir()) == ["bar.json", "bar.png"]
    found = json.loads((show / "bar.json").read_text())
    assert found["readings"]["verdict"] == "lets go"
    # The pull fades, so the start is the liveliest picture.
    assert found["picture"] == {"file": "bar.png", "at_s": 0.0}
    assert found["sentence"] in out
    assert run(capsys)[0] == 0  # again, over the older one


def test_a_reading_that_is_not_finite_is_never_printed(capsys, monkeypatch):
    broken = dataclasses.replace(SCENE, read=lambda s, t: {"tension_MPa": float("nan")})
    monkeypatch.setattr(catalogue, "ids", lambda: ("bar",))
    monkeypatch.setattr(catalogue, "load", lambda name: broken)
    with pytest.raises(ArithmeticError, match="tension_MPa"):
        main(["solve", "bar", "--json"])
    assert capsys.readouterr().out == ""


def test_ctrl_c_is_quiet(capsys, monkeypatch):
    def stop(settings):
        raise KeyboardInterrupt

    halted = dataclasses.replace(SCENE, start=stop)
    monkeypatch.setattr(catalogue, "ids", lambda: ("bar",))
    monkeypatch.setattr(catalogue, "load", lambda name: halted)
    assert run(capsys, "solve", "bar") == (130, "", "")
    assert run(capsys, "picture", "bar", "--out", "bar.png") == (130, "", "")
    assert list(Path().iterdir()) == []


@pytest.mark.skipif(os.name == "nt", reason="POSIX pipes")
@pytest.mark.parametrize("words", ["scenes", "scenes --json", "--help"])
def test_a_reader_that_leaves_is_no_fault(words):
    script = f"{sys.executable} -m demo_app {words} | true; echo ${{PIPESTATUS[0]}}"
    done = subprocess.run(
        ["bash", "-c", script], cwd=ROOT, capture_output=True, text=True, timeout=60, check=True
    )
    assert done.stderr == ""
    assert done.stdout.strip() in {"0", "141"}


def test_check_passes_the_materials_that_come_with_the_app(capsys):
    files = sorted((ROOT / "assets" / "materials").glob("*.toml"))
    status, out, err = run(capsys, "check", *files)
    assert (status, err) == (0, "")
    assert len(out.splitlines()) == len(files) >= 5


def test_check_names_the_line_and_goes_on(capsys):
    good = ROOT / "assets" / "materials" / "soda-lime.toml"
    text = good.read_text(encoding="utf-8")
    Path("bad.toml").write_text(text.replace("density = { value = 2500", "density = { value = -1"))
    status, out, err = run(capsys, "check", "bad.toml", good)
    assert status == 2
    assert err.count("\n") == 1
    assert "bad.toml, line" in err
    assert "density" in err
    assert out.startswith(str(good))


def png_size(path):
    data = path.read_bytes()
    assert data.startswith(b"\x89PNG\r\n\x1a\n")
    return int.from_bytes(data[16:20]), int.from_bytes(data[20:24])
