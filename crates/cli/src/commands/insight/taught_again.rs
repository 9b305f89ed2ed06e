//! The method taught-again.

use super::class::evidence_of;
use super::instances::parse;
use serde::Deserialize;
use serde_json::{Value, json};
use std::collections::btree_map::Entry;
use std::collections::{BTreeMap, BTreeSet};
use surefoot_insight::class_estimate::class_estimate;
use surefoot_insight::taught_again::{Effect, HelpVerdict, NoEffect, TaughtAgain, taught_again};

/// Beside the reports of the class: `upto` is the last pass before the teaching.
#[derive(Deserialize)]
struct Case {
    upto: usize,
    questions: Vec<Question>,
}

#[derive(Deserialize)]
struct Question {
    concept: usize,
    students: Vec<usize>,
    /// The last pass whose answers count.
    until: usize,
    /// The concepts to compare with.
    others: BTreeSet<usize>,
    /// `[student, concept]`: cells that were taught again too.
    #[serde(default)]
    left_out: BTreeSet<(usize, usize)>,
}

/// The verdict on each question about a class.
pub fn answer(case: &Value) -> Result<Value, String> {
    let asked: Case = parse(case)?;
    let before = class_estimate(&evidence_of(case, 0..=asked.upto)?, asked.upto);
    let mut reports = BTreeMap::new();
    for question in &asked.questions {
        if let Entry::Vacant(place) = reports.entry(question.until) {
            place.insert(evidence_of(case, asked.upto + 1..=question.until)?);
        }
    }
    asked
        .questions
        .iter()
        .map(|question| {
            let since = reports.get(&question.until).ok_or("no reports")?;
            let taught = TaughtAgain {
                concept: question.concept,
                students: &question.students,
                others: &question.others,
                left_out: &question.left_out,
            };
            Ok(match taught_again(&before, since, &taught) {
                Ok(effect) => found(&effect),
                Err(none) => json!({ "say": why(none) }),
            })
        })
        .collect()
}

fn found(effect: &Effect) -> Value {
    json!({
        "say": match effect.verdict {
            HelpVerdict::RoseMore => "rose more",
            HelpVerdict::LikelyRoseMore => "likely",
            HelpVerdict::NoSign => "no sign",
            HelpVerdict::CannotTell => "cannot tell",
        },
        "logit": effect.logit, "sd": effect.sd, "freedom": effect.freedom,
        "low": effect.low, "high": effect.high,
        "answers": effect.answers, "right": effect.right, "foretold": effect.foretold, "expected": effect.expected,
        "more_low": effect.more_low, "more_high": effect.more_high,
        "others": effect.others_logit, "concepts": effect.concepts,
    })
}

fn why(none: NoEffect) -> &'static str {
    match none {
        NoEffect::NoAnswers => "no answers",
        NoEffect::FewOthers => "few others",
    }
}
