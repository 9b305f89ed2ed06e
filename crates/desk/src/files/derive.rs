//! The reports of a seat, derived from the hand-ins of its accepted devices.
//!
//! The tables of reports hold the union of those hand-ins: the newest rating and the newest
//! outcome of each (device, school date, concept). So a new hand-in is compared with the
//! tables, and only what it adds is written. The earlier hand-ins are read again only if an
//! import is undone or the teacher decides on a device. What came by another key is kept apart,
//! so it replaces nothing.

use super::bounds::{MOST_ENTRIES, MOST_OUTSIDE_YEAR};
use crate::error::{DeskError, faulty};
use flate2::read::ZlibDecoder;
use std::collections::BTreeMap;
use std::io::Read;
use surefoot_exchange::{HAND_IN_CAPS, HandIn};
use surefoot_record::Record;
use surefoot_store::DeskStore;
use surefoot_store::desk::{DeviceRow, DeviceState};

/// Reads the content of a kept hand-in.
pub(super) fn content_of(content: &[u8]) -> Result<HandIn, DeskError> {
    let mut json = Vec::new();
    ZlibDecoder::new(content)
        .take(HAND_IN_CAPS.unpacked_bytes)
        .read_to_end(&mut json)
        .map_err(faulty)?;
    serde_json::from_slice(&json).map_err(faulty)
}

/// The first device of a seat with a signing key. What came by the key is derived under its number.
pub(crate) fn first_with_key(devices: &[DeviceRow], key: &str) -> Option<i64> {
    (devices.iter())
        .find(|device| device.signing_key == key)
        .map(|device| device.id)
}

/// Derives the reports of a seat anew from the hand-ins of its accepted devices. Returns how many
/// entries within the school year they have.
pub(crate) fn derive(desk: &DeskStore, class: &str, seat: u32) -> Result<usize, DeskError> {
    let devices = desk.devices_of(class, seat)?;
    let year = desk.class(class)?.year;
    let under: BTreeMap<i64, i64> = devices
        .iter()
        .filter(|device| device.state == DeviceState::Accepted)
        .filter_map(|device| {
            let first = first_with_key(&devices, &device.signing_key)?;
            Some((device.id, first))
        })
        .collect();
    let mut records: BTreeMap<i64, Record> = BTreeMap::new();
    for kept in desk.hand_ins(class, seat)? {
        if let Some(first) = under.get(&kept.device) {
            let record = records.entry(*first).or_default();
            record.merge(content_of(&kept.content)?.into_record());
        }
    }
    desk.clear_reports(class, seat)?;
    let (mut inside_year, mut outside_year) = (0, 0);
    for (first, record) in records {
        let (inside, outside) = record.split(|date| year.contains(date));
        let mut reports = desk.report_writer(first)?;
        inside_year += inside.entries();
        reports.write(&inside)?;
        if outside_year + outside.entries() <= MOST_OUTSIDE_YEAR {
            outside_year += outside.entries();
            reports.write(&outside)?;
        }
    }
    Ok(inside_year)
}

/// Returns what a record adds to the reports that came by a key, or `None` if the seat would then
/// have more than [`MOST_ENTRIES`] within the school year. Those outside it never count, so they
/// take no place from the others: beyond [`MOST_OUTSIDE_YEAR`] they are left out, and only the
/// kept hand-in has them. `first` is the first device with the key; none if the key is new.
pub(crate) fn additions(
    desk: &DeskStore,
    class: &str,
    seat: u32,
    first: Option<i64>,
    brought: Record,
) -> Result<Option<Record>, DeskError> {
    let year = desk.class(class)?.year;
    let here = match first {
        Some(first) => desk.record_of(first)?,
        None => Record::default(),
    };
    let (all_inside, all_outside) = desk.entries_of(class, seat, &year)?;
    let add = |mut here: Record, brought: Record, all: usize, most: usize| {
        let before = here.entries();
        let added = here.merge(brought);
        (all + here.entries() - before <= most).then_some(added)
    };
    let (here, here_outside) = here.split(|date| year.contains(date));
    let (brought, brought_outside) = brought.split(|date| year.contains(date));
    let Some(mut added) = add(here, brought, all_inside, MOST_ENTRIES) else {
        return Ok(None);
    };
    if let Some(outside) = add(
        here_outside,
        brought_outside,
        all_outside,
        MOST_OUTSIDE_YEAR,
    ) {
        added.merge(outside);
    }
    Ok(Some(added))
}
