"""What the answers of the page `bubbles` say in plain words."""

TEXTS = {
    "behave": "Each behaves",
    "count": "Behave on stage",
    "blow_breaks": "The blow breaks it already",
    "scratch_breaks": "The scratch breaks it",
    "scratch_needed": "Scratch that bursts nine of ten",
    "blow_borne": "Blow that 19 of 20 bear",
    "base_outside": "Foot, outside",
    "base_inside": "Foot, inside",
    "show": "Of {batch:.0f} on stage, {low:.0f} to {high:.0f} bear a blow of {blow:.1f} J and then "
    "burst at a scratch of {scratch:.0f} µm; {middle:.0f} is the middle.",
    "none_behave": "Of {batch:.0f} on stage, none is likely to bear a blow of {blow:.1f} J and "
    "then burst at a scratch of {scratch:.0f} µm.",
    "need": "For nine of ten to burst, scratch {scratch:.0f} µm deep; for all but one in twenty "
    "to bear the blow, keep it under {blow:.1f} J.",
    "need_none": "No scratch up to half the foot bursts most of these: their foot is too thin, or "
    "they were cooled too slowly, to hold enough pull inside.",
    "calm": "Cooled in the oven they hold hardly any stress: they are ordinary flasks, and the "
    "scratch does nothing. That is what the oven is for.",
    "spare": "Bring {spare:.0f} for {batch:.0f} that behave, to be right nineteen times in twenty.",
    "counts": "How many behave",
    "number": "how many",
    "odds": "odds",
    "flasks": "odds of so many",
    "limit_maker": "Every flask leaves the pipe at one temperature, {hot:.0f} °C, round and "
    "centred; a seed, a stone or a foot that is out of the middle makes it weaker.",
    "limit_scratch": "A scratch scatters by a factor of 1.3 about the depth that is meant "
    "(assumed), and is as long as it is deep several times over.",
    "limit_blow": "The blow is soft, in the middle of the foot: a hard, sharp one bruises the "
    "glass first. Outside are the flaws of used ware; inside nothing has touched the glass.",
    "limit_wait": "A flask may burst on its own, at any time and in anybody's hand. Count only "
    "with the tests that are made behind a screen.",
}
