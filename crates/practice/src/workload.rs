//! How much is practised when: minutes and evenings, how an overrun shortens the next
//! evening, how assigned work is spread, and the date aimed at.
//!
//! Missed practice is not counted. After an illness or holidays an evening is as long as
//! any other, and the exercises with the greatest gain for their minutes come first, so a
//! backlog spreads over the evenings that follow.

use chrono::{Datelike, Days, NaiveDate};
use std::collections::BTreeMap;

/// Minutes an exercise usually takes, before anything is known of it.
pub const USUAL_MINUTES: f64 = 1.2;

/// Days after which an overrun is forgotten.
const OVERRUN_DAYS: i64 = 7;

/// The least share of an evening's minutes with which it counts as practised.
const EVENING_SHARE: f64 = 0.5;

/// The planned length of an evening.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum EveningLength {
    /// By minutes.
    Minutes(f64),
    /// By exercises, with a limit in minutes.
    Exercises {
        /// Exercises.
        count: u32,
        /// The most minutes that the teacher allows.
        most_minutes: f64,
    },
}

/// Returns the fewest and the most exercises of an evening whose bounds are set in minutes: as
/// many as usually fit, at least one.
#[must_use]
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a few minutes, never below 0"
)]
pub fn exercise_bounds(minutes_least: u32, minutes_most: u32) -> (u32, u32) {
    let of = |minutes: u32| f64::from(minutes) / USUAL_MINUTES;
    let least = of(minutes_least).ceil().max(1.0) as u32;
    (least, (of(minutes_most).floor() as u32).max(least))
}

/// Assigned work may take this many times an evening's minutes or exercises.
pub const MOST_ASSIGNED_EVENINGS: f64 = 2.0;

/// An exercise answered at home.
#[derive(Debug, Clone, PartialEq)]
pub struct Answered {
    /// Its date.
    pub date: NaiveDate,
    /// Its concept.
    pub concept: String,
    /// Minutes it took.
    pub minutes: f64,
}

/// Returns the minutes for `today`, if an evening has `planned` minutes. The exercise that is
/// open when the minutes end is finished, and its overrun shortens the next evening
/// within a week. Exercises after it, which the student asked for, shorten nothing.
///
/// `answers` are in the order of their dates. Those of `today` and later do not count.
#[must_use]
pub fn minutes_tonight(planned: f64, answers: &[Answered], today: NaiveDate) -> f64 {
    let mut carried = 0.0;
    let mut last: Option<NaiveDate> = None;
    let mut rest = answers;
    while let Some(first) = rest.first().filter(|a| a.date < today) {
        let length = rest.partition_point(|a| a.date <= first.date);
        let (evening, after) = rest.split_at(length);
        if last.is_some_and(|last| (first.date - last).num_days() > OVERRUN_DAYS) {
            carried = 0.0;
        }
        let budget = planned - carried;
        carried = 0.0;
        let mut spent = 0.0;
        for answer in evening {
            spent += answer.minutes;
            if spent >= budget {
                carried = spent - budget;
                break;
            }
        }
        // At least half an evening remains.
        carried = carried.min(planned / 2.0);
        last = Some(first.date);
        rest = after;
    }
    if last.is_none_or(|last| (today - last).num_days() > OVERRUN_DAYS) {
        carried = 0.0;
    }
    planned - carried
}

/// Returns how many evenings were practised in the week of `today` (Monday to Sunday, ISO 8601),
/// before `today`. An evening counts if at least half its minutes were practised, or, if it ends
/// by exercises, at least half its exercises.
#[must_use]
pub fn evenings_before(length: EveningLength, answers: &[Answered], today: NaiveDate) -> u32 {
    let monday = today - Days::new(u64::from(today.weekday().num_days_from_monday()));
    let mut done: BTreeMap<NaiveDate, (f64, u32)> = BTreeMap::new();
    for answer in answers {
        if (monday..today).contains(&answer.date) {
            let (minutes, count) = done.entry(answer.date).or_default();
            *minutes += answer.minutes;
            *count += 1;
        }
    }
    let practised = done.values().filter(|(minutes, count)| match length {
        EveningLength::Minutes(planned) => *minutes >= planned * EVENING_SHARE,
        EveningLength::Exercises {
            count: planned,
            most_minutes,
        } => {
            f64::from(*count) >= f64::from(planned) * EVENING_SHARE
                || *minutes >= most_minutes * EVENING_SHARE
        }
    });
    u32::try_from(practised.count()).unwrap_or(7)
}

/// Returns how many exercises of one assigned concept must be done tonight, so that all are
/// done on the due date in even shares.
///
/// `left` are the exercises left at the start of the evening. The student practises on
/// `evenings_a_week` of seven days; `days_left` includes today and the due date.
#[must_use]
pub fn owed_tonight(left: u32, days_left: i64, evenings_a_week: u32) -> u32 {
    let days = u32::try_from(days_left.max(1)).unwrap_or(u32::MAX);
    let evenings = days.saturating_mul(evenings_a_week.clamp(1, 7)) / 7;
    left.div_ceil(evenings.max(1))
}

/// Returns the date that practice on `today` aims at: the next test, else the year's end, else
/// `None`.
#[must_use]
pub fn date_aimed_at(
    today: NaiveDate,
    test_on: Option<NaiveDate>,
    last_day: NaiveDate,
) -> Option<NaiveDate> {
    test_on
        .filter(|test| *test > today)
        .or(Some(last_day))
        .filter(|date| *date > today)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn date(text: &str) -> NaiveDate {
        text.parse().unwrap()
    }

    fn answers(of: &[(&str, &[f64])]) -> Vec<Answered> {
        of.iter()
            .flat_map(|(on, minutes)| {
                minutes.iter().map(|minutes| Answered {
                    date: date(on),
                    concept: "c".into(),
                    minutes: *minutes,
                })
            })
            .collect()
    }

    fn tonight(of: &[(&str, &[f64])], today: &str) -> f64 {
        minutes_tonight(8.0, &answers(of), date(today))
    }

    #[test]
    fn an_overrun_is_taken_off_the_next_evening_and_what_was_asked_for_is_not() {
        let close = |a: f64, b: f64| assert!((a - b).abs() < 1e-9, "{a}, not {b}");
        close(tonight(&[], "2026-09-01"), 8.0);
        close(tonight(&[("2026-09-01", &[5.0])], "2026-09-02"), 8.0);
        close(tonight(&[("2026-09-01", &[5.0, 4.5])], "2026-09-02"), 6.5);
        // Tonight's own answers do not shorten tonight.
        close(tonight(&[("2026-09-01", &[5.0, 4.5])], "2026-09-01"), 8.0);
        // Two more exercises were asked for after the minutes were over.
        let asked: &[f64] = &[5.0, 4.5, 2.0, 2.0];
        close(tonight(&[("2026-09-01", asked)], "2026-09-02"), 6.5);
        // An evening of 6.5 minutes that ran to 7 leaves half a minute.
        close(
            tonight(
                &[("2026-09-01", &[5.0, 4.5]), ("2026-09-02", &[7.0])],
                "2026-09-03",
            ),
            7.5,
        );
        // Never less than half an evening; forgotten after a week.
        close(tonight(&[("2026-09-01", &[15.0])], "2026-09-02"), 4.0);
        close(tonight(&[("2026-09-01", &[15.0])], "2026-09-08"), 4.0);
        close(tonight(&[("2026-09-01", &[15.0])], "2026-09-09"), 8.0);
    }

    #[test]
    fn a_week_runs_from_monday_and_counts_practised_evenings() {
        // 2026-09-07 is a Monday.
        let of: &[(&str, &[f64])] = &[
            ("2026-09-06", &[8.0]),
            ("2026-09-07", &[4.0]),
            ("2026-09-08", &[1.0]),
            ("2026-09-09", &[2.0, 2.5]),
            ("2026-09-10", &[8.0]),
        ];
        let count = |today| evenings_before(EveningLength::Minutes(8.0), &answers(of), date(today));
        assert_eq!(count("2026-09-07"), 0);
        assert_eq!(count("2026-09-08"), 1);
        assert_eq!(count("2026-09-09"), 1);
        assert_eq!(count("2026-09-10"), 2);
        assert_eq!(count("2026-09-13"), 3);
        assert_eq!(count("2026-09-14"), 0);
        // Of three exercises, two are half an evening and one is not.
        let count = |today, most_minutes| {
            let length = EveningLength::Exercises {
                count: 3,
                most_minutes,
            };
            evenings_before(length, &answers(of), date(today))
        };
        assert_eq!(count("2026-09-09", 99.0), 0);
        assert_eq!(count("2026-09-10", 99.0), 1);
        // Nor does slow work count for nothing: one of eight minutes is half of sixteen.
        assert_eq!(count("2026-09-11", 99.0), 1);
        assert_eq!(count("2026-09-11", 16.0), 2);
    }

    #[test]
    fn bounds_in_minutes_hold_for_exercises_too() {
        assert_eq!(exercise_bounds(4, 16), (4, 13));
        assert_eq!(exercise_bounds(12, 12), (10, 10));
        // Bounds that no whole number of exercises fits between.
        assert_eq!(exercise_bounds(1, 1), (1, 1));
        assert_eq!(exercise_bounds(5, 5), (5, 5));
    }

    #[test]
    fn assigned_work_is_spread_to_its_due_date() {
        assert_eq!(owed_tonight(20, 1, 7), 20);
        assert_eq!(owed_tonight(20, 5, 7), 4);
        assert_eq!(owed_tonight(20, 7, 3), 7);
        assert_eq!(owed_tonight(1, 10, 5), 1);
        assert_eq!(owed_tonight(0, 10, 5), 0);
        assert_eq!(owed_tonight(3, 0, 0), 3);
    }

    #[test]
    fn the_next_test_is_aimed_at_then_the_years_end() {
        let aim = |today, test: Option<&str>| {
            date_aimed_at(date(today), test.map(date), date("2027-06-04"))
        };
        assert_eq!(
            aim("2026-10-01", Some("2026-11-01")),
            Some(date("2026-11-01"))
        );
        assert_eq!(
            aim("2026-11-01", Some("2026-11-01")),
            Some(date("2027-06-04"))
        );
        assert_eq!(aim("2026-10-01", None), Some(date("2027-06-04")));
        assert_eq!(aim("2027-06-04", Some("2026-11-01")), None);
    }
}
