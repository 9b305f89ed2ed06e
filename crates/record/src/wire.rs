//! Small helpers for how values stand in JSON.

/// A school date, exactly `YYYY-MM-DD`.
pub mod school_date {
    use chrono::NaiveDate;
    use serde::de::{Deserializer, Error, Visitor};
    use serde::ser::Serializer;
    use std::fmt;
    use surefoot_catalogue::plain_date::plain_date;

    /// Writes the date.
    ///
    /// # Errors
    /// The writer's.
    pub fn serialize<S: Serializer>(date: &NaiveDate, writer: S) -> Result<S::Ok, S::Error> {
        writer.collect_str(date)
    }

    /// Reads the date.
    ///
    /// # Errors
    /// The reader's, or a text that is written in another way.
    pub fn deserialize<'de, D: Deserializer<'de>>(reader: D) -> Result<NaiveDate, D::Error> {
        reader.deserialize_str(Text)
    }

    /// Read where it stands, without a copy.
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

/// A value that may be `null` but must stand there.
pub fn present<'de, D, T>(reader: D) -> Result<Option<T>, D::Error>
where
    D: serde::Deserializer<'de>,
    T: serde::Deserialize<'de>,
{
    serde::Deserialize::deserialize(reader)
}
