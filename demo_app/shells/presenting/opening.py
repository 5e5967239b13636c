"""What a presenter's window begins with: a scene, a sheet, or a show that was interrupted."""

from dataclasses import dataclass
from pathlib import Path

from demo_app.content.cues.records import Sheet
from demo_app.content.running import walking
from demo_app.content.running.records import Running
from demo_app.content.running.reloading import reload
from demo_app.content.running.saving import digest_of
from demo_app.ui.saved import Saved


@dataclass(frozen=True)
class Opening:
    """What a presenter's window begins with.

    Parameters
    ----------
    scene : str or None
        Scene to show without a sheet.
    sheet : Sheet or None
    running : Running or None
        Where the show is.
    saved : Saved or None
        What is put back: a show that was interrupted.
    """

    scene: str | None = None
    sheet: Sheet | None = None
    running: Running | None = None
    saved: Saved | None = None


def opened_sheet(path: Path, *, rehearsal: bool = False) -> Opening:
    """A show at the first step of the sheet at `path`; `InputError` for its first mistake."""
    from demo_app.content.cues.load import load

    sheet = load(path)
    digest = digest_of(path.read_bytes())
    return Opening(sheet=sheet, running=walking.ready(sheet, digest=digest, rehearsal=rehearsal))


def gone_on(saved: Saved, now: float) -> Opening:
    """The show that was interrupted, on its sheet as it is by now.

    Raises
    ------
    InputError
        If its sheet has gone or has a mistake.
    """
    assert saved.sheet is not None
    assert saved.running is not None
    from demo_app.content.cues.load import load

    path = Path(saved.sheet)
    sheet = load(path)
    digest = digest_of(path.read_bytes())
    running = saved.running
    if digest != running.digest:
        running = reload(running, sheet, now, digest=digest)
        return Opening(sheet=sheet, running=running)
    return Opening(sheet=sheet, running=running, saved=saved)
