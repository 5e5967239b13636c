"""A session that shows what a lesson allows at this moment, and refuses all else at the source."""

from collections.abc import Callable
from dataclasses import replace
from typing import Any

from demo_app.base.errors import InputError
from demo_app.content.lessons.allowance import Allowance
from demo_app.scenes.scene import Action
from demo_app.ui import words
from demo_app.ui.language_ids import scene_context
from demo_app.ui.playing import Session
from demo_app.ui.snapshot import Snapshot, opening, plan_of


class BoundSession(Session):
    """Whatever asks for a setting that is not allowed - a control, key, button of the scene, handle
    of a chart, favourite, fault - comes through here.

    Parameters
    ----------
    args, kwargs
        As for `Session`.
    allowed : callable
        What may be shown now.
    """

    def __init__(self, *args: Any, allowed: Callable[[], Allowance], **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self._allowed = allowed
        self.settings = self._first_settings()

    def refused(self, settings: Any) -> str:
        """Label of what may not be as it is in `settings`; "" if all may.

        Raises
        ------
        InputError
            If the scene may not be shown any more.
        """
        found = self._allowed().refused(self.scene, settings)
        return words.label(scene_context(self.scene), found) if found is not None else ""

    def admits(self, action: Action) -> bool:
        """Whether a button of the scene may be pressed at this instant, and changes anything."""
        before = self.here
        if before is None:
            return False
        try:
            settings = action.apply(self.settings, before)
            return settings != self.settings and not self.refused(settings)
        except InputError:
            return False

    def act(self, action: Action) -> None:  # noqa: D102
        if self.here is not None and not self.admits(action):
            self._refuse(words.label(scene_context(self.scene), action))
            return
        super().act(action)

    def set_light(self, **values: Any) -> None:  # noqa: D102
        try:
            settings = self.scene.relit(self.settings, replace(self.light, **values))
        except InputError:
            settings = self.settings
        if label := self.refused(settings):
            self._refuse(label)
            return
        super().set_light(**values)

    def restore(
        self, snapshot: Snapshot, *, back: Snapshot | None = None, play: bool | None = None
    ) -> None:
        """As `Session.restore`.

        Raises
        ------
        InputError
            If anything in it is not allowed now.
        """
        for one in (snapshot, back):
            if one is None or one.scene != self.scene.id:
                continue
            for entry in plan_of(one.plan, self.scene.settings):
                if label := self.refused(entry.settings):
                    raise InputError(
                        f"'{label}' is not part of this lesson",
                        place=self.scene.title,
                        remedy="go on with the lesson",
                    )
        super().restore(snapshot, back=back, play=play)

    def begin_again(self, *, play: bool) -> None:
        """From the start with the settings as they are, as one run without changes."""
        self.restore(opening(self.scene.id, self.settings, play=play, light=self.instrument))

    def _first_settings(self) -> Any:
        return self._allowed().record(self.scene)

    def _put(self, settings: Any) -> None:
        if label := self.refused(settings):
            self._refuse(label)
        else:
            super()._put(settings)

    def _refuse(self, label: str) -> None:
        self.told.emit(words.text("outreach.refused", label=label))
        self.changed.emit()
