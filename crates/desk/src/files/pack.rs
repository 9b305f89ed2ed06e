//! The class pack.

use crate::class::OpenClass;
use crate::class::pack_stamp::{accepted_devices, days_stamp, stamp};
use crate::error::{DeskError, Field, Rule, Thing, faulty};
use chrono::NaiveDate;
use std::collections::BTreeMap;
use surefoot_catalogue::ConceptId;
use surefoot_exchange::{
    Assignment, CLASS_PACK_FORMAT, ClassPack, PERSONAL_FORMAT, PackConcept, PersonalAssignments,
    Recipient, SealingIdentity, SigningKey, seal_personal, sign_pack,
};
use surefoot_exercises::bank::OwnExercise;
use surefoot_record::{AssignmentId, ClassId, DeviceId, SeatToken};
use surefoot_store::DeskStore;
use surefoot_store::desk::AssignmentRow;

/// A class pack as a file, with a suggested name.
pub struct ClassPackFile {
    /// Its name.
    pub file_name: String,
    /// Its bytes.
    pub bytes: Vec<u8>,
    /// Its version.
    pub version: u32,
}

fn pack_assignment(row: &AssignmentRow) -> Result<Assignment, DeskError> {
    Ok(Assignment {
        id: AssignmentId::new(row.id.clone()).map_err(faulty)?,
        concepts: row
            .concepts
            .iter()
            .map(|c| ConceptId::new(c.clone()).map_err(faulty))
            .collect::<Result<_, _>>()?,
        items_each: row.items_each,
        from: row.from,
        due: row.due,
    })
}

/// A digest of what the next class pack would hold, without version and date.
pub fn pack_stamp(desk: &DeskStore, class: &OpenClass) -> Result<String, DeskError> {
    stamp(desk, class)
}

/// Makes the next version of the class pack and stores its number. Leaves out assignments that
/// were due before `today`.
///
/// # Errors
/// Returns [`DeskError::Refused`] if the class is beyond the bounds of the format,
/// [`DeskError::Invalid`] if another computer saves the packs.
pub fn make_class_pack(
    desk: &DeskStore,
    class: &OpenClass,
    today: NaiveDate,
) -> Result<ClassPackFile, DeskError> {
    make_class_pack_above(desk, class, today, 0)
}

/// Makes a class pack as [`make_class_pack`] does, with a version above `given_out`: one that another
/// desk with the keys of the class gave out.
///
/// # Errors
/// As [`make_class_pack`].
pub fn make_class_pack_above(
    desk: &DeskStore,
    class: &OpenClass,
    today: NaiveDate,
    given_out: u32,
) -> Result<ClassPackFile, DeskError> {
    if !class.row.saves_packs {
        return Err(DeskError::invalid(Field::ClassPack, Rule::Elsewhere));
    }
    let facts = &class.facts;
    let id = ClassId::new(class.row.id.clone()).map_err(faulty)?;
    let key = SigningKey::from_seed(&class.row.signing_seed);
    let identity = SealingIdentity::from_identity_file(&class.row.sealing_identity)?;
    let version = class.row.pack_version.max(given_out).saturating_add(1);
    let concept_id = |c: &String| ConceptId::new(c.clone()).map_err(faulty);
    let current: Vec<AssignmentRow> = desk
        .assignments(&class.row.id)?
        .into_iter()
        .filter(|a| a.due >= today)
        .filter_map(|mut a| {
            // A pack holds only concepts of the rotation.
            a.concepts.retain(|c| facts.concepts.contains_key(c));
            (!a.concepts.is_empty()).then_some(a)
        })
        .collect();
    let mut concepts = Vec::new();
    for concept in facts.rotation.days().iter().flatten() {
        let known = facts
            .concepts
            .get(concept)
            .ok_or(DeskError::NotFound(Thing::Concept))?;
        concepts.push(PackConcept {
            id: known.id.clone(),
            strand: known.strand,
            grade: known.grade,
            title: known.title.clone(),
            i_can: known.i_can.clone(),
            prerequisites: known.prerequisites.clone(),
        });
    }
    concepts.sort_by(|a, b| a.id.cmp(&b.id));
    let exercises: Vec<OwnExercise> = facts
        .own_exercises
        .iter()
        .filter(|(concept, _)| facts.concepts.contains_key(*concept))
        .flat_map(|(_, all)| all.iter().cloned())
        .collect();
    let pack = ClassPack {
        format: CLASS_PACK_FORMAT,
        class_id: id.clone(),
        version,
        issued_on: today,
        title: facts.title.clone(),
        year: facts.year.clone(),
        rotation: facts
            .rotation
            .days()
            .iter()
            .map(|day| day.iter().map(concept_id).collect())
            .collect::<Result<_, _>>()?,
        taught_from: facts
            .taught_from
            .iter()
            .filter(|(c, _)| facts.concepts.contains_key(*c))
            .map(|(c, date)| Ok((concept_id(c)?, *date)))
            .collect::<Result<_, DeskError>>()?,
        concepts,
        assignments: current
            .iter()
            .filter(|a| a.whole_class)
            .map(pack_assignment)
            .collect::<Result<_, _>>()?,
        sealed: sealed(desk, class, &id, &key, version, &current)?,
        exercises,
        practice: class.row.practice,
        class_folder: desk.class_folder(&class.row.id)?,
        class_recipient: identity.recipient(),
        teacher_key: key.public(),
    };
    let bytes = sign_pack(&pack, &key)?;
    desk.put_pack(
        &class.row.id,
        version,
        &stamp(desk, class)?,
        &days_stamp(facts)?,
        Some(today),
    )?;
    Ok(ClassPackFile {
        file_name: format!("{}-{version}.sfclass", file_stem(&facts.title)),
        bytes,
        version,
    })
}

/// The sealed assignments. Once one assignment is personal, every device gets a part, so that a
/// part alone reveals nothing.
fn sealed(
    desk: &DeskStore,
    class: &OpenClass,
    id: &ClassId,
    key: &SigningKey,
    version: u32,
    current: &[AssignmentRow],
) -> Result<Vec<String>, DeskError> {
    if current.iter().all(|a| a.whole_class) {
        return Ok(Vec::new());
    }
    let tokens: BTreeMap<u32, &str> = class
        .seats
        .iter()
        .map(|s| (s.number, s.token.as_str()))
        .collect();
    let mut devices = Vec::new();
    for (seat, device, recipient) in accepted_devices(desk, class)? {
        let Some(token) = tokens.get(&seat) else {
            continue;
        };
        let personal = PersonalAssignments {
            format: PERSONAL_FORMAT,
            class_id: id.clone(),
            seat: SeatToken::new((*token).to_owned()).map_err(faulty)?,
            device: DeviceId::new(device).map_err(faulty)?,
            pack_version: version,
            assignments: current
                .iter()
                .filter(|a| a.seats.contains(&seat))
                .map(pack_assignment)
                .collect::<Result<_, _>>()?,
        };
        devices.push((personal, Recipient::new(recipient).map_err(faulty)?));
    }
    Ok(seal_personal(&devices, key)?)
}

/// Letters and digits of a title, for a file name.
#[must_use]
pub fn file_stem(title: &str) -> String {
    let stem: String = title
        .chars()
        .map(|c| if c.is_alphanumeric() { c } else { '-' })
        .collect();
    let stem = stem.trim_matches('-').to_lowercase();
    if stem.is_empty() {
        "class".to_owned()
    } else {
        stem
    }
}
