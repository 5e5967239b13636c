"""The Plan body: a plate seen face-on, plane-stress finite elements, layers through its half."""
