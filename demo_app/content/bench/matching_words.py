"""What the answers of the page `matching` say in plain words."""

TEXTS = {
    "jets": "Cooling coefficient of the jets",
    "thickness": "Thickness",
    "flame": "Heat of the flame",
    "chance": "If all is as stated, three readings fit that badly or worse {chance:.0f} times in "
    "100.",
    "found": "{name}: {value:.3g} {unit}, from {low:.3g} to {high:.3g} with 95 %.",
    "wide": "{name}: {value:.3g} {unit}, but anything from {low:.3g} to {high:.3g} suits. Read "
    "again, or more closely.",
    "nothing": "These readings do not tell: everything from {low:.3g} to {high:.3g} {unit} suits "
    "them.",
    "inconsistent": "The readings contradict each other, or the model; at best {value:.3g} {unit}, "
    "perhaps {low:.3g} to {high:.3g}. Check the readings, and what is stated beside them.",
    "several": "Several values suit, between {low:.3g} and {high:.3g} {unit}. Read something else "
    "as well.",
    "open_low": "At most {high:.3g} {unit}; how little these readings do not tell.",
    "open_high": "At least {low:.3g} {unit}; how much these readings do not tell.",
    "usable": "It may be kept as a device of this site.",
    "not_usable": "Do not keep it as a device: it is not known well enough.",
    "compared": "Readings beside the fitted model",
    "reading": "reading",
    "read": "read",
    "fitted": "model",
    "pull": "apart by (of its doubt)",
    "surface_MPa": "squeeze at the surface, MPa",
    "centre_MPa": "pull in the middle, MPa",
    "edge_nm": "edge-on at the skin, nm",
    "neutral_um": "depth without stress, µm",
    "first_C": "°C at the first time",
    "second_C": "°C at the second time",
    "third_C": "°C at the third time",
    "unknown": "unknown",
    "modelled": "reading",
    "limit_fit": "Least squares for one unknown; everything else is taken as stated. The interval "
    "holds the truth in 95 of 100 cases if the uncertainties are as stated.",
    "limit_plate": "The plate is wide and cooled alike on both faces.",
    "limit_burner": "Temperatures are those of the outside in the middle of the ring, of a bottle "
    "that turns, while the flame burns.",
}
