//! What was removed last, held in memory for a while so that it can be brought
//! back. On the disk it is gone at once; closing the program ends it here too.

use crate::app::{App, lock};
use crate::{CallError, Nothing, Removed, Start, StoreName, World};
use std::sync::Arc;
use std::time::{Duration, Instant};
use surefoot_core::store::desk::HeldRows;
use surefoot_core::teacher;

/// How long a removal can be taken back.
const HELD_FOR: Duration = Duration::from_mins(10);

/// A removal that can be taken back.
pub(crate) struct Held {
    world: World,
    about: Removed,
    rows: HeldRows,
    since: Instant,
}

impl Held {
    fn is_over(&self) -> bool {
        self.since.elapsed() >= HELD_FOR
    }
}

impl App {
    /// Holds what was removed, in place of what was held before.
    pub(crate) fn hold(&self, about: Removed, rows: HeldRows) {
        let since = Instant::now();
        *lock(&self.held) = Some(Held {
            world: self.world(),
            about,
            rows,
            since,
        });
        // Let go of when its time is up, whether anybody asks or not. Should no
        // thread be had, it is let go of at the next look instead.
        let held = Arc::downgrade(&self.held);
        let _ = std::thread::Builder::new()
            .name("surefoot-held".into())
            .spawn(move || {
                std::thread::sleep(HELD_FOR);
                if let Some(held) = held.upgrade() {
                    let mut held = lock(&held);
                    if held.as_ref().is_some_and(Held::is_over) {
                        *held = None;
                    }
                }
            });
    }

    /// Lets go of what was removed.
    pub(crate) fn drop_held(&self) {
        *lock(&self.held) = None;
    }

    /// What was removed last from the desk that is open, while it can be brought back.
    pub(crate) fn removed(&self) -> Option<Removed> {
        let mut held = lock(&self.held);
        if held.as_ref().is_some_and(Held::is_over) {
            *held = None;
        }
        let world = self.world();
        held.as_ref()
            .filter(|held| held.world == world)
            .map(|held| held.about.clone())
    }

    /// Brings back what was removed last.
    ///
    /// # Errors
    /// [`CallError::NotFound`] when its time is up, [`CallError::Invalid`] when
    /// its place was given away, or the store's.
    pub fn bring_back(&self, _: Nothing) -> Result<Start, CallError> {
        let gone = || CallError::NotFound {
            what: "removed".into(),
        };
        self.removed().ok_or_else(gone)?;
        self.with_desk(|desk| {
            let mut held = lock(&self.held);
            teacher::bring_back(desk, &held.as_ref().ok_or_else(gone)?.rows)?;
            *held = None;
            drop(held);
            self.keep_copy(&StoreName::Desk, true, |into| desk.copy_into(into));
            Ok(())
        })?;
        self.start(Nothing {})
    }

    /// Lets go of what was removed, so that nobody can bring it back.
    ///
    /// # Errors
    /// The store's.
    pub fn let_go(&self, _: Nothing) -> Result<Start, CallError> {
        self.drop_held();
        self.start(Nothing {})
    }
}
