//! Reads a catalogue from TOML files and checks it.

use crate::table::cut;
use crate::{
    CatalogueError, CatalogueFault, Concept, ConceptId, GRADES, Language, Locale, Strand, Text,
    messages,
};
use serde::Deserialize;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::OnceLock;
use toml::Spanned;

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

/// Concepts that were checked: ids are unique, prerequisites are known and form no circle,
/// texts have every language.
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
}

/// Looks up the title and the statement of a concept in a language.
type Words<'a> = &'a dyn Fn(&ConceptId, Language) -> Option<(String, String)>;

/// The words of built-in concepts, from `concepts.ftl` in the folder of the language.
fn built_in_words(id: &ConceptId, language: Language) -> Option<(String, String)> {
    let locale = Locale::from(language);
    let title = messages::message(locale, id.as_str(), None).ok()?;
    let i_can = messages::attribute(locale, id.as_str(), "i-can").ok()?;
    Some((title, i_can))
}

/// The lines on which a concept and its prerequisites are.
struct Place<'a> {
    file: &'a str,
    id_line: usize,
    prerequisite_lines: Vec<usize>,
}

impl Catalogue {
    /// The catalogue of grades 3 to 6 that comes with the program.
    ///
    /// # Errors
    /// Fails only if the built-in files are faulty, which a test rules out.
    pub fn built_in() -> Result<&'static Catalogue, CatalogueError> {
        static CATALOGUE: OnceLock<Result<Catalogue, CatalogueError>> = OnceLock::new();
        CATALOGUE
            .get_or_init(|| Catalogue::read(&BUILT_IN, &built_in_words))
            .as_ref()
            .map_err(Clone::clone)
    }

    /// Reads the concepts of TOML files, each with its name and text, and adds their words.
    /// Fails at the first fault.
    pub fn read(files: &[(&str, &str)], words: Words<'_>) -> Result<Catalogue, CatalogueError> {
        let mut concepts = Vec::new();
        let mut places: Vec<Place<'_>> = Vec::new();
        let mut place: BTreeMap<ConceptId, usize> = BTreeMap::new();
        for (name, text) in files {
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
                    file: name,
                    id_line: line_of(text, id_offset),
                    prerequisite_lines: shape
                        .prerequisites
                        .iter()
                        .map(|p| line_of(text, p.span().start))
                        .collect(),
                };
                let concept = check_concept(shape, start, words)
                    .map_err(|(offset, fault)| at(offset, fault))?;
                if let Some(first) = place.get(&concept.id).and_then(|first| places.get(*first)) {
                    return Err(at(
                        id_offset,
                        CatalogueFault::Duplicate {
                            concept: concept.id.to_string(),
                            first_file: first.file.to_owned(),
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
                        file: here.file.to_owned(),
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
            let here = circle.first().and_then(|index| places.get(*index));
            let ids = circle.iter().filter_map(|index| concepts.get(*index));
            CatalogueError {
                file: here.map_or("", |here| here.file).to_owned(),
                line: here.map_or(1, |here| here.id_line),
                fault: CatalogueFault::Cycle {
                    path: ids.map(|concept| concept.id.to_string()).collect(),
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
        self.place
            .get(id)
            .and_then(|index| self.concepts.get(*index))
    }

    /// All concepts, each after its prerequisites, else in the order of the files.
    pub fn in_teaching_order(&self) -> impl Iterator<Item = &Concept> {
        self.teaching_order
            .iter()
            .filter_map(|index| self.concepts.get(*index))
    }
}

/// Returns the line, from 1, of a byte offset.
fn line_of(text: &str, offset: usize) -> usize {
    let end = offset.min(text.len());
    text.bytes().take(end).filter(|byte| *byte == b'\n').count() + 1
}

/// Makes the concept of an entry. An error has the byte offset of the fault.
fn check_concept(
    shape: ConceptShape,
    start: usize,
    words: Words<'_>,
) -> Result<Concept, (usize, CatalogueFault)> {
    let id = id_of(&shape.id)?;
    let concept = id.to_string();
    let strand = Strand::named(shape.strand.get_ref()).ok_or_else(|| {
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
        .filter(|grade| GRADES.contains(grade))
        .ok_or_else(|| {
            (
                shape.grade.span().start,
                CatalogueFault::BadGrade {
                    concept: concept.clone(),
                    grade: *shape.grade.get_ref(),
                },
            )
        })?;
    let missing = |language| {
        let concept = concept.clone();
        (start, CatalogueFault::MissingLanguage { concept, language })
    };
    let (mut titles, mut statements) = (BTreeMap::new(), BTreeMap::new());
    for language in Language::all() {
        let (title, i_can) = words(&id, *language).ok_or_else(|| missing(*language))?;
        titles.insert(*language, title);
        statements.insert(*language, i_can);
    }
    let text = |texts| Text::try_from(texts).map_err(|_| missing(Language::first()));
    let (title, i_can) = (text(titles)?, text(statements)?);
    let prerequisites = shape
        .prerequisites
        .iter()
        .map(id_of)
        .collect::<Result<_, _>>()?;
    Ok(Concept {
        id,
        strand,
        grade,
        title,
        i_can,
        prerequisites,
        alignments: shape.alignments,
    })
}

fn id_of(text: &Spanned<String>) -> Result<ConceptId, (usize, CatalogueFault)> {
    ConceptId::new(text.get_ref().clone()).map_err(|_| {
        let fault = CatalogueFault::BadId {
            text: cut(text.get_ref(), 80),
        };
        (text.span().start, fault)
    })
}

/// Returns the places of the concepts, each after those of its prerequisites. If the
/// prerequisites form a circle, the error has the places around it, the first again at the
/// end.
fn teaching_order(
    concepts: &[Concept],
    place: &BTreeMap<ConceptId, usize>,
) -> Result<Vec<usize>, Vec<usize>> {
    let mut done = BTreeSet::new();
    let mut order = Vec::with_capacity(concepts.len());
    for start in 0..concepts.len() {
        // The path from `start`, each with the number of prerequisites already followed.
        let mut path = vec![(start, 0)];
        while let Some((index, followed)) = path.pop() {
            if done.contains(&index) {
                continue;
            }
            let next = concepts
                .get(index)
                .and_then(|concept| concept.prerequisites.get(followed))
                .and_then(|prerequisite| place.get(prerequisite));
            let Some(next) = next else {
                done.insert(index);
                order.push(index);
                continue;
            };
            path.push((index, followed + 1));
            if let Some(first) = path.iter().position(|(on_path, _)| on_path == next) {
                let circle = path.iter().skip(first).map(|(index, _)| *index);
                return Err(circle.chain([*next]).collect());
            }
            path.push((*next, 0));
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

[[concept]]
id = "a"
strand = "data"
grade = 4
"#;

    fn invented(id: &ConceptId, language: Language) -> Option<(String, String)> {
        Some((format!("{id} {language}"), format!("I can {id} {language}")))
    }

    fn fault(text: &str) -> (usize, CatalogueFault) {
        let error = Catalogue::read(&[("test.toml", text)], &invented).unwrap_err();
        assert_eq!(error.file, "test.toml");
        (error.line, error.fault)
    }

    #[test]
    fn reads_and_orders() {
        let catalogue = Catalogue::read(&[("test.toml", GOOD)], &invented).unwrap();
        let order: Vec<_> = catalogue
            .in_teaching_order()
            .map(|c| c.id.as_str())
            .collect();
        assert_eq!(order, ["a", "b"]);
        assert_eq!(catalogue.get("b").unwrap().grade, 3);
    }

    #[test]
    fn names_file_and_line_of_each_fault() {
        let (line, found) = fault(&GOOD.replace("[\"a\"]", "[\"zzz\"]"));
        assert_eq!(line, 5);
        assert!(matches!(found, CatalogueFault::UnknownPrerequisite { .. }));

        let (line, found) = fault(&GOOD.replace("grade = 4", "grade = 13"));
        assert_eq!(line, 11);
        assert!(matches!(found, CatalogueFault::BadGrade { grade: 13, .. }));

        let (line, found) = fault(&GOOD.replace("id = \"a\"", "id = \"b\""));
        assert_eq!(line, 9);
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

        let (line, found) = fault(&GOOD.replace("grade = 4", "grade = 4\ncolor = \"blue\""));
        assert_eq!(line, 12);
        assert!(matches!(found, CatalogueFault::Unreadable { .. }));

        let (line, found) = fault(&GOOD.replace("\"data\"", "\"dates\""));
        assert_eq!(line, 10);
        assert!(matches!(found, CatalogueFault::UnknownStrand { .. }));

        let (line, found) = fault(&GOOD.replace("id = \"a\"", "id = \"A b\""));
        assert_eq!(line, 9);
        assert!(matches!(found, CatalogueFault::BadId { .. }));

        let words = |id: &ConceptId, language| {
            (id.as_str() != "a" || language == Language::first()).then(|| invented(id, language))?
        };
        let error = Catalogue::read(&[("test.toml", GOOD)], &words).unwrap_err();
        assert_eq!(error.line, 8);
        assert!(matches!(
            error.fault,
            CatalogueFault::MissingLanguage { language, .. } if language != Language::first()
        ));
    }

    #[test]
    fn the_built_in_catalogue_is_sound() {
        let catalogue = Catalogue::built_in().unwrap();
        assert!(catalogue.concepts().len() >= 150);
        for concept in catalogue.concepts() {
            assert!((3..=6).contains(&concept.grade), "{}", concept.id);
            for (text, most_chars) in [(&concept.title, 40), (&concept.i_can, 90)] {
                for (language, text) in text.iter() {
                    let chars = text.chars().count();
                    assert!(chars <= most_chars, "{} {language}: {chars}", concept.id);
                }
                assert_eq!(text.missing(), [], "{}", concept.id);
            }
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
