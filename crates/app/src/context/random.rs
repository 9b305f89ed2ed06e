//! Randomness, drawn from the operating system.

use crate::error::CallError;

/// Random bytes.
pub(crate) fn bytes<const N: usize>() -> Result<[u8; N], CallError> {
    let mut drawn = [0; N];
    getrandom::fill(&mut drawn).map_err(|e| CallError::Storage {
        detail: e.to_string(),
    })?;
    Ok(drawn)
}

/// A random number below 2^53, which JavaScript holds exactly.
pub(crate) fn number() -> Result<u64, CallError> {
    Ok(u64::from_le_bytes(bytes()?) >> 11)
}

/// Random bytes as hexadecimal text.
pub(crate) fn hex<const N: usize>() -> Result<String, CallError> {
    Ok(bytes::<N>()?
        .iter()
        .map(|byte| format!("{byte:02x}"))
        .collect())
}
