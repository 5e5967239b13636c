"""HTML to PDF, read back by another library."""

import base64
import os
import subprocess
import sys
from pathlib import Path

import numpy as np
import pytest
from pypdf import PdfReader

from demo_app.base.errors import InputError
from demo_app.content.handover import Handover, page
from demo_app.optics.png import save_png
from demo_app.ui.printing import PAPERS, print_pdf

ROOT = Path(__file__).resolve().parents[2]
POINTS = {"A4": (595.3, 841.9), "Letter": (612.0, 792.0)}  # ISO 216; ANSI Y14.1.


def picture():
    y, x = np.mgrid[0:60, 0:90]
    return np.stack([x, 2 * y, 255 - x], axis=-1).astype(np.uint8)


def words_of(page):
    """Words of a page with one space between them: Qt gives the spaces of this font out as tabs."""
    return " ".join(page.extract_text().split())


@pytest.mark.parametrize("paper", PAPERS)
def test_words_can_be_searched_on_every_paper(app, tmp_path, paper):
    html = page(Handover("2026-11-24"))
    assert print_pdf(html, tmp_path / "h.pdf", paper) == 1
    (found,) = PdfReader(tmp_path / "h.pdf").pages
    assert tuple(map(float, found.mediabox[2:])) == pytest.approx(POINTS[paper], abs=1)
    said = words_of(found)
    for words in (
        "Handover, 2026-11-24",
        "Glass out and in",
        "if this differs, theirs wins",
        "1 of 1",
    ):
        assert words in said
    assert PdfReader(tmp_path / "h.pdf").metadata.title == "Handover, 2026-11-24"


def test_signs_come_from_the_font_that_comes_with_the_app(app, tmp_path):
    signs = "−5 °C, 80 µm × 3, ≥ 1 nm"
    print_pdf(f"<p>{signs}</p><h1>Bold</h1>", tmp_path / "a.pdf")
    (found,) = PdfReader(tmp_path / "a.pdf").pages
    assert signs in words_of(found)
    fonts = found["/Resources"]["/Font"].values()
    names = {font.get_object()["/BaseFont"].rpartition("+")[2] for font in fonts}
    assert names == {"/DejaVuSans", "/DejaVuSans-Bold"}


def test_every_line_is_on_one_page_alone(app, tmp_path):
    html = "".join(f"<p>line {number} of many</p>" for number in range(120))
    count = print_pdf(html, tmp_path / "long.pdf", title="A long one")
    pages = [words_of(one) for one in PdfReader(tmp_path / "long.pdf").pages]
    assert len(pages) == count > 2
    whole = "\n".join(pages)
    for number in range(120):
        assert whole.count(f"line {number} of many") == 1
    for number, said in enumerate(pages, start=1):
        assert f"{number} of {count}" in said
        assert "A long one" in said


def test_pictures_keep_every_pixel(app, tmp_path):
    rgb = picture()
    bgra = np.dstack([rgb[..., ::-1], np.full(rgb.shape[:2], 255, np.uint8)])
    save_png(tmp_path / "a.png", bgra)
    data = base64.b64encode((tmp_path / "a.png").read_bytes()).decode()
    html = (
        f'<img src="by name"><img src="drawn" width="180"><img src="data:image/png;base64,{data}">'
    )
    print_pdf(html, tmp_path / "p.pdf", images={"by name": rgb, "drawn": bgra})
    (found,) = PdfReader(tmp_path / "p.pdf").pages
    images = [one.get_object() for one in found["/Resources"]["/XObject"].values()]
    assert len(images) == 3
    for image in images:
        shape = (image["/Height"], image["/Width"], 3)
        assert shape == rgb.shape
        np.testing.assert_array_equal(np.frombuffer(image.get_data(), np.uint8), rgb.ravel())


@pytest.mark.parametrize(
    ("html", "more", "said"),
    [
        ("<p>x</p>", {"paper": "A3"}, "A4, Letter"),
        ('<img src="ring">', {}, "no picture 'ring'"),
        ("<IMG alt='' SRC='/etc/hostname'>", {}, "no picture"),
    ],
)
def test_what_cannot_be_printed_leaves_nothing(app, tmp_path, html, more, said):
    with pytest.raises(InputError, match=said):
        print_pdf(html, tmp_path / "x.pdf", **more)
    assert list(tmp_path.iterdir()) == []


def test_a_picture_of_another_form_is_refused(app, tmp_path):
    with pytest.raises(ValueError, match="no picture"):
        print_pdf('<img src="a">', tmp_path / "x.pdf", images={"a": np.zeros((4, 4), np.uint8)})


def test_a_folder_that_is_missing(app, tmp_path):
    with pytest.raises(InputError, match="folder is missing"):
        print_pdf("<p>x</p>", tmp_path / "away" / "x.pdf")


def test_the_command_needs_no_screen(tmp_path):
    hidden = ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")
    surroundings = {key: value for key, value in os.environ.items() if key not in hidden}
    done = subprocess.run(
        [sys.executable, "-m", "demo_app", "handover", "--out", str(tmp_path / "h.pdf")],
        cwd=ROOT,
        env={**surroundings, "LEHRLIGHT_HOME": str(tmp_path / "home")},
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )
    assert (done.returncode, done.stdout, done.stderr) == (0, "", "")
    assert "Handover" in PdfReader(tmp_path / "h.pdf").pages[0].extract_text()
