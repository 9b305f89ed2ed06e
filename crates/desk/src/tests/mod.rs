//! A small class on a desk of its own.

mod changes;
mod compare;
mod derive;
mod entry;
mod fits;
mod groups;
mod own;
mod pacing_list;
mod roster_file;
mod share;
mod talk;

use crate::NewClass;
use crate::{ClassSecrets, OpenClass, create_class, open_class};
use chrono::NaiveDate;
use std::collections::BTreeSet;
use surefoot_catalogue::calendar::{SchoolYear, monday_to_friday};
use surefoot_record::CheckInState;
use surefoot_store::desk::{DeviceRow, DeviceState, HandInKept, ReportPlace};
use surefoot_store::{DeskStore, Durability};
use tempfile::TempDir;

pub(super) fn date(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

pub(super) struct Desk {
    pub store: DeskStore,
    pub class: String,
    folder: TempDir,
}

impl Desk {
    /// Seats 1 to `seats`, named A1, A2 ...; the year of 2026-08-31; grade 4.
    pub fn with_seats(seats: usize) -> Self {
        let folder = tempfile::tempdir().unwrap();
        let store =
            DeskStore::open(&folder.path().join("desk.sqlite"), Durability::Relaxed).unwrap();
        let class = new_class(&store, "Room 1 (invented)", seats, 1);
        Self {
            store,
            class,
            folder: folder,
        }
    }

    /// Every row of the desk.
    pub fn dump(&self) -> String {
        surefoot_test_support::store::dump(&self.folder.path().join("desk.sqlite"))
    }

    pub fn open(&self) -> OpenClass {
        open_class(&self.store, &self.class).unwrap()
    }

    /// The first concept of a day of the rotation (from 0).
    pub fn concept(&self, day: usize) -> String {
        self.open().facts.rotation.days()[day][0].clone()
    }

    /// A rating as if a device had handed it in.
    pub fn rate(&self, seat: u32, on: &str, concept: &str, rating: u8) {
        let place = ReportPlace {
            device: &format!("{seat:032x}"),
            date: date(on),
            concept,
        };
        let state = CheckInState {
            sequence: 1,
            confidence: Some(rating.try_into().unwrap()),
            outcome: None,
        };
        let mut writer = self.store.report_writer(&self.class, seat).unwrap();
        writer.check_in(place, state).unwrap();
    }

    /// A device with a hand-in, whose content is never read here.
    pub fn keep_hand_in(&self, seat: u32) {
        let import = self.store.begin_import(date("2026-11-02")).unwrap();
        self.store
            .put_device(
                &self.class,
                &DeviceRow {
                    seat,
                    device: format!("{seat:032x}"),
                    signing_key: "key".into(),
                    recipient: "age".into(),
                    state: DeviceState::Accepted,
                    first_seen_on: date("2026-11-02"),
                },
            )
            .unwrap();
        self.store
            .keep_hand_in(
                &self.class,
                &HandInKept {
                    import,
                    seat,
                    device: format!("{seat:032x}"),
                    signing_key: "key".into(),
                    revision: 1,
                    made_on: date("2026-11-02"),
                    content_hash: "00".into(),
                    content: Vec::new(),
                },
            )
            .unwrap();
    }
}

pub(super) fn new_class(store: &DeskStore, title: &str, seats: usize, salt: u8) -> String {
    let chance = ClassSecrets {
        class_id: [salt; 16],
        sealing: [salt.wrapping_add(1); 32],
        signing: [salt.wrapping_add(2); 32],
        seats: [salt.wrapping_add(3); 32],
    };
    let new = NewClass {
        title: title.into(),
        names: (1..=seats).map(|n| format!("A{n}")).collect(),
        year: SchoolYear::new(
            date("2026-08-31"),
            date("2027-05-07"),
            monday_to_friday(),
            BTreeSet::new(),
        )
        .unwrap(),
        grades: vec![4],
        rotation_days: 10,
        concepts_a_day: 4,
    };
    create_class(store, &new, &chance, date("2026-08-31"))
        .unwrap()
        .id
}
