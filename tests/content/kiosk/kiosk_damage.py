"""Broken files of every kind that a kiosk reads, made up from good ones."""

import os
import random
import re
import shutil
import sqlite3
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

from demo_app.base.locate import assets
from demo_app.content.kiosk import update
from demo_app.content.kiosk.code import hashed
from demo_app.content.kiosk.counts import Counts
from demo_app.content.kiosk.fallback import load_or_last_good
from demo_app.content.kiosk.texts import FILES, own_folder

SITE = """kind = "kiosk site"
code = "HASH"
languages = ["de", "en"]
language = "de"
steps_off = ["bubble"]
brightness = 0.8
idle_s = 60
warning_s = 25
updates = "/media/stick/texts"

[look]
high_contrast = true
scale = 1.3
calm = true
motion = false

[screen]
width_mm = 531.0
height_mm = 299.0

[hours]
monday = []
tuesday = ["10:00-12:30", "13:30-18:00"]
saturday = ["10:00-24:00"]

[exceptions]
2026-12-24 = ["10:00-14:00"]
2026-12-25 = []
"""
WRONG = ("7", '""', '"no such word"', "true", "[]", "[1, 2]", "{ a = 1 }", "nan", "-1e300",
         "1979-05-27", '"<b>x</b>"', '"a\\u0000b"')  # fmt: skip

RIGHT = {"true": "= (true|false)$", "[]": r"^steps_off|= \[\]$|:00", "7": "^$"}
"""Some that are right on lines of this form."""


@dataclass(frozen=True)
class Damage:
    """One broken file.

    Parameters
    ----------
    name : str
        What was done.
    path : str
        Which file, relative to the kiosk's data.
    act : callable
        Does it to the file.
    """

    name: str
    path: str
    act: Callable[[Path], object]


def good_folder(folder: Path) -> str:
    """Make a kiosk's data with everything in it; returns the digest of the texts in use."""
    folder.mkdir()
    code = hashed("135791", b"0123456789abcdef")
    (folder / "kiosk.toml").write_text(SITE.replace("HASH", code), encoding="utf-8")
    assert load_or_last_good(folder)[1] == ()
    digest = ""
    for number in (1, 2):
        source = folder.parent / f"stick-{number}"
        shutil.copytree(own_folder(), source)
        english = source / "texts.en.toml"
        text = english.read_text(encoding="utf-8")
        english.write_text(text.replace("Touch to begin", f"Touch {number}"), encoding="utf-8")
        digest = update.install(source, folder)
        assert update.open_texts(folder)[1] == ()
        assert update.started(folder) == ()
    counts = Counts(folder, now=lambda: 1_800_000_000.0)
    counts.add("start")
    counts.close()
    (folder / "materials").mkdir()
    shutil.copy(assets() / "materials" / "soda-lime.toml", folder / "materials" / "ours.toml")
    return digest


def damages(digest: str) -> Iterator[Damage]:
    """All of them; the same in every run."""
    picked = random.Random(7)
    texts = [f"kiosk-texts/{digest}/{name}" for name in FILES]
    toml = ["kiosk.toml", *texts, "materials/ours.toml"]
    others = ["kiosk-texts/in-use.json", "kiosk-counts.sqlite"]
    for path in (*toml, *others):
        yield Damage("empty", path, lambda file: file.write_bytes(b""))
        yield Damage("zeros", path, lambda file: file.write_bytes(b"\0" * 4096))
        yield Damage("noise", path, _noise(picked.randrange(10**6)))
        yield Damage("folder", path, _folder)
        yield Damage("pipe", path, _pipe)
        yield Damage("loop", path, _loop)
        yield Damage("huge", path, _huge)
        yield Damage("closed", path, lambda file: file.chmod(0))
    for path in toml:
        for _ in range(6):
            yield Damage("cut", path, _cut(picked.random()))
            yield Damage("no UTF-8", path, _spoilt(picked.random()))
        yield Damage(
            "UTF-16", path, lambda file: file.write_bytes(file.read_text().encode("utf-16"))
        )
        yield Damage("deep", path, lambda file: file.write_text("a = " + "[" * 50_000))
        yield Damage("long number", path, lambda file: file.write_text("a = " + "9" * 50_000))
        yield Damage("twice", path, lambda file: file.write_text(2 * file.read_text()))
        yield Damage(
            "unknown key", path, lambda file: file.write_text("zz = 1\n" + file.read_text())
        )
    for text in ("[]", "7", "null", '{"now": 1}', '{"now": "../../x", "before": "", "trial": 0}',
                 '{"now": "", "before": "", "trial": "2"}', '{"now": "' + "0" * 32 + '"}',
                 '{"now": "", "before": "", "trial": 0, "more": 1}', "[" * 100_000):  # fmt: skip
        yield Damage("wrong", others[0], _say(text))
    yield Damage("other table", others[1], _other_table)
    for at in (0, 100, 4096):
        yield Damage(f"page at {at}", others[1], _page(at))
    for at, line in enumerate(SITE.splitlines()):
        right = [value for value, form in RIGHT.items() if re.search(form, line)]
        wrong = [value for value in WRONG if value not in right]
        for value in picked.sample(wrong, 3) if " = " in line else ():
            yield Damage("wrong value", "kiosk.toml", _value(at, value))
    for path in texts:
        # A number may be right among the steps, and any word among the words.
        wrong = [one for one in WRONG if one != ("7" if "steps" in path else '"no such word"')]
        for _ in range(12):
            yield Damage("wrong value", path, _value(picked.randrange(10**6), picked.choice(wrong)))
            yield Damage("missing line", path, _without(picked.randrange(10**6)))


def put(damage: Damage, folder: Path) -> Path:
    """Do it in a copy of the good folder; returns the broken file."""
    file = folder / damage.path
    damage.act(file)
    return file


def _utf_16(file: Path) -> None:
    file.write_bytes(file.read_text(encoding="utf-8").encode("utf-16"))


def _with_key(file: Path) -> None:
    file.write_text("zz = 1\n" + file.read_text(encoding="utf-8"), encoding="utf-8")


def _noise(seed: int) -> Callable[[Path], object]:
    return lambda file: file.write_bytes(random.Random(seed).randbytes(5000))


def _folder(file: Path) -> None:
    file.unlink()
    file.mkdir()
    (file / "inside").write_text("x")


def _pipe(file: Path) -> None:
    file.unlink()
    os.mkfifo(file)


def _loop(file: Path) -> None:
    file.unlink()
    file.symlink_to(file)


def _huge(file: Path) -> None:
    """Sparse: as large as it says, without taking room."""
    with file.open("r+b") as opened:
        opened.truncate(3 * 1024**3)


def _cut(share: float) -> Callable[[Path], object]:
    """End it in the middle of a text; at the end of a line it could be a good shorter file."""

    def cut(file: Path) -> None:
        text = file.read_text(encoding="utf-8")
        inside = [found.end() for found in re.finditer(r'^[^#\n]*= [^"\n]*"', text, re.MULTILINE)]
        file.write_text(text[: inside[int(share * len(inside))]], encoding="utf-8")

    return cut


def _spoilt(share: float) -> Callable[[Path], object]:
    def spoil(file: Path) -> None:
        content = bytearray(file.read_bytes())
        content[int(share * len(content))] = 0xFF  # Never a byte of UTF-8.
        file.write_bytes(content)

    return spoil


def _say(text: str) -> Callable[[Path], object]:
    return lambda file: file.write_text(text, encoding="utf-8")


def _page(at: int) -> Callable[[Path], object]:
    def page(file: Path) -> None:
        content = bytearray(file.read_bytes())
        content[at : at + 64] = b"\xa5" * len(content[at : at + 64])
        file.write_bytes(content)

    return page


def _other_table(file: Path) -> None:
    file.unlink()
    db = sqlite3.connect(file)
    db.execute("CREATE TABLE counts (a, b)")
    db.commit()
    db.close()


def _settable(text: str) -> list[int]:
    """Lines that set one value on one line."""
    return [
        at for at, line in enumerate(text.splitlines()) if re.match(r"[\w.-]+ = .*[^\[{]$", line)
    ]


def _value(place: int, value: str) -> Callable[[Path], object]:
    def change(file: Path) -> None:
        lines = file.read_text(encoding="utf-8").splitlines()
        known = _settable("\n".join(lines))
        at = place if place in known else known[place % len(known)]
        lines[at] = f"{lines[at].partition(' = ')[0]} = {value}"
        file.write_text("\n".join(lines), encoding="utf-8")

    return change


def _without(place: int) -> Callable[[Path], object]:
    def change(file: Path) -> None:
        lines = file.read_text(encoding="utf-8").splitlines()
        known = _settable("\n".join(lines))
        del lines[known[place % len(known)]]
        file.write_text("\n".join(lines), encoding="utf-8")

    return change
