"""What the scene `touch` calls its readings and curves, and its sentences."""

from demo_app.scenes.scene import Reading

READINGS = (
    Reading("spot_C", "Hottest place", "°C", "Mean through the thickness; largest over the run."),
    Reading("crack_runs", "The crack runs", "", "Whether the old crack has grown."),
    Reading("crack_length_mm", "Crack length", "mm", "Where its tip is now."),
    Reading("intensity_ratio", "K over K_IC", "", "Of the crack, at its peak."),
    Reading("tension_MPa", "Largest pull", "MPa", "Over the run; without what a crack adds."),
    Reading("compression_MPa", "Largest squeeze", "MPa", "Over the run; without a crack."),
    Reading("retardation_peak_nm", "Retardation peak", "nm", "Over the run; without a crack."),
    Reading("fade_half_s", "Fades to half in", "s", "Largest retardation, since it was let go."),
)

TRACES = (
    Reading("spot_C", "Hottest place", "°C"),
    Reading("tension_MPa", "Largest pull", "MPa"),
    Reading("retardation_nm", "Retardation", "nm"),
    Reading("intensity_ratio", "K over K_IC", ""),
)

TEXTS = {
    "cold": "The plate is evenly cool and free of stress: between the polarizers it stays dark.",
    "warming": "The warm spot wants to grow, the cool glass around it holds it back: it is "
    "squeezed with {squeeze:.1f} MPa, and around it the glass is pulled with {pull:.1f} MPa.",
    "faint": "The spot is {rise:.1f} °C warmer than the plate. With {nm:.0f} nm of retardation "
    "that is too faint to see unless the picture is brightened.",
    "hard_pull": "The glass is pulled with {pull:.0f} MPa. An ordinary plate holds about "
    "{strength:.0f}: a real one may well crack here.",
    "just_let_go": "The tip is gone, but the picture stays: it is the warmth in the glass that "
    "you see, {rise:.0f} °C more than around it.",
    "fading": "The warmth spreads, nothing pulls so hard any more, and the picture fades: it "
    "took {half:.0f} s to half.",
    "gone": "The plate is even again and the picture is dark: glass that only got warm keeps "
    "nothing.",
    "crack_waits": "The crack is pulled open with {percent:.0f} % of what it needs to run.",
    "crack_ran": "The crack has run to {length:.0f} mm and stopped: at its tip the glass is no "
    "longer pulled apart hard enough. What it cut through has let go of its stress.",
    "parted": "The crack ran all through the plate, {at:.1f} s after the start: two pieces, "
    "and nothing pulls across the cut any more.",
}
