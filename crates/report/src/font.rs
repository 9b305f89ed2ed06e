//! The fonts of prints, and the width of text.
//!
//! Words are set in the fonts that are built in. A word with a sign that these lack is set as a
//! whole in a font of the system (`system_fonts`).

pub use crate::built_in::Face;
use crate::built_in::{built_in, find};
use crate::glyph::{Glyph, is_invisible};
use crate::system_fonts::{self, SystemFont};
use std::collections::BTreeSet;
use std::ops::Range;
use unicode_bidi::{BidiInfo, Level};
use unicode_script::{Script, UnicodeScript};

/// A font that text is set in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum FontOf {
    BuiltIn(Face),
    System(SystemFont),
}

/// Glyphs of one font, from left to right.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Run {
    pub font: FontOf,
    pub glyphs: Vec<Glyph>,
}

impl Run {
    /// The width in ems.
    pub fn width(&self) -> f32 {
        self.glyphs.iter().map(|glyph| glyph.advance).sum()
    }
}

/// Whether every character is in the built-in fonts and is written from left to right.
fn is_simple(text: &str, face: Face) -> bool {
    text.chars().all(|c| find(face, c).is_some())
}

/// Adds a glyph to the last run, if that has the same font.
fn put(runs: &mut Vec<Run>, font: FontOf, glyph: Glyph) {
    match runs.last_mut() {
        Some(run) if run.font == font => run.glyphs.push(glyph),
        _ => runs.push(Run {
            font,
            glyphs: vec![glyph],
        }),
    }
}

/// The runs of a text on one line, from left to right.
pub(crate) fn runs(text: &str, face: Face) -> Vec<Run> {
    let mut runs = Vec::new();
    if is_simple(text, face) {
        put_signs(&mut runs, text, 0..text.len(), face, false);
        return runs;
    }
    let bidi = BidiInfo::new(text, Some(Level::ltr()));
    for paragraph in &bidi.paragraphs {
        let (levels, ranges) = bidi.visual_runs(paragraph, paragraph.range.clone());
        for range in ranges {
            let rtl = levels.get(range.start).is_some_and(Level::is_rtl);
            let mut words = words_of(text, range);
            if rtl {
                words.reverse();
            }
            for (word, script) in words {
                put_word(&mut runs, text, word, script, face, rtl);
            }
        }
    }
    runs
}

/// Splits a range of a text into spaces and words, each of one script.
fn words_of(text: &str, range: Range<usize>) -> Vec<(Range<usize>, Script)> {
    let mut words: Vec<(Range<usize>, Script)> = Vec::new();
    let mut after_space = true;
    let of = text.get(range.clone()).unwrap_or_default();
    for (at, c) in of.char_indices() {
        let here = range.start + at..range.start + at + c.len_utf8();
        let script = c.script();
        let space = c.is_whitespace();
        match words.last_mut() {
            Some((word, of_word)) if !space && !after_space => {
                let shared = |s: Script| matches!(s, Script::Common | Script::Inherited);
                if shared(script) || shared(*of_word) || script == *of_word || cjk(script, *of_word)
                {
                    word.end = here.end;
                    if shared(*of_word) {
                        *of_word = script;
                    }
                } else {
                    words.push((here, script));
                }
            }
            _ => words.push((here, script)),
        }
        after_space = space;
    }
    words
}

/// Japanese mixes three scripts in a word.
fn cjk(one: Script, other: Script) -> bool {
    let all = [Script::Han, Script::Hiragana, Script::Katakana];
    all.contains(&one) && all.contains(&other)
}

fn put_word(
    runs: &mut Vec<Run>,
    text: &str,
    word: Range<usize>,
    script: Script,
    face: Face,
    rtl: bool,
) {
    let of = text.get(word.clone()).unwrap_or_default();
    if !is_simple(of, face)
        && let Some((font, glyphs)) =
            system_fonts::shape(of, face == Face::Bold, rtl, script.short_name())
    {
        for mut glyph in glyphs {
            glyph.text = glyph.text.start + word.start..glyph.text.end + word.start;
            put(runs, FontOf::System(font), glyph);
        }
        return;
    }
    put_signs(runs, text, word, face, rtl);
}

/// Adds each character by itself. A character without a font becomes a question mark, so that it
/// is visible.
fn put_signs(runs: &mut Vec<Run>, text: &str, word: Range<usize>, face: Face, rtl: bool) {
    let mut signs: Vec<(usize, char)> = (text.get(word.clone()).unwrap_or_default())
        .char_indices()
        .collect();
    if rtl {
        signs.reverse();
    }
    for (at, c) in signs {
        let range = word.start + at..word.start + at + c.len_utf8();
        if let Some((face, glyph)) = find(face, c) {
            let (face, glyph) = built_in(face, glyph, range);
            put(runs, FontOf::BuiltIn(face), glyph);
        } else if is_invisible(c) {
        } else if let Some((font, glyphs)) = system_fonts::shape(
            c.encode_utf8(&mut [0; 4]),
            face == Face::Bold,
            rtl,
            c.script().short_name(),
        ) {
            for glyph in glyphs {
                let glyph = Glyph {
                    text: range.clone(),
                    ..glyph
                };
                put(runs, FontOf::System(font), glyph);
            }
        } else if let Some((face, glyph)) = find(face, '?') {
            let (face, glyph) = built_in(face, glyph, range);
            put(runs, FontOf::BuiltIn(face), glyph);
        }
    }
}

/// The width of text in points.
#[must_use]
pub fn width(text: &str, face: Face, size: f32) -> f32 {
    runs(text, face).iter().map(Run::width).sum::<f32>() * size
}

/// The signs of a text that no font on this computer has. They are printed as question marks.
#[must_use]
pub fn missing_signs(text: &str) -> BTreeSet<char> {
    let has = |c: char| find(Face::Regular, c).is_some() || is_invisible(c) || system_fonts::has(c);
    text.chars().filter(|c| !has(*c)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use surefoot_catalogue::Language;

    /// A code point that never gets a sign.
    const NO_SIGN: char = '\u{10ffff}';

    #[test]
    fn the_fonts_have_each_character_of_the_messages() {
        for language in Language::all() {
            for (area, text) in language.message_files() {
                let lines = text.lines().filter(|line| !line.starts_with('#'));
                has_all(&lines.collect::<String>(), &format!("{language:?} {area}"));
            }
        }
    }

    #[test]
    fn the_fonts_have_what_names_and_mathematics_need() {
        has_all(
            "AaZz09áéíóúüñÁÉÍÓÚÜÑ¿¡«»×÷−±°¢$€…–—‘’“”·½ŁłŠšőğ≤≥≠≈⋅→",
            "names and mathematics",
        );
    }

    fn has_all(text: &str, of: &str) {
        for face in [Face::Regular, Face::Bold] {
            for c in text.chars() {
                assert!(find(face, c).is_some(), "{of}: {face:?} lacks {c:?}");
            }
        }
    }

    #[test]
    fn a_sign_without_a_font_is_seen_and_named() {
        let text = format!("Ana {NO_SIGN}");
        assert_eq!(missing_signs(&text), [NO_SIGN].into());
        let question = width("?", Face::Regular, 10.0);
        let more = width(&text, Face::Regular, 10.0) - width("Ana ", Face::Regular, 10.0);
        assert!((more - question).abs() < 1e-4);
        assert_eq!(missing_signs("Ana \u{200f}José"), BTreeSet::new());
        assert!(width("iii", Face::Regular, 10.0) < width("mmm", Face::Regular, 10.0));
    }

    #[test]
    fn words_are_of_one_script_and_keep_their_marks() {
        let parts = |text: &str| -> Vec<String> {
            words_of(text, 0..text.len())
                .into_iter()
                .map(|(range, _)| text[range].to_owned())
                .collect()
        };
        assert_eq!(
            parts("Seat 3 · (李明)"),
            ["Seat", " ", "3", " ", "·", " ", "(李明)"]
        );
        assert_eq!(parts("AnaОля"), ["Ana", "Оля"]);
        assert_eq!(parts("田中さくら"), ["田中さくら"]);
        assert_eq!(parts("Jose\u{301}"), ["Jose\u{301}"]);
    }

    #[test]
    fn every_byte_of_a_text_has_a_glyph_whatever_the_script() {
        for text in [
            "Ana",
            "Thảo Nguyễn",
            "Seat 3 · محمد (4)",
            "דוד and 李明",
            "अनिता",
            "x\u{10ffff}y",
        ] {
            for face in [Face::Regular, Face::Bold] {
                let mut covered = vec![false; text.len()];
                for run in runs(text, face) {
                    for glyph in run.glyphs {
                        covered[glyph.text].fill(true);
                    }
                }
                assert!(covered.into_iter().all(|one| one), "{text} {face:?}");
            }
        }
    }

    #[test]
    fn words_from_right_to_left_come_in_the_order_of_the_eye() {
        // Without a font for them, letters are single question marks, from the right.
        let text = "a \u{5d0}\u{5d1} \u{5d2} b";
        let starts: Vec<usize> = runs(text, Face::Regular)
            .into_iter()
            .flat_map(|run| run.glyphs)
            .map(|glyph| glyph.text.start)
            .collect();
        assert_eq!(starts, [0, 1, 7, 6, 4, 2, 9, 10]);
    }
}
