//! The fonts of the system, for words that the built-in fonts lack a sign of.
//!
//! They are looked for when the first such word is printed, and never before. No file that a
//! person chose is opened. Which font sets a word depends on the device, so only prints with such
//! words differ between devices.

use crate::glyph::{Glyph, is_invisible};
use fontdb::{Database, FaceInfo, ID, Stretch, Style, Weight};
use rustybuzz::{Direction, Script, UnicodeBuffer};
use std::collections::HashMap;
use std::sync::{Mutex, MutexGuard, OnceLock, PoisonError};
use ttf_parser::{Face as Parsed, Permissions, Tag};

/// A font of the system.
pub(crate) type SystemFont = ID;

/// A word in a font: its glyphs from left to right.
type Shaped = (SystemFont, Vec<Glyph>);

/// Words that are kept shaped at most, because each is measured several times.
const MOST_KEPT: usize = 4096;

/// The word, bold or not, from right to left or not.
type Word = (String, bool, bool);

struct SystemFonts {
    fonts: Database,
    /// Fonts that may be embedded, best first: regular and bold.
    best: [Vec<SystemFont>; 2],
    kept: HashMap<Word, Option<Shaped>>,
    known: HashMap<char, bool>,
}

fn of_this_system() -> MutexGuard<'static, SystemFonts> {
    static FONTS: OnceLock<Mutex<SystemFonts>> = OnceLock::new();
    let fonts = FONTS.get_or_init(|| {
        let mut fonts = Database::new();
        #[cfg(target_os = "android")]
        fonts.load_fonts_dir("/system/fonts");
        #[cfg(not(target_os = "android"))]
        fonts.load_system_fonts();
        Mutex::new(SystemFonts::new(fonts))
    });
    fonts.lock().unwrap_or_else(PoisonError::into_inner)
}

/// Sets a word in a font that has all its signs; `None` if there is none. `script` is its ISO 15924
/// code.
pub(crate) fn shape(word: &str, bold: bool, rtl: bool, script: &str) -> Option<Shaped> {
    of_this_system().shape(word, bold, rtl, script)
}

/// Whether a font of the system has a sign.
pub(crate) fn has(sign: char) -> bool {
    of_this_system().has(sign)
}

/// The file of a font, and which of its fonts it is.
pub(crate) fn file(font: SystemFont) -> Option<(Vec<u8>, u32)> {
    (of_this_system().fonts).with_face_data(font, |bytes, nth| (bytes.to_vec(), nth))
}

impl SystemFonts {
    fn new(fonts: Database) -> Self {
        let usable: Vec<&FaceInfo> = fonts
            .faces()
            .filter(|face| may_print(&fonts, face))
            .collect();
        let best = [Weight::NORMAL, Weight::BOLD].map(|weight| {
            let mut sorted = usable.clone();
            sorted.sort_by_cached_key(|face| rank(face, weight));
            sorted.into_iter().map(|face| face.id).collect()
        });
        Self {
            fonts,
            best,
            kept: HashMap::new(),
            known: HashMap::new(),
        }
    }

    fn has(&mut self, sign: char) -> bool {
        if let Some(known) = self.known.get(&sign) {
            return *known;
        }
        let has = self
            .font_with(sign.encode_utf8(&mut [0; 4]), false)
            .is_some();
        self.known.insert(sign, has);
        has
    }

    /// The best font with all signs of a word.
    fn font_with(&self, word: &str, bold: bool) -> Option<SystemFont> {
        let [regular, of_bold] = &self.best;
        let has_all = |font: &SystemFont| {
            let has = self.fonts.with_face_data(*font, |bytes, nth| {
                Parsed::parse(bytes, nth).is_ok_and(|face| {
                    (word.chars())
                        .filter(|c| !is_invisible(*c))
                        .all(|c| face.glyph_index(c).is_some_and(|glyph| glyph.0 != 0))
                })
            });
            has == Some(true)
        };
        let best = if bold { of_bold } else { regular };
        best.iter().copied().find(has_all)
    }

    fn shape(&mut self, word: &str, bold: bool, rtl: bool, script: &str) -> Option<Shaped> {
        let key = (word.to_owned(), bold, rtl);
        if let Some(kept) = self.kept.get(&key) {
            return kept.clone();
        }
        let shaped = self.font_with(word, bold).and_then(|font| {
            let glyphs = self.fonts.with_face_data(font, |bytes, nth| {
                glyphs_of(&rustybuzz::Face::from_slice(bytes, nth)?, word, rtl, script)
            });
            Some((font, glyphs.flatten()?))
        });
        if self.kept.len() >= MOST_KEPT {
            self.kept.clear();
        }
        self.kept.insert(key, shaped.clone());
        shaped
    }
}

/// Whether a font has outlines, is meant for reading, and allows to be embedded in a document.
fn may_print(fonts: &Database, face: &FaceInfo) -> bool {
    // Fonts of last resort: the same placeholder for many characters.
    let stands_in = (face.families.iter())
        .any(|(family, _)| family.contains("LastResort") || family.contains("Blank"));
    let fits = fonts.with_face_data(face.id, |bytes, nth| {
        Parsed::parse(bytes, nth).is_ok_and(|parsed| {
            let has = |tag| parsed.raw_face().table(Tag::from_bytes(tag)).is_some();
            let outlined = has(b"glyf") || has(b"CFF ") || has(b"CFF2");
            outlined && parsed.permissions() != Some(Permissions::Restricted)
        })
    });
    !stands_in && fits == Some(true)
}

/// The order of fonts: upright, of even width, of the weight, without serifs.
fn rank(face: &FaceInfo, weight: Weight) -> (bool, bool, bool, u16, u8, String, u32) {
    let family = face.families.first().map_or("", |(family, _)| family);
    let has = |parts: &[&str]| parts.iter().any(|part| family.contains(part));
    let kind = if has(&[
        "Serif", "Mono", "Math", "Symbol", "Display", "Kufi", "Nastaliq",
    ]) {
        2
    } else {
        u8::from(!has(&[
            "Sans", "Gothic", "UI", "Arial", "Roboto", "PingFang",
        ]))
    };
    (
        face.style != Style::Normal,
        face.monospaced,
        face.stretch != Stretch::Normal,
        face.weight.0.abs_diff(weight.0),
        kind,
        family.to_owned(),
        face.index,
    )
}

/// Shapes a word; `None` if the font lacks a sign after all.
fn glyphs_of(
    face: &rustybuzz::Face<'_>,
    word: &str,
    rtl: bool,
    script: &str,
) -> Option<Vec<Glyph>> {
    let mut buffer = UnicodeBuffer::new();
    buffer.push_str(word);
    buffer.set_direction(if rtl {
        Direction::RightToLeft
    } else {
        Direction::LeftToRight
    });
    if let Ok(tag) = <[u8; 4]>::try_from(script.as_bytes())
        && let Some(script) = Script::from_iso15924_tag(Tag::from_bytes(&tag))
    {
        buffer.set_script(script);
    }
    let shaped = rustybuzz::shape(face, &[], buffer);
    let starts: Vec<usize> = (shaped.glyph_infos().iter())
        .map(|info| info.cluster as usize)
        .collect();
    let em = face.units_per_em() as f32;
    let ems = |units: i32| units as f32 / em;
    (shaped.glyph_infos().iter().zip(shaped.glyph_positions()))
        .map(|(info, position)| {
            let start = info.cluster as usize;
            // A cluster ends where the next one of the text begins.
            let end =
                (starts.iter().copied().filter(|other| *other > start).min()).unwrap_or(word.len());
            (info.glyph_id != 0).then_some(Glyph {
                id: info.glyph_id,
                advance: ems(position.x_advance),
                right: ems(position.x_offset),
                up: ems(position.y_offset),
                text: start..end,
            })
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::built_in::Face;

    fn fonts() -> SystemFonts {
        let mut fonts = Database::new();
        for face in [Face::Bold, Face::Signs, Face::Regular] {
            fonts.load_font_data(face.bytes().to_vec());
        }
        SystemFonts::new(fonts)
    }

    #[test]
    fn the_font_has_the_weight_and_every_sign() {
        let mut fonts = fonts();
        let (regular, glyphs) = fonts.shape("Łódź", false, false, "Latn").unwrap();
        let (bold, _) = fonts.shape("Łódź", true, false, "Latn").unwrap();
        assert_eq!(fonts.fonts.face(regular).unwrap().weight, Weight::NORMAL);
        assert_eq!(fonts.fonts.face(bold).unwrap().weight, Weight::BOLD);
        assert_eq!(glyphs.len(), 4);
        assert_eq!(glyphs[0].text, 0..2);
        assert!(glyphs.iter().all(|glyph| glyph.advance > 0.2));
        assert!(fonts.shape("≤", false, false, "Zyyy").is_some());
        assert!(fonts.shape("Ł≤", false, false, "Latn").is_none());
        assert!(fonts.has('é') && !fonts.has('漢'));
    }

    #[test]
    fn from_right_to_left_the_last_letter_comes_first() {
        let (_, glyphs) = fonts().shape("abc", false, true, "Latn").unwrap();
        let starts: Vec<usize> = glyphs.iter().map(|glyph| glyph.text.start).collect();
        assert_eq!(starts, [2, 1, 0]);
    }
}
