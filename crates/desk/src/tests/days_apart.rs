//! Devices behind the class pack: closures, days added and a changed rotation reach them late.

use super::{Desk, date};
use crate::estimate::counted::counted;
use crate::{
    Import, Verdict, board, class_day, close_day, join_slips, make_class_pack, move_year,
    set_rotation,
};
use chrono::{Datelike, NaiveDate};
use proptest::collection::vec;
use proptest::prelude::*;
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::Language;
use surefoot_catalogue::calendar::monday_to_friday;
use surefoot_catalogue::rating::Confidence;
use surefoot_exchange::open_hand_in;
use surefoot_store::{Durability, StudentStore};
use surefoot_student::views::Today;
use surefoot_student::{Joined, NewStudent, Tap, say_day};

const FIRST: &str = "2027-04-12";
const LAST_DAY: &str = "2027-05-07";
const LATER_LAST_DAY: &str = "2027-05-21";
/// Closures that were planned in August. One may become a school day again.
const PLANNED: [&str; 3] = ["2027-04-19", "2027-04-20", "2027-04-30"];
/// How many packs each student's device is behind.
const BEHIND: [usize; 3] = [1, 2, 5];

#[derive(Debug, Clone, Copy)]
enum Change {
    /// No school today.
    Closed,
    /// No school today and on the next weekday.
    TwoDays,
    /// A planned closure is a school day after all.
    Reopened(usize),
    /// The year gets two weeks more.
    Longer,
    /// Two days of the rotation change places.
    Swapped(usize, usize),
    /// The rotation gets this many days.
    Length(usize),
    /// Something that moves no day; there is a new pack all the same.
    Other,
}

impl Change {
    fn moves_concepts(self) -> bool {
        matches!(self, Self::Swapped(..) | Self::Length(_))
    }
}

fn any_change(of_rotation: bool) -> BoxedStrategy<Change> {
    let days = prop_oneof![
        3 => Just(Change::Closed),
        1 => Just(Change::TwoDays),
        1 => (0..PLANNED.len()).prop_map(Change::Reopened),
        1 => Just(Change::Longer),
        1 => Just(Change::Other),
    ];
    if of_rotation {
        let rotation = prop_oneof![
            (0..8usize, 0..8usize).prop_map(|(a, b)| Change::Swapped(a, b)),
            (8..=12usize).prop_map(Change::Length),
        ];
        prop_oneof![2 => days, 1 => rotation].boxed()
    } else {
        days.boxed()
    }
}

/// What the class does on a date: changes before school, and how many concepts are rated; fewer
/// than all on a half day.
type Lived = BTreeMap<usize, (Vec<Change>, usize)>;

fn any_year(of_rotation: bool) -> impl Strategy<Value = Lived> {
    let day = (0..29usize, vec(any_change(of_rotation), 1..3), 0..6usize);
    vec(day, 1..9).prop_map(|days| {
        days.into_iter()
            .map(|(at, changes, rated)| (at, (changes, rated)))
            .collect()
    })
}

/// A class with its devices.
struct Class {
    desk: Desk,
    devices: Vec<StudentStore>,
    /// Every pack made, the oldest first.
    packs: Vec<Vec<u8>>,
    /// Which of them each device has.
    holds: [usize; 3],
    /// What each device was told, by seat, date and concept.
    marks: BTreeMap<(u32, NaiveDate, String), Confidence>,
    /// Days that a student had to say.
    says: usize,
    _folder: tempfile::TempDir,
}

impl Class {
    fn new() -> Self {
        let desk = Desk::with_seats(BEHIND.len());
        for on in PLANNED {
            close_day(&desk.store, &desk.class, date(on), true).unwrap();
        }
        let class = desk.open();
        let made = make_class_pack(&desk.store, &class, date(FIRST)).unwrap();
        let pack = surefoot_student::read_first_pack(made.bytes.as_slice()).unwrap();
        let folder = tempfile::tempdir().unwrap();
        let mut devices = Vec::new();
        for (at, slip) in join_slips(&class).unwrap().iter().enumerate() {
            let path = folder.path().join(format!("{at}.sqlite"));
            let store = StudentStore::open(&path, Durability::Relaxed).unwrap();
            let byte = u8::try_from(at).unwrap() + 1;
            let new = NewStudent {
                device: [byte; 16],
                signing_seed: [byte; 32],
                sealing_seed: [byte + 100; 32],
                seat_code: &slip.code,
                nickname: "Otter",
                avatar: "otter",
                language: Language::first(),
            };
            surefoot_student::join(&store, &pack, date(FIRST), &new).unwrap();
            devices.push(store);
        }
        Self {
            desk,
            devices,
            packs: vec![made.bytes],
            holds: [0; 3],
            marks: BTreeMap::new(),
            says: 0,
            _folder: folder,
        }
    }

    fn joined(&self, device: usize) -> Joined {
        surefoot_student::joined(&self.devices[device]).unwrap()
    }

    fn today(&self, device: usize, on: NaiveDate) -> Today {
        surefoot_student::today(&self.devices[device], &self.joined(device), on, None).unwrap()
    }

    fn change(&self, change: Change, on: NaiveDate) {
        let (store, class) = (&self.desk.store, &self.desk.class);
        let facts = self.desk.open().facts;
        let (year, mut days) = (facts.year, facts.rotation.into_days());
        match change {
            Change::Closed | Change::TwoDays if year.is_school_day(on) => {
                close_day(store, class, on, true).unwrap();
                if let (Change::TwoDays, Some(next)) = (change, year.next_school_day(on)) {
                    close_day(store, class, next, true).unwrap();
                }
            }
            Change::Reopened(at) => close_day(store, class, date(PLANNED[at]), false).unwrap(),
            Change::Longer => move_year(
                store,
                class,
                year.first_day,
                date(LATER_LAST_DAY),
                monday_to_friday(),
            )
            .unwrap(),
            Change::Swapped(a, b) => {
                days.swap(a, b);
                set_rotation(store, class, days).unwrap();
            }
            Change::Length(length) => {
                let all: Vec<String> = days.into_iter().flatten().collect();
                let each = all.len().div_ceil(length);
                let mut days: Vec<_> = all.chunks(each).map(<[String]>::to_vec).collect();
                days.resize(length, Vec::new());
                set_rotation(store, class, days).unwrap();
            }
            Change::Closed | Change::TwoDays | Change::Other => {}
        }
    }

    fn give_out(&mut self, on: NaiveDate) {
        let made = make_class_pack(&self.desk.store, &self.desk.open(), on).unwrap();
        self.packs.push(made.bytes);
    }

    /// The device takes the newest pack but `behind`.
    fn take_pack(&mut self, device: usize, behind: usize, on: NaiveDate) {
        let at = (self.packs.len() - 1).saturating_sub(behind);
        if self.holds[device] < at {
            let (store, joined) = (&self.devices[device], self.joined(device));
            surefoot_student::take_class_pack(store, &joined, on, self.packs[at].as_slice())
                .unwrap();
            self.holds[device] = at;
        }
    }

    /// A student rates the first concepts of the review that the device shows. One who `says`
    /// corrects the day before, if the class is on another one and the device has that day.
    fn rate(&mut self, device: usize, on: NaiveDate, rated: usize, says: bool) {
        let facts = self.desk.open().facts;
        let Some(at) = facts.rotation.position(&facts.year, on) else {
            return;
        };
        let (store, number) = (&self.devices[device], at.day + 1);
        let today = |joined: &Joined| surefoot_student::today(store, joined, on, None).unwrap();
        let mut joined = self.joined(device);
        let mut shown = today(&joined);
        if says && shown.day != Some(number) {
            if number > joined.facts.rotation.day_count() {
                return;
            }
            say_day(store, &joined, on, on, Some(number)).unwrap();
            self.says += 1;
            joined = self.joined(device);
            shown = today(&joined);
            assert_eq!(shown.day, Some(number));
        }
        let review = shown.concepts.iter().filter(|one| one.in_review);
        for concept in review.take(rated) {
            let id = concept.concept.id.clone();
            let place = facts.concepts.keys().position(|known| *known == id);
            let number = place.unwrap_or_default() + device + usize::try_from(on.day()).unwrap();
            let value = Confidence::try_from(u8::try_from(number % 4).unwrap()).unwrap();
            let tap = Tap {
                date: on,
                concept: id.clone(),
                confidence: Some(value),
                outcome: None,
            };
            surefoot_student::check_in(store, &joined, on, &tap).unwrap();
            let seat = u32::try_from(device).unwrap() + 1;
            self.marks.insert((seat, on, id), value);
        }
    }

    fn hand_in(&self, on: NaiveDate) -> Vec<Verdict> {
        let import = Import::begin(&self.desk.store, on).unwrap();
        let mut verdicts = Vec::new();
        for (at, store) in self.devices.iter().enumerate() {
            let made =
                surefoot_student::make_hand_in(store, &self.joined(at), on, &[1; 4]).unwrap();
            surefoot_student::note_hand_in(store, &made).unwrap();
            let opened = open_hand_in(made.bytes.as_slice(), &import.identities());
            let name = format!("{at}.sfhandin");
            verdicts.push(import.take(&name, opened).unwrap().verdict);
        }
        import.end(false).unwrap();
        verdicts
    }

    /// What counts at the desk, which lists each date and concept of a seat once.
    fn counted(&self, on: NaiveDate) -> BTreeMap<(u32, NaiveDate, String), Confidence> {
        let found = counted(&self.desk.store, &self.desk.open(), on).unwrap();
        let all: Vec<_> = (found.check_ins.iter())
            .filter_map(|one| Some(((one.seat, one.date, one.concept.clone()), one.confidence?)))
            .collect();
        let by_key: BTreeMap<_, _> = all.iter().cloned().collect();
        assert_eq!(all.len(), by_key.len());
        by_key
    }

    /// Goes through the weeks. `behind` says how many packs each device is behind.
    fn live(&mut self, lived: &Lived, behind: [usize; 3], says: bool) {
        for (at, on) in weekdays().enumerate() {
            let (changes, rated) = lived.get(&at).cloned().unwrap_or((Vec::new(), 12));
            for change in changes {
                self.change(change, on);
                self.give_out(on);
            }
            for (device, behind) in behind.iter().enumerate() {
                self.take_pack(device, *behind, on);
                self.rate(device, on, rated, says);
            }
            if at % 5 == 4 {
                self.hand_in(on);
            }
        }
    }
}

fn weekdays() -> impl Iterator<Item = NaiveDate> {
    let days = date(FIRST).iter_days().take(40);
    days.filter(|on| on.weekday().number_from_monday() <= 5)
}

proptest! {
    #![proptest_config(surefoot_test_support::few(2, 60))]

    /// With closures, days added and half days, a student who says the day leaves the same record
    /// on a device one, two or five packs behind as on one that always has the newest pack.
    #[test]
    fn who_says_the_day_leaves_the_same_board(lived in any_year(false)) {
        let (mut newest, mut behind) = (Class::new(), Class::new());
        newest.live(&lived, [0; 3], true);
        behind.live(&lived, BEHIND, true);
        prop_assert_eq!(newest.says, 0);
        let end = weekdays().last().unwrap();
        for class in [&newest, &behind] {
            class.hand_in(end);
        }
        prop_assert_eq!(&newest.marks, &behind.marks);
        let shown = |class: &Class| {
            board(&class.desk.store, &class.desk.open(), &[], Language::first(), end).unwrap()
        };
        prop_assert_eq!(shown(&newest), shown(&behind));
    }

    /// Whatever changes, and whether a student says the day or not: each mark counts once, on its
    /// date and under its concept. The next pack moves none, and the device still shows them.
    #[test]
    fn every_mark_counts_once_under_its_concept(lived in any_year(true), says: bool) {
        let (mut newest, mut behind) = (Class::new(), Class::new());
        newest.live(&lived, [0; 3], says);
        behind.live(&lived, BEHIND, says);
        let end = weekdays().last().unwrap();
        let year = behind.desk.open().facts.year;
        let within = |marks: &BTreeMap<(u32, NaiveDate, String), Confidence>| {
            let mut marks = marks.clone();
            marks.retain(|(_, on, _), _| year.contains(*on));
            marks
        };
        behind.hand_in(end);
        prop_assert_eq!(behind.counted(end), within(&behind.marks));
        for device in 0..BEHIND.len() {
            behind.take_pack(device, 0, end);
        }
        behind.hand_in(end);
        prop_assert_eq!(behind.counted(end), within(&behind.marks));
        for ((seat, on, concept), value) in &within(&behind.marks) {
            let device = usize::try_from(*seat).unwrap() - 1;
            let (store, joined) = (&behind.devices[device], behind.joined(device));
            let today = surefoot_student::today(store, &joined, end, Some(*on)).unwrap();
            let shown = today.concepts.iter().filter(|one| one.concept.id == *concept);
            let shown: Vec<_> = shown.map(|one| one.confidence).collect();
            prop_assert_eq!(shown, [Some(*value)]);
        }
        // Said days leave one difference: a device that does not have the rotation of the date
        // yet shows the concepts that the day had before.
        if says {
            let mut other = BTreeSet::new();
            for (at, on) in weekdays().enumerate() {
                let changes = lived.range(..=at).flat_map(|(_, (changes, _))| changes);
                if changes.clone().any(|change| change.moves_concepts()) {
                    other.insert(on);
                }
            }
            let same = |class: &Class| {
                let mut marks = class.marks.clone();
                marks.retain(|(_, on, _), _| !other.contains(on));
                marks
            };
            prop_assert_eq!(same(&newest), same(&behind));
        }
    }
}

/// A snow day: the desk makes one call. On a tablet without the new pack the student says the day
/// once, and the tablet counts on from there until the next pack comes.
#[test]
fn a_day_is_said_once_and_settled_by_the_next_pack() {
    let mut class = Class::new();
    let (monday, tuesday) = (date("2027-04-12"), date("2027-04-13"));
    let day_at_desk = |class: &Class, on| {
        let day = class_day(&class.desk.store, &class.desk.open(), on).unwrap();
        (day.day, day.known.unaware.len(), day.known.unheard)
    };
    class.rate(0, monday, 12, true);
    let (number, _, unheard) = day_at_desk(&class, monday);
    assert_eq!((number, unheard), (Some(1), 3));
    class.hand_in(monday);
    assert_eq!(day_at_desk(&class, monday), (number, 0, 0));

    close_day(&class.desk.store, &class.desk.class, tuesday, true).unwrap();
    let closed = class_day(&class.desk.store, &class.desk.open(), tuesday).unwrap();
    assert_eq!((closed.day, closed.closed), (None, true));
    let next = closed.next.unwrap();
    assert_eq!((next.date, next.day), (date("2027-04-14"), 2));
    // No device knows yet, and a new pack alone tells none.
    assert_eq!(closed.known.unaware.len(), 3);
    close_day(&class.desk.store, &class.desk.class, tuesday, false).unwrap();
    assert_eq!(day_at_desk(&class, tuesday), (Some(2), 0, 0));
    close_day(&class.desk.store, &class.desk.class, tuesday, true).unwrap();
    class.give_out(tuesday);
    assert_eq!(day_at_desk(&class, tuesday), (None, 3, 0));

    assert_eq!(class.today(0, next.date).day, Some(3));
    for on in ["2027-04-14", "2027-04-15", "2027-04-16", "2027-04-21"] {
        class.rate(0, date(on), 12, true);
    }
    assert_eq!(class.says, 1);
    let said = class.today(0, date("2027-04-16"));
    assert_eq!((said.day, said.said_on), (Some(4), Some(next.date)));
    // A pack made before what was said does not settle it; one made later does.
    class.take_pack(0, 0, date("2027-04-21"));
    let after = class.today(0, date("2027-04-21"));
    assert_eq!((after.day, after.said_on), (Some(5), Some(next.date)));
    class.give_out(date("2027-04-21"));
    class.take_pack(0, 0, date("2027-04-21"));
    let after = class.today(0, date("2027-04-21"));
    assert_eq!((after.day, after.said_on), (Some(5), None));
    class.hand_in(date("2027-04-21"));
    assert_eq!(day_at_desk(&class, date("2027-04-21")), (Some(5), 2, 0));
}

/// On a day that the tablet does not know as a school day, the student says the day; and can
/// take it back.
#[test]
fn a_day_can_be_said_where_the_tablet_knows_no_school() {
    let class = Class::new();
    for on in ["2027-04-19", "2027-05-10"] {
        let on = date(on);
        assert_eq!(class.today(0, on).day, None);
        let say = |day| say_day(&class.devices[0], &class.joined(0), on, on, day);
        say(Some(7)).unwrap();
        let said = class.today(0, on);
        assert_eq!(said.day, Some(7));
        let tap = Tap {
            date: on,
            concept: said.concepts[0].concept.id.clone(),
            confidence: Some(Confidence::OnMyOwn),
            outcome: None,
        };
        surefoot_student::check_in(&class.devices[0], &class.joined(0), on, &tap).unwrap();
        assert_eq!(
            class.today(0, on).concepts[0].confidence,
            Some(Confidence::OnMyOwn)
        );
        say(None).unwrap();
        let after = class.today(0, on);
        assert_eq!((after.day, after.said_on), (None, None));
    }
    // What was marked stays, also where the pack knows no school.
    let kept = class.today(0, date("2027-04-19")).concepts;
    assert_eq!(kept.len(), 1);
    assert!(!kept[0].in_review);
    let joined = class.joined(0);
    let today = date("2027-04-21");
    for (on, day) in [("2027-04-22", 1), ("2026-08-30", 1)] {
        assert!(say_day(&class.devices[0], &joined, today, date(on), Some(day)).is_err());
    }
    for day in [0, 11] {
        assert!(say_day(&class.devices[0], &joined, today, today, Some(day)).is_err());
    }
    assert_eq!(date(LAST_DAY), joined.facts.year.last_day);
}
