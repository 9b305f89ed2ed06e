//! Assignments for one seat, sealed for each device of the seat.

use super::Refusal;
use super::class_pack::{Assignment, ClassPack, SealedForSeat, check_assignments};
use super::content::{self, Content, within};
use super::frame::Kind;
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

/// Seals assignments for a device of a seat. If a device without an assignment gets an
/// empty list, neither the size nor the presence of one reveals anything.
pub fn seal_personal(
    personal: &PersonalAssignments,
    teacher: &SigningKey,
    device: &Recipient,
) -> Result<SealedForSeat, Refusal> {
    let frame = content::write(personal, teacher)?;
    let sealed = within(&PERSONAL_CAPS, seal_for(device, &frame)?)?;
    Ok(SealedForSeat {
        seat: personal.seat.clone(),
        device: personal.device.clone(),
        sealed: BASE64_STANDARD.encode(sealed),
    })
}

/// Returns the assignments that a pack has for this device; none if it has none.
///
/// # Errors
/// Fails with [`Refusal::OtherTeacher`] if another key than the pack's signed them, and with
/// [`Refusal::WrongClass`] if they are for another class, seat, device or pack, or if the
/// identity does not open them.
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
    let (personal, opened) = content::read::<PersonalAssignments>(&plain, &PERSONAL_CAPS)?;
    if opened.key != pack.teacher_key {
        return Err(Refusal::OtherTeacher);
    }
    if personal.class_id != pack.class_id
        || personal.seat != *seat
        || personal.device != *device
        || personal.pack_version != pack.version
    {
        return Err(Refusal::WrongClass);
    }
    Ok(personal.assignments)
}
