//! Home practice: memory, evidence, tonight's queue with its reasons.

pub mod evidence;
pub mod memory;
pub mod queue;
mod reason;

pub use queue::{Assigned, ConceptFacts, Evening, Event, EventKind, QueueEntry, StudentMemory};
pub use reason::Reason;
