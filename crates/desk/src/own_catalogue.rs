//! The teacher's own concepts: those of a file that the teacher picked.

use super::own::with_built_in;
use super::own_views::{OwnConceptLine, OwnFile, OwnLineTaken};
use super::{OpenClass, TeacherError, open_class};
use chrono::NaiveDate;
use surefoot_catalogue::catalogue_file::{
    CatalogueReading, ConceptDraft, Held, concepts_of, read_catalogue,
};
use surefoot_catalogue::table::LineRefused;
use surefoot_catalogue::{Concept, Language, missing_in};
use surefoot_record::Class;
use surefoot_store::DeskStore;
use surefoot_store::desk::{OwnConceptRow, OwnKindOfImport};

fn faulty(error: impl std::fmt::Display) -> TeacherError {
    TeacherError::Faulty(error.to_string())
}

/// The own concepts of a class, by id.
pub(super) fn own_concepts(desk: &DeskStore, class: &str) -> Result<Vec<Concept>, TeacherError> {
    desk.own_concepts(class)?
        .iter()
        .map(|row| serde_json::from_str(&row.content).map_err(faulty))
        .collect()
}

/// The own concepts of a class in a line each.
pub(super) fn own_concept_lines(
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

/// What a file could bring; nothing is stored. Drafts whose id the class has already
/// are refused here, so that nobody picks them in vain.
///
/// # Errors
/// [`TeacherError::NotFound`], or the store's.
pub fn read_concepts(
    desk: &DeskStore,
    class: &str,
    file: &str,
    bytes: &[u8],
    main: Language,
) -> Result<CatalogueReading, TeacherError> {
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

/// Makes concepts of the picked drafts. All of it is on disk afterwards, or nothing.
/// `refused` is what the file's reading refused, for the account.
///
/// # Errors
/// [`TeacherError::NotFound`], [`TeacherError::Invalid`] without a draft, or the store's.
pub fn import_concepts(
    desk: &DeskStore,
    class: &str,
    file: &str,
    picked: &[ConceptDraft],
    refused: &[LineRefused],
    main: Language,
    today: NaiveDate,
) -> Result<(), TeacherError> {
    let class = open_class(desk, class)?;
    let id = &class.row.id;
    if picked.is_empty() {
        return Err(TeacherError::invalid("concepts", "too_few"));
    }
    let all = with_built_in(&class.own_concepts)?;
    let own = class.own_concepts.len();
    let (taken, more) = concepts_of(picked, &Held { all: &all, own });
    let account = OwnFile {
        file: file.chars().filter(|c| !c.is_control()).take(120).collect(),
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
    let account = serde_json::to_string(&[account]).map_err(faulty)?;
    desk.together(|| -> Result<(), TeacherError> {
        let number = desk.add_own_import(id, OwnKindOfImport::Concepts, today, &account)?;
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
