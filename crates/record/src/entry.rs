//! What a student did with one concept on one school date, on one device.

use crate::ids::{DeviceId, MistakeCode};
use crate::wire::{present, school_date};
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use surefoot_catalogue::ConceptId;
use surefoot_catalogue::rating::{Confidence, Outcome};

/// What a student said about one concept on one school date, on one device.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CheckIn {
    /// Where it was tapped.
    pub device: DeviceId,
    /// School date.
    #[serde(with = "school_date")]
    pub date: NaiveDate,
    /// The concept.
    pub concept: ConceptId,
    /// Its place among all events the student's device had seen; see
    /// `docs/exchange.md`. The highest of a (device, date, concept) counts.
    pub sequence: u32,
    /// The rating, if one stands.
    #[serde(deserialize_with = "present")]
    pub confidence: Option<Confidence>,
    /// How the review went, if marked.
    #[serde(deserialize_with = "present")]
    pub outcome: Option<Outcome>,
}

/// What came of the practice of one concept on one school date, on one device.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Practice {
    /// Where it was practised.
    pub device: DeviceId,
    /// School date.
    #[serde(with = "school_date")]
    pub date: NaiveDate,
    /// The concept.
    pub concept: ConceptId,
    /// As in [`CheckIn::sequence`]: of the last answer counted.
    pub sequence: u32,
    /// Counts by how sure the student said to be, "not said" first; each once.
    pub answers: Vec<AnswerCount>,
    /// How often which recognised mistake was made.
    pub mistakes: BTreeMap<MistakeCode, u32>,
}

/// Answers given at one degree of sureness.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct AnswerCount {
    /// How sure the student said to be before answering.
    #[serde(deserialize_with = "present")]
    pub sure: Option<Confidence>,
    /// Right at the first try without a hint.
    pub alone: u32,
    /// Right with a hint or at the second try.
    pub with_help: u32,
    /// Wrong twice, or the steps were asked for.
    pub wrong: u32,
}
