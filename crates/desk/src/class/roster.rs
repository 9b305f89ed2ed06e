//! Reads a pasted roster.

/// Characters of a name at most.
pub const LONGEST_NAME_CHARACTERS: usize = 40;

/// Seats of a class at most.
pub const MOST_SEATS: usize = 60;

/// Reads names from pasted text, one from each line. Returns them with the numbers, from 1, of lines
/// without a valid name.
///
/// Of a line with several columns (tab, semicolon or comma) only the first is read, so that no other
/// data of a list gets in. Numbers before a name ("1.", "12)") are dropped. Two students may have
/// the same name.
#[must_use]
pub fn read_roster(text: &str) -> (Vec<String>, Vec<usize>) {
    let mut names = Vec::new();
    let mut left_out = Vec::new();
    for (index, line) in text.lines().enumerate() {
        if line.trim().is_empty() {
            continue;
        }
        let name = first_column(line);
        if name.is_empty()
            || name.chars().count() > LONGEST_NAME_CHARACTERS
            || name.chars().any(char::is_control)
            || names.len() == MOST_SEATS
        {
            left_out.push(index + 1);
        } else {
            names.push(name.to_owned());
        }
    }
    (names, left_out)
}

fn first_column(line: &str) -> &str {
    let column = line
        .split(['\t', ';', ','])
        .next()
        .unwrap_or_default()
        .trim()
        .trim_matches('"')
        .trim();
    let without_digits = column.trim_start_matches(|c: char| c.is_ascii_digit());
    match without_digits.strip_prefix(['.', ')']) {
        Some(rest) if without_digits.len() < column.len() => rest.trim(),
        _ => column,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(text: &str, names: &[&str], left_out: &[usize]) {
        let (found, out) = read_roster(text);
        assert_eq!(found, names);
        assert_eq!(out, left_out);
    }

    #[test]
    fn one_name_a_line_with_or_without_numbers() {
        check(
            "Amina\n\n  Bao \n3. Carlos\n4) Dara\r\n",
            &["Amina", "Bao", "Carlos", "Dara"],
            &[],
        );
    }

    #[test]
    fn only_the_first_column_is_taken_in() {
        check(
            "Amina\tamina@example.org\t555\n\"Bao\",x\nCarlos;y",
            &["Amina", "Bao", "Carlos"],
            &[],
        );
    }

    #[test]
    fn what_cannot_be_a_name_is_left_out_by_line() {
        let long = "x".repeat(41);
        check(
            &format!("Amina\n{long}\n\t555\nBao"),
            &["Amina", "Bao"],
            &[2, 3],
        );
        check("2B\n7", &["2B", "7"], &[]);
    }

    #[test]
    fn the_same_name_twice_is_two_seats() {
        check("Ana\nAna", &["Ana", "Ana"], &[]);
    }
}
