//! Reading a catalogue and checking it.

use super::concept::{Concept, ConceptId, Language, Strand, Text2};
use super::error::{CatalogueError, CatalogueFault};
use serde::Deserialize;
use std::collections::BTreeMap;
use std::sync::OnceLock;
use toml::Spanned;

/// Longest title that fits a tile, in characters.
const TITLE_LIMIT_CHARS: usize = 40;
/// Longest "I can" statement that fits two lines of a student screen, in characters.
const I_CAN_LIMIT_CHARS: usize = 90;

const BUILT_IN: [(&str, &str); 4] = [
    (
        "grade-3.toml",
        include_str!("../../../shared/catalogue/grade-3.toml"),
    ),
    (
        "grade-4.toml",
        include_str!("../../../shared/catalogue/grade-4.toml"),
    ),
    (
        "grade-5.toml",
        include_str!("../../../shared/catalogue/grade-5.toml"),
    ),
    (
        "grade-6.toml",
        include_str!("../../../shared/catalogue/grade-6.toml"),
    ),
];

/// Checked concepts: unique ids, known prerequisites, no circle, both languages.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Catalogue {
    concepts: Vec<Concept>,
    place: BTreeMap<ConceptId, usize>,
    teaching_order: Vec<usize>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct FileShape {
    #[serde(default)]
    concept: Vec<Spanned<ConceptShape>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct ConceptShape {
    id: Spanned<String>,
    strand: Spanned<String>,
    grade: Spanned<i64>,
    #[serde(default)]
    prerequisites: Vec<Spanned<String>>,
    #[serde(default)]
    alignments: Vec<String>,
    en: Option<WordsShape>,
    es: Option<WordsShape>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct WordsShape {
    title: Spanned<String>,
    i_can: Spanned<String>,
}

/// Where a concept and its prerequisites stand.
struct Place {
    file: usize,
    id_line: usize,
    prerequisite_lines: Vec<usize>,
}

impl Catalogue {
    /// The catalogue of grades 3 to 6 that comes with the program.
    ///
    /// # Errors
    /// Only if the built-in files are faulty, which a test rules out.
    pub fn built_in() -> Result<&'static Catalogue, CatalogueError> {
        static CATALOGUE: OnceLock<Result<Catalogue, CatalogueError>> = OnceLock::new();
        CATALOGUE
            .get_or_init(|| Catalogue::read(&BUILT_IN))
            .as_ref()
            .map_err(Clone::clone)
    }

    /// Reads the concepts of some TOML files, given as (name, text), and checks them.
    ///
    /// # Errors
    /// The first fault found, with its file and line.
    pub fn read(files: &[(&str, &str)]) -> Result<Catalogue, CatalogueError> {
        let mut concepts = Vec::new();
        let mut places: Vec<Place> = Vec::new();
        let mut place: BTreeMap<ConceptId, usize> = BTreeMap::new();
        for (file, (name, text)) in files.iter().enumerate() {
            let at = |offset: usize, fault| CatalogueError {
                file: (*name).to_string(),
                line: line_of(text, offset),
                fault,
            };
            let shape: FileShape = toml::from_str(text).map_err(|error| {
                at(
                    error.span().map_or(0, |span| span.start),
                    CatalogueFault::Unreadable {
                        message: error.message().to_string(),
                    },
                )
            })?;
            for entry in shape.concept {
                let start = entry.span().start;
                let shape = entry.into_inner();
                let id_offset = shape.id.span().start;
                let place_here = Place {
                    file,
                    id_line: line_of(text, id_offset),
                    prerequisite_lines: shape
                        .prerequisites
                        .iter()
                        .map(|p| line_of(text, p.span().start))
                        .collect(),
                };
                let concept =
                    check_concept(shape, start).map_err(|(offset, fault)| at(offset, fault))?;
                if let Some(first) = place.get(&concept.id).and_then(|first| places.get(*first)) {
                    return Err(at(
                        id_offset,
                        CatalogueFault::Duplicate {
                            concept: concept.id.to_string(),
                            first_file: files[first.file].0.to_string(),
                            first_line: first.id_line,
                        },
                    ));
                }
                place.insert(concept.id.clone(), concepts.len());
                concepts.push(concept);
                places.push(place_here);
            }
        }
        for (concept, here) in concepts.iter().zip(&places) {
            for (prerequisite, line) in concept.prerequisites.iter().zip(&here.prerequisite_lines) {
                if !place.contains_key(prerequisite) {
                    return Err(CatalogueError {
                        file: files[here.file].0.to_string(),
                        line: *line,
                        fault: CatalogueFault::UnknownPrerequisite {
                            concept: concept.id.to_string(),
                            prerequisite: prerequisite.to_string(),
                        },
                    });
                }
            }
        }
        let teaching_order = teaching_order(&concepts, &place).map_err(|circle| {
            let here = &places[circle[0]];
            CatalogueError {
                file: files[here.file].0.to_string(),
                line: here.id_line,
                fault: CatalogueFault::Cycle {
                    path: circle
                        .iter()
                        .map(|index| concepts[*index].id.to_string())
                        .collect(),
                },
            }
        })?;
        Ok(Catalogue {
            concepts,
            place,
            teaching_order,
        })
    }

    /// All concepts in the order of the files.
    #[must_use]
    pub fn concepts(&self) -> &[Concept] {
        &self.concepts
    }

    /// The concept with this id.
    #[must_use]
    pub fn get(&self, id: &str) -> Option<&Concept> {
        self.place.get(id).map(|index| &self.concepts[*index])
    }

    /// All concepts, each after its prerequisites, and otherwise in the order of the files.
    pub fn in_teaching_order(&self) -> impl Iterator<Item = &Concept> {
        self.teaching_order
            .iter()
            .map(|index| &self.concepts[*index])
    }

    /// The concepts that have this one as a direct prerequisite.
    pub fn followers<'a>(&'a self, id: &'a str) -> impl Iterator<Item = &'a Concept> {
        self.concepts
            .iter()
            .filter(move |concept| concept.prerequisites.iter().any(|p| p.as_str() == id))
    }
}

/// The line, from 1, in which a byte offset stands.
fn line_of(text: &str, offset: usize) -> usize {
    let end = offset.min(text.len());
    text.as_bytes()[..end]
        .iter()
        .filter(|byte| **byte == b'\n')
        .count()
        + 1
}

/// Turns one entry into a concept, or says what is wrong and at which byte.
fn check_concept(shape: ConceptShape, start: usize) -> Result<Concept, (usize, CatalogueFault)> {
    let id = id_of(&shape.id)?;
    let concept = id.to_string();
    let strand = Strand::ALL
        .into_iter()
        .find(|strand| strand.as_str() == shape.strand.get_ref())
        .ok_or_else(|| {
            (
                shape.strand.span().start,
                CatalogueFault::UnknownStrand {
                    concept: concept.clone(),
                    strand: shape.strand.get_ref().clone(),
                },
            )
        })?;
    let grade = u8::try_from(*shape.grade.get_ref())
        .ok()
        .filter(|grade| (1..=12).contains(grade))
        .ok_or_else(|| {
            (
                shape.grade.span().start,
                CatalogueFault::BadGrade {
                    concept: concept.clone(),
                    grade: *shape.grade.get_ref(),
                },
            )
        })?;
    let words = |words: Option<WordsShape>, language: Language| {
        let words = words.ok_or_else(|| {
            (
                start,
                CatalogueFault::MissingLanguage {
                    concept: concept.clone(),
                    language,
                },
            )
        })?;
        check_length(&concept, "title", &words.title, TITLE_LIMIT_CHARS)?;
        check_length(&concept, "i_can", &words.i_can, I_CAN_LIMIT_CHARS)?;
        Ok((words.title.into_inner(), words.i_can.into_inner()))
    };
    let (en_title, en_i_can) = words(shape.en, Language::En)?;
    let (es_title, es_i_can) = words(shape.es, Language::Es)?;
    let prerequisites = shape
        .prerequisites
        .iter()
        .map(id_of)
        .collect::<Result<_, _>>()?;
    Ok(Concept {
        id,
        strand,
        grade,
        title: Text2 {
            en: en_title,
            es: es_title,
        },
        i_can: Text2 {
            en: en_i_can,
            es: es_i_can,
        },
        prerequisites,
        alignments: shape.alignments,
    })
}

fn id_of(text: &Spanned<String>) -> Result<ConceptId, (usize, CatalogueFault)> {
    ConceptId::new(text.get_ref().clone()).map_err(|error| {
        (
            text.span().start,
            CatalogueFault::BadId { text: error.text },
        )
    })
}

fn check_length(
    concept: &str,
    field: &'static str,
    text: &Spanned<String>,
    limit_chars: usize,
) -> Result<(), (usize, CatalogueFault)> {
    let chars = text.get_ref().chars().count();
    let concept = concept.to_string();
    let fault = if text.get_ref().trim().is_empty() {
        CatalogueFault::EmptyText { concept, field }
    } else if chars > limit_chars {
        CatalogueFault::LongText {
            concept,
            field,
            chars,
            limit_chars,
        }
    } else {
        return Ok(());
    };
    Err((text.span().start, fault))
}

/// Indexes with every concept after its prerequisites; or the indexes around a circle.
fn teaching_order(
    concepts: &[Concept],
    place: &BTreeMap<ConceptId, usize>,
) -> Result<Vec<usize>, Vec<usize>> {
    #[derive(Clone, Copy, PartialEq)]
    enum Seen {
        No,
        OnPath,
        Done,
    }
    let mut seen = vec![Seen::No; concepts.len()];
    let mut order = Vec::with_capacity(concepts.len());
    for start in 0..concepts.len() {
        if seen[start] != Seen::No {
            continue;
        }
        seen[start] = Seen::OnPath;
        // The path from `start`, each with the number of prerequisites already followed.
        let mut path = vec![(start, 0)];
        while let Some((index, followed)) = path.pop() {
            let Some(next) = concepts[index].prerequisites.get(followed) else {
                seen[index] = Seen::Done;
                order.push(index);
                continue;
            };
            path.push((index, followed + 1));
            let next = place[next];
            match seen[next] {
                Seen::Done => {}
                Seen::No => {
                    seen[next] = Seen::OnPath;
                    path.push((next, 0));
                }
                Seen::OnPath => {
                    let mut circle: Vec<usize> = path
                        .iter()
                        .map(|(index, _)| *index)
                        .skip_while(|index| *index != next)
                        .collect();
                    circle.push(next);
                    return Err(circle);
                }
            }
        }
    }
    Ok(order)
}

#[cfg(test)]
mod tests {
    use super::*;

    const GOOD: &str = r#"[[concept]]
id = "b"
strand = "fractions"
grade = 3
prerequisites = ["a"]
alignments = ["3.NF.A.1"]
en.title = "B"
en.i_can = "I can b."
es.title = "B"
es.i_can = "Puedo b."

[[concept]]
id = "a"
strand = "data"
grade = 4
en.title = "A"
en.i_can = "I can a."
es.title = "A"
es.i_can = "Puedo a."
"#;

    fn fault(text: &str) -> (usize, CatalogueFault) {
        let error = Catalogue::read(&[("test.toml", text)]).unwrap_err();
        assert_eq!(error.file, "test.toml");
        (error.line, error.fault)
    }

    #[test]
    fn reads_and_orders() {
        let catalogue = Catalogue::read(&[("test.toml", GOOD)]).unwrap();
        let order: Vec<_> = catalogue
            .in_teaching_order()
            .map(|c| c.id.as_str())
            .collect();
        assert_eq!(order, ["a", "b"]);
        assert_eq!(catalogue.get("b").unwrap().grade, 3);
        assert_eq!(catalogue.followers("a").count(), 1);
    }

    #[test]
    fn names_file_and_line_of_each_fault() {
        let (line, found) = fault(&GOOD.replace("[\"a\"]", "[\"zzz\"]"));
        assert_eq!(line, 5);
        assert!(matches!(found, CatalogueFault::UnknownPrerequisite { .. }));

        let (line, found) = fault(&GOOD.replace("grade = 4", "grade = 13"));
        assert_eq!(line, 15);
        assert!(matches!(found, CatalogueFault::BadGrade { grade: 13, .. }));

        let (line, found) = fault(&GOOD.replace("id = \"a\"", "id = \"b\""));
        assert_eq!(line, 13);
        assert!(matches!(
            found,
            CatalogueFault::Duplicate { first_line: 2, .. }
        ));

        let (line, found) = fault(&GOOD.replace("grade = 4", "grade = 4\nprerequisites = [\"b\"]"));
        assert_eq!(line, 2);
        assert_eq!(
            found,
            CatalogueFault::Cycle {
                path: vec!["b".into(), "a".into(), "b".into()]
            }
        );

        let without_spanish = GOOD
            .replace("es.title = \"A\"\n", "")
            .replace("es.i_can = \"Puedo a.\"\n", "");
        let (line, found) = fault(&without_spanish);
        assert_eq!(line, 12);
        assert!(matches!(
            found,
            CatalogueFault::MissingLanguage {
                language: Language::Es,
                ..
            }
        ));

        let (line, found) = fault(&GOOD.replace("grade = 4", "grade = 4\ncolor = \"blue\""));
        assert_eq!(line, 16);
        assert!(matches!(found, CatalogueFault::Unreadable { .. }));

        let (line, found) = fault(&GOOD.replace("\"data\"", "\"dates\""));
        assert_eq!(line, 14);
        assert!(matches!(found, CatalogueFault::UnknownStrand { .. }));

        let (line, found) = fault(&GOOD.replace("id = \"a\"", "id = \"A b\""));
        assert_eq!(line, 13);
        assert!(matches!(found, CatalogueFault::BadId { .. }));

        let (line, found) = fault(&GOOD.replace("en.title = \"A\"", "en.title = \" \""));
        assert_eq!(line, 16);
        assert!(matches!(found, CatalogueFault::EmptyText { .. }));
    }

    #[test]
    fn the_built_in_catalogue_is_sound() {
        let catalogue = Catalogue::built_in().unwrap();
        assert!(catalogue.concepts().len() >= 150);
        for concept in catalogue.concepts() {
            assert!((3..=6).contains(&concept.grade), "{}", concept.id);
            assert!(
                concept
                    .id
                    .as_str()
                    .starts_with(&format!("g{}-", concept.grade)),
                "{}",
                concept.id
            );
            for prerequisite in &concept.prerequisites {
                let before = catalogue.get(prerequisite.as_str()).unwrap();
                assert!(before.grade <= concept.grade, "{prerequisite}");
            }
        }
    }
}
