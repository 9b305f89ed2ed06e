//! A catalogue as comma-separated text: a heading, then a concept a line.

use super::CatalogueReading;
use super::draft::{ConceptDraft, own_id};
use crate::table::{
    LineFault, LineRefused, Rows, columns, cut, fitted, heading, row_fault, text_in,
};
use crate::{Language, Strand, Text};

/// The columns that are not translated, and the plain names of those that are.
const COLUMNS: [&str; 8] = [
    "id", "code", "title", "i_can", "strand", "grade", "before", "codes",
];
const TRANSLATED: [&str; 2] = ["title", "i_can"];
const NEEDED: [&str; 4] = ["title", "i_can", "strand", "grade"];

/// A strand by its name in files; spaces do for hyphens.
fn strand_of(text: &str) -> Result<Strand, LineFault> {
    let wanted = text.to_lowercase().replace([' ', '_'], "-");
    if wanted.is_empty() {
        return Err(LineFault::Empty {
            column: "strand".into(),
        });
    }
    Strand::ALL
        .into_iter()
        .find(|strand| strand.as_str() == wanted)
        .ok_or_else(|| LineFault::UnknownStrand {
            text: cut(text, 40),
        })
}

fn parts(cell: &str) -> Vec<String> {
    cell.split('|')
        .map(str::trim)
        .filter(|part| !part.is_empty())
        .map(str::to_owned)
        .collect()
}

pub(super) fn read(bytes: &[u8], main: Language, reading: &mut CatalogueReading) {
    let mut rows = Rows::new(bytes);
    let names = match rows.next_row() {
        None => {
            reading
                .refused
                .push(LineRefused::line(1, LineFault::NotKnown));
            return;
        }
        Some(Err((line, fault))) => {
            reading
                .refused
                .push(LineRefused::line(line, row_fault(fault)));
            return;
        }
        Some(Ok(row)) => match heading(&row, &columns(&COLUMNS, &TRANSLATED), &NEEDED) {
            Ok(names) => names,
            Err(faults) => {
                reading.refused = faults;
                return;
            }
        },
    };
    while let Some(row) = rows.next_row() {
        let mut row = match row {
            Ok(row) => row,
            Err((line, fault)) => {
                reading
                    .refused
                    .push(LineRefused::line(line, row_fault(fault)));
                continue;
            }
        };
        let draft = fitted(&mut row, names.len()).and_then(|()| {
            let cell = |name: &str| {
                names
                    .iter()
                    .position(|n| n == name)
                    .and_then(|at| row.cells.get(at))
                    .map_or("", String::as_str)
            };
            draft_of(row.line, &cell, main)
        });
        match draft {
            Ok(draft) => reading.drafts.push(draft),
            Err(fault) => reading.refused.push(LineRefused::line(row.line, fault)),
        }
    }
}

fn draft_of<'a>(
    line: u32,
    cell: &dyn Fn(&str) -> &'a str,
    main: Language,
) -> Result<ConceptDraft, LineFault> {
    let grade = match cell("grade") {
        "" => {
            return Err(LineFault::Empty {
                column: "grade".into(),
            });
        }
        text => text
            .parse::<u8>()
            .ok()
            .filter(|grade| (1..=12).contains(grade))
            .ok_or_else(|| LineFault::BadGrade {
                text: cut(text, 40),
            })?,
    };
    // A text in no language is refused with the others, when concepts are made.
    let text = |name| text_in(cell, name, main).unwrap_or_else(|| Text::one(main, ""));
    let (id, code, title) = (cell("id"), cell("code"), text("title"));
    let named = [id, code, title.get(main)]
        .into_iter()
        .find(|text| !text.is_empty())
        .unwrap_or_default();
    let mut codes: Vec<String> = parts(code);
    for more in parts(cell("codes")) {
        if !codes.contains(&more) {
            codes.push(more);
        }
    }
    Ok(ConceptDraft {
        line,
        at: String::new(),
        key: named.to_owned(),
        id: own_id(named),
        title: title.clone(),
        i_can: text("i_can"),
        strand: Some(strand_of(cell("strand"))?),
        grade: Some(grade),
        before: parts(cell("before")),
        codes,
        under: String::new(),
        has_parts: false,
    })
}
