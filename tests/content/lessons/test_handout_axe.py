"""An outside accessibility checker (axe-core, in headless Chromium) finds no fault in handouts.

It runs where the package selenium, Chromium with its driver, and axe-core (``npm install
axe-core``, the folder in LEHRLIGHT_AXE) are at hand, and is skipped elsewhere.
"""

import os
import shutil
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest

from demo_app.content.handouts.make import handout
from demo_app.content.handouts.page import page
from demo_app.content.lessons.load import load, own_lessons

Found = Callable[[str], dict[str, Any]]


@pytest.fixture(scope="module")
def axe() -> Iterator[Found]:
    webdriver = pytest.importorskip("selenium.webdriver", reason="selenium is not installed")
    driver, browser = shutil.which("chromedriver"), shutil.which("chromium")
    if driver is None or browser is None:
        pytest.skip("Chromium and its driver are not installed")
    script = Path(os.environ.get("LEHRLIGHT_AXE", "")) / "axe.min.js"
    if not script.is_file():
        pytest.skip("LEHRLIGHT_AXE does not name a folder with axe.min.js")
    options = webdriver.ChromeOptions()
    for word in ("--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage"):
        options.add_argument(word)
    window = webdriver.Chrome(options=options, service=webdriver.ChromeService(driver))

    def run(file: str) -> dict[str, Any]:
        window.get(Path(file).as_uri())
        window.execute_script(script.read_text(encoding="utf-8"))
        return window.execute_async_script(
            "const done = arguments[arguments.length - 1]; axe.run().then(done)"
        )

    try:
        yield run
    finally:
        window.quit()


@pytest.mark.parametrize("key", [False, True])
@pytest.mark.parametrize("path", own_lessons(), ids=lambda path: path.stem)
def test_no_fault_is_found(path: Path, key: bool, axe: Found, tmp_path: Path) -> None:
    file = tmp_path / "page.html"
    file.write_text(page(handout(load(path), 1, key)), encoding="utf-8")
    found = axe(str(file))
    assert [one["id"] for one in found["violations"]] == []
    assert len(found["passes"]) > 10


def test_the_checker_finds_what_is_wrong(axe: Found, tmp_path: Path) -> None:
    file = tmp_path / "page.html"
    text = page(handout(load(own_lessons()[1]), 1))
    file.write_text(text.replace(' lang="en"', "").replace(" alt=", " data-alt="), encoding="utf-8")
    assert {one["id"] for one in axe(str(file))["violations"]} >= {"html-has-lang", "image-alt"}
