"""Two hundred broken files and more: each has a fallback, and each is told to the staff."""

import os
import shutil
import sqlite3
import stat

import pytest
from kiosk_damage import damages, good_folder, put

from demo_app.content.kiosk import site_file, update
from demo_app.content.kiosk.counts import Counts
from demo_app.content.kiosk.fallback import LONGEST_LINE
from demo_app.content.kiosk.opening import open_kiosk

NO_DIGEST = "0" * 32
CASES = list(damages(NO_DIGEST))


@pytest.fixture(autouse=True, scope="module")
def no_waiting_for_the_disk():
    """What is on the disk after a power cut is not tried here."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(os, "fsync", lambda number: None)
        yield


@pytest.fixture(scope="module")
def good(tmp_path_factory):
    folder = tmp_path_factory.mktemp("kiosk") / "data"
    return folder, good_folder(folder)


@pytest.fixture
def data(good, tmp_path, monkeypatch):
    folder = tmp_path / "data"
    shutil.copytree(good[0], folder)
    monkeypatch.setenv("LEHRLIGHT_HOME", str(folder))
    return folder


def test_there_are_two_hundred_and_more():
    assert len(CASES) >= 200


def test_the_good_files_are_good(data):
    opened = open_kiosk()
    assert opened.problems == ()
    assert opened.site.language == "de"
    assert opened.texts.spoken["en"].words["invite"] == "Touch 2"


@pytest.mark.parametrize(
    "at", range(len(CASES)), ids=lambda at: f"{CASES[at].path} {CASES[at].name}"
)
def test_a_broken_file_has_a_fallback_and_is_told(good, data, at):
    damage = list(damages(good[1]))[at]
    if damage.name == "closed" and os.geteuid() == 0:
        pytest.skip("root may read everything")
    before = site_file.load(data / "kiosk.toml")
    file = put(damage, data)
    if same(file, good[0] / damage.path):
        pytest.skip("what was put there is what was there")
    if damage.path.endswith(".sqlite"):
        counts_go_on(data)
        return
    opened = open_kiosk()
    assert opened.site == before or damage.path == "kiosk.toml"
    kept = site_file.load(data / "kiosk.last-good.toml")
    assert opened.site in (before, kept)
    assert (opened.site.language, opened.site.code) == (before.language, before.code)
    words = opened.texts.spoken["en"].words["invite"]
    assert (
        words
        in {
            "materials": {"Touch 2"},
            "kiosk.toml": {"Touch 2"},
            # The pointer is lost: the app's own. A set is broken: the one before.
            "kiosk-texts": {"Touch to begin"} if file.name == "in-use.json" else {"Touch 1"},
        }[damage.path.partition("/")[0]]
    )
    assert len(opened.texts.ids) == 6
    assert set(opened.texts.languages) == {"en", "de", "es"}
    assert opened.problems
    place = "kiosk-texts" if damage.path.startswith("kiosk-texts") else file.name
    assert any(place in one for one in opened.problems), opened.problems
    assert all(len(one) <= LONGEST_LINE and "\n" not in one for one in opened.problems)


def same(file, original):
    ordinary = stat.S_ISREG(os.lstat(file).st_mode) and file.stat().st_size < 10**7
    return ordinary and file.read_bytes() == original.read_bytes()


def counts_go_on(data):
    """A damaged file is moved aside and a new one began, or the counts wait and that is told."""
    counts = Counts(data, retry_s=0.05)
    counts.add("step", "dish")
    counts.close()
    assert counts.since(0)[("step", "dish", -1)] == 1
    assert counts.problems
    if counts.waiting == 0:
        db = sqlite3.connect(data / "kiosk-counts.sqlite")
        assert db.execute("SELECT kind, name, count FROM counts").fetchall() == [
            ("step", "dish", 1)
        ]
        db.close()
        moved = [*data.glob("kiosk-counts-damaged-*.sqlite")]
        assert moved or "empty" in counts.problems[0]


def test_nothing_at_all_is_no_trouble(tmp_path, monkeypatch):
    monkeypatch.setenv("LEHRLIGHT_HOME", str(tmp_path / "new"))
    opened = open_kiosk()
    assert opened.problems == ()
    assert opened.site.code == ""
    assert opened.texts.spoken["de"].words["invite"] == "Zum Beginnen berühren"


def test_a_folder_that_cannot_be_is_told(tmp_path, monkeypatch):
    (tmp_path / "file").write_text("x")
    monkeypatch.setenv("LEHRLIGHT_HOME", str(tmp_path / "file" / "data"))
    opened = open_kiosk()
    assert opened.folder is None
    assert "cannot be made" in opened.problems[0]
    counts = Counts(opened.folder)
    counts.add("start")
    assert counts.since(0) == {("start", "", -1): 1}
    counts.close()


def test_both_sets_of_texts_broken_leave_those_of_the_app(good, data):
    for digest in (path for path in (data / "kiosk-texts").iterdir() if path.is_dir()):
        (digest / "steps.toml").write_text("broken")
    opened = open_kiosk()
    assert opened.texts.spoken["en"].words["invite"] == "Touch to begin"
    assert opened.problems[-1] == "The kiosk runs with the texts of the app."


def test_a_site_file_that_is_gone_falls_back_to_the_last_good_one(data):
    (data / "kiosk.toml").unlink()
    opened = open_kiosk()
    assert opened.site.language == "de"
    assert "kiosk.toml" in opened.problems[0]


def test_broken_texts_are_refused_and_nothing_changes(good, data, tmp_path):
    before = {path: path.read_bytes() for path in data.rglob("*") if path.is_file()}
    refused = 0
    for damage in damages(good[1]):
        if not damage.path.startswith("kiosk-texts/") or damage.path.endswith(".json"):
            continue
        if damage.name == "closed" and os.geteuid() == 0:
            continue
        if damage.name == "missing line" and damage.path.endswith("steps.toml"):
            continue  # Some may be missing.
        source = tmp_path / "stick"
        shutil.copytree(data / "kiosk-texts" / good[1], source)
        file = source / damage.path.rpartition("/")[2]
        damage.act(file)
        if not same(file, data / damage.path):
            with pytest.raises(ValueError, match=";"):
                update.install(source, data)
            refused += 1
        shutil.rmtree(source)
    assert refused > 100
    assert {path: path.read_bytes() for path in data.rglob("*") if path.is_file()} == before
