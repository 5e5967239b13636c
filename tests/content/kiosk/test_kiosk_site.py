"""The site file: read, refused with its line, written with its comments."""

import dataclasses
import datetime
import os
import stat
import sys
from pathlib import Path

import pytest
from kiosk_damage import SITE

from demo_app.base.errors import InputError
from demo_app.cli import main
from demo_app.content.checks import checked
from demo_app.content.kiosk import site_file
from demo_app.content.kiosk.code import hashed, matches
from demo_app.content.kiosk.fallback import load_or_last_good
from demo_app.content.kiosk.hours import Span
from demo_app.content.kiosk.site import Site, steps_on

CODE = hashed("135791", bytes(16))


@pytest.fixture
def path(tmp_path):
    file = tmp_path / "kiosk.toml"
    file.write_text(SITE.replace("HASH", CODE), encoding="utf-8")
    return file


def test_all_of_it_is_read(path):
    site = site_file.load(path)
    assert site == Site(
        hours=site.hours,
        languages=("de", "en"),
        language="de",
        steps_off=("bubble",),
        brightness=0.8,
        idle_s=60,
        warning_s=25,
        high_contrast=True,
        scale=1.3,
        calm=True,
        motion=False,
        code=CODE,
        updates=Path("/media/stick/texts"),
        width_mm=531,
        height_mm=299,
        path=path,
    )
    assert site.hours.week[1] == (Span(600, 750), Span(810, 1080))
    assert site.hours.week[5] == (Span(600, 1440),)
    assert site.hours.week[6] == ()
    assert site.hours.exceptions[datetime.date(2026, 12, 25)] == ()
    assert checked(path).mistakes == ()


def test_the_defaults_are_those_of_the_standard(tmp_path):
    (tmp_path / "kiosk.toml").write_text('kind = "kiosk site"')
    site, problems = load_or_last_good(tmp_path)
    assert problems == ()
    assert (site.idle_s, site.warning_s) == (90, 20)  # WCAG 2.2, 2.2.1: 20 s at least.
    assert dataclasses.replace(site, path=None) == Site()


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("warning_s = 19", "20 to 300 s"),
        ('language = "fr"', "write one of"),
        ('languages = ["en", "en"]', "twice"),
        ('hours = { monday = ["9-5"] }', "10:00-17:30"),
        ('hours = { monday = ["10:00-24:30"] }', "10:00-17:30"),
        ('hours = { mon = ["10:00-12:00"] }', "monday"),
        ('exceptions = { 2026-02-30 = [] }', "year-month-day"),
        ('code = "135791"', "--set-code"),
        ('updates = "stick"', "from the root on"),
        ('look = { scale = 2 }', "1.6"),
        ('look = { scale = 1.5 }', "1, 1.3, 1.6"),
        ("colour = 1", "unknown key"),
        ('steps_off = ["warm-touch", "one-drop", "slow-or-sudden", "toughened-or-plain",'
         ' "bubble", "dish"]', "no step is left"),
    ],
)  # fmt: skip
def test_mistakes_name_file_line_and_remedy(tmp_path, line, said):
    file = tmp_path / "kiosk.toml"
    file.write_text(f'kind = "kiosk site"\n\n{line}\n')
    with pytest.raises(InputError, match="line 3") as told:
        site_file.load(file)
    assert said in str(told.value)
    assert str(file) in str(told.value)
    assert "135791" not in str(told.value)


def test_it_is_written_and_read_again(path):
    path.write_text("# Ours.\n" + path.read_text(), encoding="utf-8")
    site = site_file.load(path)
    changed = dataclasses.replace(
        site, steps_off=(), brightness=0.5, language="en", updates=None, width_mm=None
    )
    site_file.save(changed, path)
    assert site_file.load(path) == changed
    assert path.read_text(encoding="utf-8").startswith("# Ours.\n")


def test_a_new_one_is_written(tmp_path):
    path = tmp_path / "kiosk.toml"
    site_file.save(Site(brightness=0.4), path)
    assert site_file.load(path) == Site(brightness=0.4, path=path)


def test_a_broken_one_is_kept_when_staff_save(path):
    site = load_or_last_good(path.parent)[0]
    path.write_text("broken", encoding="utf-8")
    site, problems = load_or_last_good(path.parent)
    assert "kiosk.toml, line 1" in problems[0]
    site_file.save(dataclasses.replace(site, path=path), path)
    assert site_file.load(path).language == "de"
    assert (path.parent / "kiosk.broken.toml").read_text() == "broken"


@pytest.mark.skipif(sys.platform == "win32", reason="modes are those of POSIX")
def test_nobody_else_reads_the_hash(path):
    site_file.save(site_file.load(path), path)
    load_or_last_good(path.parent)
    for name in ("kiosk.toml", "kiosk.last-good.toml"):
        assert stat.S_IMODE((path.parent / name).stat().st_mode) == 0o600


def test_the_last_good_copy_follows(path):
    load_or_last_good(path.parent)
    path.write_text(path.read_text().replace("0.8", "0.7"))
    load_or_last_good(path.parent)
    path.unlink()
    assert load_or_last_good(path.parent)[0].brightness == 0.7


@pytest.mark.skipif(os.name == "nt" or not Path("/proc").is_dir(), reason="needs /proc")
def test_a_disk_that_refuses_is_no_trouble():
    assert load_or_last_good(Path("/proc")) == (Site(), ())
    with pytest.raises(InputError):
        site_file.save(Site(), Path("/proc/kiosk.toml"))


def test_no_step_left_means_all_of_them():
    assert steps_on(Site(steps_off=("dish",)), ("dish", "bubble")) == ("bubble",)
    assert steps_on(Site(steps_off=("dish",)), ("dish",)) == ("dish",)


def test_the_command_sets_the_code(tmp_path, monkeypatch, capsys):
    monkeypatch.setenv("LEHRLIGHT_HOME", str(tmp_path))
    typed = iter(["246802\n", "246802\n", "246802\n", "246803\n"])
    monkeypatch.setattr("sys.stdin", Typed(typed))
    assert main(["kiosk", "--set-code"]) == 0
    assert "246802" not in (tmp_path / "kiosk.toml").read_text()
    assert matches("246802", site_file.load(tmp_path / "kiosk.toml").code)
    assert main(["kiosk", "--set-code"]) == 2
    out, err = capsys.readouterr()
    assert "246802" not in out + err
    assert "type the same twice" in err


class Typed:
    def __init__(self, lines):
        self._lines = lines

    def isatty(self):
        return False

    def readline(self):
        return next(self._lines)
