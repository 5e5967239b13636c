"""New texts from a folder: checked first, swapped whole, the previous ones kept.

Every set of texts has a folder of its own, named after its content; one small file says which is
in use. That file alone changes hands, in one step, so a power cut leaves the old texts or the new.
"""

import contextlib
import hashlib
import json
import os
import re
import secrets
import shutil
from collections.abc import Mapping
from dataclasses import asdict, dataclass
from pathlib import Path

from demo_app.base.atomic import make_folder, write_text
from demo_app.base.errors import InputError
from demo_app.content.cues.truth import truth
from demo_app.content.kiosk.fallback import spoken, told
from demo_app.content.kiosk.reading import read_small
from demo_app.content.kiosk.records import Texts
from demo_app.content.kiosk.texts import KIND, STEPS, own_folder, parse, read_files
from demo_app.scenes.catalogue import scene

FOLDER = "kiosk-texts"
NAME = "in-use.json"
OWN = ""
"""Stands for the texts that come with the app."""
_DIGEST = re.compile(r"[0-9a-f]{32}")
_PART = ".part-"


@dataclass(frozen=True)
class InUse:
    """Which texts are in use.

    Parameters
    ----------
    now, before : str
        Digests; `OWN` for those of the app.
    trial : int
        0: they have been seen to start; 1: not tried yet; 2: a start with them has begun.
    """

    now: str = OWN
    before: str = OWN
    trial: int = 0


def install(source: Path, folder: Path) -> str:
    """Put the texts in `source` into use from the next start on.

    Parameters
    ----------
    source : pathlib.Path
        A folder with all files of `demo_app.content.kiosk.texts.FILES`.
    folder : pathlib.Path
        The kiosk's data.

    Returns
    -------
    str
        Their digest.

    Raises
    ------
    InputError
        The first mistake in them, or that they cannot be written. Nothing has changed then.
    """
    files = read_files(source)
    texts = parse(source, files)
    if files[STEPS] != read_small(own_folder() / STEPS, KIND):
        check_answers(texts)
    digest = digest_of(files)
    place = folder / FOLDER
    make_folder(place)
    _tidy(place, _in_use(place))
    _put(place, digest, files)
    old = _in_use(place)
    if old.now != digest:
        _write(place, InUse(digest, old.now, 1))
    elif old.trial:
        _write(place, InUse(digest, old.before, 1))
    return digest


def check_answers(texts: Texts) -> None:
    """Let the model answer every question; it takes about a second for each.

    Raises
    ------
    InputError
        If it gives no answer, or one that was not foreseen.
    """
    for step in next(iter(texts.spoken.values())).steps:
        try:
            truth(scene(step.scene), step.settings, step.question)
        except InputError as error:
            place = f"{texts.folder and texts.folder / STEPS}, step {step.id}"
            raise InputError(error.problem, place=place, remedy=error.remedy) from None


def roll_back(folder: Path) -> None:
    """Put the previous texts into use from the next start on; `InputError` if that cannot be."""
    place = folder / FOLDER
    old = _in_use(place)
    make_folder(place)
    _write(place, InUse(old.before, old.now, 1))


def open_texts(folder: Path | None) -> tuple[Texts, tuple[str, ...]]:
    """The texts to start with.

    Parameters
    ----------
    folder : pathlib.Path or None
        The kiosk's data; None: the app's own texts.

    Returns
    -------
    Texts
        Those in use; if the last start with new ones failed or they are broken, the previous
        ones; else those of the app.
    tuple of str
        What the staff page tells, a line each.

    Raises
    ------
    InputError
        If the app's own texts are broken too: it has to be installed again.
    """
    if folder is None:
        return _load(None, OWN), ()
    place = folder / FOLDER
    problems: list[str] = []
    use = told(problems, _read_in_use, place) or InUse()
    if use.trial == 2:
        problems.append("The start with new texts failed: the previous ones are back.")
        use = InUse(use.before, use.before, 0)
        told(problems, _write, place, use)
    elif use.trial == 1:
        # On a disk that refuses this, texts that fail would be tried again: the supervisor's
        # waits hold then.
        told(problems, _write, place, InUse(use.now, use.before, 2))
    for digest in dict.fromkeys((use.now, use.before)):
        texts = told(problems, _load, place, digest)
        if texts is not None:
            return texts, tuple(problems)
    problems.append("The kiosk runs with the texts of the app.")
    return _load(None, OWN), tuple(problems)


def started(folder: Path | None) -> tuple[str, ...]:
    """Say that the inviting view is there: the texts in use stay. Returns what staff are told."""
    problems: list[str] = []
    if folder is not None:
        place = folder / FOLDER
        use = told([], _read_in_use, place)
        if use is not None and use.trial:
            told(problems, _write, place, InUse(use.now, use.before, 0))
    return tuple(problems)


def digest_of(files: Mapping[str, str]) -> str:
    """Name of a set of texts: the same content has the same, any other another."""
    found = hashlib.sha256()
    for name in sorted(files):
        content = files[name].encode()
        found.update(f"{name} {len(content)}\n".encode() + content)
    return found.hexdigest()[:32]


def _load(place: Path | None, digest: str) -> Texts:
    if place is None or digest == OWN:
        return parse(own_folder(), read_files(own_folder()))
    files = read_files(place / digest)
    if digest_of(files) != digest:
        raise InputError(
            "is not as it was installed", place=str(place / digest), remedy="update the texts again"
        )
    return parse(place / digest, files)


def _in_use(place: Path) -> InUse:
    return told([], _read_in_use, place) or InUse()


def _read_in_use(place: Path) -> InUse:
    path = place / NAME
    if not os.path.lexists(path):
        return InUse()
    text = read_small(path, "texts in use")
    try:
        found = json.loads(text)
        use = InUse(**found)
        names_fit = all(one == OWN or _DIGEST.fullmatch(one) for one in (use.now, use.before))
        if not names_fit or type(use.trial) is not int or use.trial not in (0, 1, 2):
            raise ValueError
    except (ValueError, TypeError, RecursionError) as error:
        raise InputError(
            f"says nothing of use ({spoken(error)[:60]})",
            place=str(path),
            remedy="update the texts again",
        ) from None
    return use


def _write(place: Path, use: InUse) -> InUse:
    write_text(place / NAME, json.dumps(asdict(use)))
    _sync(place)
    return use


def _put(place: Path, digest: str, files: Mapping[str, str]) -> None:
    """A folder with `files`, there whole or not at all."""
    target = place / digest
    if told([], _load, place, digest) is not None:
        return
    part = place / f"{_PART}{secrets.token_hex(4)}"
    try:
        part.mkdir()
        for name, text in files.items():
            with (part / name).open("xb") as file:
                file.write(text.encode())
                file.flush()
                os.fsync(file.fileno())
        _sync(part)
        if os.path.lexists(target):  # Spoilt since it was installed.
            target.rename(place / f"{_PART}{secrets.token_hex(4)}")
        part.rename(target)
        _sync(place)
    except OSError as error:
        shutil.rmtree(part, ignore_errors=True)
        raise InputError(
            f"cannot be written ({error.strerror or error})",
            place=str(place),
            remedy="make room on the disk, or let it be written",
        ) from None


def _tidy(place: Path, use: InUse) -> None:
    """Take away what a power cut left, and texts older than the previous ones."""
    with contextlib.suppress(OSError):
        for path in place.iterdir():
            old = _DIGEST.fullmatch(path.name) and path.name not in (use.now, use.before)
            if old or path.name.startswith((_PART, ".lehrlight-")):
                if path.is_dir() and not path.is_symlink():
                    shutil.rmtree(path, ignore_errors=True)
                else:
                    path.unlink(missing_ok=True)


def _sync(folder: Path) -> None:
    """Names in `folder` on the disk, where the system can be asked for that."""
    with contextlib.suppress(OSError):
        number = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(number)
        finally:
            os.close(number)
