//! What the newest hand-in of each device tells of its class pack.

use super::open::OpenClass;
use super::pack_stamp::days_stamp;
use crate::error::DeskError;
use chrono::NaiveDate;
use std::collections::BTreeMap;
use surefoot_store::DeskStore;
use surefoot_store::desk::{DeviceRow, DeviceState};

/// A device that has handed in.
pub(crate) struct HeardDevice {
    pub device: DeviceRow,
    /// The date of its newest hand-in.
    pub last_on: NaiveDate,
    /// The version of the class pack that it had then.
    pub pack_version: u32,
    /// Whether that pack had the year and the rotation of today.
    pub knows_days: bool,
}

/// Returns the accepted devices of each seat that have handed in, the newest hand-in first.
pub(crate) fn heard_devices(
    desk: &DeskStore,
    class: &OpenClass,
) -> Result<BTreeMap<u32, Vec<HeardDevice>>, DeskError> {
    let newest = desk.newest_hand_ins(&class.row.id)?;
    let packs = desk.packs_made(&class.row.id)?;
    let given_out = packs.days_stamp == days_stamp(&class.facts)?;
    let mut seats: BTreeMap<u32, Vec<HeardDevice>> = BTreeMap::new();
    for device in desk.devices(&class.row.id)? {
        let Some(last) = newest.get(&device.id) else {
            continue;
        };
        if device.state == DeviceState::Accepted {
            seats.entry(device.seat).or_default().push(HeardDevice {
                device,
                last_on: last.made_on,
                pack_version: last.pack_version,
                knows_days: given_out && last.pack_version >= packs.days_version,
            });
        }
    }
    for devices in seats.values_mut() {
        devices.sort_by_key(|heard| {
            (
                std::cmp::Reverse((heard.last_on, heard.pack_version)),
                heard.device.id,
            )
        });
    }
    Ok(seats)
}
