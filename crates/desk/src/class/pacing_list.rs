//! Reads first lessons from a pasted pacing list.

use super::open::{OpenClass, open_class};
use super::pacing_concept::{Concepts, Named};
use super::pacing_when::{Calendar, When};
use super::views::{PacingFound, PacingList, PacingMissed, PacingNear, PacingTrouble};
use crate::error::{DeskError, Field, Rule, Thing};
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::Language;
use surefoot_store::DeskStore;

/// Lines of a list at most.
const MOST_LINES: usize = 500;

/// Characters of a line that the screen shows at most.
const LONGEST_SHOWN: usize = 80;

/// Reads a pacing list, and stores nothing.
///
/// A line has a concept and the time of its first lesson, in any order. The concept is a title in
/// any language, an id or the code of a standard; the time is a date, a week of the school year, or
/// "last year". A line with only a time sets the time of the lines below it. `day_first` tells how
/// `9/8` is read; without it, the list decides if it can; otherwise the month comes first.
///
/// # Errors
/// Fails only for a fault of the program.
pub fn read_pacing(
    class: &OpenClass,
    text: &str,
    day_first: Option<bool>,
    language: Language,
) -> Result<PacingList, DeskError> {
    read_lines(class, &Concepts::of(class)?, text, day_first, language)
}

/// [`read_pacing`] with the concepts that a line can name.
pub(crate) fn read_lines(
    class: &OpenClass,
    concepts: &Concepts,
    text: &str,
    day_first: Option<bool>,
    language: Language,
) -> Result<PacingList, DeskError> {
    let lines: Vec<&str> = (text.lines().map(str::trim))
        .filter(|line| !line.is_empty())
        .take(MOST_LINES)
        .collect();
    let calendar = Calendar::new(&class.facts.year, &lines, day_first)?;
    let mut list = PacingList {
        found: Vec::new(),
        near: Vec::new(),
        missed: Vec::new(),
        day_first: calendar.read_both_ways.then_some(calendar.day_first),
    };
    let mut heading = None;
    let mut seen: BTreeSet<String> = BTreeSet::new();
    for line in lines {
        let shown: String = line.chars().take(LONGEST_SHOWN).collect();
        let (when, rest) = calendar.split(line);
        let found = |concept: &str, date: NaiveDate| PacingFound {
            line: shown.clone(),
            concept: concepts.facts.name(concept, language),
            date,
            last_year: matches!(when.or(heading), Some(When::LastYear)),
            before: class.facts.taught_from.get(concept).copied(),
        };
        let miss = |trouble| PacingMissed {
            line: shown.clone(),
            trouble,
        };
        let named = match rest.as_slice() {
            [] => {
                heading = when;
                continue;
            }
            cells => concepts.named(cells),
        };
        if when.is_none() && calendar.is_heading(&rest) {
            continue;
        }
        let trouble = match (&named, when.or(heading)) {
            (Named::Nothing, _) => Some(PacingTrouble::NoSuchConcept),
            (Named::NotInRotation, _) => Some(PacingTrouble::NotInRotation),
            (_, None) => Some(PacingTrouble::NoDate),
            (_, Some(when)) => {
                (calendar.date(when).is_none()).then_some(PacingTrouble::OutsideYear)
            }
        };
        let date = when.or(heading).and_then(|when| calendar.date(when));
        let (None, Some(date)) = (trouble, date) else {
            list.missed
                .push(miss(trouble.unwrap_or(PacingTrouble::OutsideYear)));
            continue;
        };
        match named {
            Named::Sure(ids) => {
                let new: Vec<&String> = ids.iter().filter(|id| !seen.contains(*id)).collect();
                if new.is_empty() {
                    list.missed.push(miss(PacingTrouble::Twice));
                }
                list.found.extend(new.into_iter().map(|id| found(id, date)));
                seen.extend(ids);
            }
            Named::Near(ids) => list.near.push(PacingNear {
                line: shown.clone(),
                choices: ids.iter().map(|id| found(id, date)).collect(),
            }),
            Named::Nothing | Named::NotInRotation => {}
        }
    }
    Ok(list)
}

/// Sets the first lessons of several concepts, all or none; `None` removes one.
///
/// # Errors
/// Returns [`DeskError::Invalid`] for a date outside the year.
pub fn set_first_lessons(
    desk: &DeskStore,
    class: &str,
    lessons: &BTreeMap<String, Option<NaiveDate>>,
) -> Result<(), DeskError> {
    let class = open_class(desk, class)?;
    for (concept, date) in lessons {
        if class.facts.rotation.day_of(concept).is_none() {
            return Err(DeskError::NotFound(Thing::Concept));
        }
        if date.is_some_and(|date| !class.facts.year.contains(date)) {
            return Err(DeskError::invalid(Field::Dates, Rule::Range));
        }
    }
    desk.transaction(|| {
        for (concept, date) in lessons {
            desk.put_taught_from(&class.row.id, concept, *date)?;
        }
        Ok(())
    })
}
