//! Makes text that others wrote, such as a file name, safe to show.

use std::borrow::Cow;
use std::fmt::Write as _;
use surefoot_catalogue::steers;

/// Returns the text with every control character, and every character that changes the
/// direction of text, written as its code in JSON's form, such as `\\u202e`. The characters in
/// `kept` stay as they are.
#[must_use]
pub fn escaped<'t>(text: &'t str, kept: &[char]) -> Cow<'t, str> {
    let steers = |c: char| {
        let marks = matches!(c, '\u{061c}' | '\u{200e}' | '\u{200f}');
        (steers(c) || marks) && !kept.contains(&c)
    };
    if !text.contains(steers) {
        return Cow::Borrowed(text);
    }
    let mut plain = String::with_capacity(text.len() + 16);
    for c in text.chars() {
        if steers(c) {
            // Every such character has four digits.
            let _ = write!(plain, "\\u{:04x}", u32::from(c));
        } else {
            plain.push(c);
        }
    }
    Cow::Owned(plain)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_steers_a_terminal_or_a_line_is_written_as_its_code() {
        let name = "a\u{1b}[2J\u{9b}1m\u{202e}nidnahfs.\u{2066}\nß 👩‍🏫 ع";
        assert_eq!(
            escaped(name, &[]),
            "a\\u001b[2J\\u009b1m\\u202enidnahfs.\\u2066\\u000aß 👩‍🏫 ع"
        );
        assert_eq!(escaped("a\nb\tc", &['\n', '\t']), "a\nb\tc");
        let json = serde_json::to_string(name).unwrap();
        let read: String = serde_json::from_str(&escaped(&json, &[])).unwrap();
        assert_eq!(read, name, "JSON says the same");
    }
}
