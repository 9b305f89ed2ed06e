//! A catalogue as comma-separated text: a heading, then one concept in each line.

use super::draft::{ConceptDraft, own_id};
use super::reading::CatalogueReading;
use crate::table::{Line, LineFault, LineRefused, Table, cut};
use crate::{GRADES, Language, Strand, Text};

const COLUMNS: [&str; 8] = [
    "id", "code", "title", "i_can", "strand", "grade", "before", "codes",
];
const TRANSLATED: [&str; 2] = ["title", "i_can"];
const NEEDED: [&str; 4] = ["title", "i_can", "strand", "grade"];

/// Finds a strand by its name in files. Also reads spaces and underscores as hyphens.
fn strand_of(text: &str) -> Result<Strand, LineFault> {
    if text.is_empty() {
        return Err(LineFault::empty("strand"));
    }
    let name = text.to_lowercase().replace([' ', '_'], "-");
    Strand::named(&name).ok_or_else(|| LineFault::UnknownStrand {
        text: cut(text, 40),
    })
}

fn grade_of(text: &str) -> Result<u8, LineFault> {
    if text.is_empty() {
        return Err(LineFault::empty("grade"));
    }
    text.parse()
        .ok()
        .filter(|grade| GRADES.contains(grade))
        .ok_or_else(|| LineFault::BadGrade {
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
    let mut table = match Table::read(bytes, &COLUMNS, &TRANSLATED, &NEEDED) {
        Ok(table) => table,
        Err(faults) => {
            reading.refused = faults;
            return;
        }
    };
    while let Some(line) = table.next_line(main) {
        let draft = line
            .and_then(|line| draft_of(&line).map_err(|fault| LineRefused::line(line.line, fault)));
        match draft {
            Ok(draft) => reading.drafts.push(draft),
            Err(refused) => reading.refused.push(refused),
        }
    }
}

fn draft_of(line: &Line) -> Result<ConceptDraft, LineFault> {
    let grade = grade_of(line.get("grade"))?;
    // An empty text is refused when concepts are made of the drafts.
    let text = |column| {
        let empty = || Text::one(line.main(), "");
        line.text(column).unwrap_or_else(empty)
    };
    let (id, code, title) = (line.get("id"), line.get("code"), text("title"));
    let named = [id, code, title.get(line.main())]
        .into_iter()
        .find(|text| !text.is_empty())
        .unwrap_or_default();
    let mut codes: Vec<String> = parts(code);
    for more in parts(line.get("codes")) {
        if !codes.contains(&more) {
            codes.push(more);
        }
    }
    Ok(ConceptDraft {
        line: line.line,
        at: String::new(),
        key: named.to_owned(),
        id: own_id(named),
        title: title.clone(),
        i_can: text("i_can"),
        strand: Some(strand_of(line.get("strand"))?),
        grade: Some(grade),
        before: parts(line.get("before")),
        codes,
        under: String::new(),
    })
}
