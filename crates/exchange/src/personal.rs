//! Assignments for one seat, sealed so that no other student can read them.

use super::Refusal;
use super::class_pack::{Assignment, ClassPack, SealedForSeat, check_assignments};
use super::frame::{self, Kind};
use super::keys::{Recipient, SealingIdentity, SigningKey};
use super::limits::PERSONAL_CAPS;
use super::sealing::{read_capped, seal_for, unseal};
use super::strict_json::{self, bad};
use base64::Engine as _;
use base64::prelude::BASE64_STANDARD;
use serde::{Deserialize, Serialize};
use surefoot_record::{ClassId, DeviceId, SeatToken};

/// The newest format known.
pub const PERSONAL_FORMAT: u32 = 1;

/// The least size of the sealed frame; larger ones double. A device without an
/// assignment should get an empty one: then size and presence say nothing.
pub const PERSONAL_STEP_BYTES: usize = 1024;

/// What is sealed for one device of one seat. `shared/schema/personal.schema.json`.
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
    /// The class pack it travels in.
    pub pack_version: u32,
    /// The assignments.
    pub assignments: Vec<Assignment>,
}

/// Seals assignments for a device of a seat.
///
/// # Errors
/// [`Refusal::BadContent`] when they break a rule, [`Refusal::TooLarge`].
pub fn seal_personal(
    personal: &PersonalAssignments,
    teacher: &SigningKey,
    device: &Recipient,
) -> Result<SealedForSeat, Refusal> {
    check_assignments(&personal.assignments)?;
    let json = serde_json::to_vec(personal).map_err(|_| bad("content"))?;
    strict_json::read::<PersonalAssignments>(&json, &PERSONAL_CAPS, PERSONAL_FORMAT)?;
    let frame = frame::write(Kind::Personal, &json, teacher, Some(PERSONAL_STEP_BYTES))?;
    let sealed = seal_for(device, &frame)?;
    if sealed.len() as u64 > PERSONAL_CAPS.sealed_bytes {
        return Err(Refusal::TooLarge {
            found_bytes: sealed.len() as u64,
            most_bytes: PERSONAL_CAPS.sealed_bytes,
        });
    }
    Ok(SealedForSeat {
        seat: personal.seat.clone(),
        device: personal.device.clone(),
        sealed: BASE64_STANDARD.encode(sealed),
    })
}

/// Opens what a pack holds for this device; empty when it holds nothing.
///
/// # Errors
/// [`Refusal::OtherTeacher`] when another key signed it, [`Refusal::WrongClass`]
/// when it was made for another class, seat, device or pack, or the identity
/// does not open it; else by name.
pub fn open_personal(
    pack: &ClassPack,
    seat: &SeatToken,
    device: &DeviceId,
    identity: &SealingIdentity,
) -> Result<Vec<Assignment>, Refusal> {
    let Some(entry) = pack
        .sealed
        .iter()
        .find(|entry| entry.seat == *seat && entry.device == *device)
    else {
        return Ok(Vec::new());
    };
    let sealed = BASE64_STANDARD
        .decode(&entry.sealed)
        .map_err(|_| Refusal::Damaged)?;
    let sealed = read_capped(sealed.as_slice(), PERSONAL_CAPS.sealed_bytes)?;
    let plain = unseal(&sealed, [identity])?;
    let opened = frame::read(Kind::Personal, &plain, true, PERSONAL_CAPS.unpacked_bytes)?;
    if opened.key != pack.teacher_key {
        return Err(Refusal::OtherTeacher);
    }
    let personal: PersonalAssignments =
        strict_json::read(&opened.json, &PERSONAL_CAPS, PERSONAL_FORMAT)?;
    if personal.class_id != pack.class_id
        || personal.seat != *seat
        || personal.device != *device
        || personal.pack_version != pack.version
    {
        return Err(Refusal::WrongClass);
    }
    check_assignments(&personal.assignments)?;
    Ok(personal.assignments)
}
