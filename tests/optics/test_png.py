"""Saved pictures: whole, right, or not there at all."""

import os
import struct
import zlib

import numpy as np

from demo_app.optics.png import save_png

PICTURE = np.random.default_rng(9).integers(0, 256, (5, 7, 4), dtype=np.uint8)


def read(path):
    """Colours of an unfiltered 8-bit RGB file, after ISO/IEC 15948."""
    data = path.read_bytes()
    assert data[:8] == b"\x89PNG\r\n\x1a\n"
    place, chunks = 8, {}
    while place < len(data):
        (length,) = struct.unpack(">I", data[place : place + 4])
        kind, content = data[place + 4 : place + 8], data[place + 8 : place + 8 + length]
        (check,) = struct.unpack(">I", data[place + 8 + length : place + 12 + length])
        assert check == zlib.crc32(kind + content)
        chunks[kind] = content
        place += 12 + length
    width, height = struct.unpack(">II", chunks[b"IHDR"][:8])
    lines = np.frombuffer(zlib.decompress(chunks[b"IDAT"]), np.uint8).reshape(height, -1)
    assert (lines[:, 0] == 0).all()
    return lines[:, 1:].reshape(height, width, 3)


def test_round_trip(tmp_path):
    save_png(tmp_path / "picture.png", PICTURE)
    np.testing.assert_array_equal(read(tmp_path / "picture.png"), PICTURE[..., 2::-1])
    assert os.listdir(tmp_path) == ["picture.png"]


def test_an_old_file_is_replaced(tmp_path):
    (tmp_path / "picture.png").write_text("old")
    save_png(tmp_path / "picture.png", PICTURE)
    assert read(tmp_path / "picture.png").shape == (5, 7, 3)
