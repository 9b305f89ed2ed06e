//! Small helpers for how values stand in JSON.

/// A school date, exactly `YYYY-MM-DD`.
pub(super) mod school_date {
    use chrono::NaiveDate;
    use serde::{Deserialize as _, Deserializer, Serializer, de::Error as _};

    pub fn serialize<S: Serializer>(date: &NaiveDate, writer: S) -> Result<S::Ok, S::Error> {
        writer.collect_str(date)
    }

    pub fn deserialize<'de, D: Deserializer<'de>>(reader: D) -> Result<NaiveDate, D::Error> {
        let text = String::deserialize(reader)?;
        let shape_ok = text.len() == 10
            && text.bytes().enumerate().all(|(place, byte)| match place {
                4 | 7 => byte == b'-',
                _ => byte.is_ascii_digit(),
            });
        text.parse()
            .ok()
            .filter(|_| shape_ok)
            .ok_or_else(|| D::Error::custom("not a date as YYYY-MM-DD"))
    }
}

/// A value that may be `null` but must stand there.
pub(super) fn present<'de, D, T>(reader: D) -> Result<Option<T>, D::Error>
where
    D: serde::Deserializer<'de>,
    T: serde::Deserialize<'de>,
{
    serde::Deserialize::deserialize(reader)
}
