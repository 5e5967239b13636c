"""An old crack in a plate: straight in from the lower edge, along a column of the mesh.

The plate is solved whole, with one factor. Cutting it open along part of the line adds the jumps of
displacement across the cut as unknowns; what they do to the whole plate is worked out once for the
whole line (a Schur complement), so that a cut of any length costs one small dense solution.
"""

from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from demo_app.physics.materials import Array
from demo_app.physics.plan.membrane import free_membrane_modulus
from demo_app.physics.plan.recovery import spline
from demo_app.physics.plan.sheet import Sheet, best_stress, sheet_stiffness
from demo_app.physics.strength import DEEPEST, edge_crack_points

_TRIALS = 0.25e-3
"""Step in which a crack's possible lengths are tried, m."""


@dataclass(frozen=True, eq=False)
class Cut:
    """A line on which a sheet may be cut, from the lower edge upwards.

    Parameters
    ----------
    piece : Sheet
        The whole plate.
    column : int
        Node column of the line.
    height : numpy.ndarray
        Shape (rows,), m: nodes on the line, counted from the lower edge.
    pull : scipy.sparse matrix
        Shape (2 * rows, nodes): temperature rise to the forces of what is right of the line.
    cross : scipy.sparse matrix
        Shape (2 * rows, 2 * nodes): displacement to those forces.
    effect : numpy.ndarray
        Shape (2 * nodes, 2 * rows): displacement of the whole plate for each jump, less its sign.
    stiffness : numpy.ndarray
        Shape (2 * rows, 2 * rows): force for each jump while the plate follows freely.
    parted : numpy.ndarray
        The same shape: its pseudo-inverse; a piece that came off has no stiffness as a whole.
    sides : tuple of numpy.ndarray
        Splines along x from the best points left and right of the line to the nodes there.
    lengths : numpy.ndarray
        Shape (k,), m: lengths for which K is known.
    weights : numpy.ndarray
        Shape (k, rows): their weights for the stress across the line.
    """

    piece: Sheet
    column: int
    height: Array
    pull: Any
    cross: Any
    effect: Array
    stiffness: Array
    parted: Array
    sides: tuple[Array, Array]
    lengths: Array
    weights: Array


def cut_line(piece: Sheet, x: float) -> Cut:
    """The line of nodes nearest to `x` (m) among the element ends."""
    mesh, form, material = piece.mesh, piece.form, piece.material
    ends = mesh.x[::2, 0]
    column = 2 * int(np.argmin(np.abs(ends - x)))
    rows = mesh.x.shape[1]
    line = column * rows + np.arange(rows)
    unknowns = np.stack([2 * line, 2 * line + 1], axis=1).ravel()
    right = mesh.inside.x > ends[column // 2]
    beyond = sheet_stiffness(form, material, right)
    cross = beyond[:, unknowns]
    effect = np.zeros((2 * mesh.nodes, unknowns.size))
    effect[piece.free] = piece.solid.solve(cross[piece.free].toarray())
    stiffness = beyond[unknowns][:, unknowns].toarray() - cross.T @ effect
    value = mesh.inside.value.matrix()
    hindered = free_membrane_modulus(material) * material.expansion
    normal = (form.strain[0] + form.strain[1]).T.multiply(form.weight * right)
    height = mesh.y[column] - mesh.y[column, 0]
    lengths = np.arange(_TRIALS, DEEPEST * height[-1] + 1e-9, _TRIALS)
    return Cut(
        piece,
        column,
        height,
        (hindered * (normal @ value)).tocsr()[unknowns],
        cross.T.tocsr(),
        effect,
        stiffness,
        np.linalg.pinv(stiffness, rcond=1e-9, hermitian=True),
        (spline(ends[: column // 2 + 1]), spline(ends[column // 2 :])),
        lengths,
        np.stack([line_weights(height, float(length)) for length in lengths]),
    )


def line_weights(height: Array, length: float) -> Array:
    """Weights over the nodes of a line, shape (rows,), whose sum with the stress is K.

    The crack is a long edge crack in a strip as wide as the line is long.

    Parameters
    ----------
    height : numpy.ndarray
        Shape (rows,), m: nodes of quadratic elements from the cracked edge on.
    length : float
        Of the crack, m.
    """
    at, weight = edge_crack_points(length, float(height[-1]))
    element = np.clip(np.searchsorted(height[::2], at) - 1, 0, height[::2].size - 2)
    low, high = height[2 * element], height[2 * element + 2]
    t = 2 * (at - low) / (high - low) - 1
    rows = np.zeros(height.size)
    for k, shape in enumerate((t * (t - 1) / 2, 1 - t**2, t * (t + 1) / 2)):
        np.add.at(rows, 2 * element + k, weight * shape)
    return rows


@dataclass(frozen=True)
class Load:
    """What the whole plate would do to the line.

    Parameters
    ----------
    across : numpy.ndarray
        Shape (rows,), Pa: stress across the line.
    force : numpy.ndarray
        Shape (2 * rows,), N for each metre of thickness: what the jumps have to balance.
    """

    across: Array
    force: Array


def line_load(cut: Cut, rise: Array, moved: Array, stress: Array) -> Load:
    """Load of the line from the whole plate's rise (nodes,), displacement and nodal stress."""
    return Load(np.asarray(stress[0, cut.column]), cut.pull @ rise - cut.cross @ moved)


def intensity(cut: Cut, load: Load, length: float) -> float:
    """K of a crack of `length` (m), Pa sqrt(m); zero where its faces are pressed together.

    By the weight function up to half the plate, its range; beyond, by the energy that a little
    more of the cut sets free, ``K**2 = E dU/da``. Zero for a plate cut all the way.
    """
    if length > cut.lengths[-1] + 1e-9:
        return _energy_intensity(cut, load, open_rows(cut, length))
    of_lengths = cut.weights @ load.across
    # K grows with the root of the length, so what is left of it is interpolated.
    known = np.interp(length, cut.lengths, of_lengths / np.sqrt(cut.lengths))
    return max(0.0, float(known) * float(np.sqrt(length)))


def _energy_intensity(cut: Cut, load: Load, count: int) -> float:
    if count + 2 >= cut.height.size:
        return 0.0
    more, less = (released(cut, load, count + step) for step in (2, -2))
    rate = (more - less) / (cut.height[count + 2] - cut.height[count - 2])
    return float(np.sqrt(cut.piece.material.youngs_modulus * max(0.0, rate)))


def runs_to(cut: Cut, load: Load, length: float) -> float:
    """Length (m) to which a crack of `length` runs at once: while K is at least K_IC.

    Where nothing stops it until two nodes are left, it goes all the way.
    """
    toughness = cut.piece.material.fracture_toughness
    if intensity(cut, load, length) < toughness:
        return length
    longer = cut.lengths > length
    enough = (cut.weights @ load.across)[longer] >= toughness
    if not enough.all():
        return float(cut.lengths[longer][enough.argmin()])
    for count in range(open_rows(cut, max(length, cut.lengths[-1])) + 1, cut.height.size - 2):
        if _energy_intensity(cut, load, count) < toughness:
            return float(cut.height[count])
    return float(cut.height[-1])


def open_rows(cut: Cut, length: float) -> int:
    """Nodes of the line that a crack of `length` (m) opens: its tip is at the next one."""
    if length >= cut.height[-1] - 1e-9:
        return int(cut.height.size)
    return int(np.argmin(np.abs(cut.height - length)))


def jumps(cut: Cut, force: Array, count: int) -> Array:
    """Jumps of displacement across the lowest `count` nodes of the line, shape (2 * rows,), m.

    Faces that would overlap are pressed together and stick. A plate that is cut all the way is two
    free pieces, which can move apart.

    Parameters
    ----------
    cut : Cut
        The line.
    force : numpy.ndarray
        Shape (2 * rows,): of the line's `Load`.
    count : int
        From `open_rows`.
    """
    if count == cut.height.size:
        return np.asarray(cut.parted @ force)
    return _opened(cut.stiffness, force, np.arange(count))


def _opened(stiffness: Array, force: Array, nodes: NDArray[np.int64]) -> Array:
    jump = np.zeros_like(force)
    while nodes.size:
        unknowns = np.stack([2 * nodes, 2 * nodes + 1], axis=1).ravel()
        found = np.linalg.solve(stiffness[np.ix_(unknowns, unknowns)], force[unknowns])
        apart = found[::2] >= 0
        if apart.all():
            jump[unknowns] = found
            break
        nodes = nodes[apart]
    return jump


def released(cut: Cut, load: Load, count: int) -> float:
    """Energy that opening `count` nodes of the line sets free, J for each metre of thickness."""
    return float(load.force @ jumps(cut, load.force, count) / 2)


def cut_stress(cut: Cut, rise: Array, moved: Array, count: int) -> tuple[Array, Array]:
    """Stress at the nodes of the cut plate, left and right of the line.

    Returns
    -------
    tuple of numpy.ndarray
        Shapes (3, columns of the left, rows) and (3, columns of the right, rows), Pa; the line's
        column belongs to both.
    """
    jump = jumps(cut, cut.pull @ rise - cut.cross @ moved, count)
    follows = moved - cut.effect @ jump
    beyond = follows.copy()
    rows = cut.height.size
    first = 2 * cut.column * rows
    beyond[first : first + 2 * rows] += jump
    best = cut.column
    left = best_stress(cut.piece, rise, follows)[:, :best]
    right = best_stress(cut.piece, rise, beyond)[:, best:]
    up = cut.piece.form.recover.across.T
    return cut.sides[0] @ left @ up, cut.sides[1] @ right @ up
