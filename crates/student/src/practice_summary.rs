//! The summary of tonight's practice: what the student thought, and what the student did.

use super::evening::{evening_of, memory_of};
use super::practice_views::{Summary, SummaryConcept};
use super::{Joined, StudentError};
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::rating::{AnswerResult, Confidence};
use surefoot_practice::StudentMemory;
use surefoot_record::what_counts;
use surefoot_store::StudentStore;
use surefoot_store::student::PracticeAnswer;

/// Returns the summary of tonight's practice.
pub fn practice_summary(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
) -> Result<Summary, StudentError> {
    let memory = memory_of(store, joined, today)?;
    summary_of(store, joined, today, &memory)
}

pub(super) fn summary_of(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
    memory: &StudentMemory,
) -> Result<Summary, StudentError> {
    let tonight: Vec<PracticeAnswer> = store
        .practice_answers()?
        .into_iter()
        .filter(|a| a.date == today)
        .collect();
    let check_ins = store.check_ins()?;
    let rated = what_counts(&check_ins, joined.counted_dates(today));
    let said: BTreeMap<&str, Confidence> = rated
        .iter()
        .filter_map(|event| event.confidence.map(|c| (event.concept.as_str(), c)))
        .collect();
    let mut seen = BTreeSet::new();
    let mut concepts = Vec::new();
    for concept in tonight.iter().map(|a| a.concept.as_str()) {
        if !seen.insert(concept) {
            continue;
        }
        let answers = tonight.iter().filter(|a| a.concept.as_str() == concept);
        let number = |counts: &dyn Fn(&PracticeAnswer) -> bool| {
            let counted = answers.clone().filter(|answer| counts(answer)).count();
            u32::try_from(counted).unwrap_or(u32::MAX)
        };
        let alone = |answer: &PracticeAnswer| answer.result == AnswerResult::Alone;
        concepts.push(SummaryConcept {
            concept: joined.name(concept),
            said: said.get(concept).copied(),
            thought: Confidence::ALL
                .map(|confidence| number(&|answer| answer.confidence == Some(confidence))),
            thought_right: Confidence::ALL.map(|confidence| {
                number(&|answer| answer.confidence == Some(confidence) && alone(answer))
            }),
            finished: number(&|_| true),
            alone: number(&alone),
            with_help: number(&|answer| answer.result == AnswerResult::WithHelp),
        });
    }
    let count = |result| tonight.iter().filter(|a| a.result == result).count();
    let more = memory
        .next(&evening_of(store, joined, memory, today, true)?)
        .is_some();
    Ok(Summary {
        finished: tonight.len(),
        alone: count(AnswerResult::Alone),
        with_help: count(AnswerResult::WithHelp),
        minutes: memory.minutes_on(today),
        evenings_done: memory.evenings_before(joined.evening_length(), today),
        evenings_planned: joined.student.evenings,
        concepts,
        more,
    })
}
