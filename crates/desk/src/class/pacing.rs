//! Suggests the concepts of a new class and their first lessons.

use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_catalogue::{Catalogue, Concept};

/// The share of the school days over which first lessons are spread; the rest is for review.
/// Common practice; no published source.
const TEACHING_SHARE: f64 = 0.85;

/// At most `most` concepts of the chosen grades, in teaching order. The highest grade comes first;
/// earlier grades fill the rest, beginning with their latest concepts.
#[must_use]
pub fn choose_concepts<'a>(
    catalogue: &'a Catalogue,
    grades: &BTreeSet<u8>,
    most: usize,
) -> Vec<&'a Concept> {
    let mut chosen: BTreeSet<&str> = BTreeSet::new();
    for (nth, grade) in grades.iter().rev().enumerate() {
        let mut of_grade: Vec<&Concept> = catalogue
            .in_teaching_order()
            .filter(|c| c.grade == *grade)
            .collect();
        if nth > 0 {
            of_grade.reverse();
        }
        for concept in of_grade {
            if chosen.len() < most {
                chosen.insert(concept.id.as_str());
            }
        }
    }
    catalogue
        .in_teaching_order()
        .filter(|c| chosen.contains(c.id.as_str()))
        .collect()
}

/// The dates of first lessons. Concepts of earlier grades begin on the first school day; those of the
/// highest grade are spread evenly in teaching order.
#[must_use]
pub fn spread_first_lessons(
    concepts: &[&Concept],
    year: &SchoolYear,
) -> BTreeMap<String, NaiveDate> {
    let days: Vec<NaiveDate> = year.school_days().collect();
    let top_grade = concepts.iter().map(|c| c.grade).max();
    let new: Vec<&&Concept> = concepts
        .iter()
        .filter(|c| Some(c.grade) == top_grade)
        .collect();
    let mut dates = BTreeMap::new();
    let Some(first) = days.first() else {
        return dates;
    };
    for concept in concepts {
        dates.insert(concept.id.as_str().to_owned(), *first);
    }
    #[expect(
        clippy::cast_precision_loss,
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a few hundred school days"
    )]
    let teaching_days = ((days.len() as f64 * TEACHING_SHARE) as usize).max(1);
    for (nth, concept) in new.iter().enumerate() {
        let day = nth * teaching_days / new.len().max(1);
        if let Some(date) = days.get(day) {
            dates.insert(concept.id.as_str().to_owned(), *date);
        }
    }
    dates
}

#[cfg(test)]
mod tests {
    use super::*;
    use surefoot_catalogue::calendar::monday_to_friday;

    fn year() -> SchoolYear {
        SchoolYear::new(
            "2026-08-31".parse().unwrap(),
            "2027-05-07".parse().unwrap(),
            monday_to_friday(),
            BTreeSet::new(),
        )
        .unwrap()
    }

    #[test]
    fn the_highest_grade_comes_whole_and_earlier_ones_fill_up() {
        let catalogue = Catalogue::built_in().unwrap();
        let of = |grade| {
            catalogue
                .concepts()
                .iter()
                .filter(|c| c.grade == grade)
                .count()
        };
        let chosen = choose_concepts(catalogue, &[3, 4].into(), of(4) + 5);
        assert_eq!(chosen.iter().filter(|c| c.grade == 4).count(), of(4));
        assert_eq!(chosen.iter().filter(|c| c.grade == 3).count(), 5);
        assert_eq!(choose_concepts(catalogue, &[3, 4].into(), 10).len(), 10);
    }

    #[test]
    fn first_lessons_are_spread_and_never_before_a_prerequisite() {
        let catalogue = Catalogue::built_in().unwrap();
        let chosen = choose_concepts(catalogue, &[3, 4].into(), 60);
        let dates = spread_first_lessons(&chosen, &year());
        assert_eq!(dates.len(), 60);
        for concept in &chosen {
            for before in &concept.prerequisites {
                if let Some(date) = dates.get(before.as_str()) {
                    assert!(
                        *date <= dates[concept.id.as_str()],
                        "{} before {}",
                        concept.id,
                        before
                    );
                }
            }
        }
        let last = dates.values().max().unwrap();
        assert!(year().school_day_number(*last).unwrap() < 153);
        assert!(dates.values().collect::<BTreeSet<_>>().len() > 30);
    }
}
