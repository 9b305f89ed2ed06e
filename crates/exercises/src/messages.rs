//! Sentences with mathematics in them: an exercise's [`Say`] in the words of a language.

use crate::Arg;
use crate::say::{MATH_END, MATH_START, Say};
use fluent_bundle::{FluentArgs, FluentValue};
use surefoot_catalogue::messages::message;
use surefoot_catalogue::{Language, Locale};

pub use surefoot_catalogue::format_number;
pub use surefoot_catalogue::messages::{MessageError, attribute};

/// Areas of messages that the screens get from the program, so that they are stored once.
const AREAS: [&str; 3] = ["figures", "items-", "misconceptions"];

/// The message files of exercises in a language: area and Fluent text of each.
pub fn sources(language: Language) -> impl Iterator<Item = (&'static str, &'static str)> {
    language
        .message_files()
        .filter(|(area, _)| AREAS.iter().any(|begin| area.starts_with(begin)))
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
            Arg::Words { words } => words.get(locale.language).to_owned().into(),
            Arg::Word { id } => message(locale, id, None)?.into(),
        };
        args.set(name.to_string(), value);
    }
    let text = message(locale, &words.id, Some(&args))?;
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::text::say;

    #[test]
    fn counts_choose_the_form_and_are_grouped() {
        let minutes = |n| Say::new("answer-minutes").count("minutes", n);
        assert_eq!(say(Locale::default(), &minutes(1)).unwrap(), "1 minute");
        assert_eq!(
            say(Language::tagged("es").unwrap().into(), &minutes(1200)).unwrap(),
            "1,200 minutos"
        );
        assert!(matches!(
            say(Locale::default(), &Say::new("answer-minutes")),
            Err(MessageError::Unresolved { .. })
        ));
        assert!(matches!(
            say(Locale::default(), &Say::new("no-such-message")),
            Err(MessageError::Missing { .. })
        ));
    }
}
