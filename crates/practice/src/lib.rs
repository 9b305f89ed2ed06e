//! Home practice: memory, evidence, what is believed of a student, tonight's
//! queue with its reasons, and a simulator to measure it by.

pub mod estimate;
mod event;
pub mod evidence;
pub mod fit;
pub mod memory;
mod queue;
mod reason;
pub mod rehearsal;
pub mod simulate;
mod student_memory;
pub mod workload;

pub use event::{Assigned, ConceptFacts, Evening, Event, EventKind, QueueEntry};
pub use reason::Reason;
pub use student_memory::StudentMemory;
