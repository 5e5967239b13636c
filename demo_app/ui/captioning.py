"""What is seen, in spoken words that follow the model: for captions, and to be read out."""

from collections.abc import Callable

from PySide6.QtCore import QObject, QTimer, Signal

from demo_app.ui.playing import Session

EVERY_MS = 1500


class Captioning(QObject):
    """Describes a session's picture once in a while, whoever listens.

    Parameters
    ----------
    session_of : callable
        The session that is shown, or None.
    wanted : callable
        Whether anybody listens: otherwise nothing is worked out.

    Attributes
    ----------
    said : Signal(str, Frame)
        The description of a picture that differs from the last one, in English, and the picture.
    """

    said = Signal(str, object)

    def __init__(
        self,
        session_of: Callable[[], Session | None],
        wanted: Callable[[], bool],
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._session_of, self._wanted = session_of, wanted
        self._last: tuple[Session | None, object] = (None, None)
        self._timer = QTimer(self)
        self._timer.setInterval(EVERY_MS)
        self._timer.timeout.connect(self.look)
        self._timer.start()

    def stop(self) -> None:
        """Describe no more."""
        self._timer.stop()

    def look(self) -> None:
        """Describe the picture, if somebody listens and it is another one."""
        session = self._session_of()
        if session is None or session.frame is None or not self._wanted():
            return
        from demo_app.content.describe import spoken

        frame = session.frame
        before, seen = self._last
        if before is session and seen is frame:
            return
        self._last = (session, frame)
        self.said.emit(spoken(session.scene, frame.settings, frame, frame.instrument), frame)
