//! What the desk keeps of one seat at most, so that nobody fills it for the others.
//!
//! An honest year on two devices with a hand-in every school day has about 5,000 entries and
//! 9 MiB of hand-ins.

/// Devices whose hand-ins count. All of them go along in a transfer.
pub const MOST_ACCEPTED_DEVICES: usize = surefoot_exchange::MOST_TRANSFER_DEVICES;

/// Quarantined devices.
pub const MOST_QUARANTINED_DEVICES: usize = 8;

/// Hand-ins of a device that is not accepted: the newest.
pub(super) const MOST_QUARANTINED_HAND_INS: usize = 2;

const MIB: u64 = 1024 * 1024;

/// Packed bytes of hand-ins that do not count.
pub(super) const MOST_QUARANTINED_BYTES: u64 = 8 * MIB;

/// Packed bytes of hand-ins that count.
pub(super) const MOST_ACCEPTED_BYTES: u64 = 32 * MIB;

/// Check-ins and practice results within the school year.
pub(super) const MOST_ENTRIES: usize = 40_000;

/// Check-ins and practice results outside the school year, such as those of a wrong clock.
pub(super) const MOST_OUTSIDE_YEAR: usize = 5_000;
