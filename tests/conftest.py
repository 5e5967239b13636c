"""Tests run without a screen, and leave no thread behind."""

import atexit
import os
import shutil
import tempfile
import threading

import pytest
from hypothesis import settings

from demo_app.base.process import one_thread_for_matrices

one_thread_for_matrices()

# What the person who runs the tests keeps must neither change them nor be changed.
os.environ["LEHRLIGHT_HOME"] = tempfile.mkdtemp(prefix="lehrlight-tests-")
atexit.register(shutil.rmtree, os.environ["LEHRLIGHT_HOME"], ignore_errors=True)

# The same examples in every run.
settings.register_profile("same", derandomize=True, deadline=None)
settings.load_profile("same")

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

# The picture's one helper thread lives as long as the process; "Dummy" stands for a thread of Qt's,
# whose end the window's tests check themselves.
LASTING = ("optics", "Dummy")


def pytest_collection_modifyitems(items):
    """Cases that only widen what others try wait for ``LEHRLIGHT_LONG=1``."""
    if os.environ.get("LEHRLIGHT_LONG") != "1":
        for item in items:
            if item.get_closest_marker("long"):
                item.add_marker(pytest.mark.skip(reason="long form: LEHRLIGHT_LONG=1"))


@pytest.fixture(autouse=True)
def no_thread_left():
    before = set(threading.enumerate())
    yield
    left = [
        thread
        for thread in set(threading.enumerate()) - before
        if thread.is_alive() and not thread.name.startswith(LASTING)
    ]
    for thread in left:
        thread.join(2)
    assert not [thread.name for thread in left if thread.is_alive()]
