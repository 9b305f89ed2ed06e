//! What was removed from the desk, held in memory for a while so that it can be
//! brought back. On the disk it is gone at once; closing the program ends it here too.

use crate::app::{App, lock};
use crate::{CallError, Nothing, Removed, RemovedId, RemovedWhat, Start, StoreName, World};
use std::sync::Arc;
use std::time::{Duration, Instant};
use surefoot_desk::{self, OpenClass};
use surefoot_store::desk::RemovedRows;

/// How long a removal can be taken back.
const HELD_FOR: Duration = Duration::from_mins(10);

/// Removals held at once at most; then the oldest is let go of.
const MOST_HELD: usize = 20;

/// The removals that can be taken back, oldest first.
#[derive(Default)]
pub(crate) struct Held {
    last_number: u32,
    removals: Vec<Removal>,
}

struct Removal {
    world: World,
    about: Removed,
    rows: RemovedRows,
    since: Instant,
}

impl Held {
    fn let_old_go(&mut self) {
        self.removals.retain(|one| one.since.elapsed() < HELD_FOR);
    }
}

impl App {
    /// Holds what was removed.
    pub(crate) fn hold(&self, class: &OpenClass, what: RemovedWhat, rows: RemovedRows) {
        let mut held = lock(&self.held);
        held.last_number += 1;
        let removal = Removal {
            world: self.world(),
            about: Removed {
                number: held.last_number,
                class: class.row.id.clone(),
                title: class.row.title.clone(),
                what,
            },
            rows,
            since: Instant::now(),
        };
        held.removals.push(removal);
        if held.removals.len() > MOST_HELD {
            held.removals.remove(0);
        }
        drop(held);
        // Let go of when its time is up, whether anybody asks or not. Should no
        // thread be had, it is let go of at the next look instead.
        let held = Arc::downgrade(&self.held);
        let _ = std::thread::Builder::new()
            .name("surefoot-held".into())
            .spawn(move || {
                std::thread::sleep(HELD_FOR);
                if let Some(held) = held.upgrade() {
                    lock(&held).let_old_go();
                }
            });
    }

    /// Lets go of all that was removed.
    pub(crate) fn drop_held(&self) {
        lock(&self.held).removals.clear();
    }

    /// What was removed from the desk that is open, while it can be brought back,
    /// the newest first.
    pub(crate) fn removed(&self) -> Vec<Removed> {
        let world = self.world();
        let mut held = lock(&self.held);
        held.let_old_go();
        (held.removals.iter().rev())
            .filter(|one| one.world == world)
            .map(|one| one.about.clone())
            .collect()
    }

    /// Brings back something that was removed.
    ///
    /// # Errors
    /// [`CallError::NotFound`] when its time is up, [`CallError::Invalid`] when
    /// its place was given away, or the store's.
    pub fn restore(&self, id: RemovedId) -> Result<Start, CallError> {
        let world = self.world();
        self.with_desk(|desk| {
            let mut held = lock(&self.held);
            held.let_old_go();
            let place = (held.removals.iter())
                .position(|one| one.world == world && one.about.number == id.number)
                .ok_or_else(|| CallError::NotFound {
                    what: "removed".into(),
                })?;
            surefoot_desk::restore(desk, &held.removals[place].rows)?;
            held.removals.remove(place);
            drop(held);
            self.keep_copy(&StoreName::Desk, true, |into| desk.copy_into(into));
            Ok(())
        })?;
        self.start(Nothing {})
    }

    /// Lets go of something that was removed, so that nobody can bring it back.
    ///
    /// # Errors
    /// The store's.
    pub fn discard(&self, id: RemovedId) -> Result<Start, CallError> {
        lock(&self.held)
            .removals
            .retain(|one| one.about.number != id.number);
        self.start(Nothing {})
    }
}
