"""Letters at the back row by ISO 9241-303 and EN 301 549."""

import numpy as np
import pytest

from demo_app.base.errors import InputError
from demo_app.content.projector import (
    CLOSED_ARCMIN,
    LEAST_ARCMIN,
    Hall,
    deepest_m,
    grey_steps,
    letter_px,
    seen_arcmin,
    type_arcmin,
    type_px,
)
from demo_app.optics.instrument import Instrument


def test_published_letters():
    # EN 301 549 5.1.4: 0.7 degrees are 6.1 mm at 0.5 m; at 6 m 73 mm. 16' at 6 m are 28 mm.
    assert letter_px(1000, 1.0, 0.5, CLOSED_ARCMIN) == pytest.approx(6.1, abs=0.05)
    assert letter_px(1000, 1.0, 6.0, CLOSED_ARCMIN) == pytest.approx(73, abs=0.5)
    assert letter_px(1000, 1.0, 6.0, LEAST_ARCMIN) == pytest.approx(28, abs=0.5)
    # NUREG-0700 writes it as height = 6.283 D (MA) / 21600.
    assert letter_px(1000, 1.0, 6.0, 20) == pytest.approx(1000 * 6.283 * 6 * 20 / 21600, rel=1e-3)


def test_there_and_back():
    px = letter_px(1080, 2.2, 11.0, 20.0)
    assert seen_arcmin(px, 1080, 2.2, 11.0) == pytest.approx(20.0)
    hall = Hall(2.2, 11.0)
    size = type_px(20.0, 1080, hall)
    assert type_arcmin(size, 1080, hall) == pytest.approx(20.0)
    assert type_arcmin(size, 1080, Hall(2.2, deepest_m(size, 1080, 2.2))) == pytest.approx(16.0)


def test_what_nobody_has_measured_is_not_made_up():
    for hall in (Hall(), Hall(2.0), Hall(None, 9.0)):
        assert not hall.known
        assert type_px(16, 1080, hall) is None
        assert type_arcmin(30, 1080, hall) is None


@pytest.mark.parametrize("length", [0.0, -1.0, float("nan"), float("inf")])
def test_no_length(length):
    with pytest.raises(InputError, match="cannot be a length"):
        Hall(length, 9.0)


def test_grey_steps_rise_and_the_gain_brightens():
    plain, bright = grey_steps(Instrument()), grey_steps(Instrument(), 10.0)
    assert (plain[0] == 0).all()
    assert (np.diff(plain.astype(int).sum(axis=1)) > 0).all()
    assert (bright[1:].sum(axis=1) > plain[1:].sum(axis=1)).all()
    # 10 nm between crossed polarizers: codes 8 to 16 (a study of this project's own).
    assert 5 <= plain[1].max() <= 16
