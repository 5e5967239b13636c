"""Writing a picture as PNG, whole or not at all."""

import struct
import zlib
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from demo_app.base.atomic import write_bytes


def save_png(path: Path, picture: NDArray[np.uint8]) -> None:
    """Save a picture as an 8-bit RGB file marked sRGB.

    Parameters
    ----------
    path : pathlib.Path
        Where to; an existing file is replaced.
    picture : numpy.ndarray
        Shape (height, width, 4), uint8, in the order blue, green, red, alpha, as of
        `demo_app.optics.picture.colour`; alpha is left out.

    Raises
    ------
    InputError
        If the folder is missing or the file cannot be written there.
    """
    write_bytes(path, png_bytes(picture))


def png_bytes(picture: NDArray[np.uint8]) -> bytes:
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
