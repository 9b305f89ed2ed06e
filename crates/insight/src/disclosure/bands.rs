//! A band in place of a share.
//!
//! Ranges by number of reporters in the manner of U.S. EDFacts public files
//! (from memory). The bands at both ends are open, so that "nobody" and "everybody"
//! never show.

use super::SMALLEST_GROUP;

/// Fewest counts a published band must leave possible.
pub const FEWEST_COUNTS: u32 = 3;

/// A published band: what a reader may know.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Band {
    /// Number of the band from 0, lowest share first.
    pub number: usize,
    /// Least count in the band.
    pub from_count: u32,
    /// Most count in the band.
    pub to_count: u32,
    /// Lowest percentage of the band.
    pub from_percent: u32,
    /// Percentage below which the band ends, or with `to_included` at which.
    pub to_percent: u32,
    /// Whether `to_percent` itself belongs to the band.
    pub to_included: bool,
    /// Fewest reporters the published range of reporters allows.
    pub fewest_reporters: u32,
    /// Most reporters of that range; `None` for no end.
    pub most_reporters: Option<u32>,
}

/// The band of `low` of `reporters` (for instance those not confident).
/// `None` when it may not be published: fewer than ten reporters, or fewer
/// than three counts possible, or `low` above `reporters`.
#[must_use]
pub fn band(low: u32, reporters: u32) -> Option<Band> {
    if reporters < SMALLEST_GROUP || low > reporters {
        return None;
    }
    let (step, fewest_reporters, most_reporters) = match reporters {
        ..=15 => (50, SMALLEST_GROUP, Some(15)),
        16..=30 => (20, 16, Some(30)),
        31..=60 => (10, 31, Some(60)),
        _ => (5, 61, None),
    };
    let bands = 100 / step;
    let number_of = |count: u32| -> u32 {
        let hundredfold = u64::from(count) * 100;
        let edge = u64::from(step) * u64::from(reporters);
        // With halves, 50 % opens the upper band; otherwise the lowest band
        // holds its upper edge ("at most 20 %").
        if step < 50 && hundredfold <= edge {
            return 0;
        }
        u32::try_from(hundredfold / edge)
            .unwrap_or(u32::MAX)
            .min(bands - 1)
    };
    let number = number_of(low);
    let mut counts = (0..=reporters).filter(|count| number_of(*count) == number);
    let from_count = counts.next()?;
    let to_count = counts.next_back().unwrap_or(from_count);
    if to_count - from_count + 1 < FEWEST_COUNTS {
        return None;
    }
    Some(Band {
        number: usize::try_from(number).ok()?,
        from_count,
        to_count,
        from_percent: number * step,
        to_percent: (number + 1) * step,
        to_included: number == bands - 1 || (step < 50 && number == 0),
        fewest_reporters,
        most_reporters,
    })
}
