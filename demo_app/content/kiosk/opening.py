"""All that a kiosk reads as it starts; whatever is broken, it starts."""

from dataclasses import dataclass
from pathlib import Path

from demo_app.base.places import data_folder
from demo_app.content.kiosk.fallback import load_or_last_good, told
from demo_app.content.kiosk.reading import read_small
from demo_app.content.kiosk.records import Texts
from demo_app.content.kiosk.site import Site
from demo_app.content.kiosk.update import open_texts
from demo_app.physics.material_files import load_material, site_folder


@dataclass(frozen=True)
class Opened:
    """A kiosk as it starts.

    Parameters
    ----------
    site : Site
    texts : Texts
    folder : pathlib.Path or None
        The kiosk's data; None if there can be none in this run.
    problems : tuple of str
        What the staff page tells, a line each.
    """

    site: Site
    texts: Texts
    folder: Path | None
    problems: tuple[str, ...]


def open_kiosk() -> Opened:
    """Read site file, texts and the venue's own materials.

    Raises
    ------
    InputError
        If the texts that come with the app are broken: it has to be installed again.
    """
    problems: list[str] = []
    folder = told(problems, data_folder)
    site, of_site = load_or_last_good(folder)
    texts, of_texts = open_texts(folder)
    return Opened(
        site, texts, folder, (*problems, *of_site, *of_texts, *material_problems(site_folder()))
    )


def material_problems(folder: Path) -> tuple[str, ...]:
    """What is wrong with the venue's own materials, a line for each file; those are left out."""
    problems: list[str] = []
    for path in told(problems, lambda: sorted(folder.glob("*.toml"))) or ():
        if told(problems, read_small, path, "material") is not None:
            told(problems, load_material, path)
    return tuple(problems)
