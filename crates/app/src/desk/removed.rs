//! Removed rows of the desk, kept in memory so that they can be restored. The disk does not hold
//! them any more. They are discarded after ten minutes and when the program ends.

use crate::context::settings::World;
use serde::{Deserialize, Serialize};
use std::time::{Duration, Instant};
use surefoot_store::desk::RemovedRows;
use ts_rs::TS;

/// The time for which a removal can be undone.
pub(super) const KEPT_FOR: Duration = Duration::from_mins(10);

/// Removals kept at most; one more discards the oldest.
const MOST_KEPT: usize = 20;

/// A removal that can be undone.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Removed {
    /// Its number, to restore or discard it.
    pub number: u32,
    /// The class.
    pub class: String,
    /// The title of the class.
    pub title: String,
    /// What was removed.
    pub what: RemovedWhat,
}

/// What was removed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum RemovedWhat {
    /// The whole class.
    Class,
    /// A seat.
    Seat {
        /// Its number.
        seat: u32,
        /// Its name.
        name: Option<String>,
    },
    /// A seat whose student moved to another class.
    Moved {
        /// The number of the seat.
        seat: u32,
        /// The student's name.
        name: Option<String>,
        /// The title of the other class.
        to: String,
    },
    /// An own exercise.
    OwnExercise,
    /// The exercises or concepts of an import.
    OwnImport,
}

/// The removals that can be undone, oldest first.
#[derive(Default)]
pub(super) struct Removals {
    last_number: u32,
    removals: Vec<Removal>,
}

struct Removal {
    world: World,
    about: Removed,
    rows: RemovedRows,
    since: Instant,
}

impl Removals {
    pub(super) fn add(
        &mut self,
        world: World,
        class: String,
        title: String,
        what: RemovedWhat,
        rows: RemovedRows,
    ) {
        self.last_number += 1;
        self.removals.push(Removal {
            world,
            about: Removed {
                number: self.last_number,
                class,
                title,
                what,
            },
            rows,
            since: Instant::now(),
        });
        if self.removals.len() > MOST_KEPT {
            self.removals.remove(0);
        }
    }

    pub(super) fn discard_old(&mut self) {
        self.removals.retain(|one| one.since.elapsed() < KEPT_FOR);
    }

    pub(super) fn discard(&mut self, number: u32) {
        self.removals.retain(|one| one.about.number != number);
    }

    pub(super) fn discard_all(&mut self) {
        self.removals.clear();
    }

    /// The removals of one world, the newest first.
    pub(super) fn list(&mut self, world: World) -> Vec<Removed> {
        self.discard_old();
        (self.removals.iter().rev())
            .filter(|one| one.world == world)
            .map(|one| one.about.clone())
            .collect()
    }

    /// The rows of a removal.
    pub(super) fn rows(&mut self, world: World, number: u32) -> Option<&RemovedRows> {
        self.discard_old();
        (self.removals.iter())
            .find(|one| one.world == world && one.about.number == number)
            .map(|one| &one.rows)
    }
}
