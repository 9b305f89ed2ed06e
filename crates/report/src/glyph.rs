//! Glyphs of a run, and characters without one.

use std::ops::Range;

/// A glyph of a run. Lengths are in ems.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Glyph {
    pub id: u32,
    pub advance: f32,
    pub right: f32,
    pub up: f32,
    /// The bytes of the text that the glyph draws.
    pub text: Range<usize>,
}

/// Whether a character only tells how others are set.
pub(crate) fn is_invisible(c: char) -> bool {
    matches!(
        c,
        '\u{ad}' | '\u{61c}' | '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}'
            | '\u{2060}'..='\u{2069}' | '\u{fe00}'..='\u{fe0f}' | '\u{feff}'
    )
}
