//! Moves a student to another class, a device to the right seat, and hands a student on to a
//! colleague by a transfer.

use super::removed::RemovedWhat;
use super::{DeskDoor, SeatId};
use crate::context::file_dialogs::FileKind;
use crate::context::picked::{OpenSealed, PickedSealed};
use crate::context::random;
use crate::context::values::{FileMade, Nothing};
use crate::error::CallError;
use serde::{Deserialize, Serialize};
use surefoot_desk::{ClassSetup, TransferHoldings, TransferTaken};
use surefoot_exchange::{TRANSFER_CAPS, file_signs, open_transfer};
use ts_rs::TS;

/// A student's move to another class of this desk.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct SeatMove {
    /// The class that the student leaves.
    pub class: String,
    /// The seat there.
    pub seat: u32,
    /// The class that the student joins.
    pub to: String,
}

/// A device's move to another seat of its class.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DeviceMove {
    /// The class.
    pub class: String,
    /// The seat for which the device hands in.
    pub seat: u32,
    /// The number of the device.
    #[ts(type = "number")]
    pub device: i64,
    /// The seat of the student whose work it is.
    pub to: u32,
    /// Whether it is accepted there; `None` quarantines it.
    pub accept: Option<bool>,
}

/// A transfer to make.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct TransferAsked {
    /// The class.
    pub class: String,
    /// The seat.
    pub seat: u32,
    /// Whether the file has the student's name.
    pub with_name: bool,
    /// The passphrase, at least 8 characters.
    pub passphrase: String,
}

/// A transfer to take.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct TransferOpened {
    /// The class that the student joins.
    pub class: String,
    /// The picked file.
    pub picked: PickedSealed,
    /// Its passphrase.
    pub passphrase: String,
}

impl DeskDoor {
    /// Moves a student with everything that the desk has of them to a new seat of another class.
    /// Returns that seat. It can be undone for ten minutes, as a removal can.
    ///
    /// # Errors
    /// Returns [`CallError::Invalid`] for the last seat of a class, or if the other one is full.
    pub fn move_seat(&self, asked: SeatMove) -> Result<SeatId, CallError> {
        self.context.none_running()?;
        let seeds = [random::bytes()?, random::bytes()?];
        self.with_desk(|desk| {
            let class = surefoot_desk::open_class(desk, &asked.class)?;
            let to = surefoot_desk::open_class(desk, &asked.to)?;
            let [token, marks] = &seeds;
            let (seat, left) = surefoot_desk::move_seat(
                desk,
                &asked.class,
                asked.seat,
                &asked.to,
                [token, marks],
            )?;
            let row = class.seats.iter().find(|row| row.number == asked.seat);
            let what = RemovedWhat::Moved {
                seat: asked.seat,
                name: row.and_then(|row| row.name.clone()),
                to: to.row.title,
            };
            self.keep_removed(&class, what, left);
            Ok(SeatId {
                class: asked.to.clone(),
                seat,
            })
        })
    }

    /// Moves a device with everything that it brought to the right seat of its class.
    ///
    /// # Errors
    /// Returns [`CallError::Invalid`] if it hands in for that seat already, or that seat is full.
    pub fn move_device(&self, asked: DeviceMove) -> Result<ClassSetup, CallError> {
        self.setup_after(&asked.class, |desk| {
            let class = surefoot_desk::open_class(desk, &asked.class)?;
            Ok(surefoot_desk::move_device(
                desk,
                &class,
                asked.seat,
                asked.device,
                asked.to,
                asked.accept,
            )?)
        })
    }

    /// What a transfer of a seat would hold.
    pub fn transfer_holdings(&self, id: SeatId) -> Result<TransferHoldings, CallError> {
        self.with_class(&id.class, |desk, class| {
            Ok(surefoot_desk::transfer_holdings(desk, class, id.seat)?)
        })
    }

    /// Seals what the desk has of a student for a colleague. The student stays at this desk.
    ///
    /// # Errors
    /// Returns [`CallError::Refused`] for a passphrase that is too short.
    pub fn make_transfer(&self, asked: TransferAsked) -> Result<FileMade, CallError> {
        self.context.own_only()?;
        let today = self.context.device_today();
        let bytes = self.with_class(&asked.class, |desk, class| {
            Ok(surefoot_desk::make_transfer(
                desk,
                class,
                asked.seat,
                asked.with_name,
                &asked.passphrase,
                today,
            )?)
        })?;
        // The name says nothing about the student.
        let signs = file_signs(&random::bytes()?);
        let file_name = format!("transfer-{today}-{signs}.sftransfer");
        self.context
            .hand_over(file_name, FileKind::Transfer, &bytes)
    }

    /// Lets the person pick a transfer.
    pub fn pick_transfer(&self, _: Nothing) -> Result<Option<PickedSealed>, CallError> {
        self.context.own_only()?;
        self.context.pick_sealed(FileKind::Transfer, &TRANSFER_CAPS)
    }

    /// Adds the student of the picked transfer to a class. Removing the new seat undoes it.
    ///
    /// # Errors
    /// Returns [`CallError::Refused`] for the wrong passphrase or a damaged file,
    /// [`CallError::Invalid`] if the class is full.
    pub fn take_transfer(&self, asked: TransferOpened) -> Result<TransferTaken, CallError> {
        self.context.own_only()?;
        self.context.none_running()?;
        let sealed = OpenSealed {
            picked: asked.picked.picked,
            passphrase: asked.passphrase,
        };
        let file = self
            .context
            .open_sealed(&sealed, |bytes, words| open_transfer(bytes, words))?;
        let (seed, today) = (random::bytes()?, self.context.today());
        self.with_class(&asked.class, |desk, class| {
            Ok(surefoot_desk::take_transfer(
                desk,
                class,
                &file,
                &asked.picked.file_name,
                &seed,
                today,
            )?)
        })
    }
}
