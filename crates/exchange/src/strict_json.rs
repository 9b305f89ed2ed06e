//! JSON from outside. One pass checks the caps and stores nothing; then the JSON is
//! read into its type.
//!
//! RFC 8259 does not say what a repeated name means; here it is refused, as are
//! texts, lists and depths beyond the caps.

use super::Refusal;
use super::limits::Caps;
use serde::Deserialize;
use serde::de::{DeserializeOwned, DeserializeSeed, MapAccess, SeqAccess, Visitor};
use std::borrow::Cow;
use std::cell::{Cell, RefCell};
use std::collections::BTreeSet;
use std::fmt;

/// The longest `at` of a [`Refusal::BadContent`], in characters.
const LONGEST_PLACE_CHARS: usize = 80;

/// Reads `json` into `T` within `caps`.
///
/// # Errors
/// Fails with [`Refusal::TooManyEntries`] if there are too many entries or values, with
/// [`Refusal::NewerFormat`] if `format` is above `known_format`, else with
/// [`Refusal::BadContent`].
pub(super) fn read<T: DeserializeOwned>(
    json: &[u8],
    caps: &Caps,
    known_format: u32,
) -> Result<T, Refusal> {
    check_caps(json, caps)?;
    let format = format_of(json)?;
    if format > known_format {
        return Err(Refusal::NewerFormat {
            found: format,
            known: known_format,
        });
    }
    if format == 0 {
        return Err(bad("format"));
    }
    // Tracking the place takes time, so it is done only to name a fault.
    if let Ok(read) = serde_json::from_slice(json) {
        return Ok(read);
    }
    let mut reader = serde_json::Deserializer::from_slice(json);
    serde_path_to_error::deserialize(&mut reader).map_err(|error| bad(error.path().to_string()))
}

/// Returns a [`Refusal::BadContent`] at a place.
pub(super) fn bad(at: impl Into<String>) -> Refusal {
    let at: String = at.into();
    Refusal::BadContent {
        at: at.chars().take(LONGEST_PLACE_CHARS).collect(),
    }
}

/// Reads the number `format` and stops behind it. [`check_caps`] has checked the JSON before: it is
/// whole, and no name is repeated.
fn format_of(json: &[u8]) -> Result<u32, Refusal> {
    struct Head<'f>(&'f Cell<Option<u32>>);
    impl<'de> Visitor<'de> for Head<'_> {
        type Value = ();

        fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
            f.write_str("an object with a format")
        }

        fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<(), A::Error> {
            while let Some(Name(name)) = map.next_key()? {
                if name == "format" {
                    self.0.set(Some(map.next_value()?));
                    // Only an error stops the reader.
                    return Err(serde::de::Error::custom("found"));
                }
                map.next_value::<serde::de::IgnoredAny>()?;
            }
            Ok(())
        }
    }
    let found = Cell::new(None);
    let mut reader = serde_json::Deserializer::from_slice(json);
    let _ = serde::Deserializer::deserialize_map(&mut reader, Head(&found));
    found.get().ok_or_else(|| bad("format"))
}

/// Checks the whole JSON within the caps.
pub(super) fn check_caps(json: &[u8], caps: &Caps) -> Result<(), Refusal> {
    let state = State {
        caps: *caps,
        values: Cell::new(0),
        refusal: RefCell::new(None),
    };
    let mut reader = serde_json::Deserializer::from_slice(json);
    let walked = Value {
        state: &state,
        depth: 0,
    }
    .deserialize(&mut reader)
    .and_then(|()| reader.end());
    match (state.refusal.take(), walked) {
        (Some(refusal), _) => Err(refusal),
        (None, Ok(())) => Ok(()),
        (None, Err(error)) => Err(bad(format!(
            "line {} column {}",
            error.line(),
            error.column()
        ))),
    }
}

struct State {
    caps: Caps,
    values: Cell<u64>,
    refusal: RefCell<Option<Refusal>>,
}

impl State {
    fn refuse<E: serde::de::Error>(&self, refusal: Refusal) -> E {
        let error = E::custom(&refusal);
        *self.refusal.borrow_mut() = Some(refusal);
        error
    }

    fn count<E: serde::de::Error>(&self, entries: u64) -> Result<(), E> {
        let most = self.caps.list_entries;
        if entries > most {
            return Err(self.refuse(Refusal::TooManyEntries { most }));
        }
        Ok(())
    }
}

#[derive(Clone, Copy)]
struct Value<'s> {
    state: &'s State,
    depth: u32,
}

impl Value<'_> {
    fn deeper<E: serde::de::Error>(self) -> Result<Self, E> {
        let depth = self.depth + 1;
        if depth > self.state.caps.depth {
            return Err(self.state.refuse(bad("nesting")));
        }
        Ok(Self { depth, ..self })
    }

    fn text<E: serde::de::Error>(self, text: &str) -> Result<(), E> {
        if text.len() > self.state.caps.text_bytes {
            return Err(self.state.refuse(bad("text")));
        }
        Ok(())
    }
}

impl<'de> DeserializeSeed<'de> for Value<'_> {
    type Value = ();

    fn deserialize<D: serde::Deserializer<'de>>(self, reader: D) -> Result<(), D::Error> {
        let values = self.state.values.get() + 1;
        self.state.values.set(values);
        let most = self.state.caps.values;
        if values > most {
            return Err(self.state.refuse(Refusal::TooManyEntries { most }));
        }
        reader.deserialize_any(self)
    }
}

impl<'de> Visitor<'de> for Value<'_> {
    type Value = ();

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("JSON")
    }

    fn visit_unit<E>(self) -> Result<(), E> {
        Ok(())
    }

    fn visit_bool<E>(self, _: bool) -> Result<(), E> {
        Ok(())
    }

    fn visit_u64<E>(self, _: u64) -> Result<(), E> {
        Ok(())
    }

    fn visit_i64<E>(self, _: i64) -> Result<(), E> {
        Ok(())
    }

    fn visit_f64<E>(self, _: f64) -> Result<(), E> {
        Ok(())
    }

    fn visit_str<E: serde::de::Error>(self, text: &str) -> Result<(), E> {
        self.text(text)
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> Result<(), A::Error> {
        let inner = self.deeper()?;
        let mut entries = 0;
        while list.next_element_seed(inner)?.is_some() {
            entries += 1;
            self.state.count(entries)?;
        }
        Ok(())
    }

    fn visit_map<A: MapAccess<'de>>(self, mut object: A) -> Result<(), A::Error> {
        let inner = self.deeper()?;
        let mut names = Names::default();
        let mut entries = 0;
        while let Some(Name(name)) = object.next_key()? {
            self.text(&name)?;
            if names.has(&name) {
                return Err(self.state.refuse(bad(format!("{name} given twice"))));
            }
            names.add(name);
            entries += 1;
            self.state.count(entries)?;
            object.next_value_seed(inner)?;
        }
        Ok(())
    }
}

/// A name in an object. It is not copied if it has no escapes.
#[derive(Deserialize)]
#[serde(transparent)]
struct Name<'t>(#[serde(borrow)] Cow<'t, str>);

/// The names of an object so far. Most objects have few names; comparing those one by one is
/// fastest and allocates nothing.
#[derive(Default)]
struct Names<'t> {
    few: [Cow<'t, str>; Names::FEW],
    held: usize,
    many: BTreeSet<Cow<'t, str>>,
}

impl<'t> Names<'t> {
    const FEW: usize = 8;

    fn has(&self, name: &str) -> bool {
        self.few.iter().take(self.held).any(|one| one == name) || self.many.contains(name)
    }

    fn add(&mut self, name: Cow<'t, str>) {
        match self.few.get_mut(self.held) {
            Some(place) => {
                *place = name;
                self.held += 1;
            }
            None => {
                self.many.insert(name);
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::limits::HAND_IN_CAPS;

    #[derive(Debug, Deserialize, PartialEq)]
    #[serde(deny_unknown_fields)]
    struct Small {
        format: u32,
        list: Vec<u32>,
    }

    fn refusal(json: &str) -> Refusal {
        read::<Small>(json.as_bytes(), &HAND_IN_CAPS, 1).unwrap_err()
    }

    #[test]
    fn plain_json_is_read() {
        let small: Small = read(br#"{"format":1,"list":[1,2]}"#, &HAND_IN_CAPS, 1).unwrap();
        assert_eq!(small.list, [1, 2]);
    }

    #[test]
    fn a_name_given_twice_is_refused_even_when_written_with_escapes() {
        for json in [
            r#"{"format":1,"list":[],"list":[]}"#,
            r#"{"format":1,"list":[],"l\u0069st":[]}"#,
            r#"{"format":1,"list":[{"a":1,"a":2}]}"#,
            r#"{"format":1,"list":[{"a":1,"b":1,"c":1,"d":1,"e":1,"f":1,"g":1,"h":1,"i":1,"j":1,"i":2}]}"#,
        ] {
            assert!(
                matches!(refusal(json), Refusal::BadContent { at } if at.ends_with("given twice"))
            );
        }
    }

    #[test]
    fn depth_counts_and_texts_are_capped() {
        let deep = format!(
            r#"{{"format":1,"list":{}1{}}}"#,
            "[".repeat(5000),
            "]".repeat(5000)
        );
        assert_eq!(refusal(&deep), bad("nesting"));
        let long = format!(r#"{{"format":1,"list":[{}1]}}"#, "1,".repeat(20_000));
        assert_eq!(refusal(&long), Refusal::TooManyEntries { most: 20_000 });
        let row = format!("[{}1],", "1,".repeat(9_999));
        let wide = format!(r#"{{"format":1,"list":[{}1]}}"#, row.repeat(61));
        assert_eq!(refusal(&wide), Refusal::TooManyEntries { most: 600_000 });
        let text = format!(r#"{{"format":1,"list":["{}"]}}"#, "x".repeat(257));
        assert_eq!(refusal(&text), bad("text"));
    }

    #[test]
    fn what_is_not_as_described_is_named_by_its_place() {
        assert_eq!(refusal(r#"{"format":1,"list":[1,"x"]}"#), bad("list[1]"));
        assert_eq!(
            refusal(r#"{"format":1,"list":[],"note":"hi"}"#),
            bad("note")
        );
        assert_eq!(
            refusal(r#"{"format":1,"list":[NaN]}"#),
            bad("line 1 column 21")
        );
        assert_eq!(
            refusal(r#"{"format":1,"list":[1]} x"#),
            bad("line 1 column 25")
        );
        assert_eq!(refusal(r#"{"list":[1]}"#), bad("format"));
        assert_eq!(refusal(r#"{"format":0,"list":[1]}"#), bad("format"));
        assert_eq!(
            refusal(r#"{"format":2,"new":true}"#),
            Refusal::NewerFormat { found: 2, known: 1 }
        );
    }
}
