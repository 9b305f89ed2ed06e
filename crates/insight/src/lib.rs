//! What a class's reports say: weak spots, trend, calibration, groups, talk
//! plan, disclosure control.
//!
//! Every estimate comes with its uncertainty, and every function takes plain
//! values: the caller maps dates to pass numbers and students and concepts to
//! indices. Formulas, sources and measured figures: `docs/insight.md`.

pub mod calibration;
pub mod disclosure;
pub mod evidence;
pub mod groups;
pub mod stats;
pub mod talk;
pub mod trend;
pub mod weak_spot;

pub use evidence::{Evidence, EvidenceError, PracticeCount};
