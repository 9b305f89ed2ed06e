//! Makes a class, and changes its rotation, first lessons, closures and bounds of practice.

use super::concepts;
use super::open::{OpenClass, open_class};
use super::pacing::{choose_concepts, spread_first_lessons};
use super::pack_stamp::stamp;
use super::roster::MOST_SEATS;
use super::seats::{checked_names, class_signs, seat_code, seat_students};
use super::views::{
    ClassSetup, ClassSummary, NewClass, PlacedConcept, Seat, SeatDevice, SeatDeviceState,
};
use crate::error::{DeskError, Field, Rule, Thing, faulty};
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_catalogue::rotation::Rotation;
use surefoot_catalogue::{Catalogue, Language, without_turns};
use surefoot_exchange::{
    ClassSigns, PublicKey, SealingIdentity, SigningKey, class_id_of, fingerprint,
};
use surefoot_record::{DeviceId, PracticeRules};
use surefoot_store::DeskStore;
use surefoot_store::desk::{ClassRow, DeviceState};

/// Characters of a title at most.
pub const LONGEST_TITLE_CHARACTERS: usize = 60;

/// Concepts of a day of the rotation at most.
const MOST_CONCEPTS_A_DAY: usize = 12;

/// The random bytes that the keys and seat codes of a class are made from. The shell draws them.
#[derive(Clone)]
pub struct ClassSecrets {
    /// For the age identity that opens hand-ins.
    pub sealing: [u8; 32],
    /// For the key that signs class packs.
    pub signing: [u8; 32],
    /// For the seats' tokens.
    pub seats: [u8; 32],
}

/// Returns the ids of all classes, by title.
pub fn class_ids(desk: &DeskStore) -> Result<Vec<String>, DeskError> {
    Ok(desk.classes()?.into_iter().map(|row| row.id).collect())
}

/// The identities of all classes, each of which opens its hand-ins.
pub fn identities(desk: &DeskStore) -> Result<Vec<SealingIdentity>, DeskError> {
    (desk.classes()?.iter())
        .map(|row| Ok(SealingIdentity::from_identity_file(&row.sealing_identity)?))
        .collect()
}

/// All classes, one line each.
pub fn classes(desk: &DeskStore, today: NaiveDate) -> Result<Vec<ClassSummary>, DeskError> {
    desk.classes()?
        .into_iter()
        .map(|row| summary(desk, &open_class(desk, &row.id)?, today))
        .collect()
}

/// Makes a class with its seats, a suggested rotation and suggested first lessons.
///
/// # Errors
/// Returns [`DeskError::Invalid`] for title, names, grades or numbers, [`DeskError::Calendar`],
/// [`DeskError::Rotation`].
pub fn create_class(
    desk: &DeskStore,
    new: &NewClass,
    secrets: &ClassSecrets,
    today: NaiveDate,
) -> Result<ClassSummary, DeskError> {
    checked_title(&new.title)?;
    new.year.check()?;
    if new.names.is_empty() {
        return Err(DeskError::invalid(Field::Names, Rule::TooFew));
    }
    if new.names.len() > MOST_SEATS {
        return Err(DeskError::invalid(Field::Names, Rule::TooMany));
    }
    if new.concepts_a_day == 0 || new.concepts_a_day > MOST_CONCEPTS_A_DAY {
        return Err(DeskError::invalid(Field::Concepts, Rule::Range));
    }
    let catalogue = Catalogue::built_in().map_err(faulty)?;
    let grades: BTreeSet<u8> = new.grades.iter().copied().collect();
    let concepts = choose_concepts(
        catalogue,
        &grades,
        new.rotation_days.saturating_mul(new.concepts_a_day),
    );
    if concepts.is_empty() {
        return Err(DeskError::invalid(Field::Concepts, Rule::TooFew));
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
        secrets,
        today,
    )
}

/// Makes a class from its parts. With `like`, it gets the own exercises and concepts, the bounds of
/// practice and the room for groups of that class.
#[expect(
    clippy::too_many_arguments,
    reason = "the parts of a class, which are checked here for every way to make one"
)]
pub(crate) fn make_class(
    desk: &DeskStore,
    title: &str,
    names: &[String],
    year: &SchoolYear,
    rotation: &[Vec<String>],
    first_lessons: &BTreeMap<String, NaiveDate>,
    like: Option<&str>,
    secrets: &ClassSecrets,
    today: NaiveDate,
) -> Result<ClassSummary, DeskError> {
    let title = checked_title(title)?;
    year.check()?;
    let names = checked_names(names)?;
    if names.is_empty() {
        return Err(DeskError::invalid(Field::Names, Rule::TooFew));
    }
    if names.len() > MOST_SEATS {
        return Err(DeskError::invalid(Field::Names, Rule::TooMany));
    }
    let practice = match like {
        // The test was last year.
        Some(from) => PracticeRules {
            test_on: None,
            ..desk.class(from)?.practice
        },
        None => PracticeRules::USUAL,
    };
    let sealing = SealingIdentity::from_bytes(&secrets.sealing).map_err(faulty)?;
    let signing = SigningKey::from_seed(&secrets.signing);
    let id = class_id_of(&signing.public(), &sealing.recipient()).map_err(faulty)?;
    let signs = ClassSigns::of(&id).map_err(faulty)?;
    let row = ClassRow {
        id: id.as_str().to_owned(),
        title,
        made_on: today,
        sealing_identity: sealing.to_text(),
        signing_seed: secrets.signing,
        class_signs: signs.as_str().to_owned(),
        year: year.clone(),
        pack_version: 0,
        saves_packs: true,
        pack_stamp: String::new(),
        practice,
    };
    desk.transaction(|| -> Result<(), DeskError> {
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
        seat_students(desk, &row.id, &signs, &names, &secrets.seats)
    })?;
    summary(desk, &open_class(desk, &row.id)?, today)
}

pub(crate) fn checked_title(title: &str) -> Result<String, DeskError> {
    let title = without_turns(title);
    let title = title.trim();
    if title.is_empty() || title.chars().any(char::is_control) {
        return Err(DeskError::invalid(Field::Title, Rule::Empty));
    }
    if title.chars().count() > LONGEST_TITLE_CHARACTERS {
        return Err(DeskError::invalid(Field::Title, Rule::TooLong));
    }
    Ok(title.to_owned())
}

fn summary(
    desk: &DeskStore,
    class: &OpenClass,
    today: NaiveDate,
) -> Result<ClassSummary, DeskError> {
    let newest = class.newest_reports(desk, today)?;
    Ok(ClassSummary {
        id: class.row.id.clone(),
        title: class.row.title.clone(),
        seats: class.seats.len(),
        seats_joined: newest.len(),
        concepts: class.facts.rotation.days().iter().map(Vec::len).sum(),
        newest_report: newest.values().max().copied(),
        pack_version: class.row.pack_version,
        pack_outdated: class.row.saves_packs && class.row.pack_stamp != stamp(desk, class)?,
        saves_packs: class.row.saves_packs,
    })
}

/// The set-up of a class.
pub fn class_setup(
    desk: &DeskStore,
    class: &str,
    language: Language,
    today: NaiveDate,
) -> Result<ClassSetup, DeskError> {
    let class = open_class(desk, class)?;
    let signs = class_signs(&class)?;
    let newest = class.newest_reports(desk, today)?;
    let brought = desk.brought(&class.row.id)?;
    let mut devices: BTreeMap<u32, Vec<SeatDevice>> = BTreeMap::new();
    for row in desk.devices(&class.row.id)? {
        let (hand_ins, entries) = brought.get(&row.id).copied().unwrap_or_default();
        let key = PublicKey::new(row.signing_key).map_err(faulty)?;
        let device = DeviceId::new(row.device).map_err(faulty)?;
        devices.entry(row.seat).or_default().push(SeatDevice {
            id: row.id,
            fingerprint: fingerprint(&key, &device),
            state: match row.state {
                DeviceState::Accepted => SeatDeviceState::Accepted,
                DeviceState::Quarantined => SeatDeviceState::Quarantined,
                DeviceState::Rejected => SeatDeviceState::Rejected,
            },
            first_seen_on: row.first_seen_on,
            hand_ins,
            entries,
        });
    }
    let seats = class
        .seats
        .iter()
        .map(|seat| {
            Ok(Seat {
                number: seat.number,
                name: seat.name.clone(),
                code: seat_code(&signs, seat)?,
                devices: devices.remove(&seat.number).unwrap_or_default(),
                newest_report: newest.get(&seat.number).copied(),
            })
        })
        .collect::<Result<_, DeskError>>()?;
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

/// Sets or removes the date of a concept's first lesson.
///
/// # Errors
/// Returns [`DeskError::Invalid`] for a date outside the year.
pub fn set_taught_from(
    desk: &DeskStore,
    class: &str,
    concept: &str,
    date: Option<NaiveDate>,
) -> Result<(), DeskError> {
    let class = open_class(desk, class)?;
    if class.facts.rotation.day_of(&concept.to_owned()).is_none() {
        return Err(DeskError::NotFound(Thing::Concept));
    }
    if date.is_some_and(|date| !class.facts.year.contains(date)) {
        return Err(DeskError::invalid(Field::Dates, Rule::Range));
    }
    desk.put_taught_from(&class.row.id, concept, date)?;
    Ok(())
}

/// Replaces the rotation. A new concept of an earlier grade than the class's highest counts as
/// taught from the first school day, unless it has a date already.
///
/// # Errors
/// Returns [`DeskError::Rotation`] for a number of days out of range or a repeated concept,
/// [`DeskError::NotFound`] for an unknown concept.
pub fn set_rotation(
    desk: &DeskStore,
    class: &str,
    days: Vec<Vec<String>>,
) -> Result<(), DeskError> {
    let class = open_class(desk, class)?;
    let all = concepts::with_built_in(&class.own_concepts)?;
    let rotation = Rotation::new(days)?;
    if rotation
        .days()
        .iter()
        .flatten()
        .any(|c| !all.contains_key(c))
    {
        return Err(DeskError::NotFound(Thing::Concept));
    }
    let grade = |id: &String| all.get(id).map(|concept| concept.grade);
    let highest = rotation.days().iter().flatten().filter_map(grade).max();
    let taught_before: Vec<&String> = (rotation.days().iter().flatten())
        .filter(|id| !class.facts.concepts.contains_key(*id))
        .filter(|id| !class.facts.taught_from.contains_key(*id) && grade(id) < highest)
        .collect();
    let first_day = class.facts.year.school_days().next();
    desk.transaction(|| {
        desk.put_rotation(&class.row.id, rotation.days())?;
        for concept in taught_before {
            desk.put_taught_from(&class.row.id, concept, first_day)?;
        }
        Ok::<_, DeskError>(())
    })
}

/// Replaces the closures.
///
/// # Errors
/// Returns [`DeskError::Calendar`] if no school day is left.
pub fn set_closures(
    desk: &DeskStore,
    class: &str,
    closures: BTreeSet<NaiveDate>,
) -> Result<(), DeskError> {
    let class = open_class(desk, class)?;
    let year = SchoolYear {
        closures,
        ..class.facts.year.clone()
    };
    year.check()?;
    desk.transaction(|| desk.put_closures(&class.row.id, year.closures.iter().copied()))?;
    Ok(())
}

/// Sets the bounds of practice at home, and the test it aims at.
///
/// # Errors
/// Returns [`DeskError::Invalid`] with the broken bound.
pub fn set_practice(
    desk: &DeskStore,
    class: &str,
    practice: PracticeRules,
) -> Result<(), DeskError> {
    let class = open_class(desk, class)?;
    if let Some(rule) = practice.fault(&class.facts.year) {
        return Err(DeskError::invalid(Field::Practice, rule));
    }
    desk.put_practice(&class.row.id, &practice)?;
    Ok(())
}
