"""What staff can do behind the code: see, set, update, wipe, quit."""

import time
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QObject, QTimer, Signal
from PySide6.QtWidgets import QWidget

from demo_app.base.errors import InputError
from demo_app.content.kiosk import update
from demo_app.content.kiosk.code import Tries, tried
from demo_app.content.kiosk.hours import Hours
from demo_app.content.kiosk.records import Spoken
from demo_app.content.kiosk.site import Site
from demo_app.shells.kiosking.house import House, save_site
from demo_app.shells.kiosking.mounted import text_folders
from demo_app.ui.kiosk.pad import Pad
from demo_app.ui.kiosk.page import Page
from demo_app.ui.kiosk.staff import Staff
from demo_app.ui.kiosk.staff_parts import Buttons, HoursTable, Lines

DAY_S = 86400.0
BRIGHTNESS = (0.2, 0.4, 0.6, 0.8, 1.0)
RESTART_MS = 1500
"""How long it is told that new texts are in place before the window starts anew."""
LARGE_TYPE = 1.3


class StaffRoom(QObject):
    """The pad, and the page behind it.

    Attributes
    ----------
    changed : Signal(House)
        Something was set.
    wiping : Signal()
        The screen is to be locked for cleaning.
    closed : Signal()
        Nobody of the staff is there any more.
    quitting, anew : Signal()
        The kiosk is to end; or to start anew, with other texts.
    """

    changed = Signal(object)
    wiping = Signal()
    closed = Signal()
    quitting = Signal()
    anew = Signal()

    def __init__(
        self, house: House, parent: QWidget, *, clock: Callable[[], float] = time.monotonic
    ) -> None:
        super().__init__(parent)
        self.house = house
        self.pad, self.page = Pad(parent), Staff(parent)
        self._clock = clock
        self._tries = Tries()
        self._spoken: Spoken | None = None
        self._folders: tuple[Path, ...] = ()
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(RESTART_MS)
        self._soon.timeout.connect(self.anew)
        self.pad.entered.connect(self._enter)
        self.pad.cancelled.connect(self.close)
        self.page.opened.connect(self._open)
        self.page.acted.connect(self._act)

    @property
    def over(self) -> Page | None:
        """The page that lies over everything, if one does."""
        return next((one for one in (self.pad, self.page) if not one.isHidden()), None)

    def knock(self, spoken: Spoken) -> None:
        """Somebody knows the gesture: ask for the code."""
        self._spoken = spoken
        self.pad.speak(spoken)
        self.page.speak(spoken)
        self.pad.open()
        if not self.house.site.code:
            self.pad.tell(spoken.words["staff.no_code"])
        self.pad.show()
        self.pad.raise_()

    def close(self) -> None:
        """Let visitors in again."""
        if self.over is not None:
            self.pad.hide()
            self.page.hide()
            self.page.show_section(None)
            self.closed.emit()

    def _word(self, key: str, **values: object) -> str:
        return self._spoken.word(key, **values) if self._spoken is not None else ""

    def _enter(self, code: str) -> None:
        now_s = self._clock()
        right, self._tries = tried(self._tries, code, self.house.site.code, now_s)
        if right:
            self.pad.hide()
            self.page.show()
            self.page.raise_()
            self.page.open("problems")
            first = self.page.first()
            if first is not None:
                first.setFocus()
            return
        wait_s = self._tries.wait_s(now_s)
        said = self._word("staff.wait", seconds=round(wait_s)) if wait_s > 0 else ""
        self.pad.tell(said or self._word("staff.wrong"))

    def _act(self, name: str) -> None:
        if name == "clean":
            self.close()
            self.wiping.emit()
        elif name == "really_quit":
            self.quitting.emit()
        else:
            self.close()

    def _open(self, name: str) -> None:
        make = {
            "problems": self._problems,
            "counts": self._counts,
            "hours": self._hours,
            "languages": self._languages,
            "steps": self._steps,
            "brightness": self._brightness,
            "update": self._update,
        }[name]
        self.page.show_section(make())

    def _problems(self) -> Page:
        lines = (*self.house.problems, *self.house.counts.problems)
        return Lines(lines or [self._word("staff.no_problems")])

    def _counts(self) -> Page:
        now_s = time.time()
        lines = []
        for key, since_s in (
            ("staff.today", now_s - now_s % DAY_S),
            ("staff.week", now_s - 7 * DAY_S),
        ):
            sums = self.house.counts.since(since_s)
            by_kind = {
                kind: sum(count for (one, _, _), count in sums.items() if one == kind)
                for kind in ("start", "step", "prediction", "reset")
            }
            lines.append(
                f"{self._word(key)}: {self._word('staff.starts')} {by_kind['start']}, "
                f"{self._word('staff.steps')} {by_kind['step']}, "
                f"{self._word('staff.predictions')} {by_kind['prediction']}, "
                f"{self._word('staff.resets')} {sums.get(('reset', 'idle', -1), 0)}"
            )
        week = self.house.counts.since(now_s - 7 * DAY_S)
        for name in self.house.texts.ids:
            title = self._spoken.step(name).title if self._spoken is not None else name
            opened = sum(n for (kind, one, _), n in week.items() if (kind, one) == ("step", name))
            lines.append(f"{title}: {opened}")
        return Lines(lines)

    def _hours(self) -> Page:
        table = HoursTable(self.house.site.hours, self._word)
        table.changed.connect(self._set_hours)
        return table

    def _set_hours(self, hours: Hours) -> None:
        self._take(replace(self.house.site, hours=hours))

    def _languages(self) -> Page:
        spoken = self.house.texts.spoken
        names = {tag: one.name for tag, one in spoken.items()}
        first = {
            f"1:{tag}": f"{self._word('staff.default')}: {name}" for tag, name in names.items()
        }

        def on(name: str) -> bool:
            if name.startswith("1:"):
                return self.house.language == name[2:]
            return name in self.house.languages

        page = Buttons({**names, **first}, on)
        page.pressed.connect(self._set_language)
        return page

    def _set_language(self, name: str, on: bool) -> None:
        site, offered = self.house.site, list(self.house.languages)
        if name.startswith("1:"):
            tag = name[2:]
            if tag not in offered:
                offered.append(tag)
            self._take(replace(site, language=tag, languages=tuple(offered)))
            return
        wanted = [tag for tag in self.house.texts.spoken if (tag in offered or tag == name)]
        if not on:
            wanted.remove(name)
        if wanted:
            language = site.language if site.language in wanted else wanted[0]
            self._take(replace(site, languages=tuple(wanted), language=language))

    def _steps(self) -> Page:
        names = {
            name: self._spoken.step(name).title if self._spoken is not None else name
            for name in self.house.texts.ids
        }
        page = Buttons(names, lambda name: name in self.house.steps)
        page.pressed.connect(self._set_step)
        return page

    def _set_step(self, name: str, on: bool) -> None:
        off = [one for one in self.house.site.steps_off if one != name]
        if not on:
            off.append(name)
        if len(set(off) & set(self.house.texts.ids)) < len(self.house.texts.ids):
            self._take(replace(self.house.site, steps_off=tuple(off)))

    def _brightness(self) -> Page:
        names = {f"{share:g}": f"{share * 100:g} %" for share in BRIGHTNESS}
        looks = {key: self._word(key) for key in ("high_contrast", "large_text", "still")}

        def on(name: str) -> bool:
            site = self.house.site
            if name in names:
                return abs(float(name) - site.brightness) < 0.05
            return {
                "high_contrast": site.high_contrast,
                "large_text": site.scale > 1,
                "still": not site.motion,
            }[name]

        page = Buttons({**names, **looks}, on, lines=[self._word("staff.looks")])
        page.pressed.connect(self._set_look)
        return page

    def _set_look(self, name: str, on: bool) -> None:
        site = self.house.site
        if name == "high_contrast":
            site = replace(site, high_contrast=on)
        elif name == "large_text":
            site = replace(site, scale=LARGE_TYPE if on else 1.0)
        elif name == "still":
            site = replace(site, motion=not on)
        else:
            site = replace(site, brightness=float(name))
        self._take(site)

    def _update(self) -> Page:
        self._folders = text_folders(self.house.site.updates)
        names = {
            str(number): self._word("staff.update_found", folder=_short(folder))
            for number, folder in enumerate(self._folders)
        }
        names["back"] = self._word("staff.roll_back")
        lines = [] if self._folders else [self._word("staff.update_none")]
        page = Buttons(names, lines=lines)
        page.pressed.connect(self._install)
        return page

    def _install(self, name: str, _on: bool) -> None:
        folder = self.house.folder
        if folder is None or self._soon.isActive():
            return
        try:
            if name == "back":
                update.roll_back(folder)
            else:
                update.install(self._folders[int(name)], folder)
        except (InputError, OSError) as error:
            self.page.tell(self._word("staff.update_refused"))
            self.page.show_section(Lines([str(error)]))
            return
        self.page.tell(self._word("staff.update_done"))
        self._soon.start()

    def _take(self, site: Site) -> None:
        self.house = self.house.with_site(site)
        problem = save_site(self.house)
        self.page.tell(self._word("staff.not_saved" if problem else "staff.saved"))
        if problem:
            self.house = self.house.with_problem(problem)
        self.changed.emit(self.house)


def _short(folder: Path) -> str:
    """The end of a long path: what staff called it."""
    return str(folder) if len(folder.parts) <= 3 else str(Path(*folder.parts[-2:]))
