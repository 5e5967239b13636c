"""The staff's code: salted, slow, never plain, and no way to try them all."""

import hashlib

import pytest

from demo_app.base.errors import InputError
from demo_app.content.kiosk.code import LONGEST_WAIT_S, Tries, hashed, is_hash, matches, tried


def test_the_code_itself_is_not_kept():
    kept = hashed("135791")
    assert "135791" not in kept
    assert is_hash(kept)
    assert hashed("135791") != kept


def test_the_hash_is_scrypt_as_published():
    # RFC 7914, section 12: P "password", S "NaCl", N 1024, r 8, p 16; the first bytes of the key.
    key = hashlib.scrypt(b"password", salt=b"NaCl", n=1024, r=8, p=16, dklen=64)
    assert key.hex().startswith("fdbabe1c9d3472007856e7190d01e9fe")
    salt = bytes(range(16))
    own = hashlib.scrypt(b"135791", salt=salt, n=16384, r=8, p=1, dklen=32).hex()
    assert hashed("135791", salt) == f"scrypt$16384$8$1${salt.hex()}${own}"


def test_the_right_code_alone_opens():
    kept = hashed("135791")
    assert matches("135791", kept)
    for wrong in ("135792", "", "1357910", "1" * 5000, "135791 "):
        assert not matches(wrong, kept)
    assert not matches("", "")
    assert not matches("135791", "")
    assert not matches("135791", kept[:-1])


@pytest.mark.parametrize("code", ["", "12345", "1" * 13, "abcdef", "12 456", "١٢٣٤٥٦", "-12345"])
def test_what_is_no_code(code):
    with pytest.raises(InputError, match="6 to 12 digits"):
        hashed(code)


def test_wrong_codes_cost_more_and_more_time():
    kept, tries, now, waits = hashed("135791"), Tries(), 100.0, []
    for _ in range(12):
        opens, tries = tried(tries, "000000", kept, now)
        assert not opens
        waits.append(tries.wait_s(now))
        now += tries.wait_s(now)
    assert waits == [0, 0, 5, 10, 20, 40, 80, 160, 320, 600, 600, 600]
    assert max(waits) == LONGEST_WAIT_S


def test_nothing_is_heard_while_it_waits_and_the_right_code_ends_it():
    kept = hashed("135791")
    waiting = Tries(3, 105.0)
    assert tried(waiting, "135791", kept, 104.9) == (False, waiting)
    assert tried(waiting, "135791", kept, 105.0) == (True, Tries())


def test_a_clock_that_goes_back_never_locks_for_longer_than_the_longest_wait():
    assert Tries(9, 1e9).wait_s(0.0) == LONGEST_WAIT_S
