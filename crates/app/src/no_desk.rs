//! The teacher's side of a program that has only a student's side: no classes, no lock, nothing to
//! remove.

use crate::context::Context;
use crate::context::file_dialogs::FileSource;
use crate::context::open_stores::OpenStores;
use crate::error::CallError;
use lock_view::DeskLock;
use removed::Removed;
use serde::{Deserialize, Serialize};
use std::sync::Arc;
use surefoot_record::Thing;
use surefoot_store::DeskStore;
use ts_rs::TS;

#[path = "desk/lock_view.rs"]
pub mod lock_view;

pub mod removed {
    //! Removals that can be undone: none.

    use serde::{Deserialize, Serialize};
    use ts_rs::TS;

    /// A removal that can be undone.
    #[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
    pub enum Removed {}
}

/// A class of the desk.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub enum ClassSummary {}

/// The door of a desk that is not there.
pub struct DeskDoor {
    pub(crate) stores: OpenStores<DeskStore>,
}

const NO_DESK: CallError = CallError::NotFound { what: Thing::Desk };

impl DeskDoor {
    pub(crate) fn new(_: Arc<Context>) -> Self {
        Self {
            stores: OpenStores::default(),
        }
    }

    pub(crate) fn classes(&self) -> Result<Vec<ClassSummary>, CallError> {
        Ok(Vec::new())
    }

    pub(crate) fn removed(&self) -> Vec<Removed> {
        Vec::new()
    }

    pub(crate) fn lock_state(&self) -> DeskLock {
        DeskLock {
            has_lock: false,
            locked: false,
            idle_minutes: None,
        }
    }

    pub(crate) fn refuse_locked(&self) -> Result<(), CallError> {
        Ok(())
    }

    /// Refuses a hand-in, which only a desk can read.
    pub(crate) fn add_waiting(&self, _: FileSource) -> Result<(), CallError> {
        Err(NO_DESK)
    }

    pub(crate) fn waiting_count(&self) -> usize {
        0
    }

    pub(crate) fn finish_lock_at_start(&self) {}

    pub(crate) fn discard_all_removed(&self) {}

    pub(crate) fn look_again(&self) {}

    pub(crate) fn forget_folder(&self) {}
}
