"""Writing a picture as PNG, whole or not at all."""

import os
import struct
import zlib
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from demo_app.base.errors import InputError


def save_png(path: str | Path, picture: NDArray[np.uint8]) -> None:
    """Save a picture as an 8-bit RGB file marked sRGB.

    It is written beside its place first and then moved there, so that a full disk or a power cut
    leaves the old file or none, never half a file.

    Parameters
    ----------
    path : str or pathlib.Path
        Where to; an existing file is replaced.
    picture : numpy.ndarray
        Shape (height, width, 4), uint8, in the order blue, green, red, alpha, as of
        `demo_app.optics.picture.colour`; alpha is left out.

    Raises
    ------
    InputError
        If the folder is missing or the file cannot be written there.
    """
    place = Path(path)
    if not place.parent.is_dir():
        raise InputError(
            f"the folder {place.parent} is missing",
            place=str(path),
            remedy="make it or write a path in a folder that is there",
        )
    if place.is_dir():
        raise InputError("this is a folder", place=str(path), remedy="write a file name after it")
    try:
        _write_whole(place, _png(picture))
    except OSError as error:
        raise InputError(
            f"cannot be written ({error.strerror or error})",
            place=str(path),
            remedy="choose a folder that you may write to, with room left",
        ) from None


def _write_whole(place: Path, content: bytes) -> None:
    part = place.with_name(f".{place.name}.{os.getpid()}.part")
    try:
        with part.open("xb") as file:
            file.write(content)
            file.flush()
            os.fsync(file.fileno())
        os.replace(part, place)
    finally:
        part.unlink(missing_ok=True)


def _png(picture: NDArray[np.uint8]) -> bytes:
    """File content, after the PNG specification (ISO/IEC 15948), every line with filter 0."""
    height, width = picture.shape[:2]
    lines = np.zeros((height, 1 + 3 * width), np.uint8)
    lines[:, 1:] = picture[..., 2::-1].reshape(height, -1)
    return b"".join(
        [
            b"\x89PNG\r\n\x1a\n",
            _chunk(b"IHDR", struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0)),
            _chunk(b"sRGB", b"\0"),
            _chunk(b"IDAT", zlib.compress(lines.tobytes(), 6)),
            _chunk(b"IEND", b""),
        ]
    )


def _chunk(kind: bytes, content: bytes) -> bytes:
    check = struct.pack(">I", zlib.crc32(kind + content))
    return struct.pack(">I", len(content)) + kind + content + check
