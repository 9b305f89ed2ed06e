//! Removes a seat or a class, and undoes a removal.

use super::removed::{KEPT_FOR, Removed, RemovedWhat};
use super::{ClassId, DeskDoor, SeatId};
use crate::context::copies::StoreName;
use crate::context::erase::rewrite_desk;
use crate::context::random;
use crate::context::values::Nothing;
use crate::error::CallError;
use crate::lock::lock;
use serde::{Deserialize, Serialize};
use std::sync::Arc;
use surefoot_desk::ClassSetup;
use surefoot_desk::OpenClass;
use surefoot_record::Thing;
use surefoot_store::DeskStore;
use surefoot_store::desk::RemovedRows;
use ts_rs::TS;

/// A removal by its number.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct RemovedId {
    /// Its number.
    pub number: u32,
}

impl DeskDoor {
    /// Removes rows from the desk and from its copies on this device. They can be restored from
    /// memory for ten minutes.
    pub(crate) fn remove_from_desk(
        &self,
        class: &str,
        what: impl FnOnce(&OpenClass) -> RemovedWhat,
        work: impl FnOnce(&DeskStore) -> Result<RemovedRows, CallError>,
    ) -> Result<(), CallError> {
        self.context.none_running()?;
        let path = self.context.data().desk();
        // While another program has the desk open, it cannot be written anew; so nothing is removed.
        let alone = || Ok(surefoot_store::nobody_has_open(&path)?);
        self.stores.while_closed(&path, alone)?;
        self.with_desk(|desk| {
            let class = surefoot_desk::open_class(desk, class)?;
            let what = what(&class);
            self.keep_removed(&class, what, work(desk)?);
            desk.remove_empty_imports()?;
            self.context.wipe_copies(&StoreName::Desk)
        })?;
        self.stores.while_closed(&path, || rewrite_desk(&path))?;
        // Opening it makes today's copy.
        self.with_desk(|_| Ok(()))
    }

    /// Removes a seat with its reports, and the copies of the desk that hold it. It can be restored
    /// for ten minutes.
    pub fn remove_seat(&self, id: SeatId) -> Result<ClassSetup, CallError> {
        let what = |class: &OpenClass| {
            let seat = class.seats.iter().find(|seat| seat.number == id.seat);
            RemovedWhat::Seat {
                seat: id.seat,
                name: seat.and_then(|seat| seat.name.clone()),
            }
        };
        let seed = random::bytes()?;
        self.remove_from_desk(&id.class, what, |desk| {
            Ok(surefoot_desk::remove_seat(desk, &id.class, id.seat, &seed)?)
        })?;
        self.setup_after(&id.class, |_| Ok(()))
    }

    /// Removes a class with its reports, and the copies of the desk that hold it. It can be restored
    /// for ten minutes.
    pub fn delete_class(&self, id: ClassId) -> Result<Nothing, CallError> {
        self.remove_from_desk(
            &id.class,
            |_| RemovedWhat::Class,
            |desk| Ok(surefoot_desk::delete_class(desk, &id.class)?),
        )?;
        Ok(Nothing {})
    }

    /// Keeps removed rows for ten minutes.
    pub(super) fn keep_removed(&self, class: &OpenClass, what: RemovedWhat, rows: RemovedRows) {
        let row = &class.row;
        lock(&self.removed).add(
            self.context.world(),
            row.id.clone(),
            row.title.clone(),
            what,
            rows,
        );
        // A thread discards them when the time is up. If none can be started, the next use of the
        // removals does.
        let removed = Arc::downgrade(&self.removed);
        let _ = std::thread::Builder::new()
            .name("surefoot-removed".into())
            .spawn(move || {
                std::thread::sleep(KEPT_FOR);
                if let Some(removed) = removed.upgrade() {
                    lock(&removed).discard_old();
                }
            });
    }

    /// Discards all removals.
    pub(crate) fn discard_all_removed(&self) {
        lock(&self.removed).discard_all();
    }

    /// The removals that can be undone, newest first.
    pub(crate) fn removed(&self) -> Vec<Removed> {
        lock(&self.removed).list(self.context.world())
    }

    /// Undoes a removal.
    ///
    /// # Errors
    /// Returns [`CallError::NotFound`] if its time is up, [`CallError::Invalid`] if its seat number
    /// or id is in use.
    pub fn restore_removed(&self, id: RemovedId) -> Result<Nothing, CallError> {
        let world = self.context.world();
        self.with_desk(|desk| {
            let mut removed = lock(&self.removed);
            let rows = removed.rows(world, id.number).ok_or(CallError::NotFound {
                what: Thing::Removed,
            })?;
            surefoot_desk::restore(desk, rows)?;
            removed.discard(id.number);
            drop(removed);
            self.context
                .keep_copy(&StoreName::Desk, true, |into| desk.copy_into(into));
            Ok(Nothing {})
        })
    }

    /// Discards a removal, so that nobody can undo it.
    pub fn discard_removed(&self, id: RemovedId) -> Result<Nothing, CallError> {
        lock(&self.removed).discard(id.number);
        Ok(Nothing {})
    }
}
