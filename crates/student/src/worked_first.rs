//! Worked examples in turn with the first exercises of a concept.
//!
//! Recommendation 2 of *Organizing Instruction and Study to Improve Student Learning* (What
//! Works Clearinghouse, NCER 2007-2004) is that students alternate between reading worked
//! solutions and solving problems themselves. The examples end as soon as the student solves
//! the exercises alone.

use super::practice_views::WorkedExample;
use surefoot_catalogue::rating::AnswerResult;
use surefoot_exercises::text::answer_blocks;
use surefoot_exercises::{Block, Entry, Item, generate};

/// Before how many exercises of a concept an example may come.
const FIRST_EXERCISES: usize = 3;

/// Exercises solved alone in a row after which no example comes.
const ALONE_ENOUGH: usize = 2;

/// The most seeds tried to find an example that fits the exercise.
const MOST_TRIES: u64 = 24;

/// Returns whether an example comes before the next exercise of a concept. `results` are those
/// of its exercises so far, earliest first.
#[must_use]
pub fn example_due(results: &[AnswerResult]) -> bool {
    let alone = results
        .iter()
        .rev()
        .take_while(|result| **result == AnswerResult::Alone)
        .count();
    results.len() < FIRST_EXERCISES && alone < ALONE_ENOUGH
}

/// Returns an example for an exercise: the same kind of question with other numbers. If
/// possible its answer is another one, so that it does not give the answer away.
#[must_use]
pub fn example_for(item: &Item) -> Option<WorkedExample> {
    let key = answer_blocks(item);
    let mut best: Option<(u8, Item)> = None;
    for turn in 1..=MOST_TRIES {
        let Ok(like) = generate(item.concept.as_str(), item.level, item.seed ^ turn) else {
            continue;
        };
        if like.statement == item.statement {
            continue;
        }
        let other_answer = answer_blocks(&like) != key;
        let same_kind = like.statement.get("task") == item.statement.get("task");
        let fit = u8::from(other_answer) * 2 + u8::from(same_kind);
        if best.as_ref().is_none_or(|(least, _)| fit > *least) {
            best = Some((fit, like));
        }
        if fit == 3 {
            break;
        }
    }
    best.map(|(_, like)| WorkedExample {
        choices: choices_of(&like.entry),
        answer: answer_blocks(&like),
        prompt: like.prompt,
        steps: like.steps,
    })
}

/// Returns the choices, or the things to put in order.
fn choices_of(entry: &Entry) -> Vec<Block> {
    match entry {
        Entry::OneChoice { choices }
        | Entry::SeveralChoices { choices }
        | Entry::Ordering {
            things: choices, ..
        } => choices.iter().map(|choice| choice.shows.clone()).collect(),
        Entry::TwoParts { first, ask, second } => {
            let mut all = choices_of(first);
            all.push(ask.clone().into());
            all.extend(choices_of(second));
            all
        }
        _ => Vec::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use AnswerResult::{Alone, Wrong};
    use surefoot_exercises::{Level, concepts_with_exercises};

    #[test]
    fn examples_and_exercises_take_turns_at_first() {
        assert!(example_due(&[]));
        assert!(example_due(&[Alone]));
        assert!(example_due(&[Wrong, Alone]));
        assert!(example_due(&[AnswerResult::WithHelp, Wrong]));
        assert!(!example_due(&[Wrong, Wrong, Wrong]));
    }

    #[test]
    fn who_can_do_it_reads_no_more_examples() {
        assert!(!example_due(&[Alone, Alone]));
    }

    #[test]
    fn every_exercise_has_an_example_of_its_kind_that_is_not_itself() {
        let (mut all, mut same_answer) = (0, 0);
        for concept in concepts_with_exercises() {
            for level in Level::ALL {
                for seed in 0..6 {
                    let item = generate(concept, level, seed).unwrap();
                    let example = example_for(&item)
                        .unwrap_or_else(|| panic!("{concept} {level:?} {seed}: no example"));
                    assert!(
                        example.prompt != item.prompt || example.choices != choices_of(&item.entry),
                        "{concept} {level:?} {seed}"
                    );
                    assert!(!example.steps.is_empty() && !example.answer.is_empty());
                    all += 1;
                    same_answer += u32::from(example.answer == answer_blocks(&item));
                }
            }
        }
        // The answer is the same only if a level has no other for that kind of question.
        assert!(same_answer * 50 < all, "{same_answer} of {all}");
    }
}
