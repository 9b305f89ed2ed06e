//! Decides when the feedback names a misconception and the hand-in counts it. A wrong choice or
//! sign may be a slip of the finger, so it counts only when it comes again in another exercise.

use std::collections::{BTreeMap, BTreeSet};
use surefoot_exercises::Response;
use surefoot_record::MisconceptionCode;
use surefoot_store::student::PracticeAnswer;

/// Whether a stored response was tapped, or a part of it.
fn tapped(response: &str) -> bool {
    serde_json::from_str(response).is_ok_and(|response: Response| response.is_tapped())
}

/// The exercises in which each misconception of a concept was recognised so far.
#[derive(Default)]
pub(crate) struct Seen {
    exercises: BTreeMap<(String, String), BTreeSet<(u8, u64)>>,
}

impl Seen {
    /// What these answers show.
    pub(crate) fn of(answers: &[PracticeAnswer]) -> Self {
        let mut seen = Self::default();
        for answer in answers {
            seen.counts(answer);
        }
        seen
    }

    /// Notes the misconception of an answer. Returns it if it counts: one behind a typed
    /// answer always, one behind a tap from its second exercise on.
    pub(crate) fn counts<'a>(
        &mut self,
        answer: &'a PracticeAnswer,
    ) -> Option<&'a MisconceptionCode> {
        let code = answer.misconception.as_ref()?;
        let exercises = self
            .exercises
            .entry((answer.concept.as_str().to_owned(), code.as_str().to_owned()))
            .or_default();
        exercises.insert((answer.level, answer.seed));
        (exercises.len() > 1 || !tapped(&answer.response)).then_some(code)
    }

    /// Whether a misconception of a concept was recognised before in another exercise.
    pub(crate) fn in_another(&self, concept: &str, code: &str, exercise: (u8, u64)) -> bool {
        self.exercises
            .get(&(concept.to_owned(), code.to_owned()))
            .is_some_and(|exercises| exercises.iter().any(|other| *other != exercise))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use surefoot_catalogue::ConceptId;
    use surefoot_catalogue::rating::AnswerResult;
    use surefoot_record::DeviceId;

    fn wrong(seed: u64, response: &str) -> PracticeAnswer {
        PracticeAnswer {
            device: DeviceId::from_bytes(&[1; 16]),
            sequence: 1,
            date: "2026-09-08".parse().unwrap(),
            concept: ConceptId::new("g4-compare-numbers").unwrap(),
            level: 2,
            generator_version: 1,
            seed,
            confidence: None,
            result: AnswerResult::Wrong,
            misconception: Some(MisconceptionCode::new("sign-turned-round").unwrap()),
            seconds: 10,
            response: response.into(),
        }
    }

    #[test]
    fn a_tap_counts_from_the_second_exercise_on_and_a_typed_answer_at_once() {
        let sign = r#"{"kind":"comparison","sign":"less"}"#;
        let typed = r#"{"kind":"whole_number","text":"12"}"#;
        let mut seen = Seen::default();
        assert_eq!(seen.counts(&wrong(7, sign)), None);
        assert_eq!(seen.counts(&wrong(7, sign)), None, "the same exercise");
        assert!(!seen.in_another("g4-compare-numbers", "sign-turned-round", (2, 7)));
        assert!(seen.in_another("g4-compare-numbers", "sign-turned-round", (2, 8)));
        assert!(seen.counts(&wrong(8, sign)).is_some());
        assert!(Seen::default().counts(&wrong(7, typed)).is_some());
        let two = format!(r#"{{"kind":"two_parts","first":{sign},"second":{typed}}}"#);
        assert_eq!(Seen::default().counts(&wrong(7, &two)), None);
    }
}
