//! Whole numbers written out in words, in English and Spanish.

use surefoot_catalogue::Text2;

/// A number from 0 to 999,999,999 in words.
#[must_use]
pub fn spelled(n: i64) -> Text2 {
    Text2 {
        en: english(n),
        es: spanish(n, false),
    }
}

const EN_SMALL: [&str; 20] = [
    "zero",
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
    "thirteen",
    "fourteen",
    "fifteen",
    "sixteen",
    "seventeen",
    "eighteen",
    "nineteen",
];
const EN_TENS: [&str; 10] = [
    "", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety",
];

/// The word for `n` in a list that has one for each number from 0.
#[expect(
    clippy::indexing_slicing,
    reason = "each caller's range of n ends before its list does"
)]
fn word(words: &[&str], n: i64) -> String {
    words[n as usize].to_owned()
}

fn english(n: i64) -> String {
    let rest = |head: String, rest: i64, join: &str| {
        if rest == 0 {
            head
        } else {
            format!("{head}{join}{}", english(rest))
        }
    };
    match n {
        0..20 => word(&EN_SMALL, n),
        20..100 => rest(word(&EN_TENS, n / 10), n % 10, "-"),
        100..1000 => rest(format!("{} hundred", english(n / 100)), n % 100, " "),
        1000..1_000_000 => rest(format!("{} thousand", english(n / 1000)), n % 1000, ", "),
        _ => rest(
            format!("{} million", english(n / 1_000_000)),
            n % 1_000_000,
            ", ",
        ),
    }
}

const ES_SMALL: [&str; 30] = [
    "cero",
    "uno",
    "dos",
    "tres",
    "cuatro",
    "cinco",
    "seis",
    "siete",
    "ocho",
    "nueve",
    "diez",
    "once",
    "doce",
    "trece",
    "catorce",
    "quince",
    "dieciséis",
    "diecisiete",
    "dieciocho",
    "diecinueve",
    "veinte",
    "veintiuno",
    "veintidós",
    "veintitrés",
    "veinticuatro",
    "veinticinco",
    "veintiséis",
    "veintisiete",
    "veintiocho",
    "veintinueve",
];
const ES_TENS: [&str; 10] = [
    "",
    "",
    "",
    "treinta",
    "cuarenta",
    "cincuenta",
    "sesenta",
    "setenta",
    "ochenta",
    "noventa",
];
const ES_HUNDREDS: [&str; 10] = [
    "",
    "ciento",
    "doscientos",
    "trescientos",
    "cuatrocientos",
    "quinientos",
    "seiscientos",
    "setecientos",
    "ochocientos",
    "novecientos",
];

/// `before_noun`: "uno" becomes "un" before "mil" and "millones".
fn spanish(n: i64, before_noun: bool) -> String {
    let rest = |head: String, rest: i64, join: &str| {
        if rest == 0 {
            head
        } else {
            format!("{head}{join}{}", spanish(rest, before_noun))
        }
    };
    match n {
        1 if before_noun => "un".into(),
        21 if before_noun => "veintiún".into(),
        0..30 => word(&ES_SMALL, n),
        30..100 => rest(word(&ES_TENS, n / 10), n % 10, " y "),
        100 => "cien".into(),
        101..1000 => rest(word(&ES_HUNDREDS, n / 100), n % 100, " "),
        1000..2000 => rest("mil".into(), n % 1000, " "),
        2000..1_000_000 => rest(format!("{} mil", spanish(n / 1000, true)), n % 1000, " "),
        1_000_000..2_000_000 => rest("un millón".into(), n % 1_000_000, " "),
        _ => rest(
            format!("{} millones", spanish(n / 1_000_000, true)),
            n % 1_000_000,
            " ",
        ),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn spells() {
        for (n, en, es) in [
            (21, "twenty-one", "veintiuno"),
            (100, "one hundred", "cien"),
            (
                40_206,
                "forty thousand, two hundred six",
                "cuarenta mil doscientos seis",
            ),
            (
                21_031,
                "twenty-one thousand, thirty-one",
                "veintiún mil treinta y uno",
            ),
            (101_000, "one hundred one thousand", "ciento un mil"),
            (1_000_000, "one million", "un millón"),
            (1_500, "one thousand, five hundred", "mil quinientos"),
        ] {
            assert_eq!(spelled(n).en, en);
            assert_eq!(spelled(n).es, es);
        }
    }
}
