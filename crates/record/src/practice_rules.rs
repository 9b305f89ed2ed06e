//! What a teacher sets for practice at home.

use crate::Rule;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::calendar::SchoolYear;
use ts_rs::TS;

/// The most minutes of an evening.
const MOST_MINUTES: u32 = 120;
/// The most evenings of a week.
const MOST_EVENINGS: u32 = 7;

/// What the teacher sets for practice at home: bounds for the student's choice, and the date
/// of the next test.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct PracticeRules {
    /// The fewest minutes of an evening, at least 1.
    pub minutes_least: u32,
    /// The most minutes of an evening, at most 120.
    pub minutes_most: u32,
    /// The fewest evenings of a week, at least 1.
    pub evenings_least: u32,
    /// The most evenings of a week, at most 7.
    pub evenings_most: u32,
    /// The date of the next test, within the school year.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub test_on: Option<NaiveDate>,
}

impl PracticeRules {
    /// The rules of a new class.
    pub const USUAL: Self = Self {
        minutes_least: 4,
        minutes_most: 16,
        evenings_least: 1,
        evenings_most: MOST_EVENINGS,
        test_on: None,
    };

    /// Returns which bound is broken, if one is: [`Rule::Minutes`], [`Rule::Evenings`] or
    /// [`Rule::TestOn`].
    #[must_use]
    pub fn fault(&self, year: &SchoolYear) -> Option<Rule> {
        let within =
            |least: u32, most: u32, bound: u32| least >= 1 && least <= most && most <= bound;
        if !within(self.minutes_least, self.minutes_most, MOST_MINUTES) {
            Some(Rule::Minutes)
        } else if !within(self.evenings_least, self.evenings_most, MOST_EVENINGS) {
            Some(Rule::Evenings)
        } else if self.test_on.is_some_and(|test| !year.contains(test)) {
            Some(Rule::TestOn)
        } else {
            None
        }
    }
}
