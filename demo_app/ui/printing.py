"""HTML with pictures becomes a PDF whose words can be searched; no screen is needed."""

import contextlib
import re
from collections.abc import Iterator, Mapping
from pathlib import Path

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QBuffer, QIODevice, QMarginsF, QRectF, QSizeF, Qt, QUrl
from PySide6.QtGui import (
    QColor,
    QFont,
    QFontDatabase,
    QGuiApplication,
    QImage,
    QPageLayout,
    QPageSize,
    QPainter,
    QPdfWriter,
    QTextDocument,
)

from demo_app import __version__
from demo_app.base.atomic import check_place, write_bytes
from demo_app.base.errors import InputError
from demo_app.base.locate import assets
from demo_app.ui import theme

PAPERS: Mapping[str, QPageSize.PageSizeId] = {
    "A4": QPageSize.PageSizeId.A4,
    "Letter": QPageSize.PageSizeId.Letter,
}
MARGIN_MM = 15.0
WITHIN_MM = 3.0
"""Margin of the text within that: else the first line of a page also shows at the foot of the one
before, cut off."""
FOOT_MM = 8.0
"""Kept free above the lower margin, for the line with the page's number."""
TEXT_PT, FOOT_PT = 10.0, 8.0
DPI = 300
_PICTURE = re.compile(r"<img\b[^>]*?\bsrc\s*=\s*[\"']([^\"']*)[\"']", re.IGNORECASE)

Pixels = NDArray[np.uint8]


def print_pdf(
    html: str,
    path: Path,
    paper: str = "A4",
    *,
    images: Mapping[str, Pixels] | None = None,
    title: str = "",
) -> int:
    """Print a page of HTML to a PDF, whole or not at all.

    Qt's rich text knows a part of HTML 4 and CSS 2.1: headings, tables, lists, widths and heights
    of pictures in pixels of 1/96 inch.

    Parameters
    ----------
    html : str
        The page. Pictures are ``<img src="NAME">`` of `images`, or carry their data
        (``data:image/png;base64,...``); nothing is fetched from anywhere.
    path : pathlib.Path
        The PDF to write.
    paper : str
        "A4" or "Letter".
    images : mapping, optional
        Pictures by name, uint8: shape (height, width, 3) in the order red, green, blue, or
        (height, width, 4) as `demo_app.content.pictures.drawn` makes them (blue, green, red,
        alpha; alpha is left out).
    title : str
        For the file's properties and the foot of each page; default: that of the HTML.

    Returns
    -------
    int
        How many pages there are.

    Raises
    ------
    InputError
        If the paper or a picture is unknown, or the file cannot be written.
    """
    if paper not in PAPERS:
        raise InputError(
            f"'{paper}' is not known", place="paper", remedy=f"write one of {', '.join(PAPERS)}"
        )
    pictures = dict(images or {})
    for name in _PICTURE.findall(html):
        if name not in pictures and not name.startswith("data:image/"):
            raise InputError(f"there is no picture '{name}'", place="page", remedy="give it along")
    check_place(path)
    with _application():
        data, pages = _printed(html, PAPERS[paper], pictures, title)
    write_bytes(path, data)
    return pages


def _printed(
    html: str, paper: QPageSize.PageSizeId, pictures: Mapping[str, Pixels], title: str
) -> tuple[bytes, int]:
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(DPI)
    writer.setPageSize(QPageSize(paper))
    margins = QMarginsF(MARGIN_MM, MARGIN_MM, MARGIN_MM, MARGIN_MM)
    writer.setPageMargins(margins, QPageLayout.Unit.Millimeter)
    writer.setCreator(f"Lehrlight {__version__}")

    document = QTextDocument()
    document.setDefaultFont(_font(TEXT_PT))
    document.documentLayout().setPaintDevice(writer)
    for name, pixels in pictures.items():
        document.addResource(
            QTextDocument.ResourceType.ImageResource.value, QUrl(name), _image(pixels)
        )
    document.setHtml(html)
    document.setDocumentMargin(WITHIN_MM / 25.4 * 96)  # Qt scales it from 96 dots an inch.
    named = title or document.metaInformation(QTextDocument.MetaInformation.DocumentTitle)
    writer.setTitle(named)
    width = float(writer.width())
    height = float(int(writer.height() - FOOT_MM / 25.4 * DPI))
    document.setPageSize(QSizeF(width, height))
    pages = document.pageCount()

    painter = QPainter(writer)
    # Else pictures become JPEG, whose colours are others than the instrument's.
    painter.setRenderHint(QPainter.RenderHint.LosslessImageRendering)
    for page in range(pages):
        if page:
            writer.newPage()
        painter.save()
        painter.translate(0, -page * height)
        document.drawContents(painter, QRectF(0, page * height, width, height))
        painter.restore()
        painter.setFont(_font(FOOT_PT))
        painter.setPen(QColor("#444444"))
        side = WITHIN_MM / 25.4 * DPI
        foot = QRectF(side, height, width - 2 * side, writer.height() - height)
        low = Qt.AlignmentFlag.AlignBottom
        painter.drawText(foot, low | Qt.AlignmentFlag.AlignLeft, named)
        painter.drawText(foot, low | Qt.AlignmentFlag.AlignRight, f"{page + 1} of {pages}")
    painter.end()
    buffer.close()
    return bytes(buffer.data().data()), pages


def _font(points: float) -> QFont:
    font = QFont(theme.FONT)
    font.setPointSizeF(points)
    # Else "differs" is drawn with one sign for ff, and nobody who searches for it finds it.
    font.setFeature(QFont.Tag("liga"), 0)
    return font


def _image(pixels: Pixels) -> QImage:
    forms = {3: QImage.Format.Format_RGB888, 4: QImage.Format.Format_RGB32}
    if pixels.ndim != 3 or pixels.shape[2] not in forms or pixels.dtype != np.uint8:
        raise ValueError(f"no picture: {pixels.shape} {pixels.dtype}")
    whole = np.ascontiguousarray(pixels)
    height, width, signs = whole.shape
    shared = QImage(whole.data, width, height, signs * width, forms[signs])
    return shared.copy()  # The array may go before the page is drawn.


@contextlib.contextmanager
def _application() -> Iterator[None]:
    """Fonts need an application: the one that runs, or one without a screen for this page."""
    made = None
    if QGuiApplication.instance() is None:
        made = QGuiApplication(["lehrlight", "-platform", "offscreen"])
    try:
        if theme.FONT not in QFontDatabase.families():
            for file in sorted((assets() / "fonts").glob("*.ttf")):
                QFontDatabase.addApplicationFont(str(file))
        yield
    finally:
        if made is not None:
            made.shutdown()
