//! The id of a class, from both of its keys.

use super::keys::{PublicKey, Recipient};
use super::signs::signs_of;
use sha2::{Digest as _, Sha256};
use surefoot_catalogue::IdError;
use surefoot_record::ClassId;

const PREFIX: &[u8] = b"surefoot class id v1\n";

/// Computes the id of the class whose packs `teacher` signs and whose hand-ins are sealed for
/// `class`. A pack with another key has another id, so it cannot pass for the class.
///
/// # Errors
/// Does not fail; the id is checked like one from a file.
pub fn class_id_of(teacher: &PublicKey, class: &Recipient) -> Result<ClassId, IdError> {
    let hash = Sha256::new()
        .chain_update(PREFIX)
        .chain_update(teacher.to_bytes())
        .chain_update(class.as_str())
        .finalize();
    ClassId::new(signs_of(hash.get(..16).unwrap_or_default()))
}
