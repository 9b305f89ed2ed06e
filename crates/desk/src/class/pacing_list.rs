//! Reads first lessons from a pasted pacing list.

use super::open::{OpenClass, open_class};
use super::views::{PacingFound, PacingList, PacingMissed, PacingTrouble};
use crate::error::{DeskError, Field, Rule};
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::Language;
use surefoot_store::DeskStore;

/// Lines of a list at most.
const MOST_LINES: usize = 500;

/// Characters of a line that the screen shows at most.
const LONGEST_SHOWN: usize = 80;

/// Reads a pacing list, and stores nothing. A line has a concept (its title in any language, or its
/// id) and the date of its first lesson, in either order, separated by a tab, a semicolon or a
/// comma. A line with only a date sets the date of the lines below it.
///
/// Dates are `2026-09-14` or `9/14/2026`, with the month first.
#[must_use]
pub fn read_pacing(class: &OpenClass, text: &str, language: Language) -> PacingList {
    let mut list = PacingList {
        found: Vec::new(),
        missed: Vec::new(),
    };
    let mut heading = None;
    let mut seen = BTreeSet::new();
    let lines = text.lines().map(str::trim).filter(|line| !line.is_empty());
    for line in lines.take(MOST_LINES) {
        let miss = |trouble| PacingMissed {
            line: line.chars().take(LONGEST_SHOWN).collect(),
            trouble,
        };
        let (date, rest) = split(line);
        let Some(name) = rest else {
            heading = date;
            continue;
        };
        let Some(concept) = concept_named(class, &name) else {
            list.missed.push(miss(PacingTrouble::NoSuchConcept));
            continue;
        };
        let Some(date) = date.or(heading) else {
            list.missed.push(miss(PacingTrouble::NoDate));
            continue;
        };
        if !class.facts.year.contains(date) {
            list.missed.push(miss(PacingTrouble::OutsideYear));
            continue;
        }
        if !seen.insert(concept) {
            list.missed.push(miss(PacingTrouble::Twice));
            continue;
        }
        list.found.push(PacingFound {
            concept: class.facts.name(concept, language),
            date,
            before: class.facts.taught_from.get(concept).copied(),
        });
    }
    list
}

/// The date of a line, and the rest of the line.
fn split(line: &str) -> (Option<NaiveDate>, Option<String>) {
    if let Some(date) = date_of(line) {
        return (Some(date), None);
    }
    for apart in ['\t', ';', ','] {
        let ends = [
            line.split_once(apart),
            line.rsplit_once(apart).map(|(name, date)| (date, name)),
        ];
        for (date, name) in ends.into_iter().flatten() {
            if let Some(date) = date_of(date) {
                return (Some(date), Some(bare(name)).filter(|name| !name.is_empty()));
            }
        }
    }
    (None, Some(bare(line)))
}

fn date_of(text: &str) -> Option<NaiveDate> {
    let text = text.trim().trim_matches('"');
    text.parse()
        .ok()
        .or_else(|| NaiveDate::parse_from_str(text, "%m/%d/%Y").ok())
}

fn bare(name: &str) -> String {
    name.trim().trim_matches('"').trim().to_lowercase()
}

fn concept_named<'c>(class: &'c OpenClass, name: &str) -> Option<&'c str> {
    class
        .facts
        .concepts
        .iter()
        .find(|(id, _)| {
            let titled = |language| class.facts.name(id, language).title.to_lowercase() == *name;
            id.to_lowercase() == *name || Language::all().iter().any(|one| titled(*one))
        })
        .map(|(id, _)| id.as_str())
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
            return Err(DeskError::NotFound("concept"));
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
