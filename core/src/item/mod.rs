//! Exercises: structured prompt, figure, exact answer, steps, hints, misconceptions.
