//! Unseals the public age vectors, within the caps.
//! Source and licence: `shared/vectors/age/SOURCE.md`.

use crate::limits::HAND_IN_CAPS;
use crate::sealing::{read_capped, unseal, unseal_with_passphrase};
use crate::{Refusal, SealingIdentity};
use sha2::{Digest as _, Sha256};
use std::collections::BTreeMap;
use std::io::Read as _;
use std::path::PathBuf;

struct Vector {
    name: String,
    fields: BTreeMap<String, String>,
    file: Vec<u8>,
}

#[expect(clippy::disallowed_methods, reason = "reads the checked-in vectors")]
fn vectors() -> Vec<Vector> {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../shared/vectors/age");
    let mut vectors = Vec::new();
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        let name = path.file_name().unwrap().to_str().unwrap().to_owned();
        if name == "SOURCE.md" {
            continue;
        }
        let bytes = std::fs::read(&path).unwrap();
        let blank = bytes.windows(2).position(|w| w == b"\n\n").unwrap();
        let fields: BTreeMap<_, _> = std::str::from_utf8(&bytes[..blank])
            .unwrap()
            .lines()
            .map(|line| line.split_once(": ").unwrap())
            .map(|(field, value)| (field.to_owned(), value.to_owned()))
            .collect();
        let mut file = bytes[blank + 2..].to_vec();
        if fields.get("compressed").is_some_and(|c| c == "zlib") {
            let mut unpacked = Vec::new();
            flate2::read::ZlibDecoder::new(file.as_slice())
                .read_to_end(&mut unpacked)
                .unwrap();
            file = unpacked;
        }
        vectors.push(Vector { name, fields, file });
    }
    vectors
}

#[test]
fn every_vector_meets_what_it_expects() {
    let (mut opened, mut refused, mut lenient) = (0, 0, 0);
    for vector in vectors() {
        let Vector { name, fields, file } = &vector;
        let expect = fields["expect"].as_str();
        let found = if let Some(passphrase) = fields.get("passphrase") {
            unseal_with_passphrase(file, passphrase)
        } else {
            let identity: Option<SealingIdentity> =
                fields.get("identity").map(|text| text.parse().unwrap());
            unseal(file, identity.as_ref())
        };
        if fields.contains_key("armored") {
            // No file of the program has the text form of age.
            assert_eq!(found.unwrap_err(), Refusal::NotOurs, "{name}");
            refused += 1;
            continue;
        }
        match (expect, found) {
            ("success", Ok(plain)) => {
                let hash: String = Sha256::digest(plain)
                    .iter()
                    .map(|b| format!("{b:02x}"))
                    .collect();
                assert_eq!(hash, fields["payload"], "{name}");
                opened += 1;
            }
            // The library also reads an old form of stanza.
            ("header failure", Ok(_))
                if ["stanza_missing_body", "stanza_missing_final_line"]
                    .contains(&name.as_str()) =>
            {
                lenient += 1;
            }
            (_, Ok(_)) => panic!("{name}: opened"),
            (_, Err(refusal)) => {
                let fits = match expect {
                    "header failure" => match name.as_str() {
                        "scrypt_work_factor_23" => {
                            refusal
                                == Refusal::TooMuchWork {
                                    found: 23,
                                    most: 18,
                                }
                        }
                        "version_unsupported" => {
                            refusal
                                == Refusal::NewerFormat {
                                    found: 1234,
                                    known: 1,
                                }
                        }
                        _ => [Refusal::Damaged, Refusal::NotOurs].contains(&refusal),
                    },
                    "HMAC failure" | "payload failure" => refusal == Refusal::Damaged,
                    // Readers know `scrypt` only; with `Scrypt` no passphrase opens the file.
                    "no match" if name == "scrypt_uppercase" => refusal == Refusal::NotOurs,
                    "no match" => {
                        [Refusal::WrongClass, Refusal::WrongPassphrase].contains(&refusal)
                    }
                    other => panic!("{name}: expects {other}"),
                };
                assert!(fits, "{name} expects {expect}: {refusal:?}");
                refused += 1;
            }
        }
    }
    assert_eq!((opened, refused, lenient), (OPENED, 123 - OPENED - 2, 2));
}

/// Vectors of the binary form that open.
const OPENED: usize = 15;

#[test]
fn vectors_above_our_cap_are_refused_by_size() {
    let mut above = 0;
    for vector in vectors() {
        let read = read_capped(vector.file.as_slice(), HAND_IN_CAPS.sealed_bytes);
        if vector.file.len() as u64 > HAND_IN_CAPS.sealed_bytes {
            assert!(
                matches!(read, Err(Refusal::TooLarge { .. })),
                "{}",
                vector.name
            );
            above += 1;
        } else {
            assert_eq!(read.unwrap(), vector.file);
        }
    }
    assert_eq!(above, 3);
}
