"""What goes into the one folder; and, where it is asked for, the folder itself.

The real build takes a minute and PyInstaller: LEHRLIGHT_BUILD=1 asks for it.
"""

import ast
import os
import pkgutil
import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

import demo_app
from demo_app import building
from demo_app.base.errors import InputError
from demo_app.scenes import catalogue

ROOT = Path(__file__).resolve().parent.parent
BARE = {"PATH": "/nonexistent", "LC_ALL": "C.UTF-8"}


def told(system):
    """Values that the text for PyInstaller hands to `Analysis`, by name."""
    text = building.spec(Path("/tmp/entry.py"), system)
    calls = [node for node in ast.walk(ast.parse(text)) if isinstance(node, ast.Call)]
    analysis = next(call for call in calls if getattr(call.func, "id", "") == "Analysis")
    return text, {word.arg: ast.literal_eval(word.value) for word in analysis.keywords}


def test_every_module_that_is_imported_by_name_alone_goes_in():
    hidden = set(told("linux")[1]["hiddenimports"])
    for name in catalogue.ids():
        assert f"demo_app.scenes.{name.replace('-', '_')}" in hidden
    for layer in ("base", "physics", "optics", "scenes", "content", "ui", "shells"):
        folder = [str(ROOT / "demo_app" / layer)]
        for module in pkgutil.walk_packages(folder, f"demo_app.{layer}."):
            assert module.name in hidden
    assert "demo_app.building" not in hidden


def test_its_files_go_where_the_app_looks_for_them():
    data = dict(told("linux")[1]["datas"])
    targets = {Path(source).name: target for source, target in data.items()}
    assert targets == {"assets": "demo_app/assets", "lesson_plans": "demo_app/lesson_plans"}
    assert all(Path(source).is_dir() for source in data)


def test_nothing_that_the_app_needs_is_left_out():
    """Neither a package that any module imports, nor one that is depended on."""
    imported = set()
    for file in (ROOT / "demo_app").rglob("*.py"):
        for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Import):
                imported |= {alias.name.partition(".")[0] for alias in node.names}
            elif isinstance(node, ast.ImportFrom) and node.module:
                imported.add(node.module.partition(".")[0])
    assert {"PySide6", "scipy", "wakepy"} <= imported
    assert not imported & set(told("linux")[1]["excludes"])


@pytest.mark.parametrize(
    ("system", "programs", "bundled"),
    [
        ("linux", [("lehrlight", False)], False),
        ("darwin", [("lehrlight", False)], True),
        ("win32", [("lehrlight", False), ("lehrlight-console", True)], False),
    ],
)
def test_a_program_without_a_console_on_each_system(system, programs, bundled):
    text, _words = told(system)
    assert list(building.programs(system)) == programs
    assert repr(building.programs(system)) in text
    assert ("BUNDLE(" in text) == bundled


def test_the_entry_starts_the_command_and_lets_workers_through():
    ast.parse(building.ENTRY)
    assert "from demo_app.cli import main" in building.ENTRY
    assert building.ENTRY.index("freeze_support()") < building.ENTRY.index("main())")


def installer(words):
    """Writes what PyInstaller would, and keeps its words."""
    place = Path(words[words.index("--distpath") + 1]) / building.NAME
    place.mkdir(parents=True)
    (place / building.NAME).write_text(Path(words[-1]).read_text(encoding="utf-8"))


def test_the_folder_comes_whole(tmp_path):
    made = building.build(tmp_path / "new", installer)
    assert made == tmp_path / "new" / "lehrlight"
    assert "Analysis(" in (made / "lehrlight").read_text(encoding="utf-8")
    assert [one.name for one in (tmp_path / "new").iterdir()] == ["lehrlight"]
    if sys.platform.startswith("linux"):
        lines = (made / "lehrlight.desktop").read_text(encoding="utf-8").splitlines()
        assert lines[0] == "[Desktop Entry]"
        assert "Terminal=false" in lines


@pytest.mark.skipif(os.name != "posix", reason="runs sh")
@pytest.mark.parametrize("beside", [True, False])
@pytest.mark.parametrize("name", ["plain", "with space", 'a"$`\\%k b'])
def test_the_shortcut_finds_its_program(tmp_path, beside, name):
    """Read as the desktop entry specification says: file, then quotes, then field codes."""
    folder = tmp_path / name
    folder.mkdir()
    program = folder / "lehrlight"
    program.write_text("#!/bin/sh\necho found\n")
    program.chmod(0o755)
    built = tmp_path / "elsewhere" if beside else folder
    line = building.shortcut(built).split("Exec=")[1].split("\n")[0]
    quoted = line.replace("\\\\", "\\")
    words = [re.sub(r"\\(.)", r"\1", one or two) for one, two in _WORD.findall(quoted)]
    words = [str(folder / "x.desktop") if w == "%k" else w.replace("%%", "%") for w in words]
    # Some desktops leave the place of the shortcut out.
    done = subprocess.run(words if beside else words[:-1], capture_output=True, check=True)
    assert done.stdout == b"found\n"


_WORD = re.compile(r'"((?:[^"\\]|\\.)*)"|([^ ]+)')


def test_nothing_is_replaced(tmp_path):
    building.build(tmp_path, installer)
    with pytest.raises(InputError, match="there already"):
        building.build(tmp_path, installer)


def test_a_build_that_fails_leaves_nothing(tmp_path):
    def fail(words):
        installer(words)
        raise SystemExit("no")

    with pytest.raises(SystemExit):
        building.build(tmp_path, fail)
    assert list(tmp_path.iterdir()) == []


def test_without_pyinstaller_one_line_says_so(tmp_path, monkeypatch, capsys):
    monkeypatch.setitem(sys.modules, "PyInstaller", None)
    monkeypatch.setitem(sys.modules, "PyInstaller.__main__", None)
    assert building.main(["--out", str(tmp_path)]) == 2
    assert capsys.readouterr().err.startswith("building: packages: PyInstaller is missing")


@pytest.mark.slow
@pytest.mark.timeout(900)
@pytest.mark.skipif(not os.environ.get("LEHRLIGHT_BUILD"), reason="LEHRLIGHT_BUILD=1 asks for it")
def test_the_real_folder_works_without_python(tmp_path):
    building.build(tmp_path / "built")
    shutil.move(tmp_path / "built", tmp_path / "moved")
    program = tmp_path / "moved" / "lehrlight" / "lehrlight"

    def run(*words, **more):
        return subprocess.run(
            [program, *words],
            cwd=tmp_path,
            env={**BARE, "LEHRLIGHT_HOME": str(tmp_path / "home"), **more},
            capture_output=True,
            timeout=120,
            check=False,
        )

    assert run("--version").stdout.decode() == f"lehrlight {demo_app.__version__}\n"
    words = ("solve", "ring", "--json")
    source = subprocess.run(
        [sys.executable, "-m", "demo_app", *words], cwd=ROOT, capture_output=True, check=True
    )
    assert run(*words).stdout == source.stdout
    listed = run("scenes").stdout.decode()
    assert all(f"{name}: " in listed for name in catalogue.ids())
    window = subprocess.Popen(
        [program, "present", "ring"],
        cwd=tmp_path,
        env={**BARE, "QT_QPA_PLATFORM": "offscreen", "LEHRLIGHT_HOME": str(tmp_path / "home")},
        stderr=subprocess.PIPE,
        text=True,
    )
    with pytest.raises(subprocess.TimeoutExpired):
        window.wait(10)
    window.terminate()
    # The chart's library comes after the first picture: a fault there would have been caught.
    _out, said = window.communicate(timeout=20)
    assert window.returncode == 0
    assert "Traceback" not in said
