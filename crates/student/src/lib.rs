//! The student's use-cases, one function each: joining, Today, an evening of practice, My
//! path, handing in, settings, the PIN, the carry file.
//!
//! A use-case takes an opened store, the class as [`Joined`] describes it, today's date and
//! what the student typed. It writes the store and returns what the screens show. Random
//! bytes are arguments.
//!
//! This crate must not know the desk's store, the teacher's keys, a clock, a path or a screen.

#![cfg_attr(not(test), deny(clippy::indexing_slicing))]

mod carry;
mod class_days;
pub mod draft;
mod error;
mod evening;
#[cfg(debug_assertions)]
#[doc(hidden)]
pub mod for_tests;
mod goals;
mod hand_in;
mod join;
mod noticed;
mod open_exercise;
mod own_turn;
mod path;
mod pin;
mod practice;
mod practice_summary;
pub mod practice_views;
mod queue;
mod settings;
mod today;
pub mod views;
mod worked_first;

pub use carry::{Carried, CarryTaken, make_carry, read_carry, renew_device, take_carry};
pub use class_days::say_day;
pub use draft::keep_draft;
pub use error::StudentError;
pub use goals::{LONGEST_GOAL_CHARACTERS, MOST_GOALS, set_goals};
pub use hand_in::{
    SealedHandIn, folder_name, forget_handed_in, hand_in_preview, is_handed_in, make_hand_in,
    newest_event, note_hand_in,
};
pub use join::{
    FirstPack, JoinedCache, LONGEST_NICKNAME_CHARACTERS, NewSlip, NewStudent, change_slip,
    check_seat_code, is_at_seat, join, joined, read_first_pack, take_class_pack,
};
pub use path::{MOST_FOCUS, my_path, set_focus};
pub use pin::{
    LEAST_PIN_DIGITS, MOST_PIN_DIGITS, SlipTyped, pin_wait_seconds, reset_pin, set_pin, try_pin,
    wrong_pin_tries,
};
pub use practice::{answer, hint, practice, say_confidence, show_steps};
pub use practice_summary::practice_summary;
pub use queue::queue;
pub use settings::{Wishes, save_settings, settings};
pub use today::{Tap, catch_up, check_in, today};

use chrono::NaiveDate;
use surefoot_catalogue::{Catalogue, Locale, prose};
use surefoot_exchange::ClassPack;
use surefoot_practice::Assigned;
use surefoot_practice::workload::EveningLength;
use surefoot_record::{Class, ConceptName, CountedDates};
use surefoot_store::student::{SaidDay, Student};

/// A student who has joined, with the class as the newest class pack describes it.
pub struct Joined {
    /// The student.
    pub student: Student,
    /// The class.
    pub facts: Class,
    /// Assignments for the class and for this student.
    pub assignments: Vec<Assigned>,
    /// The newest class pack.
    pub pack: ClassPack,
    /// The days of the rotation that the student said and no pack has settled, by date.
    pub said: Vec<SaidDay>,
}

impl Joined {
    /// Returns the student's language and way of writing numbers.
    #[must_use]
    pub fn locale(&self) -> Locale {
        self.student
            .appearance
            .decimal_sign
            .locale(self.student.language)
    }

    /// Returns the dates that count on the date `today`: those of the school year, and up to
    /// the last day that the student said, because a newer pack may have a longer year.
    #[must_use]
    pub fn counted_dates(&self, today: NaiveDate) -> CountedDates {
        let dates = CountedDates::of(&self.facts.year, today);
        match self.said.last() {
            Some(said) => dates.and_until(said.date, today),
            None => dates,
        }
    }

    /// Returns how long the student wants an evening to be.
    #[must_use]
    pub fn evening_length(&self) -> EveningLength {
        match self.student.exercises {
            Some(count) => EveningLength::Exercises {
                count,
                most_minutes: f64::from(self.pack.practice.minutes_most),
            },
            None => EveningLength::Minutes(f64::from(self.student.minutes)),
        }
    }

    /// Returns a concept as this student reads it. The words of an own concept are not changed.
    #[must_use]
    pub fn name(&self, concept: &str) -> ConceptName {
        let locale = self.locale();
        let name = self.facts.name(concept, locale.language);
        if Catalogue::built_in().is_ok_and(|known| known.get(concept).is_some()) {
            ConceptName {
                title: prose(locale, &name.title),
                i_can: prose(locale, &name.i_can),
                ..name
            }
        } else {
            name
        }
    }
}
