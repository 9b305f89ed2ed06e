//! A question bank as comma-separated text: a heading, then one exercise in each line.

use super::cells::exercise_of;
use super::reading::{ConceptFound, FileLines, LineTaken};
use surefoot_catalogue::table::{LineFault, Table, cut};
use surefoot_catalogue::{ConceptId, Language};

/// The columns without the tag of a language.
const COLUMNS: [&str; 20] = [
    "concept",
    "kind",
    "level",
    "question",
    "choices",
    "answer",
    "form",
    "unit",
    "hint",
    "hint_2",
    "hint_3",
    "steps",
    "wrong_1",
    "feedback_1",
    "wrong_2",
    "feedback_2",
    "wrong_3",
    "feedback_3",
    "wrong_4",
    "feedback_4",
];

/// Those that also have a column for each language.
const TRANSLATED: [&str; 11] = [
    "question",
    "choices",
    "unit",
    "hint",
    "hint_2",
    "hint_3",
    "steps",
    "feedback_1",
    "feedback_2",
    "feedback_3",
    "feedback_4",
];

const NEEDED: [&str; 3] = ["kind", "question", "answer"];

/// Reads the table. `chosen` is the concept for lines that name no concept.
pub(super) fn read_csv(
    bytes: &[u8],
    find: &dyn Fn(&str) -> ConceptFound,
    chosen: Option<&ConceptId>,
    main: Language,
) -> FileLines {
    let mut lines = FileLines::default();
    let mut table = match Table::read(bytes, &COLUMNS, &TRANSLATED, &NEEDED) {
        Ok(table) => table,
        Err(refused) => {
            lines.refused = refused;
            return lines;
        }
    };
    if chosen.is_none() && !table.has("concept") {
        let column = "concept".into();
        lines.refuse(1, LineFault::MissingColumn { column });
        return lines;
    }
    while let Some(line) = table.next_line(main) {
        let line = match line {
            Ok(line) => line,
            Err(refused) => {
                lines.refused.push(refused);
                continue;
            }
        };
        let concept = concept_of(line.get("concept"), find, chosen);
        match concept.and_then(|concept| exercise_of(&line, concept)) {
            Ok(own) => lines.taken.push(LineTaken {
                line: line.line,
                own,
                left_out: Vec::new(),
            }),
            Err(fault) => lines.refuse(line.line, fault),
        }
    }
    lines
}

/// Finds the concept that a line names. If it names none, it is the one chosen for the
/// import.
fn concept_of(
    text: &str,
    find: &dyn Fn(&str) -> ConceptFound,
    chosen: Option<&ConceptId>,
) -> Result<ConceptId, LineFault> {
    if text.is_empty() {
        return chosen.cloned().ok_or_else(|| LineFault::empty("concept"));
    }
    match find(text) {
        ConceptFound::One(id) => Ok(id),
        ConceptFound::None => Err(LineFault::UnknownConcept {
            text: cut(text, 80),
        }),
        ConceptFound::Several => Err(LineFault::TwoConcepts {
            text: cut(text, 80),
        }),
    }
}
