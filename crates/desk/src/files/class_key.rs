//! Exports and imports a class for the teacher's second computer.

use crate::class::OpenClass;
use crate::class::concepts::with_built_in;
use crate::class::{MOST_SEATS, checked_name, checked_title};
use crate::error::{DeskError, Field, Rule, faulty};
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
/// can import the hand-ins.
///
/// # Errors
/// Returns [`Refusal`] for a passphrase that is too short.
pub fn export_class(class: &OpenClass, passphrase: &str) -> Result<Vec<u8>, DeskError> {
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
    };
    Ok(seal_class_key(&file, passphrase)?)
}

/// Opens a class key file for [`import_class`].
///
/// # Errors
/// Returns [`Refusal::WrongPassphrase`], or why the file is refused.
pub fn read_class_key(bytes: &[u8], passphrase: &str) -> Result<ClassKeyFile, Refusal> {
    open_class_key(bytes, passphrase)
}

/// Adds the class of a class key file to this desk, and returns its id.
///
/// # Errors
/// Returns [`DeskError::Invalid`] if the class is at this desk already or the file has an invalid
/// value, [`DeskError::Rotation`].
pub fn import_class(desk: &DeskStore, file: &ClassKeyFile) -> Result<String, DeskError> {
    let id = file.class_id.as_str().to_owned();
    if desk.classes()?.iter().any(|class| class.id == id) {
        return Err(DeskError::invalid(Field::Class, Rule::AlreadyHere));
    }
    let title = checked_title(&file.title)?;
    file.year.check()?;
    if file.seats.is_empty() {
        return Err(DeskError::invalid(Field::Names, Rule::Empty));
    }
    if file.seats.len() > MOST_SEATS {
        return Err(DeskError::invalid(Field::Names, Rule::TooMany));
    }
    let tokens: BTreeSet<&str> = file.seats.iter().map(|seat| seat.token.as_str()).collect();
    if tokens.len() < file.seats.len() {
        return Err(DeskError::invalid(Field::Seats, Rule::Taken));
    }
    if let Some(rule) = file.practice.fault(&file.year) {
        return Err(DeskError::invalid(Field::Practice, rule));
    }
    let rotation = Rotation::new(file.rotation.clone())?;
    let all = with_built_in(&file.own_concepts)?;
    let known: BTreeSet<&str> = rotation
        .days()
        .iter()
        .flatten()
        .map(String::as_str)
        .collect();
    if known.iter().any(|concept| !all.contains_key(*concept)) {
        return Err(DeskError::NotFound("concept"));
    }
    let class_signs = ClassSigns::of(&file.class_id).map_err(faulty)?;
    desk.transaction(|| -> Result<(), DeskError> {
        desk.add_class(&ClassRow {
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
        })?;
        put_all(
            desk,
            &id,
            file.made_on,
            &file.own_concepts,
            &file.own_exercises,
        )?;
        desk.put_rotation(&id, rotation.days())?;
        for (concept, date) in &file.taught_from {
            if known.contains(concept.as_str()) && file.year.contains(*date) {
                desk.put_taught_from(&id, concept, Some(*date))?;
            }
        }
        for seat in &file.seats {
            desk.add_seat(
                &id,
                &SeatRow {
                    number: seat.number,
                    token: seat.token.as_str().to_owned(),
                    name: checked_name(seat.name.as_deref().unwrap_or_default())?,
                },
            )?;
        }
        Ok(())
    })?;
    Ok(id)
}
