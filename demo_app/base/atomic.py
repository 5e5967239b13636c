"""Whole files or nothing: written beside the target, then moved over it in one step."""

import contextlib
import os
import secrets
from collections.abc import Iterator
from pathlib import Path

from demo_app.base.errors import InputError


def check_place(path: Path) -> Path:
    """Whether a file can be written at `path`, found out before any long work.

    Parameters
    ----------
    path : pathlib.Path
        File that is to be written; an older one may be there.

    Returns
    -------
    pathlib.Path
        The file behind any symbolic links.

    Raises
    ------
    InputError
        If its folder is missing or closed to this person, or if something that is not an ordinary
        file has the name.
    """
    with _telling(path):
        target = path.resolve()
        if target.is_dir():
            raise InputError("is a folder", place=str(path), remedy="name a file in it")
        if target.exists() and not target.is_file():
            raise InputError("is no ordinary file", place=str(path), remedy="name another file")
        if not target.parent.is_dir():
            raise InputError(
                "its folder is missing", place=str(path), remedy=f"make {target.parent} first"
            )
        # Asking the system for permission is not enough on network drives: try it.
        trial = _beside(target)
        trial.touch(exist_ok=False)
        trial.unlink()
    return target


def write_bytes(path: Path, content: bytes) -> None:
    """Write a file so that `path` holds the old content or all of the new, never a part.

    Parameters
    ----------
    path : pathlib.Path
        Where the file shall be.
    content : bytes
        All of it.

    Raises
    ------
    InputError
        If the file cannot be written.
    """
    target = check_place(path)
    part = _beside(target)
    try:
        with _telling(path):
            with part.open("xb") as file:
                file.write(content)
                file.flush()
                # On the disk before it takes the old file's place, should the power fail.
                os.fsync(file.fileno())
            os.replace(part, target)
    finally:
        part.unlink(missing_ok=True)


def write_text(path: Path, text: str) -> None:
    """Write `text` in UTF-8 with its line ends as they are, whole or not at all."""
    write_bytes(path, text.encode("utf-8"))


def make_folder(path: Path) -> None:
    """Make the folder `path` unless it is there; `InputError` if that cannot be."""
    if path.exists() and not path.is_dir():
        raise InputError("is no folder", place=str(path), remedy="move that file away")
    with _telling(path):
        path.mkdir(exist_ok=True)


def _beside(target: Path) -> Path:
    return target.with_name(f".lehrlight-{secrets.token_hex(4)}{target.suffix}")


@contextlib.contextmanager
def _telling(path: Path) -> Iterator[None]:
    """Turn the system's refusals into one clear line."""
    try:
        yield
    except PermissionError:
        raise InputError(
            "may not be written by you", place=str(path), remedy="choose a folder of your own"
        ) from None
    except OSError as error:
        raise InputError(
            f"cannot be written ({error.strerror or error})",
            place=str(path),
            remedy="choose another place",
        ) from None
