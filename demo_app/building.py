"""One folder that starts without Python: ``python -m demo_app.building --out FOLDER``.

Stands outside the layers, as the command line does, and is no part of what it builds. PyInstaller
is wanted for it (``pip install .[build]``), and makes a folder for the system that it runs on.
"""

import argparse
import pkgutil
import re
import shutil
import sys
import tempfile
from collections.abc import Callable, Sequence
from importlib import import_module
from pathlib import Path

import demo_app
from demo_app.base.errors import InputError
from demo_app.base.locate import assets, lesson_plans

NAME = "lehrlight"
BY_NAME = ("PySide6.QtOpenGLWidgets",)
"""Modules of libraries that are imported by name alone: pyqtgraph's curves want this one."""
ENTRY = """import multiprocessing
import sys

from demo_app.cli import main

if __name__ == "__main__":
    # Workers of a map start this program again.
    multiprocessing.freeze_support()
    sys.exit(main())
"""
LEFT_OUT = (
    # What libraries can use and this app does not.
    "IPython",
    "OpenGL",
    "PIL",
    "cupy",
    "h5py",
    "matplotlib",
    "meshio",
    "numba",
    "pandas",
    "sympy",
    "tkinter",
    "yaml",
    # What the tests compare with, and their tools.
    "SALib",
    "colour",
    "dask",
    "distributed",
    "ht",
    "hypothesis",
    "importlinter",
    "mypy",
    "psutil",
    "py_pol",
    "pytest",
    "pytestqt",
    "PyInstaller",
)
"""Packages that stay out, also where they are installed."""
UNUSED = (
    # Parts of Qt that its own plugins ask for.
    *("Qt6Pdf", "Qt6Qml", "Qt6Quick", "Qt6VirtualKeyboard", "Qt6Test", "QtTest."),
    "Qt/translations",
    # Screens without a desktop, and the theme of another toolkit with its libraries.
    *("qeglfs", "eglfs", "EglFS", "EglFs", "egldevice", "qlinuxfb", "qvnc", "qvkkhr"),
    *("qgtk3", "libgtk-3", "libgdk-3", "gdk_pixbuf", "libatk", "libatspi", "libcairo", "libpango"),
    *("libepoxy", "libXcomposite", "libXdamage", "libXinerama", "libthai", "libdatrie"),
)
"""Parts of names of files that no window of ours needs."""
SHORTCUT = """[Desktop Entry]
Type=Application
Name=Lehrlight
Comment=See the stress in glass, as it happens
Exec=sh -c {script} {name} {folder} %k
Terminal=false
Categories=Education;Science;
"""
FIND = """for place in "$(dirname "$2")" "$1"; do
[ -x "$place/{name}" ] && exec "$place/{name}"; done"""
"""Looks beside the shortcut first: not every desktop says where that lies, and folders move."""
SPEC = """# Written by demo_app.building.
unused = {unused!r}


def wanted(found):
    return not any(part in found[0] for part in unused)


found = Analysis(
    [{entry!r}],
    pathex=[{root!r}],
    datas={data!r},
    hiddenimports={hidden!r},
    excludes={left_out!r},
)
found.binaries = [one for one in found.binaries if wanted(one)]
found.datas = [one for one in found.datas if wanted(one)]
code = PYZ(found.pure)
programs = [
    EXE(code, found.scripts, [], exclude_binaries=True, name=name, console=console, upx=False)
    for name, console in {programs!r}
]
folder = COLLECT(*programs, found.binaries, found.datas, name={name!r}, upx=False)
"""
BUNDLE = """BUNDLE(folder, name="Lehrlight.app", bundle_identifier="org.lehrlight.app")
"""


def modules() -> tuple[str, ...]:
    """Names of all modules of the app: many are imported by name alone, as every scene is."""
    found = pkgutil.walk_packages(demo_app.__path__, "demo_app.")
    own = {"demo_app.building", "demo_app.__main__"}
    return tuple(sorted(module.name for module in found if module.name not in own))


def programs(system: str) -> tuple[tuple[str, bool], ...]:
    """Names of the programs, and whether each opens a console; `system` as `sys.platform`.

    A program without a console writes nothing to one on Windows, hence the second one there.
    """
    window = ((NAME, False),)
    return (*window, (f"{NAME}-console", True)) if system == "win32" else window


def spec(entry: Path, system: str) -> str:
    """What PyInstaller is told, as the Python text that it wants.

    Parameters
    ----------
    entry : pathlib.Path
        The program to begin with.
    system : str
        As `sys.platform`.
    """
    text = SPEC.format(
        unused=UNUSED,
        entry=str(entry),
        root=str(Path(demo_app.__file__).parent.parent),
        data=[(str(folder()), f"demo_app/{folder.__name__}") for folder in (assets, lesson_plans)],
        hidden=[*modules(), *BY_NAME],
        left_out=list(LEFT_OUT),
        programs=programs(system),
        name=NAME,
    )
    return text + BUNDLE if system == "darwin" else text


def shortcut(folder: Path) -> str:
    """What a Linux desktop is told to start the program in `folder` by a double click."""
    script = " ".join(FIND.format(name=NAME).split())
    return SHORTCUT.format(name=NAME, script=_quoted(script), folder=_quoted(str(folder)))


def _quoted(word: str) -> str:
    """`word` as a desktop entry quotes it: once for the command line, and once for the file."""
    held = re.sub(r'(["`$\\\\])', r"\\\1", word)
    return f'"{held}"'.replace("\\", "\\\\").replace("%", "%%")


def build(out: Path, run: Callable[[Sequence[str]], object] | None = None) -> Path:
    """Build the folder ``lehrlight`` in the folder `out`.

    Parameters
    ----------
    out : pathlib.Path
        Made if missing.
    run : callable, optional
        Takes PyInstaller's command line; default: PyInstaller's own.

    Returns
    -------
    pathlib.Path
        The folder that was built.

    Raises
    ------
    InputError
        If one of that name is there, or PyInstaller is not.
    """
    made = out / NAME
    if made.exists():
        raise InputError("is there already", place=str(made), remedy="move it away first")
    run = _installer() if run is None else run
    with tempfile.TemporaryDirectory(prefix="lehrlight-") as work:
        room = Path(work)
        entry, told = room / f"{NAME}.py", room / f"{NAME}.spec"
        entry.write_text(ENTRY, encoding="utf-8")
        told.write_text(spec(entry, sys.platform), encoding="utf-8")
        run(["--noconfirm", "--distpath", str(room / "dist"), "--workpath", str(room), str(told)])
        if sys.platform.startswith("linux"):
            file = room / "dist" / NAME / f"{NAME}.desktop"
            file.write_text(shortcut(made.absolute()), encoding="utf-8")
            file.chmod(0o755)
        out.mkdir(parents=True, exist_ok=True)
        for one in (room / "dist").iterdir():
            shutil.move(one, out / one.name)
    return made


def _installer() -> Callable[[Sequence[str]], object]:
    try:
        run: Callable[[Sequence[str]], object] = import_module("PyInstaller.__main__").run
    except ImportError:
        raise InputError(
            "PyInstaller is missing", place="packages", remedy="pip install '.[build]'"
        ) from None
    return run


def main(argv: Sequence[str] | None = None) -> int:
    """Run the command; exit status 2 after one line about what a person can mend."""
    parser = argparse.ArgumentParser(prog="python -m demo_app.building", description=__doc__)
    parser.add_argument("--out", metavar="FOLDER", type=Path, required=True)
    try:
        made = build(parser.parse_args(argv).out)
    except InputError as error:
        sys.stderr.write(f"building: {error}\n")
        return 2
    sys.stdout.write(f"{made}\n")
    return 0


if __name__ == "__main__":
    sys.exit(main())
