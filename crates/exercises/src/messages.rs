//! The words people read, in English and Spanish, from `shared/messages`.
//!
//! A file per area; both languages have the same keys, which a test checks. These
//! are the words of exercises: sheets say them here, and the screens are given the
//! same files by [`sources`], so that they stand in the program once.

use crate::Arg;
use crate::say::{MATH_END, MATH_START, Say};
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use std::sync::OnceLock;
use surefoot_catalogue::{Language, Locale, NumberStyle};
use thiserror::Error;

/// A message that cannot be shown: a fault of the program, which tests rule out.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum MessageError {
    /// There is no such message.
    #[error("message {id} is missing in {}", .language.as_str())]
    Missing {
        /// Its id.
        id: String,
        /// The language.
        language: Language,
    },
    /// The message asks for arguments it was not given, or cannot be resolved.
    #[error("message {id} in {}: {trouble}", .language.as_str())]
    Unresolved {
        /// Its id.
        id: String,
        /// The language.
        language: Language,
        /// What the resolver says.
        trouble: String,
    },
    /// A message file cannot be read.
    #[error("messages in {} cannot be read: {trouble}", .language.as_str())]
    Unreadable {
        /// The language.
        language: Language,
        /// What the reader says.
        trouble: String,
    },
}

macro_rules! message_files {
    ($($name:literal),* $(,)?) => {
        /// Area, English text, Spanish text of each message file.
        const FILES: &[(&str, &str, &str)] = &[$((
            $name,
            include_str!(concat!("../../../shared/messages/en/", $name, ".ftl")),
            include_str!(concat!("../../../shared/messages/es/", $name, ".ftl")),
        )),*];
    };
}

message_files![
    "figures",
    "items-addition-subtraction",
    "items-common",
    "items-data",
    "items-decimals",
    "items-expressions",
    "items-fractions",
    "items-geometry",
    "items-measurement",
    "items-multiplication",
    "items-number-system",
    "items-place-value",
    "items-ratio",
    "items-statistics",
    "misconceptions",
];

/// The message files of exercises in a language: area and Fluent text of each.
pub fn sources(language: Language) -> impl Iterator<Item = (&'static str, &'static str)> {
    FILES.iter().map(move |(area, en, es)| match language {
        Language::En => (*area, *en),
        Language::Es => (*area, *es),
    })
}

type Bundle = FluentBundle<FluentResource>;

fn bundle(locale: Locale) -> Result<&'static Bundle, MessageError> {
    type Slot = OnceLock<Result<Bundle, MessageError>>;
    static SLOTS: [Slot; 4] = [Slot::new(), Slot::new(), Slot::new(), Slot::new()];
    let slot = match (locale.language, locale.numbers) {
        (Language::En, NumberStyle::PointDecimal) => &SLOTS[0],
        (Language::En, NumberStyle::CommaDecimal) => &SLOTS[1],
        (Language::Es, NumberStyle::PointDecimal) => &SLOTS[2],
        (Language::Es, NumberStyle::CommaDecimal) => &SLOTS[3],
    };
    slot.get_or_init(|| load(locale))
        .as_ref()
        .map_err(Clone::clone)
}

fn load(locale: Locale) -> Result<Bundle, MessageError> {
    let language = locale.language;
    let unreadable = |trouble: String| MessageError::Unreadable { language, trouble };
    let tag = match language {
        Language::En => "en-US",
        Language::Es => "es-US",
    };
    let tag = tag
        .parse()
        .map_err(|error| unreadable(format!("{error:?}")))?;
    let mut bundle = Bundle::new_concurrent(vec![tag]);
    bundle.set_use_isolating(false);
    bundle.set_formatter(Some(match locale.numbers {
        NumberStyle::PointDecimal => |value, _| counted(value, NumberStyle::PointDecimal),
        NumberStyle::CommaDecimal => |value, _| counted(value, NumberStyle::CommaDecimal),
    }));
    for (name, text) in sources(language) {
        let resource = FluentResource::try_new(text.to_owned())
            .map_err(|(_, errors)| unreadable(format!("{name}.ftl: {:?}", errors.first())))?;
        bundle
            .add_resource(resource)
            .map_err(|errors| unreadable(format!("{name}.ftl: {:?}", errors.first())))?;
    }
    Ok(bundle)
}

/// A count with its digits grouped.
fn counted(value: &FluentValue, style: NumberStyle) -> Option<String> {
    match value {
        FluentValue::Number(number) => Some(grouped(&number.as_string(), style)),
        _ => None,
    }
}

/// An exact decimal with a point, written for people: grouped, with the
/// locale's decimal sign and a true minus sign.
#[must_use]
pub fn format_number(locale: Locale, text: &str) -> String {
    grouped(text, locale.numbers)
}

fn grouped(text: &str, style: NumberStyle) -> String {
    let (group, point) = match style {
        NumberStyle::PointDecimal => (',', '.'),
        NumberStyle::CommaDecimal => ('\u{202f}', ','),
    };
    let (minus, body) = match text.strip_prefix('-') {
        Some(body) => ("−", body),
        None => ("", text),
    };
    let (whole, part) = body.split_once('.').unwrap_or((body, ""));
    let mut shown = String::from(minus);
    for (index, digit) in whole.chars().enumerate() {
        if index > 0 && (whole.len() - index).is_multiple_of(3) {
            shown.push(group);
        }
        shown.push(digit);
    }
    if !part.is_empty() {
        shown.push(point);
        shown.push_str(part);
    }
    shown
}

/// Our own prose, written with `1,000` and `3.5`, for people who write numbers otherwise.
#[must_use]
pub fn prose(locale: Locale, text: &str) -> String {
    if locale.numbers == NumberStyle::PointDecimal {
        return text.to_owned();
    }
    let mut shown = String::with_capacity(text.len());
    let mut rest = text;
    while let Some(start) = rest.find(|c: char| c.is_ascii_digit()) {
        let (before, from) = rest.split_at(start);
        let end = from
            .find(|c: char| !c.is_ascii_digit() && c != ',' && c != '.')
            .unwrap_or(from.len());
        // A comma or a full stop behind a number belongs to the sentence.
        let number = from.get(..end).unwrap_or(from).trim_end_matches([',', '.']);
        shown.push_str(before);
        shown.push_str(&format_number(locale, &number.replace(',', "")));
        rest = from.get(number.len()..).unwrap_or_default();
    }
    shown.push_str(rest);
    shown
}

/// A piece of a formatted sentence.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Piece {
    /// Words.
    Words(String),
    /// Mathematics: the argument's name in the sentence.
    Math(String),
}

/// The sentence in pieces, mathematics apart, for setting on paper.
///
/// # Errors
/// [`MessageError`] when the message is missing or lacks an argument.
pub fn pieces(locale: Locale, words: &Say) -> Result<Vec<Piece>, MessageError> {
    let mut args = FluentArgs::new();
    for (name, arg) in &words.args {
        let value: FluentValue = match arg {
            Arg::Count { value } => FluentValue::from(*value),
            Arg::Number { text } => format_number(locale, text).into(),
            Arg::Numbers { texts } => texts
                .iter()
                .map(|text| format_number(locale, text))
                .collect::<Vec<_>>()
                .join(locale.number_break())
                .into(),
            Arg::Math { .. } => format!("{MATH_START}{name}{MATH_END}").into(),
            Arg::Text { text } => text.to_string().into(),
            Arg::Words { en, es } => match locale.language {
                Language::En => en.clone().into(),
                Language::Es => es.clone().into(),
            },
            Arg::Word { id } => format(locale, id, None, None)?.into(),
        };
        args.set(name.to_string(), value);
    }
    let text = format(locale, &words.id, None, Some(&args))?;
    let mut pieces = Vec::new();
    let mut rest = text.as_str();
    while let Some((before, after)) = rest.split_once(MATH_START) {
        let Some((name, after)) = after.split_once(MATH_END) else {
            break;
        };
        if !before.is_empty() {
            pieces.push(Piece::Words(before.to_string()));
        }
        pieces.push(Piece::Math(name.to_string()));
        rest = after;
    }
    if !rest.is_empty() {
        pieces.push(Piece::Words(rest.to_string()));
    }
    Ok(pieces)
}

/// An attribute of a message without arguments, such as the teacher's name of
/// a misconception: `attribute(locale, "misconception-add-across", "name")`.
///
/// # Errors
/// As [`pieces`].
pub fn attribute(locale: Locale, id: &str, name: &str) -> Result<String, MessageError> {
    format(locale, id, Some(name), None)
}

fn format(
    locale: Locale,
    id: &str,
    attribute: Option<&str>,
    args: Option<&FluentArgs>,
) -> Result<String, MessageError> {
    let language = locale.language;
    let bundle = bundle(locale)?;
    let missing = || MessageError::Missing {
        id: match attribute {
            Some(attribute) => format!("{id}.{attribute}"),
            None => id.to_string(),
        },
        language,
    };
    let message = bundle.get_message(id).ok_or_else(missing)?;
    let pattern = match attribute {
        Some(name) => message.get_attribute(name).map(|a| a.value()),
        None => message.value(),
    }
    .ok_or_else(missing)?;
    let mut errors = Vec::new();
    let text = bundle.format_pattern(pattern, args, &mut errors);
    match errors.first() {
        None => Ok(text.into_owned()),
        Some(trouble) => Err(MessageError::Unresolved {
            id: id.to_string(),
            language,
            trouble: trouble.to_string(),
        }),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::text::say;
    use std::collections::BTreeSet;

    fn keys(text: &str) -> BTreeSet<String> {
        // A message or attribute starts a line: `id =` or `    .name =`.
        let mut last = String::new();
        let mut keys = BTreeSet::new();
        for line in text.lines() {
            let Some((left, _)) = line.split_once('=') else {
                continue;
            };
            let left = left.trim_end();
            if let Some(attribute) = left.trim_start().strip_prefix('.') {
                keys.insert(format!("{last}.{attribute}"));
            } else if left.starts_with(|c: char| c.is_ascii_alphabetic())
                && left.chars().all(|c| c.is_ascii_alphanumeric() || c == '-')
            {
                last = left.to_string();
                assert!(keys.insert(last.clone()), "{last} stands twice");
            }
        }
        keys
    }

    #[test]
    fn both_languages_have_the_same_keys() {
        for (name, en, es) in FILES {
            let (en, es) = (keys(en), keys(es));
            let only_en: Vec<_> = en.difference(&es).collect();
            let only_es: Vec<_> = es.difference(&en).collect();
            assert!(
                only_en.is_empty() && only_es.is_empty(),
                "{name}.ftl: only in en {only_en:?}, only in es {only_es:?}"
            );
        }
    }

    #[test]
    fn every_message_file_can_be_read() {
        for language in Language::ALL {
            bundle(language.into()).map(|_| ()).unwrap();
        }
    }

    #[test]
    fn numbers_are_written_for_the_place() {
        let us = Locale::default();
        let comma = Locale {
            language: Language::Es,
            numbers: NumberStyle::CommaDecimal,
        };
        assert_eq!(format_number(us, "1234567.50"), "1,234,567.50");
        assert_eq!(format_number(us, "-999"), "−999");
        assert_eq!(format_number(us, "1000"), "1,000");
        assert_eq!(format_number(comma, "1234.5"), "1\u{202f}234,5");
        assert_eq!(
            prose(comma, "Hasta 1,000, con 3.5 y 2."),
            "Hasta 1\u{202f}000, con 3,5 y 2."
        );
        assert_eq!(prose(us, "Within 1,000."), "Within 1,000.");
    }

    #[test]
    fn counts_choose_the_form_and_are_grouped() {
        let minutes = |n| Say::new("answer-minutes").count("minutes", n);
        assert_eq!(say(Language::En.into(), &minutes(1)).unwrap(), "1 minute");
        assert_eq!(
            say(Language::Es.into(), &minutes(1200)).unwrap(),
            "1,200 minutos"
        );
        assert!(matches!(
            say(Language::En.into(), &Say::new("answer-minutes")),
            Err(MessageError::Unresolved { .. })
        ));
        assert!(matches!(
            say(Language::En.into(), &Say::new("no-such-message")),
            Err(MessageError::Missing { .. })
        ));
    }
}
