//! How values are written in JSON.

/// A school date, exactly `YYYY-MM-DD`.
pub mod school_date {
    use chrono::{Datelike, NaiveDate};
    use serde::de::{Deserializer, Error, Visitor};
    use serde::ser::{Error as _, Serializer};
    use std::fmt;
    use surefoot_catalogue::plain_date::plain_date;

    /// Writes the date. Fails if its year has not four digits, because [`deserialize`] would
    /// refuse it.
    pub fn serialize<S: Serializer>(date: &NaiveDate, writer: S) -> Result<S::Ok, S::Error> {
        if !(0..=9999).contains(&date.year()) {
            return Err(S::Error::custom("the year has not four digits"));
        }
        writer.collect_str(date)
    }

    /// Reads the date. Fails for every other way of writing it.
    pub fn deserialize<'de, D: Deserializer<'de>>(reader: D) -> Result<NaiveDate, D::Error> {
        reader.deserialize_str(Text)
    }

    /// Reads the text without copying it.
    struct Text;

    impl Visitor<'_> for Text {
        type Value = NaiveDate;

        fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
            f.write_str("a date as YYYY-MM-DD")
        }

        fn visit_str<E: Error>(self, text: &str) -> Result<NaiveDate, E> {
            plain_date(text).ok_or_else(|| E::custom("not a date as YYYY-MM-DD"))
        }
    }
}

/// Reads a value that may be `null` but must not be left out.
pub fn present<'de, D, T>(reader: D) -> Result<Option<T>, D::Error>
where
    D: serde::Deserializer<'de>,
    T: serde::Deserialize<'de>,
{
    serde::Deserialize::deserialize(reader)
}
