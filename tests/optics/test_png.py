"""Saved pictures: whole, right, or not there at all."""

import os
import struct
import zlib

import numpy as np
import pytest

from demo_app.base.errors import InputError
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
    save_png(str(tmp_path / "picture.png"), PICTURE)
    assert read(tmp_path / "picture.png").shape == (5, 7, 3)


def test_a_missing_folder_is_one_clear_line(tmp_path):
    with pytest.raises(InputError, match=r"nowhere is missing; make it"):
        save_png(tmp_path / "nowhere" / "picture.png", PICTURE)


def test_a_folder_is_no_file(tmp_path):
    with pytest.raises(InputError, match="this is a folder"):
        save_png(tmp_path, PICTURE)


def test_nothing_is_left_where_writing_fails(tmp_path, monkeypatch):
    (tmp_path / "picture.png").write_text("old")

    def no_room(*_):
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("demo_app.optics.png.os.fsync", no_room)
    with pytest.raises(InputError, match="No space left"):
        save_png(tmp_path / "picture.png", PICTURE)
    assert (tmp_path / "picture.png").read_text() == "old"
    assert os.listdir(tmp_path) == ["picture.png"]


def test_no_permission_is_one_clear_line(tmp_path, monkeypatch):
    def refused(*_, **__):
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr("pathlib.Path.open", refused)
    with pytest.raises(InputError, match=r"cannot be written \(Permission denied\)"):
        save_png(tmp_path / "picture.png", PICTURE)
