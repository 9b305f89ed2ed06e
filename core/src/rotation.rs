//! Which concept stands on which day of the rotation, and in which phase.
