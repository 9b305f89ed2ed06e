//! A student's evening: what is known of the student, and the plan.

use super::practice_views::{Ahead, Session};
use super::{Joined, StudentError};
use chrono::NaiveDate;
use surefoot_catalogue::rotation::Phase;
use surefoot_practice::workload::{EveningLength, MOST_ASSIGNED_EVENINGS, date_aimed_at};
use surefoot_practice::{ConceptFacts, Evening, Event, EventKind, StudentMemory};
use surefoot_record::{CountedDates, what_counts};
use surefoot_store::StudentStore;
use surefoot_store::student::PracticeAnswer;

/// How many concepts of the queue are shown.
const AHEAD_SHOWN: usize = 6;

/// Minutes of an evening in which the student asks for more.
const NO_END: f64 = f64::MAX;

/// Returns the answers on the dates that count.
pub(super) fn answers_on(
    store: &StudentStore,
    dates: CountedDates,
) -> Result<Vec<PracticeAnswer>, StudentError> {
    let mut answers = store.practice_answers()?;
    answers.retain(|answer| dates.contains(answer.date));
    Ok(answers)
}

/// Returns all that the queue needs of one student. Check-ins and answers that are dated
/// after `today` do not count yet.
pub(super) fn memory_of(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
) -> Result<StudentMemory, StudentError> {
    let facts = &joined.facts;
    let mut memory = StudentMemory::new(facts.rotation.days().iter().flatten().map(|concept| {
        ConceptFacts {
            key: concept.clone(),
            prerequisites: facts
                .concepts
                .get(concept)
                .map(|c| {
                    c.prerequisites
                        .iter()
                        .map(|p| p.as_str().to_owned())
                        .collect()
                })
                .unwrap_or_default(),
            open_from: facts.taught_from.get(concept).copied(),
            has_exercises: facts.has_exercises(concept),
            meetings: facts.rotation.meetings(&facts.year, concept),
        }
    }));
    let check_ins = store.check_ins()?;
    let mut events: Vec<Event> = what_counts(&check_ins, joined.counted_dates(today))
        .into_iter()
        .map(|counted| {
            let concept = counted.concept.as_str();
            let kind = EventKind::CheckIn {
                confidence: counted.confidence,
                outcome: counted.outcome,
                preview: facts.phase(concept, counted.date) == Phase::Preview,
            };
            Event {
                date: counted.date,
                sequence: counted.sequence,
                concept: concept.to_owned(),
                kind,
            }
        })
        .collect();
    let answers = answers_on(store, CountedDates::of_evenings(today))?;
    events.extend(answers.into_iter().map(|a| Event {
        date: a.date,
        sequence: a.sequence,
        concept: a.concept.as_str().to_owned(),
        kind: EventKind::Answer {
            level: a.level,
            result: a.result,
            minutes: f64::from(a.seconds) / 60.0,
        },
    }));
    events.sort_by_key(|event| (event.date, event.sequence));
    for event in &events {
        memory.apply(event);
    }
    Ok(memory)
}

/// Returns tonight's plan. An evening beyond those of the week has no minutes, so it holds
/// only assigned work that cannot wait. With `more` it has no end.
pub(super) fn evening_of(
    store: &StudentStore,
    joined: &Joined,
    memory: &StudentMemory,
    today: NaiveDate,
    more: bool,
) -> Result<Evening, StudentError> {
    let length = joined.evening_length();
    let (minutes, most_minutes, exercises) = if more {
        (NO_END, NO_END, None)
    } else {
        let (minutes, planned, exercises) = match length {
            EveningLength::Minutes(planned) => {
                (memory.minutes_tonight(planned, today), planned, None)
            }
            // An evening that ends by exercises ends by minutes too, so that slow exercises
            // keep nobody longer than the teacher allows.
            EveningLength::Exercises {
                count,
                most_minutes,
            } => (most_minutes, most_minutes, Some(count)),
        };
        let week_done = memory.evenings_before(length, today) >= joined.student.evenings;
        (
            if week_done { 0.0 } else { minutes },
            planned * MOST_ASSIGNED_EVENINGS,
            exercises,
        )
    };
    Ok(Evening {
        today,
        minutes,
        most_minutes,
        exercises,
        evenings_a_week: joined.student.evenings,
        focus: store.focus()?,
        assigned: joined.assignments.clone(),
        // What is practised should be known at the test, or at the year's end.
        goal: date_aimed_at(
            today,
            joined.pack.practice.test_on,
            joined.facts.year.last_day,
        ),
    })
}

pub(super) fn session(
    store: &StudentStore,
    joined: &Joined,
    memory: &StudentMemory,
    evening: &Evening,
) -> Result<Session, StudentError> {
    let today = evening.today;
    Ok(Session {
        finished: store
            .practice_answers()?
            .iter()
            .filter(|a| a.date == today)
            .count(),
        minutes_done: memory.minutes_on(today),
        minutes_planned: memory.minutes_tonight(f64::from(joined.student.minutes), today),
        exercises_planned: joined.student.exercises,
        ahead: memory
            .plan(evening, AHEAD_SHOWN)
            .into_iter()
            .map(|entry| Ahead {
                concept: joined.name(&entry.concept),
                reason: entry.reason,
            })
            .collect(),
    })
}
