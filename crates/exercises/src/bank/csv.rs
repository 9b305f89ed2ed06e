//! A question bank as comma-separated text: a heading, then an exercise a line.

use super::cells::{Cells, exercise_of};
use super::read::{ConceptFound, Draft, Drafts};
use surefoot_catalogue::table::{LineFault, Rows, columns, cut, fitted, heading, row_fault};
use surefoot_catalogue::{ConceptId, Language};

/// The columns in one language, as their headings are read.
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

/// Reads the table.
pub(super) fn read_csv(
    bytes: &[u8],
    find: &dyn Fn(&str) -> ConceptFound,
    chosen: Option<&ConceptId>,
    main: Language,
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
        Some(Ok(row)) => match heading(&row, &columns(&COLUMNS, &TRANSLATED), &NEEDED) {
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
                main,
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
