"""Written files: whole, or not there at all; what cannot be written is one clear line."""

import os

import pytest

from demo_app.base.atomic import check_place, make_folder, write_bytes, write_text
from demo_app.base.errors import InputError

CONTENT = bytes(range(256)) * 3


def test_a_file_holds_what_was_written_and_nothing_lies_beside_it(tmp_path):
    for content in (CONTENT, b"", CONTENT[:7]):
        write_bytes(tmp_path / "file.png", content)
        assert (tmp_path / "file.png").read_bytes() == content
    assert os.listdir(tmp_path) == ["file.png"]


def test_text_keeps_its_line_ends(tmp_path):
    write_text(tmp_path / "table.csv", "\u00b0C\nK\r\n")
    assert (tmp_path / "table.csv").read_bytes() == b"\xc2\xb0C\nK\r\n"


def test_a_link_stays_a_link(tmp_path):
    (tmp_path / "real.csv").write_text("old")
    (tmp_path / "link.csv").symlink_to(tmp_path / "real.csv")
    write_text(tmp_path / "link.csv", "new")
    assert (tmp_path / "link.csv").is_symlink()
    assert (tmp_path / "real.csv").read_text() == "new"


def test_a_missing_folder_is_one_clear_line(tmp_path):
    with pytest.raises(InputError, match=r"its folder is missing; make .*nowhere first"):
        write_bytes(tmp_path / "nowhere" / "file.png", CONTENT)


def test_a_folder_is_no_file(tmp_path):
    with pytest.raises(InputError, match="is a folder"):
        write_bytes(tmp_path, CONTENT)


@pytest.mark.parametrize("step", ["os.fsync", "os.replace"])
def test_nothing_is_left_where_writing_fails(tmp_path, monkeypatch, step):
    (tmp_path / "file.png").write_text("old")

    def no_room(*_):
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(step, no_room)
    with pytest.raises(InputError, match="No space left"):
        write_bytes(tmp_path / "file.png", CONTENT)
    assert (tmp_path / "file.png").read_text() == "old"
    assert os.listdir(tmp_path) == ["file.png"]


def test_no_permission_is_one_clear_line(tmp_path, monkeypatch):
    def refused(*_, **__):
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr("pathlib.Path.touch", refused)
    with pytest.raises(InputError, match="may not be written by you; choose a folder"):
        check_place(tmp_path / "file.png")


def test_a_file_in_the_way_of_a_folder_stays(tmp_path):
    (tmp_path / "show").write_text("mine")
    with pytest.raises(InputError, match="is no folder"):
        make_folder(tmp_path / "show")
    make_folder(tmp_path / "other")
    make_folder(tmp_path / "other")
    assert (tmp_path / "other").is_dir()
