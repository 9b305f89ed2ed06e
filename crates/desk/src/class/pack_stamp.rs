//! Whether the class has changed since its last class pack.

use super::open::OpenClass;
use crate::error::{DeskError, faulty};
use sha2::{Digest, Sha256};
use surefoot_catalogue::{Catalogue, Concept};
use surefoot_record::Class;
use surefoot_store::DeskStore;
use surefoot_store::desk::DeviceState;

/// A digest of what the next class pack would hold, without version and date.
pub(crate) fn stamp(desk: &DeskStore, class: &OpenClass) -> Result<String, DeskError> {
    let facts = &class.facts;
    let devices: Vec<_> = accepted_devices(desk, class)?
        .into_iter()
        .map(|(seat, device, _)| (seat, device))
        .collect();
    let assignments: Vec<_> = desk
        .assignments(&class.row.id)?
        .into_iter()
        .map(|a| (a.id, a.concepts, a.items_each, a.from, a.due, a.seats))
        .collect();
    let personal = assignments.iter().any(|a| !a.5.is_empty());
    let content = serde_json::to_vec(&(
        &facts.title,
        &facts.year,
        facts.rotation.days(),
        &facts.taught_from,
        &assignments,
        &class.row.practice,
        desk.class_folder(&class.row.id)?,
        // A new device matters only if an assignment is sealed for it.
        personal.then_some(devices),
    ))
    .map_err(faulty)?;
    let mut digest = Sha256::new();
    digest.update(content);
    let own = stamp_part(facts)?;
    digest.update(own);
    Ok(hex(digest))
}

/// A digest of year and rotation: what decides which day a device shows.
pub(crate) fn days_stamp(facts: &Class) -> Result<String, DeskError> {
    let mut digest = Sha256::new();
    digest.update(serde_json::to_vec(&(&facts.year, facts.rotation.days())).map_err(faulty)?);
    Ok(hex(digest))
}

fn hex(digest: Sha256) -> String {
    digest
        .finalize()
        .iter()
        .map(|byte| format!("{byte:02x}"))
        .collect()
}

pub(crate) fn accepted_devices(
    desk: &DeskStore,
    class: &OpenClass,
) -> Result<Vec<(u32, String, String)>, DeskError> {
    Ok(desk
        .devices(&class.row.id)?
        .into_iter()
        .filter(|device| device.state == DeviceState::Accepted)
        .map(|device| (device.seat, device.device, device.recipient))
        .collect())
}

/// The part of the stamp for own exercises and concepts; empty without any.
fn stamp_part(facts: &Class) -> Result<Vec<u8>, DeskError> {
    let exercises: Vec<String> = facts
        .own_exercises
        .iter()
        .filter(|(concept, _)| facts.concepts.contains_key(*concept))
        .flat_map(|(_, all)| all.iter().map(|own| own.id().to_string()))
        .collect();
    let catalogue = Catalogue::built_in().map_err(faulty)?;
    let concepts: Vec<&Concept> = facts
        .concepts
        .values()
        .filter(|concept| catalogue.get(concept.id.as_str()).is_none())
        .collect();
    if exercises.is_empty() && concepts.is_empty() {
        return Ok(Vec::new());
    }
    serde_json::to_vec(&(exercises, concepts)).map_err(faulty)
}
