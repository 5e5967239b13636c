"""Every bit of a state, in an order that does not depend on which parts are shared in memory."""

import dataclasses
import hashlib
import struct
from collections.abc import Mapping

import numpy as np

from demo_app.ui.timeline import in_force


def bits(value, into=None):
    """Digest of a state, a record or a reading: two have the same only if all bits agree."""
    found = hashlib.blake2b() if into is None else into
    found.update(type(value).__name__.encode())
    if isinstance(value, np.ndarray):
        found.update(
            str((value.dtype, value.shape)).encode() + np.ascontiguousarray(value).tobytes()
        )
    elif isinstance(value, float):
        found.update(struct.pack("<d", value))
    elif dataclasses.is_dataclass(value):
        for field in dataclasses.fields(value):
            bits(getattr(value, field.name), found)
    elif isinstance(value, Mapping):
        for name in value:
            bits(name, found)
            bits(value[name], found)
    elif isinstance(value, tuple | list):
        found.update(str(len(value)).encode())
        for item in value:
            bits(item, found)
    elif hasattr(value, "indptr"):
        for part in (value.data, value.indices, value.indptr):
            bits(part, found)
    elif value is None or isinstance(value, bool | int | str):
        found.update(repr(value).encode())
    else:
        raise TypeError(f"no bits of {type(value)}")
    return found.hexdigest()


def following(session, count):
    """Digests of the next `count` steps of a session's run, from the state shown."""
    state, plan = session.here, session.timeline.plan
    found = []
    for _ in range(count):
        state = session.scene.advance(in_force(plan, state.step), state)
        found.append(bits(state))
    return found


def all_of(session, count=0):
    """All that a session shows, bit by bit, and its next steps."""
    frame = session.frame
    return {
        "state": bits(session.here),
        "time": session.time_s.hex(),
        "readings": bits(frame.readings),
        "picture": hashlib.blake2b(frame.pixels.tobytes()).hexdigest(),
        "sentence": bits(frame.message),
        "settings": bits(session.settings),
        "light": bits(session.light),
        "speed": session.speed.hex(),
        "next": following(session, count),
    }
