//! Replaces a share by a band.
//!
//! The width of bands depends on the number of reporters, as in U.S. EDFacts public files (from
//! memory). The bands at both ends are open, so that they never show "nobody" or "everybody".

use super::SMALLEST_GROUP;

/// Counts that a published band must leave possible, at least.
pub const FEWEST_COUNTS: u32 = 3;

/// A published band.
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
    /// Upper end of the band in percent.
    pub to_percent: u32,
    /// Whether the band includes `to_percent`.
    pub to_included: bool,
    /// Least number of reporters in the published range.
    pub fewest_reporters: u32,
    /// Largest number of reporters in that range; `None` without an upper end.
    pub most_reporters: Option<u32>,
}

/// The band of `low` of `reporters`, such as those who are not confident. `None` for fewer than ten
/// reporters, for fewer than three possible counts, and for `low` above `reporters`.
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
        // With two bands, the upper one includes 50 %. Otherwise the lowest band includes its upper
        // end ("at most 20 %").
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
