//! Home practice: memory, evidence, tonight's queue with its reasons.

mod reason;

pub use reason::Reason;
