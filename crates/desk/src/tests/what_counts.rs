//! The entries of two devices, a carry file and paper count by the same rule everywhere: on Today of
//! either device, in the hand-in, in the import and on the board.

use super::{Desk, date, device_of};
use crate::estimate::Reports;
use crate::estimate::counted::counted;
use crate::{
    EntryMade, EntryValue, Import, board, comparison, group_page, join_slips, make_class_pack,
    make_entry, set_taught_from,
};
use chrono::NaiveDate;
use proptest::collection::vec;
use proptest::prelude::*;
use std::collections::BTreeMap;
use surefoot_catalogue::rating::{AnswerResult, Confidence, Outcome};
use surefoot_catalogue::{ConceptId, Language};
use surefoot_exchange::open_hand_in;
use surefoot_record::{AnswerCount, CheckIn, MisconceptionCode, Said};
use surefoot_store::student::PracticeAnswer;
use surefoot_store::{Durability, StudentStore};
use surefoot_student::practice_views::PracticeStep;
use surefoot_student::{Joined, NewStudent, Tap};

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
            avatar: "otter",
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

    fn shown(&self, device: usize, day: usize) -> Tap {
        let (store, joined) = (&self.devices[device], self.joined(device));
        let today = surefoot_student::today(store, &joined, date(TODAY), Some(date(DAYS[day])));
        let today = today.unwrap();
        let concept = (today.concepts.iter())
            .find(|concept| concept.concept.id == self.concepts[day])
            .unwrap();
        Tap {
            date: today.date,
            concept: concept.concept.id.clone(),
            confidence: concept.confidence,
            outcome: concept.outcome,
        }
    }

    fn catch_up(&self, device: usize) -> Vec<NaiveDate> {
        let (store, joined) = (&self.devices[device], self.joined(device));
        surefoot_student::catch_up(store, &joined, date(TODAY)).unwrap()
    }

    /// The days before today, newest first, on which not every concept is rated; from the first
    /// day on that has something that counts.
    fn missed(&self, device: usize, known: &Known) -> Vec<NaiveDate> {
        let Some(first) = (0..3).find(|day| known.of(*day) != (None, None)) else {
            return Vec::new();
        };
        let joined = self.joined(device);
        let rated = |concept: &String| {
            let day = self.concepts.iter().position(|known| known == concept);
            day.is_some_and(|day| known.of(day).0.is_some())
        };
        let days = DAYS.iter().chain(&["2026-09-03"]).map(|day| date(day));
        let missed = days.skip(first).filter(|day| {
            let concepts = joined.facts.rotation.concepts_on(&joined.facts.year, *day);
            !concepts.iter().all(rated)
        });
        let mut missed: Vec<NaiveDate> = missed.collect();
        missed.reverse();
        missed
    }

    fn tap(&self, device: usize, tap: &Tap) {
        let (store, joined) = (&self.devices[device], self.joined(device));
        surefoot_student::check_in(store, &joined, date(TODAY), tap).unwrap();
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
        let opened = open_hand_in(made.bytes.as_slice(), &import.identities());
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
    #![proptest_config(surefoot_test_support::few(4, 80))]

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
                    let was = shown.confidence;
                    world.tap(device, &Tap { confidence: value, ..shown });
                    if was != value {
                        let mine = &mut known[device];
                        mine.seen += 1;
                        mine.ratings.insert(day, (mine.seen, value));
                    }
                }
                Step::Mark(device, day, value) => {
                    let shown = world.shown(device, day);
                    let was = shown.outcome;
                    world.tap(device, &Tap { outcome: value, ..shown });
                    if was != value {
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
                prop_assert_eq!(world.catch_up(device), world.missed(device, known));
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

/// All that the desk shows of the practice and the check-ins of a concept.
fn shown_at_the_desk(desk: &Desk, concept: &str, today: &str) -> serde_json::Value {
    let (store, class) = (&desk.store, desk.open());
    let (language, today) = (Language::first(), date(today));
    serde_json::json!([
        board(store, &class, &[], language, today).unwrap(),
        comparison(store, &class, language, today).unwrap(),
        group_page(store, &class, language, today, concept, &[1, 2]).unwrap(),
        crate::class_setup(store, &desk.class, language, today).unwrap(),
    ])
}

/// Hands in a rating, wrong practice and a misconception of one date.
fn hand_in_all(desk: &Desk, seat: u32, on: &str, concept: &str) {
    desk.rate(seat, on, concept, 3);
    desk.practise(seat, on, concept, |entry| {
        entry.answers.push(AnswerCount {
            confidence: Some(Confidence::CouldTeach),
            alone: 0,
            with_help: 1,
            wrong: 2,
        });
        let code = MisconceptionCode::new("off-by-ten").unwrap();
        entry.misconceptions.insert(code, 2);
    });
}

#[test]
fn the_desk_counts_the_dates_of_the_year_up_to_today() {
    let desk = Desk::with_seats(2);
    let concept = desk.concept(0);
    set_taught_from(&desk.store, &desk.class, &concept, Some(date(DAYS[0]))).unwrap();
    hand_in_all(&desk, 1, "2026-10-12", &concept);
    let days = ["2026-10-20", "2026-12-01", "2027-06-15"];
    let before = days.map(|today| shown_at_the_desk(&desk, &concept, today));
    // Before the year, and after it.
    hand_in_all(&desk, 1, "2026-08-03", &concept);
    hand_in_all(&desk, 1, "2027-06-01", &concept);
    for (today, before) in days.iter().zip(&before) {
        assert_eq!(
            &shown_at_the_desk(&desk, &concept, today),
            before,
            "{today}"
        );
    }
    // Dated ahead: it counts once its date has come.
    hand_in_all(&desk, 1, "2026-12-01", &concept);
    assert_eq!(shown_at_the_desk(&desk, &concept, days[0]), before[0]);
    let misconceptions = |today| {
        let class = desk.open();
        let shown = board(&desk.store, &class, &[], Language::first(), date(today)).unwrap();
        shown.misconceptions[0].count
    };
    assert_eq!(days.map(misconceptions), [2, 4, 4]);
}

#[test]
fn an_outcome_dated_ahead_never_outranks_a_later_one() {
    let desk = Desk::with_seats(2);
    let concept = desk.concept(0);
    let marked = |seat, at, on, outcome| {
        let entry = CheckIn {
            device: device_of(seat),
            date: date(on),
            concept: ConceptId::new(concept.clone()).unwrap(),
            confidence: None,
            outcome: Some(Said {
                at,
                value: Some(outcome),
            }),
        };
        desk.hand_in(seat, entry);
    };
    for seat in [1, 2] {
        marked(seat, 1, "2026-09-04", Outcome::Wrong);
        marked(seat, 2, "2026-08-31", Outcome::Right);
    }
    // An observation follows what the devices have up to its date.
    let seen = EntryMade {
        seat: 2,
        concept: concept.clone(),
        value: EntryValue::Seen {
            rating: Some(Confidence::NotYet),
        },
    };
    let (class, today) = (desk.open(), date("2026-09-07"));
    make_entry(&desk.store, &class, date("2026-09-02"), &seen, today).unwrap();
    let reports = Reports::read(&desk.store, &desk.open(), today).unwrap();
    let place = reports.concept_at(&concept).unwrap();
    let result = |student| reports.evidence.result(student, place, 0);
    assert_eq!([result(0), result(1)], [Some(true), Some(false)]);
}

/// An answer at home that took ten minutes.
fn answered(world: &World, sequence: u32, on: &str) {
    let store = &world.devices[0];
    store
        .add_practice_answer(&PracticeAnswer {
            device: world.joined(0).student.device,
            sequence,
            date: date(on),
            concept: ConceptId::new(world.concepts[0].clone()).unwrap(),
            level: 1,
            generator_version: 1,
            seed: 1,
            confidence: None,
            result: AnswerResult::Alone,
            misconception: None,
            seconds: 600,
            response: "null".into(),
        })
        .unwrap();
}

#[test]
fn the_device_counts_practice_by_the_same_dates_and_an_evening_ends_on_every_date() {
    let world = World::new();
    let (store, joined) = (&world.devices[0], world.joined(0));
    let tap = Tap {
        confidence: Some(Confidence::NotYet),
        ..world.shown(0, 0)
    };
    world.tap(0, &tap);
    world.tap(1, &tap);
    world.carry(1);
    let (ahead, after) = ("2026-12-01", "2027-06-01");
    let counts = |today: &str| {
        let path = surefoot_student::my_path(store, &joined, date(today)).unwrap();
        let preview = surefoot_student::hand_in_preview(store, &joined, date(today)).unwrap();
        let made = surefoot_student::make_hand_in(store, &joined, date(today), &[7; 4]).unwrap();
        assert_eq!(path.practised, preview.answers, "{today}");
        assert_eq!(made.answers, preview.answers, "{today}");
        // Two devices rated the same concept on the same date, which counts once.
        assert_eq!((path.rated, preview.check_ins, made.check_ins), (1, 1, 1));
        (preview.answers, preview.new_since)
    };
    let is_over = |today: &str| {
        let step = surefoot_student::practice(store, &joined, date(today), None, false, 1);
        // More could be practised, so it is the minutes that ended it.
        matches!(step.unwrap(), PracticeStep::Done(summary) if summary.more)
    };
    answered(&world, 10, DAYS[1]);
    let news = counts(TODAY).1;
    assert_eq!(counts(TODAY), (1, news));
    answered(&world, 11, "2026-08-03");
    answered(&world, 12, ahead);
    answered(&world, 13, after);
    assert_eq!(counts(TODAY), (1, news));
    assert_eq!(counts(ahead), (2, news + 1));
    assert_eq!(counts(after), (2, news + 1));
    // An evening after the year ends too, although its practice does not count for the class.
    assert!(is_over(after));
    assert!(is_over(ahead));
    assert!(!is_over("2026-12-02"));
}
