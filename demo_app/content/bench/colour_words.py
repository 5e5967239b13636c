"""What the answers of the page `colour` say in plain words."""

TEXTS = {
    "retardation": "Retardation",
    "odds_of_it": "It is this one",
    "order": "Order",
    "stress": "Stress (difference)",
    "one": "{colour}, order {order:.1f}: {low:.0f} to {high:.0f} nm, that is a stress of "
    "{weak:.2g} to {strong:.2g} MPa along {path:g} mm of glass.",
    "several": "Two or more retardations show this colour: {list}. Look again with the tint plate, "
    "once where it adds and once where it takes away.",
    "told_apart": "The tint plate has told them apart.",
    "dark": "Near black a colour says little: put the tint plate in, which turns a few nm into "
    "blue or yellow.",
    "turned": "{order:.2f} orders of {wave:.0f} nm: {low:.0f} to {high:.0f} nm, that is a stress "
    "of {weak:.2g} to {strong:.2g} MPa along {path:g} mm of glass.",
    "which": "Which of both directions is pulled, a colour alone does not tell; the plate does: "
    "where it adds, its slow axis lies along the larger pull.",
    "candidates": "What shows this colour",
    "low": "from",
    "middle": "most likely",
    "high": "to",
    "weak": "stress from",
    "strong": "to",
    "odds": "odds",
    "bare_word": "plain",
    "adds_word": "plate adds",
    "takes_word": "plate takes away",
    "chart": "The chart: colours by retardation, without the plate",
    "chart_adds": "With the plate, where it adds",
    "chart_takes": "With the plate, where it takes away",
    "limit_difference": "The stress is the difference of the two principal stresses, averaged "
    "along the light, and as if it were the same all the way.",
    "limit_axis": "The stress lies at 45 degrees to the polarizers: elsewhere the colour is the "
    "same but darker, and along them there is none.",
    "limit_dispersion": "The glass's own dispersion of birefringence and the projector's or "
    "camera's colours are left out; beyond the third order colours are too pale to trust.",
    "limit_match": "How closely eyes match a colour is a guess that you state; the ranges follow "
    "it, and the coefficient of the glass within 3 %.",
    "limit_turning": "The polarizers must lie along and across the stress, with quarter-wave "
    "plates for that colour, or one quarter-wave plate along the polarizer (Sénarmont).",
}
