//! `surefoot rehearse`: another program practises by our schedule, one JSON object a line.

use crate::out::CommandResult;
use serde::Deserialize;
use serde_json::json;
use std::io::{BufRead, Write};
use surefoot_catalogue::rating::{AnswerResult, Confidence, Outcome};
use surefoot_practice::estimate::Tuning;
use surefoot_practice::rehearsal::Rehearsal;
use surefoot_practice::simulate::plan::{PlannedConcept, YearPlan};

/// Arguments of `surefoot rehearse`.
#[derive(clap::Args)]
pub struct Args {}

/// Limits for students and concepts, so that a bad line cannot ask for all memory.
const MOST_STUDENTS: usize = 1000;
const MOST_CONCEPTS: usize = 1000;

#[derive(Deserialize)]
#[serde(tag = "type", rename_all = "snake_case")]
enum Line {
    Start {
        students: usize,
        concepts: usize,
        calendar: Vec<i32>,
        taught: Vec<usize>,
        ready: Vec<usize>,
        class_slot: Vec<usize>,
        rotation: usize,
        #[serde(default)]
        prerequisites: Vec<Vec<usize>>,
        minutes: f64,
    },
    Class {
        school_day: usize,
        calendar_day: i32,
        records: Vec<(usize, usize, u8, i8)>,
    },
    Choose {
        calendar_day: i32,
        students: Vec<usize>,
    },
    Result {
        calendar_day: i32,
        records: Vec<(usize, usize, u8, f64)>,
    },
    End,
}

struct Running {
    rehearsal: Rehearsal,
    students: usize,
    concepts: usize,
}

impl Running {
    fn check(&self, student: usize, concept: usize) -> Result<(), String> {
        if student >= self.students {
            return Err(format!("student {student}: there are {}", self.students));
        }
        if concept >= self.concepts {
            return Err(format!("concept {concept}: there are {}", self.concepts));
        }
        Ok(())
    }
}

/// Runs the command.
pub fn run(_args: &Args) -> CommandResult {
    let input = std::io::stdin().lock();
    let mut out = std::io::stdout().lock();
    let mut running = None;
    for (number, line) in input.lines().enumerate() {
        let line = line.map_err(|e| format!("cannot read: {e}"))?;
        if line.trim().is_empty() {
            continue;
        }
        let at = |words: String| format!("line {}: {words}", number + 1);
        let asked: Line = serde_json::from_str(&line).map_err(|e| at(e.to_string()))?;
        if matches!(asked, Line::End) {
            return Ok(());
        }
        if let Some(answer) = answer(&mut running, asked).map_err(at)? {
            writeln!(out, "{answer}")
                .and_then(|()| out.flush())
                .map_err(|e| format!("cannot write: {e}"))?;
        }
    }
    Ok(())
}

fn answer(running: &mut Option<Running>, asked: Line) -> Result<Option<serde_json::Value>, String> {
    if let Line::Start { .. } = asked {
        *running = Some(start(asked)?);
        return Ok(Some(json!({ "ok": true })));
    }
    let Some(running) = running.as_mut() else {
        return Err("a start line comes first".into());
    };
    match asked {
        Line::Start { .. } | Line::End => Ok(None),
        Line::Class {
            school_day,
            calendar_day,
            records,
        } => {
            for (student, concept, rating, marked) in records {
                running.check(student, concept)?;
                let confidence = match rating {
                    0 => None,
                    rating => Some(
                        Confidence::try_from(rating - 1)
                            .map_err(|_| format!("a rating is 0 to 4, not {rating}"))?,
                    ),
                };
                let outcome = match marked {
                    1 => Some(Outcome::Right),
                    0 => Some(Outcome::Wrong),
                    -1 => None,
                    other => return Err(format!("marked is 1, 0 or -1, not {other}")),
                };
                running.rehearsal.check_in(
                    student,
                    concept,
                    school_day,
                    calendar_day,
                    confidence,
                    outcome,
                );
            }
            Ok(None)
        }
        Line::Choose {
            calendar_day,
            students,
        } => {
            let mut concepts = Vec::with_capacity(students.len());
            for student in students {
                running.check(student, 0)?;
                let choice = running.rehearsal.choose(student, calendar_day);
                concepts.push(choice.and_then(|c| i64::try_from(c).ok()).unwrap_or(-1));
            }
            Ok(Some(json!({ "concepts": concepts })))
        }
        Line::Result {
            calendar_day,
            records,
        } => {
            for (student, concept, outcome, minutes) in records {
                running.check(student, concept)?;
                let result = match outcome {
                    0 => AnswerResult::Wrong,
                    1 => AnswerResult::WithHelp,
                    2 => AnswerResult::Alone,
                    other => return Err(format!("an outcome is 0, 1 or 2, not {other}")),
                };
                if !(minutes.is_finite() && minutes >= 0.0) {
                    return Err(format!("minutes must be 0 or more, not {minutes}"));
                }
                let rehearsal = &mut running.rehearsal;
                rehearsal.answer(student, concept, calendar_day, result, minutes);
            }
            Ok(None)
        }
    }
}

fn start(asked: Line) -> Result<Running, String> {
    let Line::Start {
        students,
        concepts,
        calendar,
        taught,
        ready,
        class_slot,
        rotation,
        mut prerequisites,
        minutes,
    } = asked
    else {
        return Err("no start line".into());
    };
    if students > MOST_STUDENTS || concepts > MOST_CONCEPTS || concepts == 0 {
        return Err(format!(
            "at most {MOST_STUDENTS} students and 1 to {MOST_CONCEPTS} concepts"
        ));
    }
    if prerequisites.is_empty() {
        prerequisites = vec![Vec::new(); concepts];
    }
    for (name, found) in [
        ("taught", taught.len()),
        ("ready", ready.len()),
        ("class_slot", class_slot.len()),
        ("prerequisites", prerequisites.len()),
    ] {
        if found != concepts {
            return Err(format!(
                "{name} has {found} entries for {concepts} concepts"
            ));
        }
    }
    if rotation == 0 || !minutes.is_finite() || minutes <= 0.0 {
        return Err("rotation and minutes must be above 0".into());
    }
    if !calendar.is_sorted_by(|a, b| a < b) {
        return Err("the calendar must rise".into());
    }
    if prerequisites.iter().flatten().any(|p| *p >= concepts) {
        return Err("a prerequisite is no concept".into());
    }
    let concept_lists = taught
        .into_iter()
        .zip(ready)
        .zip(class_slot)
        .zip(prerequisites);
    let plan = YearPlan {
        calendar,
        concepts: concept_lists
            .map(
                |(((taught, ready), rotation_day), prerequisites)| PlannedConcept {
                    taught,
                    ready,
                    rotation_day,
                    prerequisites,
                },
            )
            .collect(),
        rotation,
        minutes,
    };
    Ok(Running {
        rehearsal: Rehearsal::new(students, &plan, Tuning::USED),
        students,
        concepts,
    })
}
