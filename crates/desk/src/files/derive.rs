//! The reports of a seat, derived from the hand-ins of its accepted devices.
//!
//! The tables of reports hold the union of those hand-ins: the newest rating and the newest
//! outcome of each (device, school date, concept). So a new hand-in is compared with the
//! tables, and only what it adds is written. The earlier hand-ins are read again only if an
//! import is undone or a device is accepted or rejected.

use crate::error::{DeskError, faulty};
use flate2::read::ZlibDecoder;
use std::collections::BTreeSet;
use std::io::Read;
use surefoot_exchange::{HAND_IN_CAPS, HandIn};
use surefoot_record::Record;
use surefoot_store::DeskStore;
use surefoot_store::desk::{DeviceState, HandInKept};

fn content_of(kept: &HandInKept) -> Result<HandIn, DeskError> {
    let mut json = Vec::new();
    ZlibDecoder::new(kept.content.as_slice())
        .take(HAND_IN_CAPS.unpacked_bytes)
        .read_to_end(&mut json)
        .map_err(faulty)?;
    serde_json::from_slice(&json).map_err(faulty)
}

/// Derives the reports of a seat anew from the hand-ins of its accepted devices.
pub(crate) fn derive(desk: &DeskStore, class: &str, seat: u32) -> Result<(), DeskError> {
    let accepted: BTreeSet<(String, String)> = desk
        .devices_of(class, seat)?
        .into_iter()
        .filter(|d| d.state == DeviceState::Accepted)
        .map(|d| (d.device, d.signing_key))
        .collect();
    let mut record = Record::default();
    for kept in desk.hand_ins(class, seat)? {
        if accepted.contains(&(kept.device.clone(), kept.signing_key.clone())) {
            record.merge(content_of(&kept)?.into_record());
        }
    }
    desk.clear_reports(class, seat)?;
    desk.report_writer(class, seat)?.write(&record)?;
    Ok(())
}

/// Adds the record of a hand-in of an accepted device. Returns how many entries are new or
/// newer.
pub(crate) fn add(
    desk: &DeskStore,
    class: &str,
    seat: u32,
    brought: Record,
) -> Result<usize, DeskError> {
    let added = desk.record_of(class, seat)?.merge(brought);
    desk.report_writer(class, seat)?.write(&added)?;
    Ok(added.entries())
}
