//! Limits of what a teacher's file says.

use super::{LineFault, column_in};
use crate::{Text, steers};

/// How many lines a text may have.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lines {
    /// One.
    One,
    /// One or more.
    Several,
}

/// Whether a text must not have this character: a control character, one for private use
/// (exercises mark mathematics by such), or one that turns the direction of writing.
fn is_bad(c: char, lines: Lines) -> bool {
    (steers(c) && !(c == '\n' && lines == Lines::Several)) || ('\u{e000}'..='\u{f8ff}').contains(&c)
}

/// Checks a text without languages: not empty, no bad characters, at most `most_chars`
/// characters.
pub fn check_string(
    text: &str,
    column: &str,
    most_chars: usize,
    lines: Lines,
) -> Result<(), LineFault> {
    if text.trim().is_empty() {
        return Err(LineFault::empty(column));
    }
    if text.chars().any(|c| is_bad(c, lines)) {
        return Err(LineFault::BadCharacter {
            column: column.into(),
        });
    }
    let chars = text.chars().count();
    if chars > most_chars {
        return Err(LineFault::TooLong {
            column: column.into(),
            chars: u32::try_from(chars).unwrap_or(u32::MAX),
            most: u32::try_from(most_chars).unwrap_or(u32::MAX),
        });
    }
    Ok(())
}

/// Checks a text in each of its languages, as [`check_string`]. If it has several, a fault
/// names the column with the tag of the language.
pub fn check_text(
    text: &Text,
    column: &str,
    most_chars: usize,
    lines: Lines,
) -> Result<(), LineFault> {
    let is_only = text.iter().count() == 1;
    for (language, one) in text.iter() {
        if is_only {
            check_string(one, column, most_chars, lines)?;
        } else {
            check_string(one, &column_in(column, language), most_chars, lines)?;
        }
    }
    Ok(())
}

/// Checks that there are at most `most` parts in a column.
pub fn check_count(found: usize, most: usize, column: &str) -> Result<(), LineFault> {
    if found > most {
        return Err(LineFault::TooMany {
            column: column.into(),
            found: u32::try_from(found).unwrap_or(u32::MAX),
            most: u32::try_from(most).unwrap_or(u32::MAX),
        });
    }
    Ok(())
}
