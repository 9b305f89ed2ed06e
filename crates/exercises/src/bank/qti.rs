//! Reads one item of 1EdTech QTI 3.0.1, as far as an exercise of ours can express it.
//!
//! Source: 1EdTech Question and Test Interoperability v3.0.1, Assessment, Section
//! and Item Information Model, with the response processing templates
//! `match_correct` and `map_response` (from memory of the published items).

use super::cells::mixed;
use super::key::{OwnKind, key_text, number_key, places_key};
use super::mapping::Mapping;
use super::own::{OwnExercise, OwnForm};
use super::qti_body::{Body, line_of, read_body};
use super::reading::LineTaken;
use super::xml::{Element, read_xml};
use crate::{Answer, Level, typed};
use surefoot_catalogue::table::{LineFault, cut};
use surefoot_catalogue::{ConceptId, Language, Text};

type Fault = (u32, LineFault);

/// The two ways of marking.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Processing {
    MatchCorrect,
    MapResponse,
}

/// Reads one item. Its `label` may name the concept, which `concept` looks up; its
/// `xml:lang` the language, which is else `main`.
pub(super) fn read_item(
    bytes: &[u8],
    concept: &dyn Fn(&str) -> Result<ConceptId, LineFault>,
    main: Language,
) -> Result<LineTaken, Fault> {
    let item = read_xml(bytes)?;
    match item.name.as_str() {
        "qti-assessment-item" => {}
        "assessmentItem" => return Err((item.line, LineFault::OlderQti)),
        _ => {
            return Err((
                item.line,
                LineFault::NotAnItem {
                    element: cut(&item.name, 60),
                },
            ));
        }
    }
    let language = match item.attribute("lang").trim() {
        "" => main,
        tag => Language::lookup(tag).map_err(|unknown| {
            let text = unknown.tag;
            (item.line, LineFault::UnknownLanguage { text })
        })?,
    };
    let concept = concept(item.attribute("label").trim()).map_err(|fault| (item.line, fault))?;
    let body_element = item
        .child("qti-item-body")
        .ok_or_else(|| (item.line, LineFault::empty("qti-item-body")))?;
    let mut body = read_body(body_element)?;
    let question = match body.questions.as_slice() {
        [question] => *question,
        other => {
            return Err((
                body_element.line,
                LineFault::NotOneQuestion {
                    found: u32::try_from(other.len()).unwrap_or(u32::MAX),
                },
            ));
        }
    };
    for left in ["qti-modal-feedback", "qti-catalog-info"] {
        if item.child(left).is_some() {
            body.left_out.push(left.into());
        }
    }
    let processing = processing_of(&item)?;
    let declaration = declaration_of(&item, question)?;
    let asked = Asked {
        question,
        declaration,
        processing,
        language,
    };
    let own = match question.name.as_str() {
        "qti-choice-interaction" => choice(&asked, &body, concept)?,
        "qti-order-interaction" => order(&asked, &body, concept)?,
        _ => typed_number(&asked, &body, concept)?,
    };
    own.check().map_err(|fault| (question.line, fault))?;
    Ok(LineTaken {
        line: item.line,
        own,
        left_out: body.left_out,
    })
}

/// A question with what belongs to it.
struct Asked<'a> {
    question: &'a Element,
    declaration: &'a Element,
    processing: Processing,
    language: Language,
}

fn processing_of(item: &Element) -> Result<Processing, Fault> {
    let Some(processing) = item.child("qti-response-processing") else {
        return Err((
            item.line,
            LineFault::UnknownProcessing {
                text: String::new(),
            },
        ));
    };
    let unknown = |text: &str| {
        (
            processing.line,
            LineFault::UnknownProcessing {
                text: cut(text, 120),
            },
        )
    };
    if let Some(rule) = processing.elements().next() {
        return Err(unknown(&rule.name));
    }
    let template = processing.attribute("template").trim();
    let last = template.rsplit('/').next().unwrap_or_default();
    match last.strip_suffix(".xml").unwrap_or(last) {
        "match_correct" => Ok(Processing::MatchCorrect),
        "map_response" => Ok(Processing::MapResponse),
        _ => Err(unknown(template)),
    }
}

fn declaration_of<'a>(item: &'a Element, question: &Element) -> Result<&'a Element, Fault> {
    let wanted = question.attribute("response-identifier");
    item.elements()
        .find(|e| e.name == "qti-response-declaration" && e.attribute("identifier") == wanted)
        .ok_or_else(|| {
            (
                question.line,
                LineFault::NoDeclaration {
                    text: cut(wanted, 60),
                },
            )
        })
}

impl Asked<'_> {
    /// Checks cardinality and base type.
    fn declared(&self, cardinality: &str, base_types: &[&str]) -> Result<(), Fault> {
        let found = (
            self.declaration.attribute("cardinality"),
            self.declaration.attribute("base-type"),
        );
        if found.0 == cardinality && base_types.contains(&found.1) {
            return Ok(());
        }
        Err((
            self.declaration.line,
            LineFault::DeclarationUnfit {
                element: self.question.name.clone(),
                cardinality: cut(found.0, 40),
                base_type: cut(found.1, 40),
            },
        ))
    }

    fn no_key(&self) -> Fault {
        (self.declaration.line, LineFault::NoKey)
    }

    /// The values of the correct response, if there is one.
    fn correct(&self) -> Option<Vec<String>> {
        self.declaration
            .child("qti-correct-response")
            .map(|correct| {
                correct
                    .elements()
                    .filter(|e| e.name == "qti-value")
                    .map(|value| value.text().trim().to_owned())
                    .collect::<Vec<_>>()
            })
            .filter(|values| !values.is_empty())
    }

    fn mapping(&self) -> Result<Mapping, Fault> {
        let mapping = self
            .declaration
            .child("qti-mapping")
            .ok_or_else(|| self.no_key())?;
        Mapping::read(mapping)
    }
}

/// The choices of a question: their identifiers and their words.
fn choices_of(question: &Element, language: Language) -> Result<Vec<(String, Text)>, Fault> {
    let mut choices = Vec::new();
    for child in question.elements() {
        match child.name.as_str() {
            "qti-prompt" => {}
            "qti-simple-choice" => {
                let name = child.attribute("identifier").to_owned();
                let text = line_of(child)?;
                if text.is_empty() {
                    return Err((child.line, LineFault::empty("qti-simple-choice")));
                }
                choices.push((name, Text::one(language, text)));
            }
            other => {
                return Err((
                    child.line,
                    LineFault::UnknownElement {
                        element: other.to_owned(),
                    },
                ));
            }
        }
    }
    let most = super::MOST_CHOICES;
    if choices.len() > most {
        return Err((
            question.line,
            LineFault::TooMany {
                column: "choices".into(),
                found: u32::try_from(choices.len()).unwrap_or(u32::MAX),
                most: u32::try_from(most).unwrap_or(u32::MAX),
            },
        ));
    }
    if choices.len() < 2 {
        return Err((question.line, LineFault::TooFewChoices));
    }
    Ok(choices)
}

fn places_of(values: &[String], names: &[&str]) -> Result<Vec<u32>, LineFault> {
    values
        .iter()
        .map(|value| {
            names
                .iter()
                .position(|name| name == value)
                .and_then(|place| u32::try_from(place).ok())
                .ok_or_else(|| LineFault::NotAChoice {
                    text: cut(value, 80),
                })
        })
        .collect()
}

/// An exercise out of its parts; QTI has no level, and hints of another kind.
fn exercise(
    asked: &Asked<'_>,
    concept: ConceptId,
    kind: OwnKind,
    body: &Body<'_>,
    choices: Vec<Text>,
    answer: &Answer,
) -> OwnExercise {
    OwnExercise {
        concept,
        level: Level::Expected,
        kind,
        question: Text::one(asked.language, body.text.clone()),
        choices,
        answer: key_text(answer),
        form: OwnForm::Any,
        unit: None,
        hints: Vec::new(),
        steps: Vec::new(),
        wrong: Vec::new(),
    }
}

fn choice(asked: &Asked<'_>, body: &Body<'_>, concept: ConceptId) -> Result<OwnExercise, Fault> {
    let several = asked.declaration.attribute("cardinality") == "multiple";
    asked.declared(if several { "multiple" } else { "single" }, &["identifier"])?;
    let choices = choices_of(asked.question, asked.language)?;
    let names: Vec<&str> = choices.iter().map(|(name, _)| name.as_str()).collect();
    let at = |fault| (asked.declaration.line, fault);
    let correct = asked.correct();
    let correct_places = correct
        .as_ref()
        .map(|values| places_of(values, &names))
        .transpose()
        .map_err(at)?;
    let places = match asked.processing {
        Processing::MatchCorrect => correct_places.ok_or_else(|| asked.no_key())?,
        Processing::MapResponse => {
            let most = match asked.question.attribute("max-choices").parse::<usize>() {
                _ if !several => 1,
                Ok(0) | Err(_) => names.len(),
                Ok(most) => most,
            };
            let best = asked.mapping()?.best_choices(&names, most).map_err(at)?;
            let agree = correct_places.is_none_or(|mut places| {
                places.sort_unstable();
                places == best
            });
            if !agree {
                return Err(at(LineFault::KeysDisagree));
            }
            best
        }
    };
    let kind = if several {
        OwnKind::SeveralChoices
    } else {
        OwnKind::OneChoice
    };
    let answer = places_key(kind, &places, choices.len()).ok_or_else(|| asked.no_key())?;
    let texts = choices.into_iter().map(|(_, text)| text).collect();
    Ok(exercise(asked, concept, kind, body, texts, &answer))
}

fn order(asked: &Asked<'_>, body: &Body<'_>, concept: ConceptId) -> Result<OwnExercise, Fault> {
    asked.declared("ordered", &["identifier"])?;
    if asked.processing != Processing::MatchCorrect {
        return Err((
            asked.question.line,
            LineFault::UnknownProcessing {
                text: "map_response".into(),
            },
        ));
    }
    let choices = choices_of(asked.question, asked.language)?;
    let names: Vec<&str> = choices.iter().map(|(name, _)| name.as_str()).collect();
    let values = asked.correct().ok_or_else(|| asked.no_key())?;
    let at = |fault| (asked.declaration.line, fault);
    let right = places_of(&values, &names).map_err(at)?;
    if places_key(OwnKind::Order, &right, names.len()).is_none() {
        return Err(asked.no_key());
    }
    let in_order: Vec<Text> = right
        .iter()
        .filter_map(|place| choices.get(*place as usize))
        .map(|(_, text)| text.clone())
        .collect();
    let shown: Vec<Text> = choices.iter().map(|(_, text)| text.clone()).collect();
    // Things that are in the right order already would be no question.
    let shown = if shown == in_order {
        mixed(shown, asked.language)
    } else {
        shown
    };
    let order: Vec<u32> = in_order
        .iter()
        .filter_map(|thing| shown.iter().position(|other| other == thing))
        .filter_map(|place| u32::try_from(place).ok())
        .collect();
    let answer = places_key(OwnKind::Order, &order, shown.len()).ok_or_else(|| asked.no_key())?;
    Ok(exercise(
        asked,
        concept,
        OwnKind::Order,
        body,
        shown,
        &answer,
    ))
}

/// The kind of a typed answer: a fraction keeps its bar, a decimal its point.
fn kind_of(text: &str) -> OwnKind {
    if text.contains('/') {
        let mixed = text
            .split_once('/')
            .is_some_and(|(left, _)| left.trim().contains(' '));
        if mixed {
            OwnKind::MixedNumber
        } else {
            OwnKind::Fraction
        }
    } else if typed::whole(text).is_ok() {
        OwnKind::WholeNumber
    } else {
        OwnKind::Decimal
    }
}

fn typed_number(
    asked: &Asked<'_>,
    body: &Body<'_>,
    concept: ConceptId,
) -> Result<OwnExercise, Fault> {
    asked.declared("single", &["string", "integer", "float"])?;
    let at = |fault| (asked.declaration.line, fault);
    let correct = asked.correct();
    if correct.as_ref().is_some_and(|values| values.len() > 1) {
        return Err(asked.no_key());
    }
    let first = correct.and_then(|values| values.into_iter().next());
    let keys: Vec<String> = match asked.processing {
        Processing::MatchCorrect => vec![first.ok_or_else(|| asked.no_key())?],
        Processing::MapResponse => {
            let mapping = asked.mapping()?;
            let best: Vec<String> = mapping
                .best_typed()
                .map_err(at)?
                .into_iter()
                .map(str::to_owned)
                .collect();
            match first {
                Some(first) if !best.contains(&first) => {
                    return Err(at(LineFault::KeysDisagree));
                }
                // The form that the item itself calls correct is the one shown.
                Some(first) => std::iter::once(first).chain(best).collect(),
                None => best,
            }
        }
    };
    let mut found: Option<(OwnKind, Answer)> = None;
    for text in &keys {
        let kind = kind_of(text);
        let answer = number_key(kind, text).map_err(at)?;
        match &found {
            None => found = Some((kind, answer)),
            Some((_, held)) if value(held) == value(&answer) => {}
            Some(_) => return Err(at(LineFault::SeveralBest)),
        }
    }
    let (kind, answer) = found.ok_or_else(|| asked.no_key())?;
    Ok(exercise(asked, concept, kind, body, Vec::new(), &answer))
}

fn value(answer: &Answer) -> Option<num_rational::Ratio<i64>> {
    use num_rational::Ratio;
    Some(match answer {
        Answer::WholeNumber { value } => Ratio::from(*value),
        Answer::Decimal { text } => typed::decimal(text).ok()?.0,
        Answer::Fraction { top, bottom } if *bottom > 0 => Ratio::new(*top, *bottom),
        Answer::Mixed {
            negative,
            whole,
            top,
            bottom,
        } if *bottom > 0 => {
            let top = whole.checked_mul(*bottom)?.checked_add(*top)?;
            Ratio::new(if *negative { -top } else { top }, *bottom)
        }
        _ => return None,
    })
}
