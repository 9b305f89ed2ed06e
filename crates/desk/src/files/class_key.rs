//! Exports and imports a class for the teacher's second computer.

use crate::class::OpenClass;
use crate::class::concepts::{own_concepts, own_exercises, with_built_in};
use crate::class::{MOST_SEATS, checked_name, checked_title};
use crate::error::{DeskError, Field, Rule, Thing, faulty};
use crate::own::put_all;
use std::collections::BTreeSet;
use surefoot_catalogue::rotation::Rotation;
use surefoot_exchange::{
    CLASS_KEY_FORMAT, ClassKeyFile, ClassSigns, KeySeat, Refusal, SigningKey, open_class_key,
    seal_class_key,
};
use surefoot_record::{ClassId, SeatToken};
use surefoot_store::DeskStore;
use surefoot_store::desk::{ClassRow, SeatRow};

/// Seals a class with its keys, roster, year and rotation. It has no reports, because both computers
/// can import the hand-ins. With `hand_over`, whoever opens it saves the class packs from then on;
/// [`crate::set_saves_packs`] ends it here.
///
/// # Errors
/// Returns [`Refusal`] for a passphrase that is too short.
pub fn export_class(
    class: &OpenClass,
    passphrase: &str,
    hand_over: bool,
) -> Result<Vec<u8>, DeskError> {
    let row = &class.row;
    let seats = class
        .seats
        .iter()
        .map(|seat| {
            Ok(KeySeat {
                number: seat.number,
                token: SeatToken::new(seat.token.clone()).map_err(faulty)?,
                name: seat.name.clone(),
            })
        })
        .collect::<Result<_, DeskError>>()?;
    let own_exercises: Vec<_> = class
        .facts
        .own_exercises
        .values()
        .flatten()
        .cloned()
        .collect();
    let file = ClassKeyFile {
        format: CLASS_KEY_FORMAT,
        class_id: ClassId::new(row.id.clone()).map_err(faulty)?,
        title: row.title.clone(),
        made_on: row.made_on,
        sealing_identity: row.sealing_identity.clone(),
        signing_seed: SigningKey::from_seed(&row.signing_seed).to_text(),
        year: row.year.clone(),
        rotation: class.facts.rotation.days().to_vec(),
        taught_from: class.facts.taught_from.clone(),
        seats,
        practice: row.practice,
        own_concepts: class.own_concepts.clone(),
        own_exercises,
        pack_version: row.pack_version,
        saves_packs: hand_over,
    };
    Ok(seal_class_key(&file, passphrase)?)
}

/// Opens a class key file for [`import_class`].
pub fn read_class_key(bytes: &[u8], passphrase: &str) -> Result<ClassKeyFile, Refusal> {
    open_class_key(bytes, passphrase)
}

/// Adds the class of a class key file to this desk, and returns its id. A class that is here already
/// gets the set-up of the file, unless this computer saves its packs: then the file knows no more.
/// Reports stay, and so do seats that the file does not have.
///
/// # Errors
/// Returns [`DeskError::Invalid`] if this computer saves the packs of the class already, the class
/// here has had a newer pack than the file knows of, or the file has an invalid value;
/// [`DeskError::Rotation`].
pub fn import_class(desk: &DeskStore, file: &ClassKeyFile) -> Result<String, DeskError> {
    let id = file.class_id.as_str().to_owned();
    let here = desk.classes()?.into_iter().find(|class| class.id == id);
    if here.as_ref().is_some_and(|class| class.saves_packs) {
        return Err(DeskError::invalid(Field::Class, Rule::AlreadyHere));
    }
    if (here.as_ref()).is_some_and(|class| file.pack_version < class.pack_version) {
        return Err(DeskError::invalid(Field::Class, Rule::Older));
    }
    let title = checked_title(&file.title)?;
    let rotation = checked(file)?;
    let class_signs = ClassSigns::of(&file.class_id).map_err(faulty)?;
    let years_concepts: BTreeSet<&String> = rotation.days().iter().flatten().collect();
    desk.transaction(|| -> Result<(), DeskError> {
        match &here {
            None => desk.add_class(&ClassRow {
                id: id.clone(),
                title,
                made_on: file.made_on,
                sealing_identity: file.sealing_identity.clone(),
                signing_seed: file.signing_key()?.seed(),
                class_signs: class_signs.as_str().to_owned(),
                year: file.year.clone(),
                practice: file.practice,
                pack_version: file.pack_version,
                pack_stamp: String::new(),
                saves_packs: file.saves_packs,
            })?,
            Some(_) => {
                desk.rename_class(&id, &title)?;
                desk.put_year(&id, &file.year)?;
                desk.put_practice(&id, &file.practice)?;
                desk.clear_taught_from(&id)?;
                desk.put_pack(&id, file.pack_version, "", "", None)?;
                desk.put_saves_packs(&id, file.saves_packs, 0)?;
            }
        }
        put_new(desk, &id, file)?;
        desk.put_rotation(&id, rotation.days())?;
        for (concept, date) in &file.taught_from {
            if years_concepts.contains(concept) && file.year.contains(*date) {
                desk.put_taught_from(&id, concept, Some(*date))?;
            }
        }
        seat_all(desk, &id, &file.seats)
    })?;
    Ok(id)
}

/// Checks the values of a class key, and returns its rotation.
fn checked(file: &ClassKeyFile) -> Result<Rotation<String>, DeskError> {
    file.year.check()?;
    if file.seats.is_empty() {
        return Err(DeskError::invalid(Field::Names, Rule::Empty));
    }
    if file.seats.len() > MOST_SEATS {
        return Err(DeskError::invalid(Field::Names, Rule::TooMany));
    }
    let tokens: BTreeSet<&str> = file.seats.iter().map(|seat| seat.token.as_str()).collect();
    if tokens.len() < file.seats.len() {
        return Err(DeskError::invalid(Field::Class, Rule::Taken));
    }
    if let Some(rule) = file.practice.fault(&file.year) {
        return Err(DeskError::invalid(Field::Practice, rule));
    }
    let rotation = Rotation::new(file.rotation.clone())?;
    let all = with_built_in(&file.own_concepts)?;
    if (rotation.days().iter().flatten()).any(|concept| !all.contains_key(concept)) {
        return Err(DeskError::NotFound(Thing::Concept));
    }
    Ok(rotation)
}

/// Adds the own concepts and exercises of a class key that the class does not have.
fn put_new(desk: &DeskStore, class: &str, file: &ClassKeyFile) -> Result<(), DeskError> {
    let concepts: BTreeSet<String> = (own_concepts(desk, class)?.into_iter())
        .map(|concept| concept.id.as_str().to_owned())
        .collect();
    let exercises: BTreeSet<String> = (own_exercises(desk, class)?.into_values().flatten())
        .map(|own| own.id().to_string())
        .collect();
    let new_concepts: Vec<_> = (file.own_concepts.iter())
        .filter(|concept| !concepts.contains(concept.id.as_str()))
        .cloned()
        .collect();
    let new_exercises: Vec<_> = (file.own_exercises.iter())
        .filter(|own| !exercises.contains(&own.id().to_string()))
        .cloned()
        .collect();
    put_all(desk, class, file.made_on, &new_concepts, &new_exercises)
}

/// Adds the seats of a class key, and names those that the class has: a seat is known by its token.
/// One whose number another seat has here gets the next number.
fn seat_all(desk: &DeskStore, class: &str, seats: &[KeySeat]) -> Result<(), DeskError> {
    for seat in seats {
        let name = checked_name(seat.name.as_deref().unwrap_or_default())?;
        let there = desk.seats(class)?;
        if let Some(known) = there.iter().find(|row| row.token == seat.token.as_str()) {
            desk.name_seat(class, known.number, name.as_deref())?;
            continue;
        }
        let taken = there.iter().any(|row| row.number == seat.number);
        let next = there.iter().map(|row| row.number).max().unwrap_or(0) + 1;
        desk.add_seat(
            class,
            &SeatRow {
                number: if taken { next } else { seat.number },
                token: seat.token.as_str().to_owned(),
                name,
            },
        )?;
    }
    Ok(())
}
