//! Practice at home: one exercise after another, each with its reason.

use super::evening::{answers_on, evening_of, memory_of, session};
use super::noticed::Seen;
use super::open_exercise::{can_be_made, make, open_row};
use super::practice_summary::summary_of;
use super::practice_views::{Feedback, OpenExercise, PracticeStep};
use super::worked_first::{example_due, example_for};
use super::{Joined, StudentError, draft, own_turn};
use chrono::NaiveDate;
use surefoot_catalogue::ConceptId;
use surefoot_catalogue::rating::{AnswerResult, Confidence};
use surefoot_exercises::bank::OWN_VERSION;
use surefoot_exercises::{Block, Item, Response, Say};
use surefoot_practice::{Evening, StudentMemory};
use surefoot_record::{CountedDates, MisconceptionCode, Reason};
use surefoot_store::StudentStore;
use surefoot_store::student::{OpenRow, PracticeAnswer};

/// The most seconds counted for one exercise, because a tablet left lying is not practice.
pub(super) const MOST_SECONDS: u32 = 600;

/// Returns the results of the exercises of a concept up to `today`, earliest first.
fn results_of(
    store: &StudentStore,
    concept: &str,
    today: NaiveDate,
) -> Result<Vec<AnswerResult>, StudentError> {
    Ok(answers_on(store, CountedDates::of_evenings(today))?
        .into_iter()
        .filter(|a| a.concept.as_str() == concept)
        .map(|a| a.result)
        .collect())
}

fn show(
    store: &StudentStore,
    joined: &Joined,
    memory: &StudentMemory,
    evening: &Evening,
    row: &OpenRow,
) -> Result<OpenExercise, StudentError> {
    let item = make(joined, row)?;
    let own = item.generator_version == OWN_VERSION;
    let worked_first = if !own
        && row.tries == 0
        && example_due(&results_of(store, row.concept.as_str(), evening.today)?)
    {
        example_for(&item)
    } else {
        None
    };
    Ok(OpenExercise {
        exercise: row.exercise.clone(),
        concept: joined.name(row.concept.as_str()),
        reason: row.reason.clone(),
        level: row.level,
        hints_taken: item
            .hints
            .iter()
            .take(row.hints as usize)
            .cloned()
            .collect(),
        item: item.view(),
        confidence: row.confidence,
        draft: row.draft.as_deref().and_then(draft::read),
        worked_first,
        session: session(store, joined, memory, evening)?,
    })
}

/// Returns what to practise now: the open exercise, or a new one of the concept `asked`, or,
/// if that is `None`, the next one of the queue. An open exercise of another concept than
/// `asked` is replaced. With `more` the evening goes on beyond its length.
///
/// A new exercise is generated from `seed`, which must be below 2^63.
///
/// # Errors
/// [`StudentError::NoSuchConcept`] if the class has no exercises of the concept `asked`.
pub fn practice(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
    asked: Option<&str>,
    more: bool,
    seed: u64,
) -> Result<PracticeStep, StudentError> {
    let memory = memory_of(store, joined, today)?;
    let evening = evening_of(store, joined, &memory, today, more)?;
    if let Some(row) = store.open_exercise()? {
        let same = asked.is_none_or(|a| a == row.concept.as_str());
        if same && can_be_made(joined, &row) {
            return show(store, joined, &memory, &evening, &row)
                .map(|open| PracticeStep::Exercise(Box::new(open)));
        }
    }
    let (concept, level, reason) = match asked {
        Some(concept) => {
            if joined.facts.rotation.day_of(&concept.to_owned()).is_none()
                || !joined.facts.has_exercises(concept)
            {
                return Err(StudentError::NoSuchConcept);
            }
            (
                concept.to_owned(),
                memory.level_for(concept),
                Reason::Chosen,
            )
        }
        None => match memory.next(&evening) {
            Some(entry) => (entry.concept, entry.level, entry.reason),
            None => {
                let summary = summary_of(store, joined, today, &memory)?;
                return Ok(if summary.finished == 0 && !summary.more {
                    PracticeStep::NothingYet
                } else {
                    PracticeStep::Done(summary)
                });
            }
        },
    };
    let own = own_turn::turn(
        &joined.facts,
        &concept,
        level,
        &store.practice_answers()?,
        today,
    );
    let sequence = store.next_sequence()?;
    let row = OpenRow {
        exercise: match own {
            Some(own) => own_turn::exercise_name(sequence, own.id()),
            None => format!("{sequence}-{seed:x}"),
        },
        opened_on: today,
        concept: ConceptId::new(concept).map_err(|_| StudentError::NoSuchConcept)?,
        level: own.map_or(level, |own| own.level).into(),
        seed: own.map_or(seed, |own| own.id().seed()),
        reason,
        asked: asked.is_some(),
        confidence: None,
        hints: 0,
        tries: 0,
        seconds: 0,
        misconception: None,
        response: None,
        draft: None,
    };
    store.put_open_exercise(&row)?;
    show(store, joined, &memory, &evening, &row).map(|open| PracticeStep::Exercise(Box::new(open)))
}

fn shown(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
    row: &OpenRow,
) -> Result<OpenExercise, StudentError> {
    let memory = memory_of(store, joined, today)?;
    let evening = evening_of(store, joined, &memory, today, false)?;
    show(store, joined, &memory, &evening, row)
}

/// Notes the student's confidence in the open exercise. After a hint or an answer it is not
/// changed any more.
///
/// # Errors
/// [`StudentError::NoSuchExercise`] if this exercise is not open.
pub fn say_confidence(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
    exercise: &str,
    confidence: Confidence,
) -> Result<OpenExercise, StudentError> {
    let mut row = open_row(store, exercise)?;
    if row.tries == 0 && row.hints == 0 {
        row.confidence = Some(confidence);
        store.put_open_exercise(&row)?;
    }
    shown(store, joined, today, &row)
}

/// Shows the next hint, if there is one.
///
/// # Errors
/// As [`say_confidence`].
pub fn hint(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
    exercise: &str,
) -> Result<OpenExercise, StudentError> {
    let mut row = open_row(store, exercise)?;
    let item = make(joined, &row)?;
    if (row.hints as usize) < item.hints.len() {
        row.hints += 1;
        store.put_open_exercise(&row)?;
    }
    shown(store, joined, today, &row)
}

/// Marks an answer. After a first wrong answer the student has one more try. The answer is
/// marked and stored with a decimal point, whichever sign the student typed.
///
/// # Errors
/// [`StudentError::NoSuchExercise`] if this exercise is not open. After
/// [`StudentError::UnreadableAnswer`] nothing has changed, so the student can answer again.
pub fn answer(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
    exercise: &str,
    response: &Response,
    seconds: u32,
) -> Result<Feedback, StudentError> {
    let mut row = open_row(store, exercise)?;
    let item = make(joined, &row)?;
    let response = &response.clone().with_point(joined.locale().numbers);
    let marked = surefoot_exercises::mark(&item, response)
        .map_err(|e| StudentError::UnreadableAnswer(e.to_string()))?;
    row.seconds = row.seconds.saturating_add(seconds).min(MOST_SECONDS);
    let mut says: Vec<Block> = Vec::new();
    if let Some(noticed) = &marked.noticed {
        let exercise = (row.level, row.seed);
        let earlier = || -> Result<bool, StudentError> {
            Ok(Seen::of(&store.practice_answers()?).in_another(
                row.concept.as_str(),
                &noticed.code,
                exercise,
            ))
        };
        let own = item.generator_version == OWN_VERSION;
        if own || !item.is_tapped() || earlier()? {
            says.push(noticed.say.clone().into());
        }
        // An own exercise names no misconceptions that could be counted.
        if !own {
            let code = MisconceptionCode::new(noticed.code.clone())
                .map_err(|e| StudentError::Fault(e.to_string()))?;
            row.misconception.get_or_insert(code);
        }
    }
    if let Some(note) = marked.form_note {
        says.push(Say::new(note.message_id()).into());
    }
    let written =
        serde_json::to_string(response).map_err(|e| StudentError::Fault(e.to_string()))?;
    let first_response = row.response.get_or_insert(written.clone()).clone();
    // A second press with the same wrong answer is no second try.
    let repeated = row.tries > 0 && !marked.right && first_response == written;
    if repeated {
        says = vec![Say::new("answer-given-before").into()];
    }
    let result = match (marked.right, row.tries, row.hints) {
        _ if repeated => None,
        (true, 0, 0) => Some(AnswerResult::Alone),
        (true, _, _) => Some(AnswerResult::WithHelp),
        (false, 0, _) => None,
        (false, _, _) => Some(AnswerResult::Wrong),
    };
    match result {
        Some(result) => finish(
            store,
            joined,
            today,
            &row,
            &item,
            result,
            first_response,
            says,
            marked.right,
        ),
        None => {
            row.tries = 1;
            store.put_open_exercise(&row)?;
            let open = shown(store, joined, today, &row)?;
            Ok(Feedback {
                right: false,
                finished: false,
                says,
                answer: None,
                steps: Vec::new(),
                session: open.session,
            })
        }
    }
}

/// Ends the exercise with its worked steps instead of an answer. It counts as wrong.
///
/// # Errors
/// As [`say_confidence`].
pub fn show_steps(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
    exercise: &str,
) -> Result<Feedback, StudentError> {
    let row = open_row(store, exercise)?;
    let item = make(joined, &row)?;
    let response = row.response.clone().unwrap_or_else(|| "null".to_owned());
    finish(
        store,
        joined,
        today,
        &row,
        &item,
        AnswerResult::Wrong,
        response,
        Vec::new(),
        false,
    )
}

#[expect(
    clippy::too_many_arguments,
    reason = "all that a finished exercise needs"
)]
fn finish(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
    row: &OpenRow,
    item: &Item,
    result: AnswerResult,
    response: String,
    says: Vec<Block>,
    right: bool,
) -> Result<Feedback, StudentError> {
    store.transaction(|| {
        store.add_practice_answer(&PracticeAnswer {
            device: joined.student.device.clone(),
            sequence: store.next_sequence()?,
            date: today,
            concept: row.concept.clone(),
            level: row.level,
            generator_version: item.generator_version,
            seed: row.seed,
            confidence: row.confidence,
            result,
            misconception: row.misconception.clone(),
            seconds: row.seconds,
            response,
        })?;
        store.close_exercise()
    })?;
    let memory = memory_of(store, joined, today)?;
    let evening = evening_of(store, joined, &memory, today, false)?;
    let worked = item.worked();
    Ok(Feedback {
        right,
        finished: true,
        says,
        answer: Some(worked.answer),
        steps: worked.steps,
        session: session(store, joined, &memory, &evening)?,
    })
}
