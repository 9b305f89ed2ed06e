//! What was taught again: noted, dated, compared and removed.

use super::{Desk, date, device_of};
use crate::{
    DeskError, Field, GroupChosen, HelpSays, HelpView, NewTaughtAgain, Rule, SentenceKind,
    TaughtAgainLog, TaughtFromWhere, class_now, drop_taught_again, keep_group_wishes, keep_groups,
    note_taught_again, record_group, set_taught_from, taught_again,
};
use crate::{GroupWishes, note_talk};
use chrono::{Days, NaiveDate};
use surefoot_catalogue::rating::Outcome;
use surefoot_catalogue::{ConceptId, Language};
use surefoot_record::{CheckIn, Record, Said};

const SEATS: u32 = 12;
/// Day 1 of the third pass; the rotation has ten school days.
const TAUGHT_ON: &str = "2026-09-28";

fn entry(concept: &str, seats: Vec<u32>) -> NewTaughtAgain {
    NewTaughtAgain {
        replaces: None,
        date: date(TAUGHT_ON),
        concept: concept.into(),
        came_from: TaughtFromWhere::Hand,
        seats,
        note: None,
    }
}

fn note(desk: &Desk, new: &NewTaughtAgain, today: &str) -> Result<(), DeskError> {
    note_taught_again(&desk.store, &desk.open(), new, date(today))
}

fn log(desk: &Desk, today: &str) -> TaughtAgainLog {
    taught_again(&desk.store, &desk.open(), Language::first(), date(today)).unwrap()
}

fn help(desk: &Desk, today: &str) -> HelpView {
    log(desk, today).entries[0].help.clone()
}

/// A number from 0 to 99 that looks drawn by chance.
fn draw(seat: u32, place: usize, day: usize) -> usize {
    let mut mixed = u64::from(seat) * 10_007 + u64::try_from(place * 101 + day + 1).unwrap();
    for _ in 0..3 {
        mixed = (mixed ^ (mixed >> 15)).wrapping_mul(0x9E37_79B9_7F4A_7C15);
    }
    usize::try_from((mixed >> 32) % 100).unwrap()
}

/// A class with results on every concept in each pass. From the fourth pass on, `right` says who is
/// right on the first concept; before, a quarter is, and on other concepts 20 to 80 of a hundred.
fn lived(right: impl Fn(u32, usize) -> bool) -> (Desk, String) {
    let desk = Desk::with_seats(SEATS as usize);
    let concept = desk.concept(0);
    let class = desk.open();
    for day in class.facts.rotation.days() {
        for id in day {
            let first = Some(date("2026-08-31"));
            set_taught_from(&desk.store, &desk.class, id, first).unwrap();
        }
    }
    for seat in 1..=SEATS {
        let mut entries = Vec::new();
        for (nth, on) in class.facts.year.school_days().enumerate().take(60) {
            let pass = nth / 10;
            for (at, id) in class.facts.rotation.days()[nth % 10].iter().enumerate() {
                let place = at * 10 + nth % 10;
                let by_chance = draw(seat, place, nth);
                let is_right = match (*id == concept, pass) {
                    (true, 3..) => right(seat, pass),
                    (true, _) => by_chance < 25,
                    _ => by_chance < 20 + place * 37 % 61,
                };
                let outcome = if is_right {
                    Outcome::Right
                } else {
                    Outcome::Wrong
                };
                entries.push(CheckIn {
                    device: device_of(seat),
                    date: on,
                    concept: ConceptId::new(id).unwrap(),
                    confidence: None,
                    outcome: Some(Said {
                        at: 1,
                        value: Some(outcome),
                    }),
                });
            }
        }
        let record = Record::from_entries(entries, []);
        desk.writer(seat).write(&record).unwrap();
    }
    (desk, concept)
}

#[test]
fn a_verdict_follows_one_pass_after_the_teaching() {
    let (desk, concept) = lived(|seat, pass| !(seat as usize + pass).is_multiple_of(6));
    note(&desk, &entry(&concept, Vec::new()), TAUGHT_ON).unwrap();
    // Ten school days later the pass is over, and the verdict is due on the next one.
    let soon = help(&desk, "2026-10-12");
    assert_eq!(soon.says, HelpSays::TooSoon);
    assert_eq!(soon.next_on, Some(date("2026-10-13")));
    assert_eq!(soon.numbers, None);
    let one = help(&desk, "2026-10-13");
    assert_eq!((one.passes, one.until), (1, Some(date("2026-10-12"))));
    let numbers = one.numbers.unwrap();
    assert_eq!((numbers.answers, numbers.right), (12, 10));
    assert!(numbers.foretold < 7 && numbers.expected < 8, "{numbers:?}");
    // Two passes later there is no doubt.
    let two = help(&desk, "2026-10-27");
    assert_eq!((two.passes, two.says), (2, HelpSays::RoseMore), "{two:?}");
    let numbers = two.numbers.unwrap();
    let more = i64::from(numbers.right) - numbers.expected;
    assert!(
        0 <= numbers.more_low && numbers.more_low <= more && more <= numbers.more_high,
        "{numbers:?}"
    );
    assert!(numbers.expected + numbers.more_high <= i64::from(numbers.answers));
    // A verdict stays after the third pass.
    let late = help(&desk, "2027-04-01");
    assert_eq!((late.passes, late.next_on), (3, None));
    assert_eq!(help(&desk, "2026-11-20"), late);
}

#[test]
fn the_first_screen_says_a_verdict_while_it_is_news() {
    let (desk, concept) = lived(|seat, pass| !(seat as usize + pass).is_multiple_of(6));
    let said = |today: &str| {
        let now = class_now(&desk.store, &desk.open(), Language::first(), date(today)).unwrap();
        now.sentences.into_iter().find_map(|sentence| {
            let SentenceKind::TaughtAgain { help, taught, .. } = sentence.says else {
                return None;
            };
            Some((sentence.concept.unwrap().id, help, taught))
        })
    };
    assert_eq!(said("2026-10-27"), None, "nothing was taught again");
    note(&desk, &entry(&concept, Vec::new()), TAUGHT_ON).unwrap();
    assert_eq!(said("2026-10-12"), None, "too soon");
    let says = help(&desk, "2026-10-13").says;
    let taught = SEATS as usize;
    assert_eq!(said("2026-10-13"), Some((concept.clone(), says, taught)));
    let rose = Some((concept.clone(), HelpSays::RoseMore, taught));
    assert_eq!(said("2026-10-27"), rose);
    // A later entry without a verdict hides nothing.
    let mut later = entry(&desk.concept(1), vec![2]);
    later.date = date("2026-10-20");
    note(&desk, &later, "2026-10-20").unwrap();
    assert_eq!(said("2026-10-27"), rose);
    assert_eq!(said("2027-04-01"), None, "no longer news");
}

#[test]
fn a_class_that_goes_on_as_before_did_not_rise_more() {
    let (desk, concept) = lived(|seat, pass| (seat as usize + pass).is_multiple_of(5));
    note(&desk, &entry(&concept, Vec::new()), TAUGHT_ON).unwrap();
    for today in ["2026-10-13", "2026-10-27", "2026-11-10"] {
        let found = help(&desk, today);
        assert!(
            matches!(found.says, HelpSays::NoSign | HelpSays::CannotTell),
            "{today} {found:?}"
        );
    }
}

#[test]
fn what_is_practised_afterwards_is_shown_and_changes_no_verdict() {
    let (desk, concept) = lived(|_, _| true);
    note(&desk, &entry(&concept, vec![1, 2]), TAUGHT_ON).unwrap();
    let before = help(&desk, "2026-10-13");
    assert_eq!(before.numbers.unwrap().answers, 2);
    // The day itself and the last day of the pass count, the days beside them do not.
    for (seat, on) in [
        (1, TAUGHT_ON),
        (1, "2026-10-12"),
        (1, "2026-10-13"),
        (3, "2026-10-05"),
    ] {
        desk.practise(seat, on, &concept, |entry| {
            entry.answers.push(surefoot_record::AnswerCount {
                confidence: None,
                alone: 0,
                with_help: 1,
                wrong: 200,
            });
        });
    }
    let after = help(&desk, "2026-10-13");
    let practised = after.numbers.unwrap().practised;
    assert_eq!(practised, 2 * 201);
    let numbers = before.numbers.map(|numbers| crate::HelpNumbers {
        practised,
        ..numbers
    });
    assert_eq!(after, HelpView { numbers, ..before });
}

#[test]
fn who_was_absent_was_not_taught_and_the_same_is_noted_once() {
    let (desk, concept) = lived(|_, _| true);
    let wishes = GroupWishes {
        absent: vec![4],
        ..GroupWishes::default()
    };
    keep_group_wishes(&desk.store, &desk.open(), date(TAUGHT_ON), &wishes).unwrap();
    let words = NewTaughtAgain {
        note: Some("  With fraction strips ".into()),
        ..entry(&concept, Vec::new())
    };
    note(&desk, &words, TAUGHT_ON).unwrap();
    note(&desk, &entry(&concept, Vec::new()), TAUGHT_ON).unwrap();
    note(&desk, &entry(&concept, vec![4]), TAUGHT_ON).unwrap();
    let found = log(&desk, TAUGHT_ON).entries;
    let who = |at: usize| -> Vec<u32> { found[at].members.iter().map(|m| m.seat).collect() };
    assert_eq!(found.len(), 2);
    assert_eq!(who(0), [4]);
    assert_eq!(who(1), [1, 2, 3, 5, 6, 7, 8, 9, 10, 11, 12]);
    assert_eq!(found[1].note.as_deref(), Some("With fraction strips"));
    assert!(found[1].whole_class && !found[0].whole_class);

    let changed = NewTaughtAgain {
        replaces: Some(found[1].id),
        note: None,
        ..entry(&concept, vec![1, 2])
    };
    note(&desk, &changed, TAUGHT_ON).unwrap();
    drop_taught_again(&desk.store, &desk.open(), found[0].id).unwrap();
    let left = log(&desk, TAUGHT_ON).entries;
    assert_eq!(
        (left.len(), left[0].id, left[0].note.clone()),
        (1, found[1].id, None)
    );
}

#[test]
fn a_group_with_a_record_was_taught_again_and_its_record_is_no_answer() {
    let (desk, concept) = lived(|_, _| true);
    let group = GroupChosen {
        slot: 0,
        concept: concept.clone(),
        seats: vec![1, 2, 3],
        partners: vec![9],
    };
    let on = date(TAUGHT_ON);
    keep_groups(&desk.store, &desk.open(), on, &[group]).unwrap();
    assert!(log(&desk, TAUGHT_ON).entries.is_empty());
    for (seat, has_it) in [(1, true), (2, false)] {
        record_group(&desk.store, &desk.open(), on, seat, &concept, Some(has_it)).unwrap();
    }
    let found = log(&desk, "2026-10-13").entries;
    assert_eq!(found.len(), 1);
    assert_eq!(found[0].came_from, TaughtFromWhere::Group);
    let recorded: Vec<_> = found[0]
        .members
        .iter()
        .map(|m| (m.seat, m.recorded))
        .collect();
    assert_eq!(recorded, [(1, Some(true)), (2, Some(false)), (3, None)]);
    assert_eq!(found[0].help.numbers.unwrap().answers, 3);
}

#[test]
fn who_is_taught_once_more_is_left_out_from_then_on_and_the_others_are_judged() {
    let (desk, concept) = lived(|_, _| true);
    note(&desk, &entry(&concept, Vec::new()), TAUGHT_ON).unwrap();
    let again = |on: &str, seats: Vec<u32>| NewTaughtAgain {
        date: date(on),
        ..entry(&concept, seats)
    };
    let answers = |of: &HelpView| of.numbers.unwrap().answers;
    let alone = log(&desk, "2026-11-20").entries[0].help.clone();
    assert_eq!((alone.passes, alone.once_more, answers(&alone)), (3, 0, 36));
    // The concept's day comes once a pass: on 12 and 26 October and on 9 November.
    note(&desk, &again("2026-10-20", vec![2]), "2026-11-10").unwrap();
    let found = log(&desk, "2026-11-20").entries;
    let first = &found[1].help;
    assert_eq!((first.passes, first.once_more, answers(first)), (3, 1, 34));
    assert_eq!(first.says, HelpSays::RoseMore);
    assert_eq!(found[0].help.once_more, 0);
    // The review of the day comes before the lesson.
    note(&desk, &again("2026-10-26", vec![3]), "2026-11-10").unwrap();
    let first = log(&desk, "2026-11-20").entries[2].help.clone();
    assert_eq!((first.once_more, answers(&first)), (2, 33));
}

#[test]
fn what_all_are_taught_once_more_has_its_verdict_there() {
    let (desk, concept) = lived(|_, _| true);
    note(&desk, &entry(&concept, vec![1, 2]), TAUGHT_ON).unwrap();
    let again = |on: &str, seats: Vec<u32>| {
        let new = NewTaughtAgain {
            date: date(on),
            ..entry(&concept, seats)
        };
        note(&desk, &new, "2026-11-10").unwrap();
    };
    again("2026-10-01", vec![1]);
    again("2026-10-05", vec![2, 3]);
    let first = log(&desk, "2026-11-20").entries[2].help.clone();
    assert_eq!(first.says, HelpSays::TaughtOnceMore);
    assert_eq!((first.once_more, first.next_on), (2, None));
    assert_eq!(log(&desk, "2026-11-20").entries[0].help.passes, 3);
    // A pass later the first verdict is there already, and stays.
    let later = log(&desk, "2026-11-20").entries[0].id;
    drop_taught_again(&desk.store, &desk.open(), later).unwrap();
    again("2026-10-15", vec![2]);
    let first = log(&desk, "2026-11-20").entries[2].help.clone();
    assert_eq!((first.passes, first.next_on), (1, None));
}

#[test]
fn what_cannot_be_told_is_looked_at_again_while_a_pass_is_to_come() {
    let (desk, concept) = lived(|seat, pass| (seat as usize + pass).is_multiple_of(2));
    note(&desk, &entry(&concept, vec![7]), TAUGHT_ON).unwrap();
    for (today, next) in [
        ("2026-10-13", Some(date("2026-10-27"))),
        ("2026-10-27", Some(date("2026-11-10"))),
        ("2026-11-10", None),
    ] {
        let found = help(&desk, today);
        assert_eq!((found.says, found.next_on), (HelpSays::CannotTell, next));
    }
}

#[test]
fn what_cannot_be_is_refused() {
    let desk = Desk::with_seats(3);
    let concept = desk.concept(0);
    let on = |day: &str| NewTaughtAgain {
        date: date(day),
        ..entry(&concept, Vec::new())
    };
    for day in ["2026-09-29", "2026-09-27", "2026-08-28"] {
        assert!(matches!(
            note(&desk, &on(day), TAUGHT_ON),
            Err(DeskError::Invalid {
                field: Field::Dates,
                rule: Rule::Range
            })
        ));
    }
    let long = NewTaughtAgain {
        note: Some("ñ".repeat(201)),
        ..on(TAUGHT_ON)
    };
    assert!(matches!(
        note(&desk, &long, TAUGHT_ON),
        Err(DeskError::Invalid {
            field: Field::Note,
            rule: Rule::TooLong
        })
    ));
    for wrong in [
        NewTaughtAgain {
            concept: "none".into(),
            ..on(TAUGHT_ON)
        },
        NewTaughtAgain {
            seats: vec![9],
            ..on(TAUGHT_ON)
        },
        NewTaughtAgain {
            replaces: Some(5),
            ..on(TAUGHT_ON)
        },
    ] {
        assert!(matches!(
            note(&desk, &wrong, TAUGHT_ON),
            Err(DeskError::NotFound(_))
        ));
    }
    assert!(log(&desk, TAUGHT_ON).entries.is_empty());
    // A class without a report.
    note(&desk, &on(TAUGHT_ON), TAUGHT_ON).unwrap();
    let found = help(&desk, "2026-10-13");
    assert_eq!((found.says, found.numbers), (HelpSays::NoAnswers, None));
    // What was only discussed is no entry.
    note_talk(&desk.store, &desk.open(), date(TAUGHT_ON), &concept, true).unwrap();
    assert_eq!(log(&desk, TAUGHT_ON).entries.len(), 1);
    let day_before: NaiveDate = date(TAUGHT_ON) - Days::new(1);
    assert!(log(&desk, &day_before.to_string()).entries.is_empty());
}
