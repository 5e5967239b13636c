"""The staff's code: kept as a salted hash, compared in constant time, slow to guess."""

import hashlib
import hmac
import re
import secrets
from dataclasses import dataclass

from demo_app.base.errors import InputError

FEWEST, MOST = 6, 12
# Interactive use, as the function's own paper proposes (Percival 2009): 16 MB, some 50 ms.
_N, _R, _P = 2**14, 8, 1
_FORM = re.compile(r"scrypt\$16384\$8\$1\$([0-9a-f]{32})\$([0-9a-f]{64})")

FREE_TRIES = 3
FIRST_WAIT_S, LONGEST_WAIT_S = 5.0, 600.0


def hashed(code: str, salt: bytes | None = None) -> str:
    """The line that the site file keeps in place of `code`.

    Raises
    ------
    InputError
        If it is not six to twelve digits.
    """
    if not (code.isascii() and code.isdigit() and FEWEST <= len(code) <= MOST):
        raise InputError("is no code", place="--set-code", remedy=f"type {FEWEST} to {MOST} digits")
    used = secrets.token_bytes(16) if salt is None else salt
    return f"scrypt${_N}${_R}${_P}${used.hex()}${_digest(code, used).hex()}"


def is_hash(text: str) -> bool:
    """Whether `text` has the form of what `hashed` returns."""
    return _FORM.fullmatch(text) is not None


def matches(code: str, kept: str) -> bool:
    """Whether `kept` came from `code`; never true where none is kept."""
    found = _FORM.fullmatch(kept)
    if found is None or len(code) > MOST:
        return False
    salt, digest = map(bytes.fromhex, found.groups())
    return hmac.compare_digest(_digest(code, salt), digest)


def _digest(code: str, salt: bytes) -> bytes:
    return hashlib.scrypt(code.encode(), salt=salt, n=_N, r=_R, p=_P, dklen=32)


@dataclass(frozen=True)
class Tries:
    """How often a wrong code was typed in a row.

    Parameters
    ----------
    wrong : int
    until_s : float
        Instant of a clock that never goes back before which no code is heard, s.
    """

    wrong: int = 0
    until_s: float = 0.0

    def wait_s(self, now_s: float) -> float:
        """How long no code is heard from `now_s` on, s."""
        return max(0.0, min(self.until_s - now_s, LONGEST_WAIT_S))


def tried(tries: Tries, code: str, kept: str, now_s: float) -> tuple[bool, Tries]:
    """Type `code`.

    Returns
    -------
    bool
        Whether the door opens: the code is right and no wait was left.
    Tries
        What comes next: after three wrong ones 5 s, then twice as long each time up to 10 min.
    """
    if tries.wait_s(now_s) > 0:
        return False, tries
    if matches(code, kept):
        return True, Tries()
    wrong = tries.wrong + 1
    if wrong < FREE_TRIES:
        return False, Tries(wrong)
    wait = min(FIRST_WAIT_S * 2.0 ** min(wrong - FREE_TRIES, 20), LONGEST_WAIT_S)
    return False, Tries(wrong, now_s + wait)
