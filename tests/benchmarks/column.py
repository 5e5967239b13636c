"""Cost of a quench by the Column, beside a general stiff solver on the same equations.

The general solver sees one large system: temperatures, partial fictive temperatures and every
relaxing stress term of every node, with the in-plane strain from the balance of forces. Its
tolerance is the loosest at which its answer is as good as the Column's.

Run it as ``python tests/benchmarks/column.py`` from the top of the repository.
"""

import statistics
import time
from typing import Any

import numpy as np
from scipy.integrate import solve_ivp

from demo_app.physics.column.readings import centre_stress
from demo_app.physics.heat import ZERO_C
from demo_app.physics.material_files import material
from demo_app.physics.toughening import Quench, blown, cold_after, quench

CELLS = 16
REPEATS = 5
TOLERANCES = (1e-2, 3e-3, 1e-3, 3e-4, 1e-4, 3e-5, 1e-5)
REFERENCE_TOLERANCE = 1e-6


def plate() -> Quench:
    """6.1 mm of soda-lime from 650 degrees Celsius in jets of 222 W/m2K."""
    return quench(material("soda-lime"), 6.1e-3, 650 + ZERO_C, 222.0, cells=CELLS)


class General:
    """The equations of a quench as ``y' = f(t, y)``."""

    def __init__(self, of: Quench) -> None:
        self.of, self.wall, self.n = of, of.wall, of.wall.z.size
        law = of.material.relaxation
        self.shear, self.bulk, self.structural = law.shear, law.bulk, law.structural
        self.sizes = (1, len(self.structural.times), len(self.shear.times), len(self.bulk.times), 1)

    def start(self) -> np.ndarray:
        """Hot and free of stress."""
        hot = np.full((1 + self.sizes[1], self.n), self.of.start)
        return np.concatenate([hot, np.zeros((sum(self.sizes[2:]), self.n))]).ravel()

    def parts(self, y: np.ndarray) -> list[np.ndarray]:
        """Temperature, fictive, shear terms, bulk terms and the lasting bulk term."""
        return np.split(y.reshape(-1, self.n), np.cumsum(self.sizes)[:-1])

    def stress(self, y: np.ndarray) -> np.ndarray:
        """In-plane stress of the nodes."""
        _, _, shear, bulk, lasting = self.parts(y)
        return shear.sum(0) + bulk.sum(0) + lasting[0]

    def slope(self, _time: float, y: np.ndarray) -> np.ndarray:
        """Time derivative of everything."""
        temperature, fictive, shear, bulk, _ = self.parts(y)
        t, glass, law = temperature[0], self.of.material, self.of.material.relaxation
        z, weights = self.wall.z, self.wall.weights
        flow = glass.conductivity_at((t[1:] + t[:-1]) / 2) * np.diff(t) / np.diff(z)
        heat = np.concatenate([flow, [0.0]]) - np.concatenate([[0.0], flow])
        for node in (0, -1):
            heat[node] += self.of.faces[0].heat(t[node])
        warming = heat / (weights * glass.density * glass.heat_capacity(t))
        weight = np.array(self.structural.weights)
        mean = weight @ fictive
        share = law.share
        clock = np.exp(law.activation * (1 / law.reference - share / t - (1 - share) / mean))
        settling = clock * (t - fictive) / np.array(self.structural.times)[:, None]
        free = glass.expansion * warming
        free = free + (law.expansion_liquid - glass.expansion) * (weight @ settling)
        # p' = k (e' - f') - p_lost and s' = g d' - s_lost; no stress across: p = 2 s.
        shear_lost = clock * shear / np.array(self.shear.times)[:, None]
        bulk_lost = clock * bulk / np.array(self.bulk.times)[:, None]
        g, k = 2 * glass.shear_modulus * sum(self.shear.weights), 3 * glass.bulk_modulus
        lost_s, lost_p = shear_lost.sum(0), bulk_lost.sum(0)
        # With e' in plane and c' across: e_mean' = (2 e' + c') / 3, d' = (e' - c') / 3.
        own = -k * free - lost_p + 2 * lost_s
        across_0, across_1 = -3 * own / (k + 2 * g), -2 * (k - g) / (k + 2 * g)
        deviator_0, deviator_1 = -across_0 / 3, (1 - across_1) / 3
        at_rest, stiff = 3 * (g * deviator_0 - lost_s), 3 * g * deviator_1
        in_plane = -(weights @ at_rest) / (weights.sum() * stiff)
        across = across_0 + across_1 * in_plane
        d, e = (in_plane - across) / 3, (2 * in_plane + across) / 3
        relaxing = np.array(self.shear.weights)[:, None] * 2 * glass.shear_modulus * d
        kept = 1 - self.bulk.lasting
        bulging = np.array(self.bulk.weights)[:, None] * kept * k * (e - free)
        return np.concatenate(
            [
                warming[None],
                settling,
                relaxing - shear_lost,
                bulging - bulk_lost,
                (self.bulk.lasting * k * (e - free))[None],
            ]
        ).ravel()

    def solve(self, method: str, tolerance: float) -> tuple[float, float]:
        """Surface and centre stress of the cold plate, Pa."""
        scale = np.concatenate(
            [np.full(self.n * (1 + self.sizes[1]), 100.0), np.full(self.n * 14, 1e7)]
        )[: self.start().size]
        # Its first guess at a Jacobian may overshoot and take itself back.
        with np.errstate(over="ignore"):
            found = solve_ivp(
                self.slope,
                (0.0, cold_after(self.of)),
                self.start(),
                method=method,
                rtol=tolerance,
                atol=tolerance * scale,
            )
        assert found.success, found.message
        stress = self.stress(found.y[:, -1])
        return float(stress[0]), float(stress[self.n // 2])


def column(of: Quench) -> tuple[float, float]:
    """The same by the Column."""
    state = blown(of).column
    return float(state.stress[0]), centre_stress(of.wall, state)


def timed(act: Any) -> tuple[float, Any]:
    """Milliseconds and result."""
    began = time.perf_counter()
    result = act()
    return 1e3 * (time.perf_counter() - began), result


def rows() -> list[dict[str, Any]]:
    """One row: the Column, beside the quickest general solver that is as exact."""
    of = plate()
    general = General(of)
    exact = general.solve("BDF", REFERENCE_TOLERANCE)

    def error(found: tuple[float, float]) -> float:
        return max(abs(a / b - 1) for a, b in zip(found, exact, strict=True))

    column(of)
    times = [timed(lambda: column(of)) for _ in range(REPEATS)]
    ours, allowed = statistics.median(ms for ms, _ in times), error(times[0][1])
    best: tuple[float, str] | None = None
    for method in ("BDF", "Radau"):
        for tolerance in TOLERANCES:
            ms, found = timed(lambda m=method, t=tolerance: general.solve(m, t))
            if error(found) <= allowed:
                if best is None or ms < best[0]:
                    best = ms, f"scipy solve_ivp {method}, rtol {tolerance:g}"
                break
    assert best is not None
    return [
        {
            "name": f"Column, quench of 6.1 mm, {CELLS} cells, within {100 * allowed:.2g} %",
            "milliseconds": ours,
            "ratio": ours / best[0],
            "reference": f"{best[1]}, {best[0]:.0f} ms on the same equations",
        }
    ]


if __name__ == "__main__":
    for row in rows():
        print(row)
