//! The entries of two devices, a carry file and paper count by the same rule everywhere: on Today of
//! either device, in the hand-in, in the import and on the board.

use super::{Desk, date};
use crate::estimate::counted::counted;
use crate::{
    EntryMade, EntryValue, Import, join_slips, make_class_pack, make_entry, set_taught_from,
};
use proptest::collection::vec;
use proptest::prelude::*;
use std::collections::BTreeMap;
use surefoot_catalogue::Language;
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_store::{Durability, StudentStore};
use surefoot_student::{Joined, NewStudent, Tapped};

const TODAY: &str = "2026-09-04";
const DAYS: [&str; 3] = ["2026-08-31", "2026-09-01", "2026-09-02"];
const WORDS: &str = "seven otters swim upstream";

#[derive(Debug, Clone)]
enum Step {
    Rate(usize, usize, Option<Confidence>),
    Mark(usize, usize, Option<Outcome>),
    /// From this device to the other one.
    Carry(usize),
    HandIn(usize),
    Paper(usize, Option<Confidence>, Option<Outcome>),
}

fn any_step() -> impl Strategy<Value = Step> {
    let rating = (0..5u8).prop_map(|number| Confidence::try_from(number).ok());
    let outcome = prop::sample::select(vec![
        None,
        Some(Outcome::Right),
        Some(Outcome::Wrong),
        Some(Outcome::NotDone),
    ]);
    prop_oneof![
        5 => (0..2usize, 0..3usize, rating.clone()).prop_map(|(d, day, value)| Step::Rate(d, day, value)),
        5 => (0..2usize, 0..3usize, outcome.clone()).prop_map(|(d, day, value)| Step::Mark(d, day, value)),
        1 => (0..2usize).prop_map(Step::Carry),
        2 => (0..2usize).prop_map(Step::HandIn),
        2 => (0..3usize, rating, outcome).prop_map(|(day, c, o)| Step::Paper(day, c, o)),
    ]
}

/// What counts, computed only from the steps: each device's copy of the last rating and outcome of
/// each day, with a number that counts the entries it has seen.
#[derive(Default, Clone)]
struct Known {
    seen: u32,
    ratings: BTreeMap<usize, (u32, Option<Confidence>)>,
    outcomes: BTreeMap<usize, (u32, Option<Outcome>)>,
}

impl Known {
    fn union(&mut self, other: &Self) {
        self.seen = self.seen.max(other.seen);
        for (day, said) in &other.ratings {
            let mine = self.ratings.entry(*day).or_insert(*said);
            *mine = (*mine).max(*said);
        }
        for (day, said) in &other.outcomes {
            let mine = self.outcomes.entry(*day).or_insert(*said);
            *mine = (*mine).max(*said);
        }
    }

    fn of(&self, day: usize) -> (Option<Confidence>, Option<Outcome>) {
        (
            self.ratings.get(&day).and_then(|said| said.1),
            self.outcomes.get(&day).and_then(|said| said.1),
        )
    }
}

struct World {
    desk: Desk,
    devices: [StudentStore; 2],
    concepts: Vec<String>,
    _folder: tempfile::TempDir,
}

impl World {
    fn new() -> Self {
        let desk = Desk::with_seats(1);
        for day in 0..3 {
            let concept = desk.concept(day);
            set_taught_from(&desk.store, &desk.class, &concept, Some(date(DAYS[0]))).unwrap();
        }
        let class = desk.open();
        let made = make_class_pack(&desk.store, &class, date(TODAY)).unwrap();
        let pack = surefoot_student::read_first_pack(made.bytes.as_slice()).unwrap();
        let code = join_slips(&class).unwrap()[0].code.clone();
        let folder = tempfile::tempdir().unwrap();
        let open = |name: &str| {
            StudentStore::open(&folder.path().join(name), Durability::Relaxed).unwrap()
        };
        let devices = [open("a.sqlite"), open("b.sqlite")];
        let new = NewStudent {
            device: [5; 16],
            signing_seed: [6; 32],
            sealing_seed: [7; 32],
            seat_code: &code,
            nickname: "Otter",
            picture: "otter",
            language: Language::first(),
        };
        surefoot_student::join(&devices[0], &pack, date(TODAY), &new).unwrap();
        let concepts = (0..3).map(|day| desk.concept(day)).collect();
        let world = Self {
            desk,
            devices,
            concepts,
            _folder: folder,
        };
        world.carry(0);
        world
    }

    fn joined(&self, device: usize) -> Joined {
        surefoot_student::joined(&self.devices[device]).unwrap()
    }

    fn shown(&self, device: usize, day: usize) -> Tapped {
        let (store, joined) = (&self.devices[device], self.joined(device));
        let today = surefoot_student::today(store, &joined, date(TODAY), Some(date(DAYS[day])));
        let today = today.unwrap();
        let concept = (today.concepts.iter())
            .find(|concept| concept.concept.id == self.concepts[day])
            .unwrap();
        Tapped {
            confidence: concept.confidence,
            outcome: concept.outcome,
        }
    }

    fn tap(&self, device: usize, day: usize, tapped: Tapped) {
        surefoot_student::check_in(
            &self.devices[device],
            &self.joined(device),
            date(TODAY),
            date(DAYS[day]),
            &self.concepts[day],
            tapped,
        )
        .unwrap();
    }

    fn carry(&self, from: usize) {
        let joined = self.joined(from);
        let sealed =
            surefoot_student::make_carry(&self.devices[from], &joined, date(TODAY), WORDS).unwrap();
        let carried = surefoot_student::read_carry(&sealed, WORDS).unwrap();
        let store = &self.devices[1 - from];
        let there = surefoot_student::joined(store).ok();
        surefoot_student::take_carry(store, there.as_ref(), &carried, &[9; 16], date(TODAY))
            .unwrap();
    }

    fn hand_in(&self, device: usize) {
        let joined = self.joined(device);
        let made =
            surefoot_student::make_hand_in(&self.devices[device], &joined, date(TODAY), &[1; 4])
                .unwrap();
        surefoot_student::note_hand_in(&self.devices[device], &made).unwrap();
        let import = Import::begin(&self.desk.store, date(TODAY)).unwrap();
        let opened = import.opener().open(Ok(made.bytes.as_slice()));
        import.take("a.sfhandin", opened).unwrap();
        import.end(false).unwrap();
    }

    fn paper(&self, day: usize, value: EntryValue) {
        let made = EntryMade {
            seat: 1,
            concept: self.concepts[day].clone(),
            value,
        };
        let class = self.desk.open();
        make_entry(
            &self.desk.store,
            &class,
            date(DAYS[day]),
            &made,
            date(TODAY),
        )
        .unwrap();
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(8) })]

    #[test]
    fn the_same_entries_count_alike_wherever_they_meet(steps in vec(any_step(), 4..24)) {
        let world = World::new();
        let mut known = [Known::default(), Known::default()];
        let mut handed_in = Known::default();
        let mut paper: BTreeMap<usize, (Option<Confidence>, Option<Outcome>)> = BTreeMap::new();
        for step in steps {
            match step {
                Step::Rate(device, day, value) => {
                    let shown = world.shown(device, day);
                    world.tap(device, day, Tapped { confidence: value, ..shown });
                    if shown.confidence != value {
                        let mine = &mut known[device];
                        mine.seen += 1;
                        mine.ratings.insert(day, (mine.seen, value));
                    }
                }
                Step::Mark(device, day, value) => {
                    let shown = world.shown(device, day);
                    world.tap(device, day, Tapped { outcome: value, ..shown });
                    if shown.outcome != value {
                        let mine = &mut known[device];
                        mine.seen += 1;
                        mine.outcomes.insert(day, (mine.seen, value));
                    }
                }
                Step::Carry(from) => {
                    world.carry(from);
                    let theirs = known[from].clone();
                    known[1 - from].union(&theirs);
                }
                Step::HandIn(device) => {
                    world.hand_in(device);
                    handed_in.union(&known[device]);
                }
                Step::Paper(day, confidence, outcome) => {
                    world.paper(day, EntryValue::Rating { rating: confidence });
                    world.paper(day, EntryValue::Outcome { outcome });
                    paper.insert(day, (confidence, outcome));
                }
            }
            for (device, known) in known.iter().enumerate() {
                for day in 0..3 {
                    let shown = world.shown(device, day);
                    prop_assert_eq!((shown.confidence, shown.outcome), known.of(day));
                }
            }
            let class = world.desk.open();
            let board = counted(&world.desk.store, &class, date(TODAY)).unwrap().check_ins;
            for (day, on) in DAYS.iter().enumerate() {
                let (rating, outcome) = handed_in.of(day);
                let typed = paper.get(&day).copied().unwrap_or_default();
                let expected = (typed.0.or(rating), typed.1.or(outcome));
                let found = board
                    .iter()
                    .find(|c| c.date == date(on) && c.concept == world.concepts[day])
                    .map_or((None, None), |c| (c.confidence, c.outcome));
                prop_assert_eq!(found, expected);
            }
        }
    }
}
