//! Imports own concepts.

use super::views::{OwnConceptLine, OwnFile, OwnLineTaken};
use crate::class::concepts::with_built_in;
use crate::class::{OpenClass, open_class};
use crate::error::{DeskError, Field, Rule, faulty};
use chrono::NaiveDate;
use surefoot_catalogue::catalogue_file::{
    CatalogueReading, ConceptDraft, Held, concepts_of, read_catalogue,
};
use surefoot_catalogue::table::LineRefused;
use surefoot_catalogue::{Language, missing_in, steers};
use surefoot_record::Class;
use surefoot_store::DeskStore;
use surefoot_store::desk::{OwnConceptRow, OwnKindOfImport};

/// The own concepts of a class, one line each.
pub(crate) fn own_concept_lines(
    class: &OpenClass,
    all: &Class,
    language: Language,
) -> Vec<OwnConceptLine> {
    class
        .own_concepts
        .iter()
        .map(|concept| {
            let id = concept.id.as_str();
            OwnConceptLine {
                concept: all.name(id, language),
                grade: concept.grade,
                codes: concept.alignments.clone(),
                before: concept
                    .prerequisites
                    .iter()
                    .map(|before| all.name(before.as_str(), language).title)
                    .collect(),
                in_rotation: class.facts.concepts.contains_key(id),
                exercises: all.own_of(id).len(),
            }
        })
        .collect()
}

/// Reads the concepts of a file, and stores nothing. Refuses drafts with an id that the class has, so
/// that the teacher does not pick them.
pub fn read_concepts(
    desk: &DeskStore,
    class: &str,
    file: &str,
    bytes: &[u8],
    main: Language,
) -> Result<CatalogueReading, DeskError> {
    let class = open_class(desk, class)?;
    let all = with_built_in(&class.own_concepts)?;
    let mut reading = read_catalogue(file, bytes, main);
    let (drafts, there): (Vec<_>, Vec<_>) = reading
        .drafts
        .into_iter()
        .partition(|draft| !all.contains_key(&draft.id));
    reading.drafts = drafts;
    reading
        .refused
        .extend(there.into_iter().map(|draft| LineRefused {
            line: draft.line,
            at: draft.at,
            fault: surefoot_catalogue::table::LineFault::ConceptThere { text: draft.id },
        }));
    Ok(reading)
}

/// Makes concepts of the picked drafts, all or none. `refused` are the lines that [`read_concepts`]
/// refused, for the import report.
///
/// # Errors
/// Returns [`DeskError::Invalid`] without a draft.
pub fn import_concepts(
    desk: &DeskStore,
    class: &str,
    file: &str,
    picked: &[ConceptDraft],
    refused: &[LineRefused],
    main: Language,
    today: NaiveDate,
) -> Result<(), DeskError> {
    let class = open_class(desk, class)?;
    let id = &class.row.id;
    if picked.is_empty() {
        return Err(DeskError::invalid(Field::Concepts, Rule::TooFew));
    }
    let all = with_built_in(&class.own_concepts)?;
    let own = class.own_concepts.len();
    let (taken, more) = concepts_of(picked, &Held { all: &all, own });
    let report = OwnFile {
        file: file.chars().filter(|c| !steers(*c)).take(120).collect(),
        taken: taken
            .iter()
            .map(|one| OwnLineTaken {
                line: picked.get(one.place).map_or(0, |draft| draft.line),
                id: one.concept.id.as_str().to_owned(),
                words: one.concept.title.get(main).to_owned(),
                missing_in: missing_in([&one.concept.title, &one.concept.i_can]),
                left_out: Vec::new(),
            })
            .collect(),
        refused: refused.iter().cloned().chain(more).collect(),
    };
    let report = serde_json::to_string(&[report]).map_err(faulty)?;
    desk.transaction(|| -> Result<(), DeskError> {
        let number = desk.add_own_import(id, OwnKindOfImport::Concepts, today, &report)?;
        for one in &taken {
            desk.add_own_concept(
                id,
                &OwnConceptRow {
                    id: one.concept.id.as_str().to_owned(),
                    import: number,
                    content: serde_json::to_string(&one.concept).map_err(faulty)?,
                },
            )?;
        }
        Ok(())
    })
}
