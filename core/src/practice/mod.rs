//! Home practice: memory, evidence, what is believed of a student, tonight's
//! queue with its reasons, and a simulator to measure it by.

pub mod estimate;
mod event;
pub mod evidence;
pub mod memory;
pub mod queue;
mod reason;
pub mod rehearsal;
pub mod simulate;

pub use event::{Assigned, ConceptFacts, Evening, Event, EventKind, QueueEntry};
pub use queue::StudentMemory;
pub use reason::Reason;
