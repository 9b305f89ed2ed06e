//! A small class on a desk.

mod assignments;
mod board;
mod changes;
mod compare;
mod days_apart;
mod derive;
mod entry;
mod fits;
mod groups;
mod lists;
mod own;
mod pacing_list;
mod pacing_lists;
mod roster_file;
mod roster_lists;
mod sentences;
mod share;
mod talk;
mod taught_again;
mod warm_up;
mod what_counts;
mod who_has_not;

use crate::NewClass;
use crate::{ClassSecrets, OpenClass, create_class, open_class};
use chrono::NaiveDate;
use std::collections::BTreeSet;
use surefoot_catalogue::ConceptId;
use surefoot_catalogue::calendar::{SchoolYear, monday_to_friday};
use surefoot_catalogue::rating::Outcome;
use surefoot_exchange::SigningKey;
use surefoot_record::{AnswerCount, CheckIn, DeviceId, Practice, Record, Said};
use surefoot_store::desk::{DeviceRow, DeviceState, HandInKept, ReportWriter};
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
            folder,
        }
    }

    /// The file of the desk.
    pub fn path(&self) -> std::path::PathBuf {
        self.folder.path().join("desk.sqlite")
    }

    /// Every row of the desk.
    pub fn dump(&self) -> String {
        surefoot_test_support::store::dump(&self.folder.path().join("desk.sqlite"))
    }

    /// Runs one statement of SQL, to damage the store.
    pub fn damage(&self, sql: &str) {
        surefoot_test_support::store::execute(&self.folder.path().join("desk.sqlite"), sql);
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
        self.check_in(seat, on, concept, rating, None);
    }

    /// A rating and a result as if a device had handed them in.
    pub fn rate_and_mark(&self, seat: u32, on: &str, concept: &str, rating: u8, right: bool) {
        let outcome = if right {
            Outcome::Right
        } else {
            Outcome::Wrong
        };
        self.check_in(seat, on, concept, rating, Some(outcome));
    }

    fn check_in(&self, seat: u32, on: &str, concept: &str, rating: u8, outcome: Option<Outcome>) {
        self.hand_in(
            seat,
            CheckIn {
                device: device_of(seat),
                date: date(on),
                concept: ConceptId::new(concept).unwrap(),
                confidence: Some(Said {
                    at: 1,
                    value: Some(rating.try_into().unwrap()),
                }),
                outcome: outcome.map(|value| Said {
                    at: 2,
                    value: Some(value),
                }),
            },
        );
    }

    /// Right results and practice of five seats, from `first` on, in the first three passes, on
    /// other concepts than those of [`Self::concept`]: enough for the level of the class to be
    /// known.
    pub fn mark_enough(&self, first: u32) {
        let days = self.open().facts.rotation.days().to_vec();
        let dates = ["2026-08-31", "2026-09-14", "2026-09-28"];
        for concept in days[4..].iter().flat_map(|day| &day[1..]) {
            for seat in first..first + 5 {
                for on in dates {
                    self.rate_and_mark(seat, on, concept, 2, true);
                }
                for on in &dates[1..] {
                    self.practise(seat, on, concept, |entry| {
                        entry.answers.push(AnswerCount {
                            confidence: None,
                            alone: 40,
                            with_help: 0,
                            wrong: 0,
                        });
                    });
                }
            }
        }
    }

    /// A check-in as if a device had handed it in.
    pub fn hand_in(&self, seat: u32, entry: CheckIn) {
        let mut writer = self.writer(seat);
        writer.write(&Record::from_entries([entry], [])).unwrap();
    }

    /// Adds to a seat's practice of a concept on a date, as if its device had handed it in.
    pub fn practise(&self, seat: u32, on: &str, concept: &str, add: impl FnOnce(&mut Practice)) {
        let here = (self.store).record_of(self.device(seat)).unwrap();
        let concept = ConceptId::new(concept).unwrap();
        let mut entry = (here.practice().iter())
            .find(|entry| entry.date == date(on) && entry.concept == concept)
            .cloned()
            .unwrap_or(Practice {
                device: device_of(seat),
                date: date(on),
                concept,
                sequence: 1,
                answers: Vec::new(),
                misconceptions: std::collections::BTreeMap::new(),
            });
        add(&mut entry);
        let mut writer = self.writer(seat);
        writer.write(&Record::from_entries([], [entry])).unwrap();
    }

    /// Counts the check-ins of each seat.
    pub fn check_ins(&self, class: &str) -> std::collections::BTreeMap<u32, usize> {
        let mut found = std::collections::BTreeMap::new();
        let each = |row: surefoot_store::desk::ReportRow<'_>, _| {
            *found.entry(row.seat).or_default() += 1;
        };
        self.store.each_check_in(class, None, each).unwrap();
        found
    }

    /// The number of a seat's accepted device.
    pub fn device(&self, seat: u32) -> i64 {
        let device = DeviceRow {
            id: 0,
            seat,
            device: device_of(seat).as_str().to_owned(),
            signing_key: SigningKey::from_seed(&[1; 32]).public().as_str().to_owned(),
            recipient: "age".into(),
            state: DeviceState::Accepted,
            first_seen_on: date("2026-11-02"),
        };
        self.store.put_device(&self.class, &device).unwrap()
    }

    fn writer(&self, seat: u32) -> ReportWriter<'_> {
        let device = self.device(seat);
        self.store.report_writer(device).unwrap()
    }

    /// Keeps a hand-in of a device. Its content is never read.
    pub fn keep_hand_in(&self, seat: u32) {
        let import = self.store.begin_import(date("2026-11-02")).unwrap();
        let kept = HandInKept {
            import,
            seat,
            device: self.device(seat),
            revision: 1,
            made_on: date("2026-11-02"),
            entries: 0,
            pack_version: 1,
            content_hash: "00".into(),
            content: Vec::new(),
        };
        self.store.keep_hand_in(&self.class, &kept).unwrap();
    }
}

pub(super) fn new_class(store: &DeskStore, title: &str, seats: usize, salt: u8) -> String {
    let secrets = ClassSecrets {
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
    create_class(store, &new, &secrets, date("2026-08-31"))
        .unwrap()
        .id
}

pub(super) fn device_of(seat: u32) -> DeviceId {
    let mut bytes = [0; 16];
    bytes[..4].copy_from_slice(&seat.to_be_bytes());
    DeviceId::from_bytes(&bytes)
}
