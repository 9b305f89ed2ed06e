//! A teacher's text as a sentence: plain text, with fractions where braces ask for them.
//!
//! `{3/4}` and `{2 3/4}` are set as mathematics, `{0.5}` as a number. Nothing
//! else is read out of a text, and no text is ever markup.

use crate::say::{Arg, MATH_END, MATH_START, Say};
use crate::{Block, Expr, expr, typed};
use std::borrow::Cow;
use std::collections::BTreeSet;
use surefoot_catalogue::table::{LineFault, cut};
use surefoot_catalogue::{Language, Text};

/// The message that shows a teacher's text.
pub const OWN_WORDS: &str = "own-words";

/// A number in braces.
fn number_in(text: &str) -> Option<Expr> {
    let trimmed = text.trim();
    let (minus, body) = match trimmed.strip_prefix(['-', '−']) {
        Some(rest) => (true, rest.trim_start()),
        None => (false, trimmed),
    };
    let digits = |t: &str| {
        typed::whole(t)
            .ok()
            .filter(|n| *n >= 0 && !t.contains(['-', '−', '–']))
    };
    let size = match body.split_once('/') {
        Some((left, bottom)) => {
            let bottom = digits(bottom.trim()).filter(|n| *n > 0)?;
            match left.trim().split_once(' ') {
                Some((whole, top)) => expr::mixed(digits(whole)?, digits(top.trim())?, bottom),
                None => expr::frac(digits(left.trim())?, bottom),
            }
        }
        None => {
            let plain = !body.is_empty()
                && body.len() <= 18
                && body.bytes().all(|b| b.is_ascii_digit() || b == b'.');
            if !plain
                || typed::decimal(body).is_err()
                || body.starts_with('.')
                || body.ends_with('.')
            {
                return None;
            }
            expr::num(body)
        }
    };
    Some(if minus { expr::negative(size) } else { size })
}

/// Pieces of a text: words, and the content of braces.
fn split(text: &str) -> Result<Vec<Result<&str, Expr>>, LineFault> {
    let bad = |text: &str| LineFault::BadBraces {
        text: cut(text, 40),
    };
    let mut pieces = Vec::new();
    let mut rest = text;
    while let Some(open) = rest.find(['{', '}']) {
        let (before, from) = rest.split_at(open);
        if !before.is_empty() {
            pieces.push(Ok(before));
        }
        let inner = from.strip_prefix('{').ok_or_else(|| bad(from))?;
        let (inside, after) = inner.split_once('}').ok_or_else(|| bad(inner))?;
        pieces.push(Err(number_in(inside).ok_or_else(|| bad(inside))?));
        rest = after;
    }
    if !rest.is_empty() {
        pieces.push(Ok(rest));
    }
    Ok(pieces)
}

/// The text with marks where mathematics goes, and the mathematics by name.
fn marked(text: &str, prefix: &str, say: &mut Say) -> Result<String, LineFault> {
    let mut found = String::new();
    let mut count = 0;
    for piece in split(text)? {
        match piece {
            Ok(words) => found.push_str(words),
            Err(expr) => {
                count += 1;
                let name = format!("{prefix}{count}");
                found.push(MATH_START);
                found.push_str(&name);
                found.push(MATH_END);
                say.args.insert(Cow::Owned(name), Arg::Math { expr });
            }
        }
    }
    Ok(found)
}

/// A text as a sentence in each of its languages.
///
/// # Errors
/// [`LineFault::BadBraces`].
pub fn say_of(text: &Text) -> Result<Say, LineFault> {
    let mut say = Say::new(OWN_WORDS);
    let words = translated(text, |language, one| {
        marked(one, language.as_str(), &mut say)
    })?;
    say.args
        .insert(Cow::Borrowed("words"), Arg::Words { words });
    Ok(say)
}

/// The text with what `change` makes of it in each language.
fn translated<E>(
    text: &Text,
    mut change: impl FnMut(Language, &str) -> Result<String, E>,
) -> Result<Text, E> {
    let mut changed = text.clone();
    for (language, one) in text.iter() {
        changed = changed.with(language, change(language, one)?);
    }
    Ok(changed)
}

/// A text as blocks, one for each line. A text whose languages differ in their number of
/// lines is one block.
pub(super) fn blocks_of(text: &Text) -> Result<Vec<Block>, LineFault> {
    let lines = |one: &str| -> Vec<String> {
        let lines = one.lines().map(str::trim);
        lines
            .filter(|line| !line.is_empty())
            .map(str::to_owned)
            .collect()
    };
    let counts: BTreeSet<usize> = text.iter().map(|(_, one)| lines(one).len()).collect();
    let line_of = |place: Option<usize>| {
        let line = translated(text, |_, one| {
            Ok::<_, LineFault>(match place {
                None => lines(one).join(" "),
                Some(place) => lines(one).into_iter().nth(place).unwrap_or_default(),
            })
        })?;
        say_of(&line).map(Block::from)
    };
    match (counts.len(), counts.first()) {
        (1, Some(count)) => (0..*count).map(|place| line_of(Some(place))).collect(),
        _ => Ok(vec![line_of(None)?]),
    }
}

/// The text for a list or a terminal: braces taken away.
#[must_use]
pub fn plain_text(text: &str) -> String {
    text.replace(['{', '}'], "")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::text;
    use surefoot_catalogue::Locale;

    fn shown(words: &str) -> Result<String, LineFault> {
        let say = say_of(&Text::one(Language::first(), words))?;
        Ok(text::say(Locale::default(), &say).unwrap())
    }

    #[test]
    fn numbers_in_braces_become_mathematics() {
        assert_eq!(
            shown("Add {3/4} and {1 1/8}.").unwrap(),
            "Add 3/4 and 1 1/8."
        );
        assert_eq!(shown("{-2/3} or {1250.5}").unwrap(), "−2/3 or 1,250.5");
        assert_eq!(
            shown("no <b>markup</b> & no {12}").unwrap(),
            "no <b>markup</b> & no 12"
        );
    }

    #[test]
    fn other_braces_are_a_fault() {
        for text in [
            "{x}",
            "{",
            "a } b",
            "{3/0}",
            "{1/2/3}",
            "{}",
            "{1 2 3/4}",
            "{1,5}",
        ] {
            assert!(
                matches!(shown(text), Err(LineFault::BadBraces { .. })),
                "{text}"
            );
        }
    }

    #[test]
    fn each_language_keeps_its_own_fractions() {
        let [en, es] = ["en", "es"].map(|tag| Language::tagged(tag).unwrap());
        let text = Text::one(en, "Half of {1/3}").with(es, "La mitad de {1/3} y {2/3}");
        let say = say_of(&text).unwrap();
        assert_eq!(text::say(es.into(), &say).unwrap(), "La mitad de 1/3 y 2/3");
        assert_eq!(text::say(en.into(), &say).unwrap(), "Half of 1/3");
    }
}
