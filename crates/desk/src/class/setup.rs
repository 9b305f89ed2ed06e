//! Setting up a class: seats, year, rotation, first lessons.

use super::pacing::{choose_concepts, spread_first_lessons};
use super::roster::{LONGEST_NAME_CHARACTERS, MOST_SEATS};
use crate::estimate::class_reports::newest_by_seat;
use crate::files::pack;
use crate::own::exercises as own;
use crate::views::{ClassSetup, ClassSummary, NewClass, PlacedConcept, Seat};
use crate::{OpenClass, TeacherError, open_class};
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_catalogue::rotation::Rotation;
use surefoot_catalogue::{Catalogue, Language};
use surefoot_exchange::{PracticeRules, SealingIdentity, draw_seat_token, make_seat_code};
use surefoot_record::{ClassId, SeatToken};
use surefoot_store::DeskStore;
use surefoot_store::desk::{ClassRow, DeviceState, SeatRow};

/// Signs of a class title at most.
pub const LONGEST_TITLE_CHARACTERS: usize = 60;

/// Concepts of a day of the rotation at most.
const MOST_CONCEPTS_A_DAY: usize = 12;

/// Random bytes drawn by the shell: class id, sealing identity, signing key, seats.
#[derive(Clone)]
pub struct Chance {
    /// For the class id.
    pub class_id: [u8; 16],
    /// For the age identity that opens hand-ins.
    pub sealing: [u8; 32],
    /// For the key that signs class packs.
    pub signing: [u8; 32],
    /// For the seats' tokens.
    pub seats: [u8; 32],
}

/// All classes in a line each.
///
/// # Errors
/// The store's.
pub fn classes(desk: &DeskStore, today: NaiveDate) -> Result<Vec<ClassSummary>, TeacherError> {
    desk.classes()?
        .into_iter()
        .map(|row| summary(desk, &open_class(desk, &row.id)?, today))
        .collect()
}

/// Makes a class with its seats, a suggested rotation and suggested first lessons.
///
/// # Errors
/// [`TeacherError::Invalid`] for title, names, grades or amounts,
/// [`TeacherError::Calendar`], [`TeacherError::Rotation`], or the store's.
pub fn create_class(
    desk: &DeskStore,
    new: &NewClass,
    chance: &Chance,
    today: NaiveDate,
) -> Result<ClassSummary, TeacherError> {
    checked_title(&new.title)?;
    new.year.check()?;
    if new.names.is_empty() {
        return Err(TeacherError::invalid("names", "too_few"));
    }
    if new.names.len() > MOST_SEATS {
        return Err(TeacherError::invalid("names", "too_many"));
    }
    if new.concepts_a_day == 0 || new.concepts_a_day > MOST_CONCEPTS_A_DAY {
        return Err(TeacherError::invalid("concepts", "range"));
    }
    let catalogue = Catalogue::built_in().map_err(|e| TeacherError::Faulty(e.to_string()))?;
    let grades: BTreeSet<u8> = new.grades.iter().copied().collect();
    let concepts = choose_concepts(
        catalogue,
        &grades,
        new.rotation_days.saturating_mul(new.concepts_a_day),
    );
    if concepts.is_empty() {
        return Err(TeacherError::invalid("concepts", "too_few"));
    }
    let by_strand: Vec<_> = concepts
        .iter()
        .map(|c| (c.id.as_str().to_owned(), c.strand))
        .collect();
    let rotation = Rotation::suggest(&by_strand, new.rotation_days)?;
    make_class(
        desk,
        &new.title,
        &new.names,
        &new.year,
        rotation.days(),
        &spread_first_lessons(&concepts, &new.year),
        None,
        chance,
        today,
    )
}

/// Makes a class from all its parts; `like` another one it has that one's own
/// exercises and concepts, bounds of practice, and room for groups.
#[expect(
    clippy::too_many_arguments,
    reason = "the parts of a class, each checked here once for every way to make one"
)]
pub(crate) fn make_class(
    desk: &DeskStore,
    title: &str,
    names: &[String],
    year: &SchoolYear,
    rotation: &[Vec<String>],
    first_lessons: &BTreeMap<String, NaiveDate>,
    like: Option<&str>,
    chance: &Chance,
    today: NaiveDate,
) -> Result<ClassSummary, TeacherError> {
    let title = checked_title(title)?;
    year.check()?;
    let names = checked_names(names)?;
    if names.is_empty() {
        return Err(TeacherError::invalid("names", "too_few"));
    }
    if names.len() > MOST_SEATS {
        return Err(TeacherError::invalid("names", "too_many"));
    }
    let practice = match like {
        // Its test was last year's.
        Some(from) => PracticeRules {
            test_on: None,
            ..desk.class(from)?.practice
        },
        None => PracticeRules::USUAL,
    };
    let id = ClassId::from_bytes(&chance.class_id);
    let sealing = SealingIdentity::from_bytes(&chance.sealing)
        .map_err(|e| TeacherError::Faulty(e.to_string()))?;
    let row = ClassRow {
        id: id.as_str().to_owned(),
        title,
        made_on: today,
        sealing_identity: sealing.to_text(),
        signing_seed: chance.signing,
        year: year.clone(),
        pack_version: 0,
        pack_stamp: String::new(),
        practice,
    };
    desk.together(|| -> Result<(), TeacherError> {
        desk.add_class(&row)?;
        if let Some(from) = like {
            desk.copy_own(from, &row.id)?;
            if let Some(room) = desk.group_room(from)? {
                desk.put_group_room(&row.id, &room)?;
            }
        }
        desk.put_rotation(&row.id, rotation)?;
        for (concept, date) in first_lessons {
            desk.put_taught_from(&row.id, concept, Some(*date))?;
        }
        seat_students(desk, &id, &names, &chance.seats)
    })?;
    summary(desk, &open_class(desk, &row.id)?, today)
}

pub(crate) fn checked_title(title: &str) -> Result<String, TeacherError> {
    let title = title.trim();
    if title.is_empty() || title.chars().any(char::is_control) {
        return Err(TeacherError::invalid("title", "empty"));
    }
    if title.chars().count() > LONGEST_TITLE_CHARACTERS {
        return Err(TeacherError::invalid("title", "too_long"));
    }
    Ok(title.to_owned())
}

pub(crate) fn checked_name(name: &str) -> Result<Option<String>, TeacherError> {
    let name = name.trim();
    if name.chars().count() > LONGEST_NAME_CHARACTERS || name.chars().any(char::is_control) {
        return Err(TeacherError::invalid("names", "too_long"));
    }
    Ok((!name.is_empty()).then(|| name.to_owned()))
}

fn checked_names(names: &[String]) -> Result<Vec<Option<String>>, TeacherError> {
    names.iter().map(|name| checked_name(name)).collect()
}

/// Adds seats behind those that are there, each with a token of its own.
fn seat_students(
    desk: &DeskStore,
    class: &ClassId,
    names: &[Option<String>],
    seed: &[u8; 32],
) -> Result<(), TeacherError> {
    let there = desk.seats(class.as_str())?;
    let mut taken: BTreeSet<String> = there.iter().map(|s| s.token.clone()).collect();
    let last = there.iter().map(|s| s.number).max().unwrap_or(0);
    let mut draw = last;
    for (number, name) in (last + 1..).zip(names) {
        let token = loop {
            draw += 1;
            let token = draw_seat_token(class, seed, draw);
            if taken.insert(token.as_str().to_owned()) {
                break token;
            }
        };
        desk.add_seat(
            class.as_str(),
            &SeatRow {
                number,
                token: token.as_str().to_owned(),
                name: name.clone(),
            },
        )?;
    }
    Ok(())
}

fn class_id(class: &OpenClass) -> Result<ClassId, TeacherError> {
    ClassId::new(class.row.id.clone()).map_err(|e| TeacherError::Faulty(e.to_string()))
}

/// The code on the slip of a seat.
pub(crate) fn seat_code(class: &ClassId, seat: &SeatRow) -> Result<String, TeacherError> {
    let token =
        SeatToken::new(seat.token.clone()).map_err(|e| TeacherError::Faulty(e.to_string()))?;
    make_seat_code(class, &token).ok_or_else(|| TeacherError::Faulty("seat token".into()))
}

fn summary(
    desk: &DeskStore,
    class: &OpenClass,
    today: NaiveDate,
) -> Result<ClassSummary, TeacherError> {
    let newest = newest_by_seat(desk, class, today)?;
    Ok(ClassSummary {
        id: class.row.id.clone(),
        title: class.row.title.clone(),
        seats: class.seats.len(),
        seats_joined: newest.len(),
        concepts: class.facts.rotation.days().iter().map(Vec::len).sum(),
        newest_report: newest.values().max().copied(),
        pack_version: class.row.pack_version,
        pack_outdated: class.row.pack_stamp != pack::stamp(desk, class)?,
    })
}

/// Everything about a class's set-up.
///
/// # Errors
/// [`TeacherError::NotFound`], or the store's.
pub fn class_setup(
    desk: &DeskStore,
    class: &str,
    language: Language,
    today: NaiveDate,
) -> Result<ClassSetup, TeacherError> {
    let class = open_class(desk, class)?;
    let id = class_id(&class)?;
    let newest = newest_by_seat(desk, &class, today)?;
    let mut accepted: BTreeMap<u32, usize> = BTreeMap::new();
    let mut held: BTreeMap<u32, Vec<String>> = BTreeMap::new();
    for device in desk.devices(&class.row.id)? {
        match device.state {
            DeviceState::Accepted => *accepted.entry(device.seat).or_default() += 1,
            DeviceState::Held => held.entry(device.seat).or_default().push(device.device),
            DeviceState::PutAside => {}
        }
    }
    let seats = class
        .seats
        .iter()
        .map(|seat| {
            Ok(Seat {
                number: seat.number,
                name: seat.name.clone(),
                code: seat_code(&id, seat)?,
                devices: accepted.get(&seat.number).copied().unwrap_or(0),
                held_devices: held.get(&seat.number).cloned().unwrap_or_default(),
                newest_report: newest.get(&seat.number).copied(),
            })
        })
        .collect::<Result<_, TeacherError>>()?;
    let facts = &class.facts;
    Ok(ClassSetup {
        summary: summary(desk, &class, today)?,
        seats,
        year: facts.year.clone(),
        school_days: facts.year.school_days().count(),
        pass_count: facts.rotation.pass_count(&facts.year),
        practice: class.row.practice,
        rotation: facts
            .rotation
            .days()
            .iter()
            .map(|day| {
                day.iter()
                    .map(|concept| PlacedConcept {
                        concept: facts.name(concept, language),
                        grade: facts.concepts.get(concept).map_or(0, |c| c.grade),
                        taught_from: facts.taught_from.get(concept).copied(),
                        phase: facts.phase(concept, today),
                    })
                    .collect()
            })
            .collect(),
    })
}

/// Names a seat, or takes its name away.
///
/// # Errors
/// [`TeacherError::NotFound`], [`TeacherError::Invalid`], or the store's.
pub fn name_seat(
    desk: &DeskStore,
    class: &str,
    seat: u32,
    name: Option<&str>,
) -> Result<(), TeacherError> {
    let class = open_class(desk, class)?;
    if !class.seats.iter().any(|s| s.number == seat) {
        return Err(TeacherError::NotFound("seat"));
    }
    let name = checked_name(name.unwrap_or_default())?;
    desk.name_seat(&class.row.id, seat, name.as_deref())?;
    Ok(())
}

/// Adds seats; `seed` is 32 random bytes drawn by the shell.
///
/// # Errors
/// [`TeacherError::Invalid`] above [`MOST_SEATS`] or for a name, or the store's.
pub fn add_seats(
    desk: &DeskStore,
    class: &str,
    names: &[String],
    seed: &[u8; 32],
) -> Result<(), TeacherError> {
    let class = open_class(desk, class)?;
    let names = checked_names(names)?;
    if class.seats.len() + names.len() > MOST_SEATS {
        return Err(TeacherError::invalid("names", "too_many"));
    }
    let id = class_id(&class)?;
    desk.together(|| seat_students(desk, &id, &names, seed))
}

/// Sets or takes away the date of a concept's first lesson.
///
/// # Errors
/// [`TeacherError::NotFound`], [`TeacherError::Invalid`] for a date outside the year, or the store's.
pub fn set_taught_from(
    desk: &DeskStore,
    class: &str,
    concept: &str,
    date: Option<NaiveDate>,
) -> Result<(), TeacherError> {
    let class = open_class(desk, class)?;
    if class.facts.rotation.day_of(&concept.to_owned()).is_none() {
        return Err(TeacherError::NotFound("concept"));
    }
    if date.is_some_and(|date| !class.facts.year.contains(date)) {
        return Err(TeacherError::invalid("dates", "range"));
    }
    desk.put_taught_from(&class.row.id, concept, date)?;
    Ok(())
}

/// Replaces the rotation by an edited one.
///
/// # Errors
/// [`TeacherError::Rotation`] for a length or a concept twice,
/// [`TeacherError::NotFound`] for a concept the catalogue does not have, or the store's.
pub fn set_rotation(
    desk: &DeskStore,
    class: &str,
    days: Vec<Vec<String>>,
) -> Result<(), TeacherError> {
    let class = open_class(desk, class)?;
    let all = own::with_built_in(&class.own_concepts)?;
    let rotation = Rotation::new(days)?;
    if rotation
        .days()
        .iter()
        .flatten()
        .any(|c| !all.contains_key(c))
    {
        return Err(TeacherError::NotFound("concept"));
    }
    desk.together(|| desk.put_rotation(&class.row.id, rotation.days()))?;
    Ok(())
}

/// Replaces the closures.
///
/// # Errors
/// [`TeacherError::Calendar`] when no school day would be left, or the store's.
pub fn set_closures(
    desk: &DeskStore,
    class: &str,
    closures: BTreeSet<NaiveDate>,
) -> Result<(), TeacherError> {
    let class = open_class(desk, class)?;
    let year = SchoolYear {
        closures,
        ..class.facts.year.clone()
    };
    year.check()?;
    desk.together(|| desk.put_closures(&class.row.id, year.closures.iter().copied()))?;
    Ok(())
}

/// Sets the bounds of practice at home, and the test it aims at.
///
/// # Errors
/// [`TeacherError::Invalid`] at `practice`, or the store's.
pub fn set_practice(
    desk: &DeskStore,
    class: &str,
    practice: PracticeRules,
) -> Result<(), TeacherError> {
    let class = open_class(desk, class)?;
    if let Some(rule) = practice.fault(&class.facts.year) {
        return Err(TeacherError::invalid("practice", rule));
    }
    desk.put_practice(&class.row.id, &practice)?;
    Ok(())
}
