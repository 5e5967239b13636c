"""What a fit says, in plain English."""

from collections.abc import Mapping

from demo_app.content.fitting.records import Fit

TEXTS: Mapping[str, str] = {
    "nothing": "These readings do not tell {name}: all of {from_:.4g} to {to:.4g} suits them.",
    "inconsistent": "The readings contradict each other, or the model: so large a misfit has odds "
    "of {chance:.1g}. {name} is perhaps {low:.4g} to {high:.4g}. Check the worst, {worst}.",
    "several": "Several values of {name} suit the readings: {regions}. Take another reading.",
    "open_low": "{name} is at most {high:.4g}; how small it is these readings do not tell.",
    "open_high": "{name} is at least {low:.4g}; how large it is these readings do not tell.",
    "wide": "{name} is {value:.4g}, but anything from {low:.4g} to {high:.4g} suits (95 %).",
    "found": "{name} is {value:.4g}, from {low:.4g} to {high:.4g} with 95 %.",
}


def words(fit: Fit, name: str, texts: Mapping[str, str] = TEXTS) -> str:
    """The gravest note of a fit as a sentence; `name` is the unknown's in it."""
    worst = max(fit.compared, key=lambda one: abs(one.pull))
    return texts[fit.verdict].format(
        name=name,
        value=fit.value,
        low=fit.low,
        high=fit.high,
        from_=fit.unknown.low,
        to=fit.unknown.high,
        chance=fit.chance,
        worst=f"{worst.observed.reading} {worst.observed.value:g}",
        regions="; ".join(f"{low:.4g} to {high:.4g}" for low, high in fit.regions),
    )
