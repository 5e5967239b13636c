"""The material-point law of a glass former: structure and stress relax with one clock.

Shared by every body: a body brings strains, this brings stresses. Arrays run over points; of the
``comps`` stress components the first three are normal ones, any further are shear components,
strains of which are tensor shear strains.

Sources: Narayanaswamy 1971, J. Am. Ceram. Soc. 54 (structure, reduced time); Markovsky and Soules
1984, J. Am. Ceram. Soc. 67 (step by step); Taylor, Pister and Goudreau 1970, Int. J. Numer. Meth.
Eng. 2 (stress under a strain rate that is constant over a step).
"""

from dataclasses import dataclass

import numpy as np

from demo_app.physics.materials import Array, Material, Prony

STRAIN_VISCOSITY = 10**13.5
"""Viscosity at the strain point, Pa s (ASTM C336)."""

ANNEALING_VISCOSITY = 1e12
"""Viscosity at the annealing point, Pa s (ASTM C336)."""

_LOG_LIMIT = 500.0


@dataclass(frozen=True)
class PointState:
    """Memory of n material points.

    Parameters
    ----------
    temperature : numpy.ndarray
        Shape (n,), K.
    fictive : numpy.ndarray
        Shape (n_struct, n): partial fictive temperatures, K.
    shear_terms : numpy.ndarray
        Shape (n_shear, comps, n): deviatoric stress of each shear term, Pa.
    bulk_terms : numpy.ndarray
        Shape (n_bulk + 1, n): mean stress of each bulk term, the last one lasting, Pa.
    """

    temperature: Array
    fictive: Array
    shear_terms: Array
    bulk_terms: Array

    def stress(self) -> Array:
        """Stress, shape (comps, n), Pa."""
        return _with_mean(self.shear_terms.sum(axis=0), self.bulk_terms.sum(axis=0))


@dataclass(frozen=True)
class Increment:
    """What a step will do, before its strain is known.

    The stress after the step is ``remembered`` plus the isotropic elastic response with
    ``shear_modulus`` and ``bulk_modulus`` to the strain increment less ``free_strain``.

    Parameters
    ----------
    shear_modulus, bulk_modulus : numpy.ndarray
        Shape (n,): effective moduli of this step, Pa.
    remembered : numpy.ndarray
        Shape (comps, n): what is left of the earlier stress, Pa.
    free_strain : numpy.ndarray
        Shape (n,): linear strain of a stress-free point in this step.
    temperature, fictive : numpy.ndarray
        Shapes (n,) and (n_struct, n): values after the step, K.
    shear_kept, bulk_kept : numpy.ndarray
        Shapes (n_shear, 1, n) and (n_bulk + 1, n): share that each term keeps.
    shear_gain, bulk_gain : numpy.ndarray
        The same shapes: effective share of the modulus that each term brings in this step.
    """

    shear_modulus: Array
    bulk_modulus: Array
    remembered: Array
    free_strain: Array
    temperature: Array
    fictive: Array
    shear_kept: Array
    bulk_kept: Array
    shear_gain: Array
    bulk_gain: Array


def rest(
    material: Material, temperature: Array, comps: int, *, fictive: Array | float | None = None
) -> PointState:
    """Stress-free points.

    Parameters
    ----------
    material : Material
        What they are made of.
    temperature : numpy.ndarray
        Shape (n,), K.
    comps : int
        Number of stress components, at least 3.
    fictive : numpy.ndarray or float, optional
        Fictive temperature, shape () or (n,), K; equilibrium at `temperature` if left out. Annealed
        glass at room temperature has about its annealing point.
    """
    stress = np.zeros((comps, np.size(temperature)))
    return from_elastic(material, temperature, stress, temperature if fictive is None else fictive)


def from_elastic(
    material: Material, temperature: Array, stress: Array, fictive: Array | float
) -> PointState:
    """Points whose stress came about elastically, so that every term holds its share of it.

    Parameters
    ----------
    material : Material
        What they are made of.
    temperature : numpy.ndarray
        Shape (n,), K.
    stress : numpy.ndarray
        Shape (comps, n), Pa.
    fictive : numpy.ndarray or float
        Fictive temperature, shape () or (n,), K.
    """
    law = material.relaxation
    temperature = np.asarray(temperature, dtype=np.float64)
    mean = stress[:3].mean(axis=0)
    partial = np.broadcast_to(fictive, (len(law.structural.weights), temperature.size))
    return PointState(
        temperature=temperature,
        fictive=np.array(partial, dtype=np.float64),
        shear_terms=_shares(law.shear)[:, None, None] * _with_mean(stress, -mean),
        bulk_terms=_shares_and_lasting(law.bulk)[:, None] * mean,
    )


def predict(
    material: Material, state: PointState, temperature: Array, dt: Array | float
) -> Increment:
    """What a step of `dt` seconds to `temperature` does, before its strain is known.

    The reduced time is the shift factor's logarithmic mean over the step, exact where its logarithm
    runs straight; the fictive temperature at the end comes from a first pass with the one at the
    start. Partial fictive temperatures follow a temperature that is linear in reduced time exactly.
    Both make the step second-order and keep it stable at any length.

    Parameters
    ----------
    material : Material
        What the points are made of.
    state : PointState
        Their memory, n points.
    temperature : numpy.ndarray
        Shape (n,): temperature at the end of the step, K.
    dt : float or numpy.ndarray
        Length of the step, s; shape () or (n,).
    """
    law = material.relaxation
    before = fictive_temperature(material, state)
    start = _log_shift(material, state.temperature, before)
    roughly = _reduced(start, _log_shift(material, temperature, before), dt)
    first = _relaxed(law.structural, state, temperature, roughly)
    end = _log_shift(material, temperature, _mean_fictive(law.structural, first))
    reduced = _reduced(start, end, dt)
    fictive = _relaxed(law.structural, state, temperature, reduced)
    shear_kept, shear_gain = _kept_and_gained(law.shear, reduced)
    bulk_kept, bulk_gain = _kept_and_gained(law.bulk, reduced)
    one = np.ones_like(temperature)[None]
    bulk_kept = np.concatenate((bulk_kept, one))
    bulk_gain = np.concatenate(((1 - law.bulk.lasting) * bulk_gain, law.bulk.lasting * one))
    remembered = np.einsum("in,icn->cn", shear_kept, state.shear_terms)
    after = _mean_fictive(law.structural, fictive)
    configurational = law.expansion_liquid - material.expansion_at((before + after) / 2)
    return Increment(
        shear_modulus=material.shear_modulus * shear_gain.sum(axis=0),
        bulk_modulus=material.bulk_modulus * bulk_gain.sum(axis=0),
        remembered=_with_mean(remembered, np.sum(bulk_kept * state.bulk_terms, axis=0)),
        free_strain=material.solid_strain(state.temperature, temperature)
        + configurational * (after - before),
        temperature=np.asarray(temperature, dtype=np.float64),
        fictive=fictive,
        shear_kept=shear_kept[:, None],
        bulk_kept=bulk_kept,
        shear_gain=shear_gain[:, None],
        bulk_gain=bulk_gain,
    )


def finish(
    material: Material, state: PointState, increment: Increment, strain_increment: Array
) -> tuple[PointState, Array]:
    """State and stress after a step whose strain is known.

    Parameters
    ----------
    material : Material
        What the points are made of.
    state : PointState
        Memory before the step, n points.
    increment : Increment
        From `predict`.
    strain_increment : numpy.ndarray
        Shape (comps, n): whole strain increment, free strain included.

    Returns
    -------
    PointState, numpy.ndarray
        Memory after the step, and stress, shape (comps, n), Pa.
    """
    mean = strain_increment[:3].mean(axis=0)
    deviator = _with_mean(strain_increment, -mean)
    after = PointState(
        temperature=increment.temperature,
        fictive=increment.fictive,
        shear_terms=increment.shear_kept * state.shear_terms
        + increment.shear_gain * (2 * material.shear_modulus * deviator),
        bulk_terms=increment.bulk_kept * state.bulk_terms
        + increment.bulk_gain * (3 * material.bulk_modulus * (mean - increment.free_strain)),
    )
    return after, after.stress()


def fictive_temperature(material: Material, state: PointState) -> Array:
    """Fictive temperature of each point, shape (n,), K."""
    return _mean_fictive(material.relaxation.structural, state.fictive)


def viscosity(material: Material, temperature: Array) -> Array:
    """Shear viscosity in structural equilibrium at `temperature` (K, any shape), Pa s."""
    law = material.relaxation
    at_reference = material.shear_modulus * np.dot(law.shear.weights, law.shear.times)
    return np.asarray(at_reference * np.exp(-_log_shift(material, temperature, temperature)))


def shear_left(material: Material, temperature: Array, fictive: Array, seconds: float) -> Array:
    """Share of a shear stress that is left after a hold, structure held too; shape (n,).

    Tells whether points are solid for a time: their shear stress stays.
    """
    reduced = seconds * np.exp(_log_shift(material, temperature, fictive))
    kept, _ = _kept_and_gained(material.relaxation.shear, reduced)
    return np.asarray(np.dot(_shares(material.relaxation.shear), kept))


def _log_shift(material: Material, temperature: Array, fictive: Array) -> Array:
    """Logarithm of the shift factor: reduced seconds a second."""
    law = material.relaxation
    log = law.activation * (1 / law.reference - law.share / temperature - (1 - law.share) / fictive)
    return np.clip(log, -_LOG_LIMIT, _LOG_LIMIT)


def _reduced(start: Array, end: Array, dt: Array | float) -> Array:
    """Reduced time of a step whose log shift goes straight from `start` to `end`, s."""
    return np.asarray(dt * np.exp(np.maximum(start, end)) * _slowed(np.abs(start - end)))


def _slowed(ratio: Array) -> Array:
    """``(1 - exp(-r)) / r``: mean of exp(-t) from 0 to r; 1 at r = 0."""
    safe = np.where(ratio > 0, ratio, 1.0)
    return np.where(ratio > 0, -np.expm1(-safe) / safe, 1.0)


def _relaxed(law: Prony, state: PointState, temperature: Array, reduced: Array) -> Array:
    """Partial fictive temperatures after a step with temperature linear in reduced time, K."""
    ratio = reduced / np.asarray(law.times)[:, None]
    lag = state.fictive - state.temperature
    rise = temperature - state.temperature
    return np.asarray(temperature + lag * np.exp(-ratio) - rise * _slowed(ratio))


def _mean_fictive(law: Prony, partial: Array) -> Array:
    return np.asarray(np.dot(law.weights, partial))


def _kept_and_gained(law: Prony, reduced: Array) -> tuple[Array, Array]:
    """What each term keeps, and the share of the modulus that it gains; shapes (terms, n)."""
    ratio = reduced / np.array(law.times, dtype=np.float64)[:, None]
    return np.exp(-ratio), _shares(law)[:, None] * _slowed(ratio)


def _shares(law: Prony) -> Array:
    return np.array(law.weights, dtype=np.float64)


def _shares_and_lasting(law: Prony) -> Array:
    return np.append((1 - law.lasting) * _shares(law), law.lasting)


def _with_mean(deviator: Array, mean: Array) -> Array:
    """`deviator` with `mean` added to its normal components."""
    stress = deviator.copy()
    stress[:3] += mean
    return stress
