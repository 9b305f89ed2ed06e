//! Whole numbers written in words, by the rules in `shared/messages/TAG/spelling.rbnf`.
//!
//! Source: Unicode Technical Standard 35, part 3, "Rule-Based Number Formatting". Read are
//! rules with a base value, `<<` and `<%set<` (the number divided), `>>` (its remainder),
//! `=%set=` (the number by other rules) and `[…]` (left out without a remainder).

use surefoot_catalogue::{Language, Text};

/// The set of rules that a number is written by first.
const SPELLOUT: &str = "%spellout";

/// A number from 0 to 999,999,999 in words, in every language.
#[must_use]
pub fn spelled(n: i64) -> Text {
    let first = Language::first();
    let text = Text::one(first, in_language(n, first));
    let others = Language::all().iter().filter(|other| **other != first);
    others.fold(text, |text, other| {
        text.with(*other, in_language(n, *other))
    })
}

/// In words, or in figures where the rules do not cover the number.
fn in_language(n: i64, language: Language) -> String {
    let rules = language.file("spelling.rbnf").unwrap_or_default();
    by_rules(rules, SPELLOUT, n).unwrap_or_else(|| n.to_string())
}

/// The rule of a set with the greatest base value up to `n`: the base value and the words.
fn rule<'a>(rules: &'a str, set: &str, n: i64) -> Option<(i64, &'a str)> {
    rules
        .lines()
        .skip_while(|line| line.strip_suffix(':') != Some(set))
        .skip(1)
        .take_while(|line| !line.starts_with('%'))
        .filter_map(|line| {
            let (base, words) = line.strip_suffix(';')?.split_once(": ")?;
            Some((base.parse().ok()?, words))
        })
        .filter(|(base, _)| *base <= n)
        .last()
}

/// The power of ten by which a rule of this base value divides.
fn divisor(base: i64) -> i64 {
    10_i64.pow(base.max(1).ilog10())
}

fn by_rules(rules: &str, set: &str, n: i64) -> Option<String> {
    let (base, words) = rule(rules, set, n)?;
    let (quotient, remainder) = (n / divisor(base), n % divisor(base));
    let words = match words.split_once('[').zip(words.split_once(']')) {
        None => words.to_owned(),
        Some(((before, _), (_, after))) if remainder == 0 => format!("{before}{after}"),
        Some(_) => words.replace(['[', ']'], ""),
    };
    let mut text = String::new();
    let mut rest = words.as_str();
    while let Some(start) = rest.find(['<', '>', '=']) {
        let (before, token) = rest.split_at(start);
        let sign = token.chars().next()?;
        let (named, after) = token.get(1..)?.split_once(sign)?;
        let set = if named.is_empty() { set } else { named };
        let value = match sign {
            '<' => quotient,
            '>' => remainder,
            _ => n,
        };
        text.push_str(before);
        text.push_str(&by_rules(rules, set, value)?);
        rest = after;
    }
    text.push_str(rest);
    Some(text)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn spells() {
        let [en, es] = ["en", "es"].map(|tag| Language::tagged(tag).unwrap());
        for (n, english, spanish) in [
            (0, "zero", "cero"),
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
            (
                131_002_199,
                "one hundred thirty-one million, two thousand, one hundred ninety-nine",
                "ciento treinta y un millones dos mil ciento noventa y nueve",
            ),
        ] {
            assert_eq!(spelled(n).get(en), english);
            assert_eq!(spelled(n).get(es), spanish);
        }
    }

    #[test]
    fn the_rules_of_every_language_cover_every_number() {
        for language in Language::all() {
            for n in (0..1_200).chain([20_031, 999_999, 999_999_999]) {
                let words = in_language(n, *language);
                assert!(
                    !words.contains(|c: char| c.is_ascii_digit()),
                    "{language} {words}"
                );
            }
        }
    }
}
