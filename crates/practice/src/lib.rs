//! Practice at home: evidence, the estimate of what a student knows, tonight's queue with its
//! reasons, and a simulator that measures them.
//!
//! [`StudentMemory`] is rebuilt from events and never stored. It plans the queue from the
//! events, the class's plan and the evening. The simulator and an outside program drive the
//! same functions through [`rehearsal`].
//!
//! This crate must not know stores, screens or files. It reads no clock and draws nothing:
//! dates and seeds are arguments.
#![cfg_attr(not(test), deny(clippy::indexing_slicing))]

pub mod estimate;
mod event;
pub mod evidence;
pub mod fit;
pub mod memory;
mod queue;
pub mod rehearsal;
pub mod simulate;
mod student_memory;
pub mod workload;

pub use event::{Assigned, ConceptFacts, Evening, Event, EventKind, QueueEntry};
pub use student_memory::StudentMemory;
