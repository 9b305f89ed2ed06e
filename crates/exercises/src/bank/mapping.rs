//! `map_response`: which response gets the most.
//!
//! A response is right only if it earns the most points. Partial credit is not shown.
//! Numbers are exact decimals.

use super::xml::Element;
use num_rational::Ratio;
use num_traits::CheckedAdd;
use std::collections::BTreeMap;
use surefoot_catalogue::table::{LineFault, cut};

type Number = Ratio<i64>;

/// A mapping as declared.
pub(super) struct Mapping {
    values: BTreeMap<String, Number>,
    otherwise: Number,
    least: Option<Number>,
    most: Option<Number>,
}

fn number(text: &str) -> Result<Number, LineFault> {
    let fault = || LineFault::NotANumber {
        text: cut(text, 40),
    };
    let plain = text.trim();
    let body = plain.strip_prefix(['-', '+']).unwrap_or(plain);
    let fits = !body.is_empty()
        && body.len() <= 12
        && body.bytes().all(|b| b.is_ascii_digit() || b == b'.');
    if !fits {
        return Err(fault());
    }
    let (whole, part) = body.split_once('.').unwrap_or((body, ""));
    if part.contains('.') || (whole.is_empty() && part.is_empty()) {
        return Err(fault());
    }
    let places = u32::try_from(part.len()).map_err(|_| fault())?;
    let top: i64 = format!("{whole}{part}").parse().map_err(|_| fault())?;
    let bottom = 10_i64.checked_pow(places).ok_or_else(fault)?;
    let size = Ratio::new(top, bottom);
    Ok(if plain.starts_with('-') { -size } else { size })
}

fn optional(element: &Element, name: &str) -> Result<Option<Number>, LineFault> {
    match element.attribute(name) {
        "" => Ok(None),
        text => number(text).map(Some),
    }
}

impl Mapping {
    /// Reads `qti-mapping`.
    ///
    /// # Errors
    /// A number that cannot be read, and its line.
    pub fn read(element: &Element) -> Result<Self, (u32, LineFault)> {
        let at = |fault| (element.line, fault);
        let mut values = BTreeMap::new();
        for entry in element.elements().filter(|e| e.name == "qti-map-entry") {
            let value =
                number(entry.attribute("mapped-value")).map_err(|fault| (entry.line, fault))?;
            values.insert(entry.attribute("map-key").trim().to_owned(), value);
        }
        Ok(Self {
            values,
            otherwise: optional(element, "default-value")
                .map_err(at)?
                .unwrap_or_default(),
            least: optional(element, "lower-bound").map_err(at)?,
            most: optional(element, "upper-bound").map_err(at)?,
        })
    }

    fn bounded(&self, sum: Number) -> Number {
        let raised = self.least.map_or(sum, |least| sum.max(least));
        self.most.map_or(raised, |most| raised.min(most))
    }

    /// What a response gets: the sum over its parts, within the bounds.
    fn score(&self, parts: &[&str]) -> Option<Number> {
        let sum = parts.iter().try_fold(Number::from(0), |sum, part| {
            sum.checked_add(self.values.get(*part).unwrap_or(&self.otherwise))
        })?;
        Some(self.bounded(sum))
    }

    /// The one set of choices that gets the most, by its places.
    ///
    /// # Errors
    /// [`LineFault::SeveralBest`], [`LineFault::NoneBest`].
    pub fn best_choices(&self, names: &[&str], most_chosen: usize) -> Result<Vec<u32>, LineFault> {
        let mut best: Option<(Number, Vec<u32>)> = None;
        let mut alone = false;
        // At most eight choices, so at most 256 sets.
        let sets = 1_u32
            .checked_shl(u32::try_from(names.len()).unwrap_or(u32::MAX))
            .ok_or(LineFault::SeveralBest)?;
        for set in 0..sets {
            let places: Vec<u32> = (0..)
                .take(names.len())
                .filter(|p| set >> p & 1 == 1)
                .collect();
            if places.len() > most_chosen {
                continue;
            }
            let parts: Vec<&str> = places
                .iter()
                .filter_map(|place| names.get(*place as usize).copied())
                .collect();
            let score = self.score(&parts).ok_or(LineFault::SeveralBest)?;
            match &best {
                Some((held, _)) if score < *held => {}
                Some((held, _)) if score == *held => alone = false,
                _ => {
                    best = Some((score, places));
                    alone = true;
                }
            }
        }
        match best {
            Some((score, places)) if score > Number::from(0) && !places.is_empty() => {
                if alone {
                    Ok(places)
                } else {
                    Err(LineFault::SeveralBest)
                }
            }
            _ => Err(LineFault::NoneBest),
        }
    }

    /// The typed responses that get the most.
    ///
    /// # Errors
    /// [`LineFault::NoneBest`], or [`LineFault::SeveralBest`] when everything else gets as much.
    pub fn best_typed(&self) -> Result<Vec<&str>, LineFault> {
        let scored = |value: &Number| self.bounded(*value);
        let best = self
            .values
            .values()
            .map(scored)
            .max()
            .filter(|best| *best > Number::from(0))
            .ok_or(LineFault::NoneBest)?;
        if self.bounded(self.otherwise) >= best {
            return Err(LineFault::SeveralBest);
        }
        Ok(self
            .values
            .iter()
            .filter(|(_, value)| scored(value) == best)
            .map(|(key, _)| key.as_str())
            .collect())
    }
}
