"""What the command line cannot use: one clear line, status 2, nothing half written."""

import os
import tempfile
from pathlib import Path

import pytest
from small_scene import SCENE

from demo_app.cli import main
from demo_app.scenes import catalogue


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


def refused(capsys, *words):
    """The one line that tells a person what to mend."""
    status, out, err = run(capsys, *words)
    assert status == 2
    assert out == ""
    assert err.startswith("lehrlight: ")
    assert err.count("\n") == 1
    assert err.endswith("\n")
    assert "; " in err
    assert "Traceback" not in err
    assert list(Path().iterdir()) == []
    return err


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["fly"], "invalid choice"),
        (["solve"], "SCENE"),
        (["solve", "bar", "--js"], "unrecognized"),
        (["solve", "vase"], "write one of bar"),
        (["solve", "bar\nx"], "no scene is called"),
        (["present", "vase"], "write one of bar"),
        (["present"], "no screen was found"),
        (["solve", "bar", "--set", "colour=1"], "load_N, width_mm, glass, held"),
        (["solve", "bar", "--set", "load_N"], "NAME=VALUE"),
        (["solve", "bar", "--set", "=3"], "NAME=VALUE"),
        (["solve", "bar", "--set", "load_N=1", "--set", "load_N=2"], "given twice"),
        (["solve", "bar", "--set", "load_N=501"], "0 to 500 N"),
        (["solve", "bar", "--set", "load_N=nan"], "0 to 500 N"),
        (["solve", "bar", "--set", "load_N=inf"], "0 to 500 N"),
        (["solve", "bar", "--set", "load_N=ten"], "0 to 500 N"),
        (["solve", "bar", "--set", "load_N="], "0 to 500 N"),
        (["solve", "bar", "--set", "glass=ice"], "soda-lime, borosilicate"),
        (["solve", "bar", "--set", "held=perhaps"], "yes or no"),
        (["solve", "bar", "--set", "load_N=450", "--set", "width_mm=6"], "write 400 N"),
        (["solve", "bar", "--at", "-1"], "0 to 3600 s"),
        (["solve", "bar", "--at", "nan"], "0 to 3600 s"),
        (["solve", "bar", "--at", "1e12"], "0 to 3600 s"),
        (["solve", "bar", "--at", "soon"], "0 to 3600 s"),
        (["solve", "bar", "--reading", "mood"], "tension_MPa, verdict"),
        (["picture", "bar"], "--out"),
        (["picture", "bar", "--out", "bar.jpg"], ".png"),
        (["picture", "bar", "--out", ""], ".png"),
        (["picture", "bar", "--out", "away/bar.png"], "folder is missing"),
        (["picture", "bar", "--out", "b.png", "--size", "0x0"], "WIDTHxHEIGHT"),
        (["picture", "bar", "--out", "b.png", "--size", "1920"], "WIDTHxHEIGHT"),
        (["picture", "bar", "--out", "b.png", "--size=-5x9"], "WIDTHxHEIGHT"),
        (["picture", "bar", "--out", "b.png", "--size", "1e3x9"], "WIDTHxHEIGHT"),
        (["picture", "bar", "--out", "b.png", "--size", "99999x99999"], "WIDTHxHEIGHT"),
        (["picture", "bar", "--out", "b.png", "--turn", "nan"], "--turn"),
        (["picture", "bar", "--out", "b.png", "--gain", "0"], "--gain"),
        (["picture", "bar", "--out", "b.png", "--lamp", "moon"], "daylight"),
        (["picture", "bar", "--out", f"{'x' * 300}.png"], "choose another place"),
        (["sweep", "bar", "--vary", "load_N=0:9:0", "--out", "b.csv"], "1 to 1000"),
        (["sweep", "bar", "--vary", "load_N=0:9:9999999999", "--out", "b.csv"], "1 to 1000"),
        (["sweep", "bar", "--vary", "load_N=0:9:2.5", "--out", "b.csv"], "1 to 1000"),
        (["sweep", "bar", "--vary", "load_N=0:900:2", "--out", "b.csv"], "0 to 500 N"),
        (["sweep", "bar", "--vary", "load_N=0:nan:2", "--out", "b.csv"], "0 to 500 N"),
        (["sweep", "bar", "--vary", "load_N=0:9", "--out", "b.csv"], "FROM:TO:COUNT"),
        (["sweep", "bar", "--vary", "glass=0:9:2", "--out", "b.csv"], "load_N, width_mm"),
        (["sweep", "bar", "--vary", "load_N=0:9:2", "--out", "."], "is a folder"),
        (["sweep", "bar", "--vary", "load_N=0:9:2", "--out", "/dev/null"], "no ordinary file"),
        (
            ["sweep", "bar", "--vary", "load_N=0:9:2", "--set", "load_N=1", "--out", "b.csv"],
            "--set",
        ),
        (
            ["sweep", "bar", *["--vary", "load_N=0:9:2"] * 2, "--out", "b.csv"],
            "one setting at a time",
        ),
        (
            ["sweep", "bar", "--vary", "load_N=0:9:2", "--reading", "mood", "--out", "b.csv"],
            "tension_MPa",
        ),
        (["check"], "FILE"),
        (["check", "missing.toml"], "missing.toml"),
        (["check", "notes.txt"], ".toml"),
    ],
)
def test_one_line_says_what_to_mend(capsys, words, said):
    assert said in refused(capsys, *words)


def test_a_file_in_the_way_of_the_show_stays(capsys):
    Path("lehrlight-show").write_text("mine")
    status, _, err = run(capsys)
    assert (status, err.count("\n")) == (2, 1)
    assert Path("lehrlight-show").read_text() == "mine"


@pytest.mark.skipif(not hasattr(os, "geteuid"), reason="POSIX permissions")
@pytest.mark.parametrize(
    "words", [["picture", "bar"], ["sweep", "bar", "--vary", "load_N=0:9:2"], []]
)
def test_no_permission(capsys, monkeypatch, words):
    main(["picture", "bar", "--out", "first.png", "--size", "16x16"])  # imports, as oneself
    capsys.readouterr()
    with tempfile.TemporaryDirectory(dir="/tmp") as closed:
        Path(closed).chmod(0o555)
        monkeypatch.chdir(closed)
        superuser = os.geteuid() == 0
        out = ["--out", "bar.png" if "picture" in words else "bar.csv"] if words else []
        try:
            if superuser:
                os.seteuid(65534)  # nobody: nothing is closed to root
            status, _, err = run(capsys, *words, *out)
        finally:
            if superuser:
                os.seteuid(0)
        assert status == 2
        assert err.count("\n") == 1
        assert "may not be written by you" in err
        assert list(Path(closed).iterdir()) == []


def test_a_fault_while_writing_leaves_the_older_file(capsys, monkeypatch):
    Path("bar.csv").write_text("older")

    def full(*_):
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("os.replace", full)
    status, _, err = run(capsys, "sweep", "bar", "--vary", "load_N=0:9:2", "--out", "bar.csv")
    assert (status, err.count("\n")) == (2, 1)
    assert "No space left" in err
    assert Path("bar.csv").read_text() == "older"
    assert len(list(Path().iterdir())) == 1
