//! The concepts of a practice sheet for one student.

use crate::assign::amounts;
use crate::board::{board_from, student_page_from};
use crate::class::OpenClass;
use crate::error::DeskError;
use crate::estimate::Reports;
use chrono::NaiveDate;
use surefoot_catalogue::Language;
use surefoot_catalogue::rotation::Phase;
use surefoot_exercises::Level;
use surefoot_store::DeskStore;

/// The probabilities of having a concept below which exercises are of entry level, and from which
/// they are of stretch level. Our choice; no source.
const FIRST_STEPS_BELOW: f64 = 0.4;
const STRETCH_FROM: f64 = 0.8;

/// A concept to practise.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct SeatPractice<'a> {
    /// Its id.
    pub concept: &'a str,
    /// The level of the exercises.
    pub level: Level,
}

/// At most `most` concepts for a seat: first those assigned and not done, then those needed most. For
/// a seat without a report, those that the class needs most.
pub fn seat_practice<'a>(
    desk: &DeskStore,
    class: &'a OpenClass,
    seat: u32,
    today: NaiveDate,
    most: usize,
) -> Result<Vec<SeatPractice<'a>>, DeskError> {
    // The titles, which need a language, are not used.
    let reports = Reports::read(desk, class, today)?;
    let page = student_page_from(class, &reports, seat, Language::first(), today)?;
    let probability = |concept: &str| {
        page.concepts
            .iter()
            .find(|c| c.concept.id == concept)
            .and_then(|c| c.has_it)
            .unwrap_or(0.5)
    };
    let mut wanted: Vec<String> = Vec::new();
    for concept in class.facts.by_strand() {
        let left = amounts(desk, class, &reports.practice, concept, today)?
            .get(&seat)
            .is_some_and(|amount| amount.done < amount.of);
        if left {
            wanted.push(concept.to_owned());
        }
    }
    let own = page
        .concepts
        .iter()
        .filter(|c| c.phase != Phase::Preview)
        .map(|c| c.concept.id.clone());
    wanted.extend(own);
    if page.concepts.is_empty() {
        let class_needs = board_from(desk, class, &reports, Language::first(), today)?.rows;
        wanted.extend(
            class_needs
                .into_iter()
                .filter(|row| row.phase != Phase::Preview)
                .map(|row| row.concept.id),
        );
    }
    let mut found: Vec<SeatPractice> = Vec::new();
    for id in wanted {
        if let Some((concept, _)) = class.facts.concepts.get_key_value(&id)
            && class.facts.has_exercises(concept)
            && found.iter().all(|f| f.concept != concept)
            && found.len() < most
        {
            let probability = probability(concept);
            let level = if probability < FIRST_STEPS_BELOW {
                Level::Entry
            } else if probability < STRETCH_FROM {
                Level::Expected
            } else {
                Level::Stretch
            };
            found.push(SeatPractice { concept, level });
        }
    }
    Ok(found)
}
