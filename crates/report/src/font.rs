//! The embedded fonts, and the width of text.

use std::sync::OnceLock;
use ttf_parser::{Face as Parsed, GlyphId};

/// Regular or bold.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub enum Face {
    /// Weight 400.
    #[default]
    Regular,
    /// Weight 700.
    Bold,
    /// Signs that the font for words lacks.
    Signs,
}

impl Face {
    /// The font file.
    #[must_use]
    pub fn bytes(self) -> &'static [u8] {
        match self {
            Face::Regular => include_bytes!("../fonts/atkinson-hyperlegible-next-regular.ttf"),
            Face::Bold => include_bytes!("../fonts/atkinson-hyperlegible-next-bold.ttf"),
            Face::Signs => include_bytes!("../fonts/stix-two-math-signs.ttf"),
        }
    }

    fn parsed(self) -> Option<&'static Parsed<'static>> {
        static REGULAR: OnceLock<Option<Parsed<'static>>> = OnceLock::new();
        static BOLD: OnceLock<Option<Parsed<'static>>> = OnceLock::new();
        static SIGNS: OnceLock<Option<Parsed<'static>>> = OnceLock::new();
        let font = match self {
            Face::Regular => &REGULAR,
            Face::Bold => &BOLD,
            Face::Signs => &SIGNS,
        };
        font.get_or_init(|| Parsed::parse(self.bytes(), 0).ok())
            .as_ref()
    }

    fn glyph(self, character: char) -> Option<GlyphId> {
        self.parsed()?.glyph_index(character)
    }
}

/// A character as it is drawn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Drawn {
    /// The font that has it.
    pub face: Face,
    /// Its glyph.
    pub glyph: u16,
    /// Its advance width in ems.
    pub advance_em: f32,
}

/// Finds a character in the font asked for, or in the signs.
fn find(face: Face, character: char) -> Option<(Face, GlyphId)> {
    let character = match character {
        // Spaces of other widths are not in the fonts.
        '\u{a0}' | '\u{202f}' | '\u{2009}' | '\n' | '\t' => ' ',
        '\u{2010}' | '\u{2011}' => '-',
        other => other,
    };
    [face, Face::Signs]
        .into_iter()
        .find_map(|face| Some((face, face.glyph(character)?)))
}

/// How a character is drawn. A missing one becomes a question mark, so that it is visible.
#[must_use]
pub fn drawn(face: Face, character: char) -> Drawn {
    let Some((face, glyph)) = find(face, character).or_else(|| find(face, '?')) else {
        return Drawn {
            face,
            glyph: 0,
            advance_em: 0.5,
        };
    };
    let advance_em = face.parsed().map_or(0.5, |font| {
        f32::from(font.glyph_hor_advance(glyph).unwrap_or(500)) / f32::from(font.units_per_em())
    });
    Drawn {
        face,
        glyph: glyph.0,
        advance_em,
    }
}

/// The width of text in points.
#[must_use]
pub fn width(text: &str, face: Face, size: f32) -> f32 {
    text.chars().map(|c| drawn(face, c).advance_em).sum::<f32>() * size
}

#[cfg(test)]
mod tests {
    use super::*;
    use surefoot_catalogue::Language;

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
    fn a_missing_character_is_seen() {
        assert_eq!(find(Face::Regular, '漢'), None);
        assert_eq!(drawn(Face::Regular, '漢'), drawn(Face::Regular, '?'));
        assert!(width("iii", Face::Regular, 10.0) < width("mmm", Face::Regular, 10.0));
    }
}
