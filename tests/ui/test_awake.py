"""The screen is held awake, or one line is logged; with stand-ins for the system."""

import sys

import pytest

from demo_app.ui.awake import Awake


class Keeper:
    def __init__(self, works=True, fault=None):
        self.active = False
        self.entered = self.left = 0
        self._works, self._fault = works, fault

    def __enter__(self):
        self.entered += 1
        if self._fault:
            raise self._fault
        self.active = self._works
        return self

    def __exit__(self, *raised):
        self.left += 1
        self.active = False


def test_it_holds_from_start_to_stop(caplog):
    keeper = Keeper()
    with Awake(lambda: keeper) as awake:
        assert awake.active
        assert keeper.active
        assert awake.start()
        assert keeper.entered == 1
    assert not awake.active
    assert (keeper.entered, keeper.left, keeper.active) == (1, 1, False)
    awake.stop()
    assert keeper.left == 1
    assert not caplog.records


def test_it_starts_again():
    made = []

    def make():
        made.append(Keeper())
        return made[-1]

    awake = Awake(make)
    for _ in range(2):
        assert awake.start()
        awake.stop()
    assert [keeper.left for keeper in made] == [1, 1]


@pytest.mark.parametrize("fault", [None, OSError("no bus"), ImportError("no wakepy")])
def test_where_it_cannot_the_log_says_so_once(caplog, fault):
    with Awake(lambda: Keeper(works=False, fault=fault)) as awake:
        assert not awake.active
    assert len(caplog.records) == 1
    assert "cannot be held awake" in caplog.text


def test_an_error_in_the_show_still_lets_go():
    keeper = Keeper()
    with pytest.raises(ZeroDivisionError), Awake(lambda: keeper):
        raise ZeroDivisionError
    assert keeper.left == 1


def test_the_real_keeper(monkeypatch, caplog):
    """wakepy's own stand-in for a system that can; that no thread stays is watched by conftest."""
    monkeypatch.setenv("WAKEPY_FAKE_SUCCESS", "yes")
    with Awake() as awake:
        assert awake.active
    assert not awake.active
    assert not caplog.records


@pytest.mark.skipif(sys.platform != "linux", reason="other systems need no bus")
def test_without_a_bus_nothing_but_a_line(monkeypatch, caplog):
    monkeypatch.delenv("WAKEPY_FAKE_SUCCESS", raising=False)
    monkeypatch.setenv("DBUS_SESSION_BUS_ADDRESS", "unix:path=/nonexistent")
    with Awake() as awake:
        assert not awake.active
    assert [record.name for record in caplog.records].count("lehrlight") == 1
