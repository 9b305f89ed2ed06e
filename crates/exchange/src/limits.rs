//! The caps. Each is checked before, or while, what it caps is read.

/// What a reader takes at most.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Caps {
    /// Bytes of the file as it comes.
    pub sealed_bytes: u64,
    /// Bytes of the JSON after unpacking.
    pub unpacked_bytes: u64,
    /// Entries of one JSON list or object.
    pub list_entries: u64,
    /// JSON values in all, at every depth.
    pub values: u64,
    /// Bytes of one JSON text, unescaped.
    pub text_bytes: usize,
    /// Lists and objects inside each other.
    pub depth: u32,
}

const MIB: u64 = 1024 * 1024;

/// For a hand-in. A full year (180 school days of 7 concepts on two devices,
/// with practice every evening) unpacks to about 1 MiB.
pub const HAND_IN_CAPS: Caps = Caps {
    sealed_bytes: 4 * MIB + 64 * 1024,
    unpacked_bytes: 16 * MIB,
    list_entries: 20_000,
    values: 600_000,
    text_bytes: 256,
    depth: 8,
};

/// For a class pack.
pub const CLASS_PACK_CAPS: Caps = Caps {
    sealed_bytes: 4 * MIB,
    unpacked_bytes: 16 * MIB,
    list_entries: 2_000,
    values: 200_000,
    text_bytes: 64 * 1024,
    depth: 8,
};

/// For the assignments sealed for one seat.
pub const PERSONAL_CAPS: Caps = Caps {
    sealed_bytes: 48 * 1024,
    unpacked_bytes: 256 * 1024,
    list_entries: 200,
    values: 10_000,
    text_bytes: 256,
    depth: 8,
};

/// For a carry file, which takes the class pack along.
pub const CARRY_CAPS: Caps = Caps {
    sealed_bytes: 32 * MIB + 64 * 1024,
    unpacked_bytes: 64 * MIB,
    list_entries: 100_000,
    values: 2_000_000,
    text_bytes: 6 * 1024 * 1024,
    depth: 24,
};

/// For a class key file, which holds the keys, the roster and the teacher's own concepts
/// and exercises of one class.
pub const CLASS_KEY_CAPS: Caps = Caps {
    sealed_bytes: 4 * MIB + 64 * 1024,
    unpacked_bytes: 4 * MIB,
    list_entries: 2_000,
    values: 200_000,
    text_bytes: 4 * 1024,
    depth: 8,
};

/// For a backup: a desk with six full classes and every weekly hand-in kept is
/// well under 100 MiB. Lists, texts and depth do not arise: it holds no JSON.
pub const BACKUP_CAPS: Caps = Caps {
    sealed_bytes: 256 * MIB,
    unpacked_bytes: 512 * MIB,
    list_entries: 0,
    values: 0,
    text_bytes: 0,
    depth: 0,
};

/// The longest age header read, in bytes. One for a single recipient has about
/// 200 to 500. Without this cap a header without end costs quadratic time.
pub const MOST_HEADER_BYTES: usize = 8 * 1024;

/// The scrypt work factor (log2 of N) that a carry file is sealed with: 128
/// MiB and about half a second.
pub const CARRY_WORK_FACTOR: u8 = 17;

/// The highest scrypt work factor opened: 256 MiB. It is what the `age`
/// program uses for a passphrase.
pub const MOST_WORK_FACTOR: u8 = 18;
