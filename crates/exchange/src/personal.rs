//! Assignments for one seat, sealed for each device of the seat.

use super::Refusal;
use super::class_pack::{Assignment, ClassPack, check_assignments};
use super::content::{self, Content, within};
use super::frame::{Kind, Opened};
use super::keys::{Recipient, SealingIdentity, SigningKey};
use super::limits::{Caps, PERSONAL_CAPS};
use super::sealing::{read_capped, seal_for, unseal};
use super::strict_json::bad;
use base64::Engine as _;
use base64::prelude::BASE64_STANDARD;
use serde::{Deserialize, Serialize};
use surefoot_record::{ClassId, DeviceId, SeatToken};

/// The format of personal assignments.
pub const PERSONAL_FORMAT: u32 = 1;

/// What is sealed for one device of one seat; see `shared/schema/personal.schema.json`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PersonalAssignments {
    /// [`PERSONAL_FORMAT`].
    pub format: u32,
    /// The class.
    pub class_id: ClassId,
    /// The seat.
    pub seat: SeatToken,
    /// The device.
    pub device: DeviceId,
    /// The version of the class pack that they travel in.
    pub pack_version: u32,
    /// The assignments.
    pub assignments: Vec<Assignment>,
}

impl Content for PersonalAssignments {
    const KIND: Kind = Kind::Personal;
    const FORMAT: u32 = PERSONAL_FORMAT;
    const CAPS: Caps = PERSONAL_CAPS;
    const STEP_BYTES: Option<usize> = Some(1024);

    fn check_content(&self) -> Result<(), Refusal> {
        if self.format != PERSONAL_FORMAT {
            return Err(bad("format"));
        }
        check_assignments(&self.assignments)
    }
}

/// Seals the assignments of every device of a class, each for its recipient. All have the size
/// of the largest, and their order is that of the sealed texts. If a device without an
/// assignment gets an empty list, nothing reveals who has one.
pub fn seal_personal(
    devices: &[(PersonalAssignments, Recipient)],
    teacher: &SigningKey,
) -> Result<Vec<String>, Refusal> {
    let frames: Vec<Vec<u8>> = devices
        .iter()
        .map(|(personal, _)| content::write(personal, teacher))
        .collect::<Result<_, _>>()?;
    let size = frames.iter().map(Vec::len).max().unwrap_or(0);
    let mut sealed = Vec::with_capacity(devices.len());
    for ((_, recipient), mut frame) in devices.iter().zip(frames) {
        frame.resize(size, 0);
        let file = within(&PERSONAL_CAPS, seal_for(recipient, &frame)?)?;
        sealed.push(BASE64_STANDARD.encode(file));
    }
    sealed.sort();
    Ok(sealed)
}

/// Returns the assignments that a pack has for this device; none if it has none. Tries each
/// sealed part, because nothing says for whom one is.
#[must_use]
pub fn open_personal(
    pack: &ClassPack,
    seat: &SeatToken,
    device: &DeviceId,
    identity: &SealingIdentity,
) -> Vec<Assignment> {
    pack.sealed
        .iter()
        .filter_map(|part| open(part, identity))
        .find(|(personal, opened)| {
            opened.key == pack.teacher_key
                && personal.class_id == pack.class_id
                && personal.pack_version == pack.version
                // Two devices of a student may have the same identity.
                && personal.seat == *seat
                && personal.device == *device
        })
        .map(|(personal, _)| personal.assignments)
        .unwrap_or_default()
}

/// Opens a sealed part; none if it is for another device or damaged.
fn open(part: &str, identity: &SealingIdentity) -> Option<(PersonalAssignments, Opened)> {
    let sealed = BASE64_STANDARD.decode(part).ok()?;
    let sealed = read_capped(sealed.as_slice(), PERSONAL_CAPS.sealed_bytes).ok()?;
    let plain = unseal(&sealed, [identity]).ok()?;
    content::read(&plain).ok()
}
