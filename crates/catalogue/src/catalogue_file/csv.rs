//! A catalogue as comma-separated text: a heading, then a concept a line.

use super::CatalogueReading;
use super::draft::{ConceptDraft, own_id};
use crate::Strand;
use crate::table::{LineFault, LineRefused, Rows, cut, fitted, heading, row_fault};

const COLUMNS: [&str; 10] = [
    "id", "code", "title", "title_es", "i_can", "i_can_es", "strand", "grade", "before", "codes",
];
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

pub(super) fn read(bytes: &[u8], reading: &mut CatalogueReading) {
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
        Some(Ok(row)) => match heading(&row, &COLUMNS, &NEEDED) {
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
            draft_of(row.line, &cell)
        });
        match draft {
            Ok(draft) => reading.drafts.push(draft),
            Err(fault) => reading.refused.push(LineRefused::line(row.line, fault)),
        }
    }
}

fn draft_of<'a>(line: u32, cell: &dyn Fn(&str) -> &'a str) -> Result<ConceptDraft, LineFault> {
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
    let (id, code, title) = (cell("id"), cell("code"), cell("title"));
    let named = [id, code, title]
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
        title: title.to_owned(),
        title_es: cell("title_es").to_owned(),
        i_can: cell("i_can").to_owned(),
        i_can_es: cell("i_can_es").to_owned(),
        strand: Some(strand_of(cell("strand"))?),
        grade: Some(grade),
        before: parts(cell("before")),
        codes,
        under: String::new(),
        has_parts: false,
    })
}
