//! Whole numbers written in words, by the rules in `shared/messages/TAG/spelling.rbnf`.
//!
//! Source: Unicode Technical Standard 35, part 3, "Rule-Based Number Formatting". Read are
//! rules with a base value, `<<` and `<%set<` (the number divided), `>>` (its remainder),
//! `=%set=` (the number by other rules) and `[…]` (left out without a remainder).

use std::collections::BTreeMap;
use std::sync::OnceLock;
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
    static RULES: OnceLock<BTreeMap<Language, Rules>> = OnceLock::new();
    let rules = RULES.get_or_init(|| {
        Language::all()
            .iter()
            .map(|language| (*language, rules_of(*language)))
            .collect()
    });
    let mut text = String::new();
    match rules
        .get(&language)
        .and_then(|rules| write(&mut text, rules, SPELLOUT, n))
    {
        Some(()) => text,
        None => n.to_string(),
    }
}

/// The rules of a language: base values in order and words, by the name of their set.
type Rules = BTreeMap<&'static str, Vec<(i64, &'static str)>>;

fn rules_of(language: Language) -> Rules {
    let mut rules = Rules::new();
    let mut set = "";
    for line in language.file("spelling.rbnf").unwrap_or_default().lines() {
        if let Some(name) = line.strip_suffix(':').filter(|name| name.starts_with('%')) {
            set = name;
        } else if let Some((base, words)) = line
            .strip_suffix(';')
            .and_then(|line| line.split_once(": "))
            && let Ok(base) = base.parse()
        {
            rules.entry(set).or_default().push((base, words));
        }
    }
    for rules in rules.values_mut() {
        rules.sort_by_key(|(base, _)| *base);
    }
    rules
}

/// The power of ten by which a rule of this base value divides.
fn divisor(base: i64) -> i64 {
    10_i64.pow(base.max(1).ilog10())
}

/// Writes a number by the rule of the set with the greatest base value up to it.
fn write(text: &mut String, rules: &Rules, set: &str, n: i64) -> Option<()> {
    let of_set = rules.get(set)?;
    let at = of_set.partition_point(|(base, _)| *base <= n);
    let (base, words) = of_set.get(at.checked_sub(1)?)?;
    let (quotient, remainder) = (n / divisor(*base), n % divisor(*base));
    let mut rest = *words;
    while let Some((before, token)) = rest
        .find(['<', '>', '=', '[', ']'])
        .and_then(|start| rest.split_at_checked(start))
    {
        text.push_str(before);
        let sign = token.chars().next()?;
        let after = token.get(1..)?;
        rest = match sign {
            '[' if remainder == 0 => after.split_once(']')?.1,
            '[' | ']' => after,
            _ => {
                let (named, after) = after.split_once(sign)?;
                let set = if named.is_empty() { set } else { named };
                let value = match sign {
                    '<' => quotient,
                    '>' => remainder,
                    _ => n,
                };
                write(text, rules, set, value)?;
                after
            }
        };
    }
    text.push_str(rest);
    Some(())
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
