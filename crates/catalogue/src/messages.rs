//! The messages of every language, from `shared/messages/TAG/*.ftl` (Project Fluent).
//!
//! The only loader of messages in Rust. It is in the lowest crate because titles and
//! statements of concepts are messages too.

use crate::{Language, Locale, NumberStyle};
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use std::collections::BTreeMap;
use std::sync::OnceLock;
use thiserror::Error;

/// A message cannot be shown. This is a fault of the program, which tests rule out.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum MessageError {
    /// There is no such message.
    #[error("message {id} is missing in {language}")]
    Missing {
        /// Its id.
        id: String,
        /// The language.
        language: Language,
    },
    /// The message lacks an argument or cannot be resolved.
    #[error("message {id} in {language}: {trouble}")]
    Unresolved {
        /// Its id.
        id: String,
        /// The language.
        language: Language,
        /// The message of the resolver.
        trouble: String,
    },
    /// A message file cannot be read.
    #[error("messages in {language} cannot be read: {trouble}")]
    Unreadable {
        /// The language.
        language: Language,
        /// The message of the reader.
        trouble: String,
    },
}

type Bundle = FluentBundle<FluentResource>;
type Slot = OnceLock<Result<Bundle, MessageError>>;

/// Returns the messages of a locale, which are read at their first use.
fn bundle(locale: Locale) -> Result<&'static Bundle, MessageError> {
    static SLOTS: OnceLock<BTreeMap<(Language, NumberStyle), Slot>> = OnceLock::new();
    let slots = SLOTS.get_or_init(|| {
        let styles = [NumberStyle::PointDecimal, NumberStyle::CommaDecimal];
        let keys = Language::all()
            .iter()
            .flat_map(|language| styles.map(|style| (*language, style)));
        keys.map(|key| (key, Slot::new())).collect()
    });
    // The map has every locale, because it has every language.
    let slot = slots
        .get(&(locale.language, locale.numbers))
        .ok_or_else(|| MessageError::Unreadable {
            language: locale.language,
            trouble: "not in the table of languages".into(),
        })?;
    slot.get_or_init(|| load(locale))
        .as_ref()
        .map_err(Clone::clone)
}

fn load(locale: Locale) -> Result<Bundle, MessageError> {
    let language = locale.language;
    let unreadable = |trouble: String| MessageError::Unreadable { language, trouble };
    let tag = language
        .locale_tag()
        .parse()
        .map_err(|error| unreadable(format!("{error:?}")))?;
    let mut bundle = Bundle::new_concurrent(vec![tag]);
    bundle.set_use_isolating(false);
    bundle.set_formatter(Some(match locale.numbers {
        NumberStyle::PointDecimal => |value, _| counted(value, NumberStyle::PointDecimal),
        NumberStyle::CommaDecimal => |value, _| counted(value, NumberStyle::CommaDecimal),
    }));
    for (area, text) in language.message_files() {
        let resource = FluentResource::try_new(text.to_owned())
            .map_err(|(_, errors)| unreadable(format!("{area}.ftl: {:?}", errors.first())))?;
        bundle
            .add_resource(resource)
            .map_err(|errors| unreadable(format!("{area}.ftl: {:?}", errors.first())))?;
    }
    Ok(bundle)
}

/// Writes the counts in a message in the style of the locale.
fn counted(value: &FluentValue, style: NumberStyle) -> Option<String> {
    match value {
        FluentValue::Number(number) => Some(style.written(&number.as_string())),
        _ => None,
    }
}

/// Returns a message with its arguments filled in.
pub fn message(
    locale: Locale,
    id: &str,
    args: Option<&FluentArgs>,
) -> Result<String, MessageError> {
    format(locale, id, None, args)
}

/// Returns an attribute of a message, such as `name` of `misconception-carry-forgotten`:
/// what teachers call the misconception. Attributes have no arguments.
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
    use std::collections::{BTreeMap, BTreeSet};

    /// The keys of a file, each with the names of the arguments that its text uses.
    fn keys(text: &str) -> BTreeMap<String, BTreeSet<String>> {
        // A message or attribute starts a line: `id =` or `    .name =`.
        let mut message = String::new();
        let mut key = String::new();
        let mut keys: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
        for line in text.lines().filter(|line| !line.starts_with('#')) {
            if let Some((left, _)) = line.split_once('=') {
                let left = left.trim_end();
                if let Some(attribute) = left.trim_start().strip_prefix('.') {
                    key = format!("{message}.{attribute}");
                    keys.insert(key.clone(), BTreeSet::new());
                } else if left.starts_with(|c: char| c.is_ascii_alphabetic())
                    && left.chars().all(|c| c.is_ascii_alphanumeric() || c == '-')
                {
                    message = left.to_string();
                    key.clone_from(&message);
                    assert!(keys.insert(key.clone(), BTreeSet::new()).is_none(), "{key}");
                }
            }
            for part in line.split('$').skip(1) {
                let name: String = part
                    .chars()
                    .take_while(|c| c.is_ascii_alphanumeric() || *c == '_' || *c == '-')
                    .collect();
                if let Some(args) = keys.get_mut(&key) {
                    args.insert(name);
                }
            }
        }
        keys
    }

    #[test]
    fn every_language_has_the_same_messages_with_the_same_arguments() {
        let first = Language::first();
        let mut count = 0;
        for language in Language::all() {
            for (area, text) in first.message_files() {
                let name = format!("{area}.ftl");
                let (want, have) = (keys(text), keys(language.file(&name).unwrap_or_default()));
                count += have.len();
                let differ: Vec<_> = want
                    .iter()
                    .filter(|(key, args)| have.get(*key) != Some(*args))
                    .chain(have.iter().filter(|(key, _)| !want.contains_key(*key)))
                    .collect();
                assert!(differ.is_empty(), "{language}/{name}: {differ:?}");
            }
        }
        assert!(count > 1000, "{count}");
    }

    #[test]
    fn every_message_file_can_be_read() {
        for language in Language::all() {
            bundle(Locale::from(*language)).map(|_| ()).unwrap();
        }
    }
}
