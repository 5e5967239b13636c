"""Finds words that are cut off, or that lie over one another, in any tree of widgets.

`cut` and `overlapping` ask the widgets; `painted` looks at the words that paint events draw, by
painting into an SVG file instead of onto a screen, and finds what no label knows of: words on
pictures, axes, legends.
"""

import itertools
import math
import xml.etree.ElementTree as ET
from dataclasses import dataclass

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QPoint, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QFont, QFontMetrics, QFontMetricsF, QTextDocument, QTransform
from PySide6.QtSvg import QSvgGenerator
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractScrollArea,
    QAbstractSpinBox,
    QCheckBox,
    QComboBox,
    QLabel,
    QLineEdit,
    QTabBar,
    QWidget,
)

SLACK_PX = 1
SVG = "{http://www.w3.org/2000/svg}"


def texts(root):
    """Widgets that carry words, seen at least in part."""
    kinds = (QLabel, QAbstractButton, QComboBox, QLineEdit, QAbstractSpinBox)
    return [
        widget
        for widget in [root, *root.findChildren(QWidget)]
        if isinstance(widget, kinds)
        and widget.isVisible()
        and said(widget)
        and not widget.visibleRegion().isEmpty()
        # A spin box's and an editable list's own line is part of it.
        and not isinstance(widget.parentWidget(), (QComboBox, QAbstractSpinBox))
    ]


def said(widget):
    """A widget's words."""
    if isinstance(widget, QComboBox):
        return widget.currentText()
    text = widget.text()
    return text.replace("&", "") if isinstance(widget, QAbstractButton) else text


def rich(label):
    kind = label.textFormat()
    return kind == Qt.TextFormat.RichText or (
        kind == Qt.TextFormat.AutoText and "<" in label.text()
    )


def needed(widget):
    """Room that a widget's words need, where they stand, in its own pixels."""
    if isinstance(widget, QLabel):
        room = widget.contentsRect()
        room.adjust(widget.margin(), widget.margin(), -widget.margin(), -widget.margin())
        if rich(widget):
            document = QTextDocument()
            document.setDefaultFont(widget.font())
            document.setDocumentMargin(0)
            document.setHtml(widget.text())
            document.setTextWidth(room.width() if widget.wordWrap() else -1)
            size = document.size()
            wide = document.idealWidth()
            box = QRect(0, 0, math.ceil(wide), math.ceil(size.height()))
            return aligned(box, room, widget.alignment())
        # Unbounded downwards, and to the side where nothing wraps: what it needs, not what it gets.
        wide = room.width() if widget.wordWrap() else 99999
        flags = Qt.TextFlag.TextWordWrap if widget.wordWrap() else Qt.TextFlag.TextExpandTabs
        box = QFontMetrics(widget.font()).boundingRect(
            QRect(0, 0, wide, 99999), int(flags), said(widget)
        )
        return aligned(box, room, widget.alignment())
    metrics = QFontMetrics(widget.font())
    if isinstance(widget, QCheckBox) and widget.sizePolicy().hasHeightForWidth():
        # A long line to tick goes on below.
        room = room_of(widget)
        room.setHeight(99999)
        return metrics.boundingRect(room, int(Qt.TextFlag.TextWordWrap), said(widget))
    box = QRect(0, 0, metrics.horizontalAdvance(said(widget)), metrics.height())
    return aligned(box, widget.rect(), Qt.AlignmentFlag.AlignCenter)


def aligned(box, room, alignment):
    """`box` where an alignment puts it in `room`."""
    left = room.left()
    if alignment & Qt.AlignmentFlag.AlignHCenter:
        left += (room.width() - box.width()) // 2
    elif alignment & Qt.AlignmentFlag.AlignRight:
        left += room.width() - box.width()
    top = room.top()
    if alignment & Qt.AlignmentFlag.AlignVCenter:
        top += (room.height() - box.height()) // 2
    elif alignment & Qt.AlignmentFlag.AlignBottom:
        top += room.height() - box.height()
    return QRect(QPoint(left, top), box.size())


def room_of(widget):
    """Room that a widget has for words, at most."""
    if isinstance(widget, QLabel):
        return widget.contentsRect()
    side = 2
    if isinstance(widget, (QComboBox, QAbstractSpinBox)):
        side = 14
    return widget.rect().adjusted(side, 0, -side, 0)


def cut(root):
    """Words that need more room than they have, or that reach beyond the widget they are in."""
    found = []
    for widget in texts(root):
        room = room_of(widget).adjusted(-SLACK_PX, -SLACK_PX, SLACK_PX, SLACK_PX)
        if not room.contains(needed(widget)):
            found.append(f"{said(widget)!r} needs {size(needed(widget))} of {size(room)}")
        elif beyond(widget, root):
            found.append(f"{said(widget)!r} reaches beyond {beyond(widget, root)}")
    for tabs in root.findChildren(QTabBar):
        if tabs.isVisible():
            metrics = QFontMetrics(tabs.font())
            for index in range(tabs.count()):
                if metrics.horizontalAdvance(tabs.tabText(index)) > tabs.tabRect(index).width():
                    found.append(f"tab {tabs.tabText(index)!r}")
    return found


def size(box):
    return f"{box.width()} × {box.height()}"


def beyond(widget, root):
    """The widget around it that a text reaches out of; what can be scrolled does not count."""
    around = widget.parentWidget()
    while around is not None and widget is not root:
        if isinstance(around.parentWidget(), QAbstractScrollArea):
            return None
        box = needed(widget).translated(widget.mapTo(around, QPoint(0, 0)))
        if not around.rect().adjusted(-SLACK_PX, -SLACK_PX, SLACK_PX, SLACK_PX).contains(box):
            return around.objectName() or type(around).__name__
        if around is root:
            return None
        around = around.parentWidget()
    return None


def overlapping(root):
    """Pairs of words whose boxes meet."""
    boxes = [
        (widget, needed(widget).translated(widget.mapTo(root, QPoint(0, 0))))
        for widget in texts(root)
    ]
    return [
        (said(one), said(other))
        for (one, first), (other, second) in itertools.combinations(boxes, 2)
        if deep(QRectF(first), QRectF(second))
        and not (one.isAncestorOf(other) or other.isAncestorOf(one))
    ]


def deep(first, second):
    """Whether two boxes overlap by more than the slack."""
    both = first.intersected(second)
    return both.width() > SLACK_PX and both.height() > SLACK_PX


@dataclass(frozen=True)
class Painted:
    """Words as a paint event drew them, and the box of their ink in pixels of the root."""

    said: str
    box: QRectF


def drawn(root):
    """All words that a widget and those in it paint."""
    buffer = QBuffer(data := QByteArray())
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    generator = QSvgGenerator()
    generator.setOutputDevice(buffer)
    generator.setSize(QSize(root.width(), root.height()))
    generator.setViewBox(root.rect())
    generator.setResolution(root.logicalDpiX())
    root.render(generator, QPoint(0, 0))
    buffer.close()
    found = []
    walk(ET.fromstring(bytes(data.data())), QTransform(), {}, found)
    return found


def walk(element, around, style, found):
    """Follow transforms and fonts down to the texts."""
    here = matrix(element.get("transform")) * around
    style = {**style, **element.attrib}
    if element.tag == SVG + "text" and (text := (element.text or "").strip()):
        font = QFont(style.get("font-family", ""))
        font.setPixelSize(max(round(float(style.get("font-size", 12))), 1))
        font.setWeight(QFont.Weight(int(style.get("font-weight", 400))))
        # The ink, without the air above and below: lines of a paragraph stand close.
        ink = QFontMetricsF(font).tightBoundingRect(text)
        ink.translate(float(element.get("x", 0)), float(element.get("y", 0)))
        if float(style.get("fill-opacity", 1)) > 0:
            found.append(Painted(text, here.mapRect(ink)))
    for child in element:
        walk(child, here, style, found)


def matrix(written):
    """A transform as SVG writes it."""
    if not written or not written.startswith("matrix("):
        return QTransform()
    a, b, c, d, e, f = (float(one) for one in written[7:-1].replace(",", " ").split())
    return QTransform(a, b, c, d, e, f)


def painted(root):
    """Painted words that meet, or that stick out of the root."""
    words = drawn(root)
    edge = QRectF(root.rect()).adjusted(-SLACK_PX, -SLACK_PX, SLACK_PX, SLACK_PX)
    out = [f"{one.said!r} sticks out" for one in words if not edge.contains(one.box)]
    return out + [
        f"{one.said!r} on {other.said!r}"
        for one, other in itertools.combinations(words, 2)
        if deep(one.box, other.box) and one != other
    ]
