//! Records of few devices, dates and concepts, so that keys and sequences are often equal.

use chrono::NaiveDate;
use proptest::collection::vec;
use proptest::prelude::*;
use surefoot_catalogue::ConceptId;
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_record::{AnswerCount, CheckIn, DeviceId, MisconceptionCode, Practice, Record, Said};

/// The concepts of these records.
pub const CONCEPTS: [&str; 3] = ["g4-fraction-add-like", "g4-angle-measure", "g4-round-whole"];

pub fn date(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

pub fn concept(text: &str) -> ConceptId {
    ConceptId::new(text).unwrap()
}

pub fn device(number: u8) -> DeviceId {
    DeviceId::from_bytes(&[number; 16])
}

pub fn check_in(device_number: u8, day: &str, id: &str, sequence: u32, rating: u8) -> CheckIn {
    CheckIn {
        device: device(device_number),
        date: date(day),
        concept: concept(id),
        confidence: Some(Said {
            at: sequence,
            value: Some(Confidence::try_from(rating).unwrap()),
        }),
        outcome: Some(Said {
            at: sequence,
            value: Some(Outcome::Right),
        }),
    }
}

/// Returns check-ins whose keys and sequences are often equal.
pub fn any_check_in() -> impl Strategy<Value = CheckIn> {
    // Sequence 0 means never said. A value beyond the last one means taken back.
    let said = (0..6u32, 0..6u8);
    (1..4u8, 8..12u32, 0..3usize, said.clone(), said).prop_map(
        |(device_number, day, concept_number, rated, marked)| CheckIn {
            device: device(device_number),
            date: date(&format!("2026-09-{day:02}")),
            concept: concept(CONCEPTS[concept_number]),
            confidence: (rated.0 > 0).then(|| Said {
                at: rated.0,
                value: Confidence::try_from(rated.1).ok(),
            }),
            outcome: (marked.0 > 0 || rated.0 == 0).then(|| Said {
                at: marked.0.max(1),
                value: [Outcome::Right, Outcome::Wrong, Outcome::NotDone]
                    .get(usize::from(marked.1))
                    .copied(),
            }),
        },
    )
}

pub fn any_practice() -> impl Strategy<Value = Practice> {
    (
        1..4u8,
        8..12u32,
        0..3usize,
        1..6u32,
        vec(0..5u32, 15),
        0..3u32,
    )
        .prop_map(
            |(device_number, day, concept_number, sequence, counts, misconceptions)| Practice {
                device: device(device_number),
                date: date(&format!("2026-09-{day:02}")),
                concept: concept(CONCEPTS[concept_number]),
                sequence,
                answers: counts
                    .chunks(3)
                    .enumerate()
                    .map(|(place, c)| AnswerCount {
                        confidence: u8::try_from(place)
                            .ok()
                            .and_then(|n| Confidence::try_from(n).ok()),
                        alone: c[0],
                        with_help: c[1],
                        wrong: c[2],
                    })
                    .collect(),
                misconceptions: (1..=misconceptions)
                    .map(|n| (MisconceptionCode::new(format!("m{n}")).unwrap(), n))
                    .collect(),
            },
        )
}

pub fn any_record() -> impl Strategy<Value = Record> {
    (vec(any_check_in(), 0..12), vec(any_practice(), 0..8))
        .prop_map(|(check_ins, practice)| Record::from_entries(check_ins, practice))
}
