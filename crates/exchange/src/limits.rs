//! The caps. Each is checked before or while the capped bytes are read.

/// What a reader accepts at most.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Caps {
    /// Bytes of the file.
    pub sealed_bytes: u64,
    /// Bytes of the JSON after unpacking.
    pub unpacked_bytes: u64,
    /// Entries of a JSON list or object.
    pub list_entries: u64,
    /// JSON values in all.
    pub values: u64,
    /// Bytes of a JSON text without escapes.
    pub text_bytes: usize,
    /// Depth of lists and objects inside each other.
    pub depth: u32,
}

const MIB: u64 = 1024 * 1024;

/// The caps of a hand-in. A full year (180 school days of 7 concepts on two devices, with
/// practice every evening) unpacks to about 1 MiB.
pub const HAND_IN_CAPS: Caps = Caps {
    sealed_bytes: 4 * MIB + 64 * 1024,
    unpacked_bytes: 16 * MIB,
    list_entries: 20_000,
    values: 600_000,
    text_bytes: 256,
    depth: 8,
};

/// The caps of a class pack.
pub const CLASS_PACK_CAPS: Caps = Caps {
    sealed_bytes: 4 * MIB,
    unpacked_bytes: 16 * MIB,
    list_entries: 2_000,
    values: 200_000,
    text_bytes: 64 * 1024,
    depth: 8,
};

/// The caps of personal assignments.
pub const PERSONAL_CAPS: Caps = Caps {
    sealed_bytes: 48 * 1024,
    unpacked_bytes: 256 * 1024,
    list_entries: 200,
    values: 10_000,
    text_bytes: 256,
    depth: 8,
};

/// The caps of a carry file, which contains the class pack.
pub const CARRY_CAPS: Caps = Caps {
    sealed_bytes: 32 * MIB + 64 * 1024,
    unpacked_bytes: 64 * MIB,
    list_entries: 100_000,
    values: 2_000_000,
    text_bytes: 6 * 1024 * 1024,
    depth: 24,
};

/// The caps of a class key.
pub const CLASS_KEY_CAPS: Caps = Caps {
    sealed_bytes: 4 * MIB + 64 * 1024,
    unpacked_bytes: 4 * MIB,
    list_entries: 2_000,
    values: 200_000,
    text_bytes: 4 * 1024,
    depth: 8,
};

/// The caps of a transfer, which has the records of several devices and the paper entries.
pub const TRANSFER_CAPS: Caps = Caps {
    sealed_bytes: 8 * MIB + 64 * 1024,
    unpacked_bytes: 32 * MIB,
    list_entries: 20_000,
    values: 1_500_000,
    text_bytes: 256,
    depth: 10,
};

/// The caps of a backup. A desk with six full classes and all weekly hand-ins is well below
/// 100 MiB. A backup has no JSON, so the other caps are 0.
pub const BACKUP_CAPS: Caps = Caps {
    sealed_bytes: 256 * MIB,
    unpacked_bytes: 512 * MIB,
    list_entries: 0,
    values: 0,
    text_bytes: 0,
    depth: 0,
};

/// The longest age header, in bytes. A header for one recipient has about 200 to 500.
/// Without this cap, a header without end takes quadratic time.
pub const MOST_HEADER_BYTES: usize = 8 * 1024;

/// The scrypt work factor (log2 of N) for sealing by a passphrase: 128 MiB and about half a
/// second.
pub const WORK_FACTOR: u8 = 17;

/// The highest scrypt work factor that is opened, that of the `age` program: 256 MiB.
pub const MOST_WORK_FACTOR: u8 = 18;
