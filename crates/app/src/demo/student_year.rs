//! The weeks of one sample student: join, check in, practise, hand in.

use super::sample_student::{Difficulties, SampleStudent};
use super::seeds::{number, seed32};
use crate::context::folder::{make_file, write_private};
use crate::context::jobs::Progress;
use crate::error::{CallError, files};
use chrono::{Datelike, NaiveDate, Weekday};
use std::path::PathBuf;
use surefoot_catalogue::Language;
use surefoot_catalogue::rating::Outcome;
use surefoot_exercises::{Item, Level, Response};
use surefoot_store::{Durability, StudentStore};
use surefoot_student::practice_views::PracticeStep;
use surefoot_student::{FirstPack, Joined, NewStudent};

/// Avatars of the screens, by their ids.
const AVATARS: [&str; 8] = [
    "fox", "owl", "turtle", "fish", "snail", "bee", "hedgehog", "frog",
];

/// Exercises of an evening at most.
const MOST_EXERCISES: usize = 8;

/// What students did.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Counts {
    pub check_ins: usize,
    pub answers: usize,
    pub hand_ins: usize,
}

impl Counts {
    pub fn add(&mut self, other: Self) {
        self.check_ins += other.check_ins;
        self.answers += other.answers;
        self.hand_ins += other.hand_ins;
    }
}

/// What a sample student needs.
pub(super) struct StudentPlan<'a> {
    pub number: usize,
    pub seed: u64,
    pub code: &'a str,
    pub nickname: &'a str,
    pub store: PathBuf,
    pub difficulties: &'a Difficulties,
    pub pack: &'a FirstPack,
    /// The folder for the hand-ins.
    pub hand_ins: PathBuf,
    /// The concept that the class is taught again, and when.
    pub taught_again: Option<(&'a str, NaiveDate)>,
}

/// The student who is sure and wrong, counted from 0.
const SURE_AND_WRONG: usize = 4;
/// The student whose device is late: it hands in only in the first half of the weeks.
const LATE: usize = 8;

/// Students make hand-ins on Fridays, and on the last two school days: one of the last day may wait
/// for its import, and only one device is to be late.
fn is_hand_in_day(date: NaiveDate) -> bool {
    date.weekday() == Weekday::Fri
}

/// Simulates the school days, and counts what the student did.
pub(super) fn live_weeks(
    plan: &StudentPlan<'_>,
    school_days: &[NaiveDate],
    progress: &Progress,
) -> Result<Counts, CallError> {
    let own = |what: &str| format!("student {} {what}", plan.number);
    let mut student = SampleStudent::draw(number(plan.seed, &own("learner")));
    if plan.number == SURE_AND_WRONG {
        student = student.sure_and_wrong();
    }
    make_file(&plan.store)?;
    let store = StudentStore::open(&plan.store, Durability::Relaxed)?;
    let first = school_days
        .first()
        .copied()
        .unwrap_or(plan.pack.content().year.first_day);
    let mut device = [0; 16];
    device.copy_from_slice(&seed32(plan.seed, &own("device"))[..16]);
    surefoot_student::join(
        &store,
        plan.pack,
        first,
        &NewStudent {
            device,
            signing_seed: seed32(plan.seed, &own("signing")),
            sealing_seed: seed32(plan.seed, &own("sealing")),
            seat_code: plan.code,
            nickname: plan.nickname,
            avatar: AVATARS
                .get(plan.number % AVATARS.len())
                .copied()
                .unwrap_or("fox"),
            // Every fourth student works in the second language of the table.
            language: *Language::all()
                .get(usize::from(plan.number % 4 == 3))
                .unwrap_or(&Language::first()),
        },
    )?;
    let joined = surefoot_student::joined(&store)?;
    let mut counts = Counts::default();
    // How often this student practises and forgets a hand-in.
    let evenings = 0.3 + 0.06 * f64::from(student.picks(10));
    let forgets = if plan.number % 9 == 8 { 0.6 } else { 0.06 };
    for (nth, date) in school_days.iter().enumerate() {
        if progress.stopped() {
            return Err(CallError::Cancelled);
        }
        for (concept, from) in &joined.facts.taught_from {
            if from == date {
                student.lesson(concept, plan.difficulties, *date);
            }
        }
        if student.decides(0.95) {
            counts.check_ins += day_in_class(plan, &store, &joined, &mut student, *date)?;
            if let Some((concept, on)) = plan.taught_again
                && on == *date
            {
                student.is_taught_again(concept, on);
            }
        }
        if student.decides(evenings) {
            counts.answers += evening(plan, &store, &joined, &mut student, *date)?;
        }
        let last = nth + 1 == school_days.len();
        let late = plan.number == LATE && nth >= school_days.len() / 2;
        let hands_in = is_hand_in_day(*date) && !student.decides(forgets);
        let at_the_end = nth + 2 >= school_days.len();
        if (hands_in || at_the_end) && !late {
            let [a, b, c, d, ..] = seed32(plan.seed, &own(&format!("hand-in of {date}")));
            let made = surefoot_student::make_hand_in(&store, &joined, *date, &[a, b, c, d])?;
            write_private(&plan.hand_ins.join(&made.file_name), &made.bytes).map_err(files)?;
            surefoot_student::note_hand_in(&store, &made)?;
            counts.hand_ins += 1;
        }
        if nth % 5 == 4 || last {
            progress.step();
        }
    }
    Ok(counts)
}

fn day_in_class(
    plan: &StudentPlan<'_>,
    store: &StudentStore,
    joined: &Joined,
    student: &mut SampleStudent,
    date: NaiveDate,
) -> Result<usize, CallError> {
    let mut taps = 0;
    let facts = &joined.facts;
    for concept in facts.rotation.concepts_on(&facts.year, date) {
        let outcome = student.review(concept, plan.difficulties, date);
        let confidence = student.rate(concept, plan.difficulties, date);
        let outcome = (outcome != Outcome::NotDone || student.decides(0.5)).then_some(outcome);
        surefoot_student::check_in(
            store,
            joined,
            date,
            &surefoot_student::Tap {
                date,
                concept: concept.clone(),
                confidence: Some(confidence),
                outcome,
            },
        )?;
        taps += 1;
    }
    Ok(taps)
}

fn evening(
    plan: &StudentPlan<'_>,
    store: &StudentStore,
    joined: &Joined,
    student: &mut SampleStudent,
    date: NaiveDate,
) -> Result<usize, CallError> {
    let mut finished = 0;
    while finished < MOST_EXERCISES {
        let seed = number(
            plan.seed,
            &format!("student {} {date} {finished}", plan.number),
        );
        let PracticeStep::Exercise(open) =
            surefoot_student::practice(store, joined, date, None, false, seed)?
        else {
            break;
        };
        let level = Level::try_from(open.level).map_err(files)?;
        let concept = open.concept.id.clone();
        let Some(row) = store.open_exercise()? else {
            break;
        };
        let item = surefoot_exercises::generate(&concept, level, row.seed).map_err(files)?;
        let confidence = student.rate(&concept, plan.difficulties, date);
        surefoot_student::say_confidence(store, joined, date, &open.exercise, confidence)?;
        let seconds = 25 + student.picks(70);
        let right = student.answer(&concept, plan.difficulties, date, false);
        let response = response(&item, right, student);
        let feedback =
            surefoot_student::answer(store, joined, date, &open.exercise, &response, seconds)?;
        if !feedback.finished {
            let right = student.answer(&concept, plan.difficulties, date, true);
            let response = if right {
                surefoot_exercises::response_for(&item.answer)
            } else {
                wrong(&item, student)
            };
            let last = surefoot_student::answer(
                store,
                joined,
                date,
                &open.exercise,
                &response,
                seconds / 2,
            )?;
            // The same wrong answer again does not end an exercise.
            if !last.finished {
                surefoot_student::show_steps(store, joined, date, &open.exercise)?;
            }
        }
        finished += 1;
    }
    Ok(finished)
}

fn response(item: &Item, right: bool, student: &mut SampleStudent) -> Response {
    if right {
        surefoot_exercises::response_for(&item.answer)
    } else {
        wrong(item, student)
    }
}

/// An answer by one of the misconceptions of the exercise, most often the first; the right
/// answer if it has none.
fn wrong(item: &Item, student: &mut SampleStudent) -> Response {
    let count = u32::try_from(item.misconceptions.len()).unwrap_or(0);
    let at = if student.decides(0.6) {
        0
    } else {
        student.picks(count)
    };
    match item.misconceptions.get(at as usize) {
        Some(misconception) => surefoot_exercises::response_for(&misconception.answer),
        None => surefoot_exercises::response_for(&item.answer),
    }
}
