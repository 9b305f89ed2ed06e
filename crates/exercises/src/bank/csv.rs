//! A question bank as comma-separated text: a heading, then an exercise a line.

use super::cells::{Cells, exercise_of};
use super::read::{ConceptFound, Draft, Drafts};
use surefoot_catalogue::ConceptId;
use surefoot_catalogue::table::{LineFault, Rows, cut, fitted, heading, row_fault};

/// The columns, as their headings are read.
pub const COLUMNS: [&str; 31] = [
    "concept",
    "kind",
    "level",
    "question",
    "question_es",
    "choices",
    "choices_es",
    "answer",
    "form",
    "unit",
    "unit_es",
    "hint",
    "hint_es",
    "hint_2",
    "hint_2_es",
    "hint_3",
    "hint_3_es",
    "steps",
    "steps_es",
    "wrong_1",
    "feedback_1",
    "feedback_1_es",
    "wrong_2",
    "feedback_2",
    "feedback_2_es",
    "wrong_3",
    "feedback_3",
    "feedback_3_es",
    "wrong_4",
    "feedback_4",
    "feedback_4_es",
];

const NEEDED: [&str; 3] = ["kind", "question", "answer"];

/// Reads the table.
pub(super) fn read_csv(
    bytes: &[u8],
    find: &dyn Fn(&str) -> ConceptFound,
    chosen: Option<&ConceptId>,
) -> Drafts {
    let mut drafts = Drafts::default();
    let mut rows = Rows::new(bytes);
    let names = match rows.next_row() {
        None => {
            drafts.refuse(1, LineFault::NotKnown);
            return drafts;
        }
        Some(Err((line, fault))) => {
            drafts.refuse(line, row_fault(fault));
            return drafts;
        }
        Some(Ok(row)) => match heading(&row, &COLUMNS, &NEEDED) {
            Ok(names) => names,
            Err(faults) => {
                drafts.refused = faults;
                return drafts;
            }
        },
    };
    if chosen.is_none() && !names.iter().any(|name| name == "concept") {
        drafts.refuse(
            1,
            LineFault::MissingColumn {
                column: "concept".into(),
            },
        );
        return drafts;
    }
    while let Some(row) = rows.next_row() {
        let mut row = match row {
            Ok(row) => row,
            Err((line, fault)) => {
                drafts.refuse(line, row_fault(fault));
                continue;
            }
        };
        let read = fitted(&mut row, names.len()).and_then(|()| {
            let line = Cells {
                names: &names,
                cells: &row.cells,
            };
            let concept = concept_of(line.get("concept"), find, chosen)?;
            exercise_of(&line, concept)
        });
        match read {
            Ok(own) => drafts.taken.push(Draft {
                line: row.line,
                own,
                left_out: Vec::new(),
            }),
            Err(fault) => drafts.refuse(row.line, fault),
        }
    }
    drafts
}

/// The concept of a line: the one it names, or the one chosen for the import.
pub(super) fn concept_of(
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
