//! Sets of data: their topics, dot plots, medians and quartiles.

use crate::decimal::Dec;
use crate::draw::dots;
use crate::make::Make;
use num_rational::Ratio;

/// Title and words under the line.
pub(super) const TOPICS: [(&str, &str); 4] = [
    ("plot-pages", "plot-axis-pages"),
    ("plot-goals", "plot-axis-goals"),
    ("plot-days", "plot-axis-days"),
    ("plot-siblings", "plot-axis-people"),
];

/// A dot plot of a topic drawn at random; `counts` are the dots from `first` on.
pub(super) fn plot(m: &mut Make, first: i64, counts: &[i64]) -> crate::Figure {
    let (title, axis) = m.dice.pick(&TOPICS);
    let columns: Vec<(Ratio<i64>, i64)> = counts
        .iter()
        .enumerate()
        .map(|(k, n)| (Ratio::from(first + k as i64), *n))
        .collect();
    dots(
        title,
        axis,
        Ratio::from(first),
        Ratio::from(first + counts.len() as i64 - 1),
        Ratio::from(1),
        &columns,
    )
}

pub(super) fn sorted(data: &[i64]) -> Vec<i64> {
    let mut data = data.to_vec();
    data.sort_unstable();
    data
}

/// Twice the middle value, so that halves stay whole; `None` without values.
pub(super) fn median_twice(sorted: &[i64]) -> Option<i64> {
    let last = sorted.len().checked_sub(1)?;
    Some(sorted.get(last / 2)? + sorted.get(sorted.len() / 2)?)
}

/// Medians of the lower and upper half, the middle value left out of both, twice each;
/// `None` with fewer than two values.
pub(super) fn quartiles_twice(sorted: &[i64]) -> Option<(i64, i64)> {
    let half = sorted.len() / 2;
    let (lower, rest) = sorted.split_at_checked(half)?;
    let (_, upper) = rest.split_at_checked(sorted.len() % 2)?;
    Some((median_twice(lower)?, median_twice(upper)?))
}

/// The greatest value less the least; `None` without values.
pub(super) fn range(sorted: &[i64]) -> Option<i64> {
    Some(sorted.last()? - sorted.first()?)
}

/// Half of a whole number.
pub(super) fn halves(twice: i64) -> Dec {
    if twice % 2 == 0 {
        Dec::new(twice / 2, 0)
    } else {
        Dec::new(twice * 5, 1)
    }
}
