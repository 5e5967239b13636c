"""What the answers of the page `flame` say in plain words."""

TEXTS = {
    "opens": "Window opens",
    "closes": "Window closes",
    "best_s": "Best time in the flame",
    "best_odds": "Cracks when the drop lands",
    "best_alone": "Cracks by itself or sags",
    "best_none": "Does not crack",
    "window": "Leave the bottle in the flame for {opens:.0f} to {closes:.0f} s: then the crack "
    "comes when the drop lands in {want:.0f} of 100 tries or more.",
    "surest": "Between {opens:.0f} and {closes:.0f} s that holds for nineteen of twenty bottles, "
    "however they fall within the tolerances.",
    "no_surest": "No single time suits all bottles within the tolerances: measure walls and flame "
    "better, or try one first.",
    "no_window": "No time in the flame gives {want:.0f} %: at best {odds:.0f} %, after {best:.0f} "
    "s. A deeper score, another flame or a quicker drop may help.",
    "open_end": "It would stay good for longer than the {longest:.0f} s that were looked at.",
    "wait_cold": "Shorter, and the drop finds the ring too cool: nothing happens. Longer, and heat "
    "alone cracks it, before the drop.",
    "fates": "What happens, by time in the flame",
    "seconds": "time in the flame",
    "odds": "odds",
    "drop": "cracks at the drop",
    "alone": "by itself, or sags",
    "none": "does not crack",
    "want": "wanted",
    "limit_ring": "The flame is a ring that burns evenly around a turning bottle, and the drop a "
    "full ring of water. A bottle that does not turn is another case.",
    "limit_followed": "Each bottle is heated once; what the drop does is run at a few heating "
    "times and interpolated between them.",
    "limit_score": "The score's depth scatters by a factor of 1.3 about what is stated (hand "
    "scoring, assumed), and old scratches elsewhere are those of ordinary handled ware.",
    "limit_sag": "Sagging is taken to begin where the ring's outside reaches the softening point.",
}
