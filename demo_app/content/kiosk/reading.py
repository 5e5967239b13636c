"""Files of a kiosk, read without trust: small, ordinary, text."""

import stat
from pathlib import Path

from demo_app.base.errors import InputError

LARGEST = 256 * 1024
"""Bytes of the largest file that is read; the app's own take a tenth of it."""


def read_small(path: Path, kind: str) -> str:
    """Text of the file at `path`, in UTF-8.

    Parameters
    ----------
    path : pathlib.Path
        An ordinary file of at most `LARGEST` bytes. Whatever else has the name is not even
        opened: a pipe would make the reader wait for ever.
    kind : str
        What it should be, for the remedy.

    Raises
    ------
    InputError
        If it cannot be read.
    """
    try:
        about = path.stat()
        if stat.S_ISDIR(about.st_mode):
            raise _error(path, "is a folder", f"put a {kind} file there")
        if not stat.S_ISREG(about.st_mode):
            raise _error(path, "is no ordinary file", f"put a {kind} file there")
        if about.st_size > LARGEST:
            raise _too_large(path)
        with path.open("rb") as file:
            content = file.read(LARGEST + 1)
    except (OSError, ValueError) as error:  # ValueError: a name that no file can have
        if isinstance(error, InputError):
            raise
        why = (error.strerror if isinstance(error, OSError) else "") or error
        raise _error(path, f"cannot be read ({why})", f"put a {kind} file there") from None
    if len(content) > LARGEST:
        raise _too_large(path)
    try:
        return content.decode("utf-8-sig").replace("\r\n", "\n")
    except UnicodeDecodeError:
        raise _error(path, "is not text in UTF-8", "save it as UTF-8 text") from None


def _too_large(path: Path) -> InputError:
    return _error(path, "is too large", f"write at most {LARGEST // 1024} kB")


def _error(path: Path, problem: str, remedy: str) -> InputError:
    return InputError(problem, place=str(path), remedy=remedy)
