//! What the first screen shows.

use super::days::{DayPlan, day_plans};
use super::kinds::{KINDS, Sentence, SentenceKind};
use super::picture::Picture;
use crate::class::OpenClass;
use crate::error::DeskError;
use crate::estimate::{CountedReports, Reports};
use crate::files::{USUAL_LATE_SCHOOL_DAYS, who_has_not};
use crate::taught_again::newest_verdict;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;
use surefoot_catalogue::Language;
use surefoot_store::DeskStore;
use ts_rs::TS;

/// Sentences at most.
pub const MOST_SENTENCES: usize = 5;

/// The first screen of a class.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct ClassNow {
    /// The class.
    pub class_title: String,
    /// Today.
    pub today: NaiveDate,
    /// What can be said so far.
    pub knowledge: Knowledge,
    /// Seats in the class.
    pub seats: usize,
    /// Seats with a report.
    pub seats_reporting: usize,
    /// Days since the newest report.
    #[ts(type = "number | null")]
    pub newest_report_days: Option<i64>,
    /// Passes with ratings of three students or more, on the concept that has most of them. A
    /// trend needs six.
    pub passes_rated: usize,
    /// The sentences in the order of the screen, at most [`MOST_SENTENCES`].
    pub sentences: Vec<Sentence>,
    /// Today, or the next school day if today is none, and the school day after it.
    pub days: Vec<DayPlan>,
    /// Seats whose newest report came from paper, without a device: copies to make.
    pub on_paper: usize,
    /// How much is missing, with the usual number of days: students in the list of who has not, and its
    /// lines that are about no student.
    pub lacking: usize,
}

/// What can be said of a class so far.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum Knowledge {
    /// Nothing has been reported.
    Nothing,
    /// An order of the concepts: there are too few results for a level.
    Order,
    /// The level, and so shares.
    Level,
}

/// What the class needs now. The reports are read once, and what they say today is estimated once.
pub fn class_now(
    desk: &DeskStore,
    class: &OpenClass,
    language: Language,
    today: NaiveDate,
) -> Result<ClassNow, DeskError> {
    let (counted, newest) = CountedReports::read(desk, class, today)?;
    let taught_again = newest_verdict(desk, class, &counted, language, today)?;
    let reports = Reports::of(class, counted, newest, today)?;
    let picture = Picture::of(desk, class, &reports, taught_again, language, today)?;
    let board = &picture.board;
    let with_device: BTreeSet<u32> = (desk.devices(&class.row.id)?.iter())
        .map(|device| device.seat)
        .collect();
    Ok(ClassNow {
        class_title: board.class_title.clone(),
        today,
        knowledge: match (board.seats_reporting, board.level_known) {
            (0, _) => Knowledge::Nothing,
            (_, false) => Knowledge::Order,
            (_, true) => Knowledge::Level,
        },
        seats: board.seats,
        seats_reporting: board.seats_reporting,
        newest_report_days: board.newest_report_days,
        passes_rated: picture.passes_rated,
        sentences: chosen(&picture),
        days: day_plans(class, &picture, language),
        on_paper: (reports.newest.keys())
            .filter(|seat| !with_device.contains(seat))
            .count(),
        lacking: who_has_not(desk, class, USUAL_LATE_SCHOOL_DAYS, today)?.count(),
    })
}

/// The first sentence of each kind, then second ones and so on until there are enough, in the
/// order of the kinds. A concept that the class should talk about, or is sure of and gets wrong, is
/// not called weak once more.
fn chosen(picture: &Picture) -> Vec<Sentence> {
    let mut said: BTreeSet<String> = BTreeSet::new();
    let mut kinds: Vec<Vec<Sentence>> = Vec::new();
    for make in KINDS {
        let mut made = make(picture);
        made.retain(|sentence| {
            let Some(concept) = &sentence.concept else {
                return true;
            };
            match sentence.says {
                SentenceKind::Weak { .. } => said.insert(concept.id.clone()),
                SentenceKind::Talk { .. } | SentenceKind::SureAndWrong { .. } => {
                    said.insert(concept.id.clone());
                    true
                }
                _ => true,
            }
        });
        kinds.push(made);
    }
    let most = kinds.iter().map(Vec::len).max().unwrap_or(0);
    let in_turn = (0..most).flat_map(|nth| {
        let of = kinds.iter().enumerate();
        of.filter(move |(_, made)| nth < made.len())
            .map(move |(kind, _)| (kind, nth))
    });
    let mut places: Vec<(usize, usize)> = in_turn.take(MOST_SENTENCES).collect();
    places.sort_unstable();
    places
        .into_iter()
        .filter_map(|(kind, nth)| kinds.get(kind)?.get(nth).cloned())
        .collect()
}
