//! Signs that no name or title has.

/// Whether a sign steers a terminal or a line of text instead of being a part of it: a control
/// character, or one that embeds, isolates or overrides the direction of writing (Unicode UAX #9).
///
/// Names and titles from outside have none, so that no name can change how the text around it reads.
#[must_use]
pub fn steers(sign: char) -> bool {
    sign.is_control() || matches!(sign, '\u{2028}'..='\u{202e}' | '\u{2066}'..='\u{2069}')
}

/// Returns a typed name or title without the signs that turn the direction of writing: some programs
/// put them around what is copied from them. Control characters stay, for the reader to refuse.
#[must_use]
pub fn without_turns(text: &str) -> String {
    (text.chars())
        .filter(|sign| sign.is_control() || !steers(*sign))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_turns_the_direction_or_steers_a_terminal_is_found_and_no_letter_is() {
        // The explicit formatting characters of UAX #9, table 1, without its two implicit marks.
        for turns in
            "\u{202a}\u{202b}\u{202c}\u{202d}\u{202e}\u{2066}\u{2067}\u{2068}\u{2069}".chars()
        {
            assert!(steers(turns), "{:x}", u32::from(turns));
        }
        assert!("\u{1b}\u{9b}\n\0\u{2028}".chars().all(steers));
        assert_eq!(without_turns("\u{202a}Ana\u{202c}\n"), "Ana\n");
        assert!(!"Zoë Ó’Brien-Nuñez ß 李 علي שרה ’".chars().any(steers));
    }
}
