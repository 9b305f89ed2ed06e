//! The sample class: invented, with real stores and real files.
//!
//! Every sample student joins with a seat code, checks in on school days, practises in the
//! evenings and makes hand-ins, all by the use-cases that the screens use. The desk imports the
//! hand-ins. [`sample_student`] decides what the students know, so that the board can be
//! compared with it.

mod history;
mod names;
mod sample_student;
mod seeds;
mod student_year;

use crate::context::data_paths::WorldPaths;
use crate::context::file_dialogs::{FileKind, FileSource};
use crate::context::folder::{file_at, files_in, make_file, make_folder, write_private};
use crate::context::jobs::Progress;
use crate::error::{CallError, files};
use crate::lock::lock;
use crate::read_files::hand_in_files::import_files;
use chrono::{Datelike, Days, NaiveDate};
use sample_student::Difficulties;
use seeds::seed32;
use serde::Serialize;
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::Instant;
use student_year::{Counts, StudentPlan, live_weeks};
use surefoot_catalogue::calendar::{SchoolYear, monday_to_friday};
use surefoot_desk::{self, ClassSecrets};
use surefoot_desk::{NewAssignment, NewClass};
use surefoot_record::{Field, Rule};
use surefoot_store::{DeskStore, Durability};

/// Weeks of the whole school year.
const YEAR_WEEKS: u64 = 36;

/// Concepts that are hard on purpose.
const PLANTED: usize = 4;

/// One of so many hand-ins of the last school day stays without an import.
const LEFT: usize = 6;

/// The sample class to make.
#[derive(Debug, Clone)]
pub struct DemoPlan {
    /// Seats.
    pub students: usize,
    /// School weeks that have passed.
    pub weeks: usize,
    /// The seed of names, knowledge and numbers; the same plan gives the same class.
    pub seed: u64,
    /// The date of the class. The simulation ends on the day before.
    pub today: NaiveDate,
    /// Whether every sixth hand-in of the last school day stays in the shared folder without an
    /// import.
    pub leave_last_hand_ins: bool,
}

impl DemoPlan {
    /// Seats of the sample class.
    pub const STUDENTS: u32 = 24;

    /// School weeks of the sample class that have passed.
    pub const WEEKS: u32 = 8;

    /// The sample class of the app.
    #[must_use]
    pub fn sample(today: NaiveDate) -> Self {
        Self {
            students: Self::STUDENTS as usize,
            weeks: Self::WEEKS as usize,
            seed: 1,
            today,
            leave_last_hand_ins: true,
        }
    }
}

/// The sample class that was made, and how long it took.
#[derive(Debug, Clone, Serialize)]
pub struct DemoSummary {
    /// The class's id.
    pub class: String,
    /// Its title.
    pub title: String,
    /// Seats.
    pub students: usize,
    /// School days simulated.
    pub school_days: usize,
    /// The date of the class.
    pub today: NaiveDate,
    /// The concepts that are hard on purpose.
    pub planted_weak: Vec<String>,
    /// Check-ins made by all students.
    pub check_ins: usize,
    /// Exercises that all students finished.
    pub answers: usize,
    /// Hand-in files made.
    pub hand_ins: usize,
    /// Files imported.
    pub imported: usize,
    /// Files refused.
    pub refused: usize,
    /// The desk.
    pub desk: PathBuf,
    /// The folder of the students' stores.
    pub student_stores: PathBuf,
    /// The folder of the hand-ins.
    pub shared_folder: PathBuf,
    /// The folder of the class packs.
    pub class_packs: PathBuf,
    /// Seconds for the students' weeks.
    pub seconds_students: f64,
    /// Seconds for the imports.
    pub seconds_import: f64,
}

/// The newest class pack of a sample class.
pub(crate) fn newest_class_pack(places: &WorldPaths) -> Result<Option<FileSource>, CallError> {
    let folder = places.class_packs();
    let mut newest: Option<(std::time::SystemTime, PathBuf)> = None;
    for entry in fs::read_dir(folder).map_err(files)?.filter_map(Result::ok) {
        let changed = entry.metadata().and_then(|m| m.modified()).map_err(files)?;
        let path = entry.path();
        let is_pack = path
            .extension()
            .is_some_and(|e| e == FileKind::ClassPack.extension());
        if is_pack && newest.as_ref().is_none_or(|(at, _)| changed >= *at) {
            newest = Some((changed, path));
        }
    }
    Ok(newest.map(|(_, path)| file_at(&path)))
}

fn school_year(today: NaiveDate, weeks: usize) -> Result<SchoolYear, CallError> {
    let monday = today - Days::new(u64::from(today.weekday().num_days_from_monday()));
    let first_day = monday - Days::new(7 * weeks as u64);
    let last_day = first_day + Days::new(7 * YEAR_WEEKS - 3);
    // A free Friday in the third week, so that the sample has a closure.
    let closures = [first_day + Days::new(4 + 7 * 2)].into();
    SchoolYear::new(first_day, last_day, monday_to_friday(), closures)
        .map_err(|error| CallError::Calendar { error })
}

/// Makes a class in `folder`, which must be empty or missing.
///
/// # Errors
/// Returns [`CallError::Invalid`] for a folder with a desk, and [`CallError::Cancelled`] if
/// `progress` was asked to stop.
pub fn make(folder: &Path, plan: &DemoPlan, progress: &Progress) -> Result<DemoSummary, CallError> {
    let places = WorldPaths::new(folder);
    for needed in [
        places.students(),
        places.shared_folder(),
        places.class_packs(),
    ] {
        make_folder(&needed)?;
    }
    if places.desk().exists() {
        return Err(CallError::Invalid {
            field: Field::Folder,
            rule: Rule::NotEmpty,
        });
    }
    make_file(&places.desk())?;
    let desk = DeskStore::open(&places.desk(), Durability::Relaxed)?;
    let names = names::names(plan.students, plan.seed);
    let new = NewClass {
        title: names::CLASS_TITLE.to_owned(),
        names: names.clone(),
        year: school_year(plan.today, plan.weeks)?,
        grades: vec![3, 4],
        rotation_days: 10,
        concepts_a_day: 6,
    };
    let seed = |what: &str| seed32(plan.seed, what);
    let secrets = ClassSecrets {
        sealing: seed("sealing"),
        signing: seed("signing"),
        seats: seed("seats"),
    };
    let first_day = new.year.first_day;
    let summary = surefoot_desk::create_class(&desk, &new, &secrets, first_day)?;
    let class = surefoot_desk::open_class(&desk, &summary.id)?;
    let pack = save_pack(&desk, &places, &summary.id, first_day)?;
    let first_pack = surefoot_student::read_first_pack(pack.as_slice())?;
    let codes: Vec<String> = surefoot_desk::join_slips(&class)?
        .into_iter()
        .map(|s| s.code)
        .collect();

    let school_days: Vec<NaiveDate> = class
        .facts
        .year
        .school_days()
        .take_while(|d| *d < plan.today)
        .collect();
    let planted = plant(&class, &school_days);
    let difficulties = Difficulties::draw(
        class
            .facts
            .rotation
            .days()
            .iter()
            .flatten()
            .map(String::as_str),
        &planted,
        plan.seed,
    );
    let taught_again = history::taught_again(&class, &difficulties, &school_days);
    progress.expect(plan.students * plan.weeks.max(1) + plan.students);
    let started = Instant::now();
    let plans: Vec<StudentPlan<'_>> = (0..plan.students)
        .map(|number| StudentPlan {
            number,
            seed: plan.seed,
            code: codes.get(number).map_or("", String::as_str),
            nickname: names.get(number).map_or("", String::as_str),
            store: places.student(&format!("{:02}", number + 1)),
            difficulties: &difficulties,
            pack: &first_pack,
            hand_ins: places.shared_folder(),
            taught_again: taught_again.as_ref().map(|(id, on)| (id.as_str(), *on)),
        })
        .collect();
    let counts = all_students(&plans, &school_days, progress)?;

    let import_started = Instant::now();
    let mut waiting = files_in(&places.shared_folder(), FileKind::HandIn).map_err(files)?;
    if plan.leave_last_hand_ins
        && let Some(last) = school_days.last()
    {
        let mut nth = 0;
        waiting.retain(|source| {
            if !source.name().contains(&last.to_string()) {
                return true;
            }
            nth += 1;
            nth % LEFT != 0
        });
    }
    let report = import_files(&desk, waiting, plan.today, &Progress::default())?;
    let refused = report.tally.refused as usize;
    let imported = report.tally.files() as usize - refused;
    history::teach(&desk, &summary.id, taught_again, &school_days, plan.today)?;
    assign_weakest(&desk, &places, &summary.id, plan.today)?;
    Ok(DemoSummary {
        class: summary.id,
        title: summary.title,
        students: plan.students,
        school_days: school_days.len(),
        today: plan.today,
        planted_weak: planted,
        check_ins: counts.check_ins,
        answers: counts.answers,
        hand_ins: counts.hand_ins,
        imported,
        refused,
        desk: places.desk(),
        student_stores: places.students(),
        shared_folder: places.shared_folder(),
        class_packs: places.class_packs(),
        seconds_students: (import_started - started).as_secs_f64(),
        seconds_import: import_started.elapsed().as_secs_f64(),
    })
}

/// Makes the next class pack and writes it beside the older ones.
fn save_pack(
    desk: &DeskStore,
    places: &WorldPaths,
    class: &str,
    today: NaiveDate,
) -> Result<Vec<u8>, CallError> {
    let class = surefoot_desk::open_class(desk, class)?;
    let pack = surefoot_desk::make_class_pack(desk, &class, today)?;
    write_private(&places.class_packs().join(&pack.file_name), &pack.bytes).map_err(files)?;
    Ok(pack.bytes)
}

/// Chooses the concepts that are hard on purpose, among those taught in the first half of the
/// simulated weeks.
fn plant(class: &surefoot_desk::OpenClass, school_days: &[NaiveDate]) -> Vec<String> {
    let Some(enough) = school_days.get(school_days.len() / 2) else {
        return Vec::new();
    };
    let mut taught: Vec<(&String, NaiveDate)> = class
        .facts
        .taught_from
        .iter()
        .filter(|(_, from)| **from <= *enough)
        .map(|(concept, from)| (concept, *from))
        .collect();
    taught.sort_by_key(|(concept, from)| (*from, (*concept).clone()));
    let step = (taught.len() / PLANTED).max(1);
    let mut planted: Vec<String> = taught
        .iter()
        .skip(step / 2)
        .step_by(step)
        .take(PLANTED)
        .map(|(concept, _)| (*concept).clone())
        .collect();
    planted.sort();
    planted
}

/// Simulates the weeks of all students, as many students at a time as there are cores, at most
/// four.
fn all_students(
    plans: &[StudentPlan<'_>],
    school_days: &[NaiveDate],
    progress: &Progress,
) -> Result<Counts, CallError> {
    let next = AtomicUsize::new(0);
    let counts = Mutex::new(Counts::default());
    let failed: Mutex<Option<CallError>> = Mutex::new(None);
    let threads = std::thread::available_parallelism().map_or(1, |n| n.get().min(4));
    std::thread::scope(|scope| {
        for _ in 0..threads {
            scope.spawn(|| {
                while let Some(plan) = plans.get(next.fetch_add(1, Ordering::Relaxed)) {
                    match live_weeks(plan, school_days, progress) {
                        Ok(made) => lock(&counts).add(made),
                        Err(error) => {
                            *lock(&failed) = Some(error);
                            progress.stop();
                        }
                    }
                }
            });
        }
    });
    match failed
        .into_inner()
        .unwrap_or_else(std::sync::PoisonError::into_inner)
    {
        Some(error) => Err(error),
        None => Ok(counts
            .into_inner()
            .unwrap_or_else(std::sync::PoisonError::into_inner)),
    }
}

/// Assigns the weakest concept to the whole class, in a new class pack.
fn assign_weakest(
    desk: &DeskStore,
    places: &WorldPaths,
    class: &str,
    today: NaiveDate,
) -> Result<(), CallError> {
    let open = surefoot_desk::open_class(desk, class)?;
    let board = surefoot_desk::board(
        desk,
        &open,
        &[],
        surefoot_catalogue::Language::first(),
        today,
    )?;
    let weakest = board
        .rows
        .iter()
        .find(|row| row.rank.is_some() && row.concept.has_exercises);
    if let Some(row) = weakest {
        let new = NewAssignment {
            concepts: vec![row.concept.id.clone()],
            items_each: 4,
            from: today,
            due: today + Days::new(7),
            seats: Vec::new(),
        };
        surefoot_desk::assign(desk, &open, &new, "sample-1", today)?;
        save_pack(desk, places, class, today)?;
    }
    Ok(())
}
