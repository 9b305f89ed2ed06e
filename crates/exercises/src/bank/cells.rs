//! Makes an own exercise of the cells of a line.

use super::key::{OwnKind, key_text, number_key, places_key};
use super::own::{OwnExercise, OwnForm, OwnWrong};
use crate::{Answer, Level};
use sha2::{Digest, Sha256};
use surefoot_catalogue::table::{Line, LineFault, column_in, cut};
use surefoot_catalogue::{ConceptId, Language, Text};

/// Separates choices, steps or several answers in one cell.
const PART: char = '|';

/// The parts of a cell, each in the languages in which the line has them.
fn texts(line: &Line, column: &str) -> Result<Vec<Text>, LineFault> {
    let mut texts: Vec<Text> = Vec::new();
    // The main language is first, because the others translate it.
    let others = Language::all().iter().copied();
    let others = others.filter(|other| *other != line.main());
    for language in std::iter::once(line.main()).chain(others) {
        let parts = parts_of(line.get_in(column, language));
        if texts.is_empty() {
            texts = parts
                .into_iter()
                .map(|part| Text::one(language, part))
                .collect();
        } else if parts.len() == texts.len() {
            let pairs = texts.into_iter().zip(parts);
            texts = pairs
                .map(|(text, part)| text.with(language, part))
                .collect();
        } else if !parts.is_empty() {
            return Err(LineFault::TranslationParts {
                column: column_in(column, language),
            });
        }
    }
    Ok(texts)
}

fn parts_of(cell: &str) -> Vec<String> {
    if cell.is_empty() {
        return Vec::new();
    }
    cell.split(PART)
        .map(|part| part.trim().to_owned())
        .collect()
}

fn level_of(text: &str) -> Result<Level, LineFault> {
    match text {
        "" => Ok(Level::Expected),
        other => other
            .parse::<u8>()
            .ok()
            .and_then(|n| Level::try_from(n).ok())
            .ok_or_else(|| LineFault::BadLevel {
                text: cut(other, 40),
            }),
    }
}

/// Puts things into the order in which they are shown first. It is made by a hash, so that
/// it is the same on every device, and it is never the order of the answer.
pub(super) fn mixed(mut things: Vec<Text>, main: Language) -> Vec<Text> {
    let right = things.clone();
    things.sort_by_cached_key(|thing| Sha256::digest(thing.get(main).as_bytes()).to_vec());
    if things == right {
        things.rotate_left(1);
    }
    things
}

/// Reads the key of a cell.
pub(super) fn key_of(
    kind: OwnKind,
    cell: &str,
    choices: &[Text],
    main: Language,
) -> Result<Answer, LineFault> {
    if !kind.has_choices() {
        return number_key(kind, cell);
    }
    let named = match kind {
        OwnKind::OneChoice => vec![cell.trim().to_owned()],
        _ => parts_of(cell),
    };
    let places = named
        .iter()
        .map(|wanted| {
            choices
                .iter()
                .position(|choice| choice.get(main) == wanted)
                .and_then(|place| u32::try_from(place).ok())
                .ok_or_else(|| LineFault::NotAChoice {
                    text: cut(wanted, 80),
                })
        })
        .collect::<Result<Vec<_>, _>>()?;
    places_key(kind, &places, choices.len()).ok_or_else(|| LineFault::BadAnswer {
        text: cut(cell, 80),
        kind: kind.as_str().into(),
    })
}

/// Makes the exercise of a line and checks it.
pub(super) fn exercise_of(line: &Line, concept: ConceptId) -> Result<OwnExercise, LineFault> {
    let kind = OwnKind::named(line.get("kind")).ok_or_else(|| match line.get("kind") {
        "" => LineFault::empty("kind"),
        other => LineFault::UnknownKind {
            text: cut(other, 40),
        },
    })?;
    let question = line
        .text("question")
        .ok_or_else(|| LineFault::empty("question"))?;
    let answer_cell = line.get("answer");
    if answer_cell.is_empty() {
        return Err(LineFault::empty("answer"));
    }
    let mut choices = texts(line, "choices")?;
    if kind == OwnKind::Order && choices.is_empty() {
        choices = mixed(
            parts_of(answer_cell)
                .into_iter()
                .map(|part| Text::one(line.main(), part))
                .collect(),
            line.main(),
        );
    }
    if kind.has_choices() && choices.len() < 2 {
        return Err(LineFault::TooFewChoices);
    }
    let form = OwnForm::named(line.get("form")).ok_or_else(|| LineFault::BadForm {
        text: cut(line.get("form"), 40),
    })?;
    let hints = ["hint", "hint_2", "hint_3"]
        .into_iter()
        .filter_map(|name| line.text(name))
        .collect();
    let mut wrong = Vec::new();
    for number in 1..=super::MOST_WRONG {
        let (answer, say) = (format!("wrong_{number}"), format!("feedback_{number}"));
        match (line.get(&answer), line.text(&say)) {
            ("", None) => {}
            ("", Some(_)) => return Err(LineFault::Alone { column: say }),
            (_, None) => return Err(LineFault::Alone { column: answer }),
            (cell, Some(say)) => wrong.push(OwnWrong {
                answer: key_text(&key_of(kind, cell, &choices, line.main())?),
                say,
            }),
        }
    }
    let own = OwnExercise {
        concept,
        level: level_of(line.get("level"))?,
        kind,
        question,
        answer: key_text(&key_of(kind, answer_cell, &choices, line.main())?),
        choices,
        form,
        unit: line.text("unit"),
        hints,
        steps: texts(line, "steps")?,
        wrong,
    };
    own.check()?;
    Ok(own)
}
