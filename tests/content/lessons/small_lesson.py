"""A small lesson in order, for tests that break it in one place."""

GOOD = """\
+++
title = "Small"
aim = "See."
ages = [9, 11]
minutes = 20
language = "en"
profile = "no-flame-no-breakage"
allows = ["allergens", "simulated-breakage"]

[simulated]
says = "The screen simulates it."
not_at_home = "Do not pull until it snaps."

[[kit]]
name = "gelatine"
count = "1"
hazards = ["allergens"]
note = "Ask first."

[[misconception]]
id = "none"
text = "Nothing happens."
source = "A paper."
read = false
meet = "Show it."

[[misconception]]
id = "double"
text = "All doubles."
source = "Another."
read = true
meet = "Count."

[[curriculum]]
code = "X-1"
wording = "See things."
source = "A standard."
read = false
+++

# Small

## Welcome: Hello

```toml
minutes = 2
```

Say hello.

## Predict: Pull

```toml
minutes = 4
scene = "push-pull"
settings = { kind = "bar-pulled", material = "polystyrene", load = 100, crack_mm = 0 }

[question]
ask = "Twice the pull: what then?"
reading = "retardation_middle_nm"
settings = { load = 200 }
answers = [
    { text = "Nothing", below = 75, belief = "none" },
    { text = "Twice as much", from = 75, below = 150 },
    { text = "Far more", from = 150, belief = "double" },
]
```

Letters first.

## Observe: Watch

```toml
minutes = 3
scene = "push-pull"
settings = { kind = "bar-pulled", material = "polystyrene", load = 200, crack_mm = 0 }
hazards = ["allergens"]
```

- Look.
- Press the cube.

## Explain: Why

```toml
minutes = 3
```

It is so.

## Challenge: Purple

```toml
minutes = 6
scene = "push-pull"
settings = { kind = "bar-bent", material = "polystyrene", load = 100, crack_mm = 0 }

[bounds]
load = [0, 600]

[challenge]
ask = "Make it purple."
goals = [{ of = "retardation_middle_nm", from = 520, below = 590 }]
settings = { load = 245 }
hint = "More."
least = "tension_MPa"
```

One after the other.

## Worksheet

```toml
[[item]]
id = "one"
ask = "Each hand pulls with {load} N. How large is the pull inside? (100 N: {given}.)"
scene = "push-pull"
settings = { kind = "bar-pulled", material = "polystyrene", crack_mm = 0 }
vary = { load = [200, 400] }
reading = "pulled_N"
tolerance_pct = 5
because = "It is one hand's."
given = { settings = { load = 100 } }
wrong = [
    { belief = "double", times = 2 },
    { belief = "none", value = 0 },
    { belief = "double", settings = { load = 300 } },
]

[[item]]
id = "two"
ask = "Each hand pulls with {load} N. By how much is the light turned?"
scene = "push-pull"
settings = { kind = "bar-pulled", material = "polystyrene", crack_mm = 0 }
vary = { load = [200, 400] }
reading = "retardation_middle_nm"
tolerance_pct = 5
because = "In step."
wrong = [
    { belief = "double", settings = { load = 200 } },
    { belief = "double", settings = { load = 400 } },
    { belief = "double", settings = { load = 600 } },
    { belief = "none", value = 0 },
]

[[item]]
id = "three"
ask = "A bar is bent by {load} N. What is left of pull less squeeze?"
scene = "push-pull"
settings = { kind = "bar-bent", material = "polystyrene", crack_mm = 0 }
vary = { load = [200, 400] }
reading = "net_force_N"
tolerance = 5
because = "Nothing."
wrong = [
    { belief = "double", reading = "pulled_N" },
    { belief = "double", reading = "squeezed_N" },
    { belief = "none", reading = "pulled_N", times = 2, plus = 7 },
]

[[item]]
id = "four"
ask = "Each hand squeezes with {load} N. How large is the squeeze?"
scene = "push-pull"
settings = { kind = "bar-squeezed", material = "polystyrene", crack_mm = 0 }
vary = { load = [200, 400] }
reading = "squeezed_N"
tolerance_pct = 5
because = "It is one hand's."
wrong = [
    { belief = "double", times = 2 },
    { belief = "none", value = 0 },
    { belief = "double", times = 0.5 },
]
```

## Exit question

Why?

Because.

## At home

- Look.
"""
