//! Every number of the model that is not fitted. `docs/insight.md` says where each of them
//! comes from.

/// A variance before any evidence, and the number of values that it counts for.
pub(super) struct Prior {
    pub variance: f64,
    pub weight: f64,
}

/// Passes after which a report counts half.
pub(super) const HALF_LIFE_PASSES: f64 = 3.0;
/// Weight of a fresh rating; a fresh result weighs 1.
pub(super) const RATING_WEIGHT: f64 = 0.7;
/// Correlation of the practice answers of one student and concept within one pass.
pub(super) const PRACTICE_LIKENESS: f64 = 0.2;
/// Evidence is at most this many passes old on average, so that old evidence stays finite.
pub(super) const MOST_AGE: f64 = 8.0;

/// Rounds of the fit.
pub(super) const ROUNDS: usize = 25;
/// A round moves no cell further than this, on the logit scale.
pub(super) const MOST_STEP: f64 = 2.0;
/// A round moves no slope or gap of the ratings further than this, on the log scale.
pub(super) const MOST_RATING_STEP: f64 = 0.3;

/// Mean and variance of the logit of success over all students and concepts.
pub(super) const LEVEL: (f64, f64) = (0.5, 1.0);
/// Variance of the shift of the ratings over all students and concepts.
pub(super) const COMMON_SHIFT_VARIANCE: f64 = 1.5;
/// Between students, on the logit of success.
pub(super) const ABILITY: Prior = Prior {
    variance: 0.9,
    weight: 3.0,
};
/// Between concepts, on the logit of success.
pub(super) const EASE: Prior = Prior {
    variance: 0.5,
    weight: 4.0,
};
/// Of one student on one concept, on the logit of success.
pub(super) const OWN: Prior = Prior {
    variance: 0.4,
    weight: 20.0,
};
/// Between students, in the shift of their ratings.
pub(super) const STUDENT_SHIFT: Prior = Prior {
    variance: 1.5,
    weight: 5.0,
};
/// Between concepts, in the shift of their ratings.
pub(super) const CONCEPT_SHIFT: Prior = Prior {
    variance: 0.05,
    weight: 5.0,
};
/// Between the problems of one concept, on the logit of success.
pub(super) const PROBLEM: Prior = Prior {
    variance: 0.3,
    weight: 10.0,
};
/// No fitted variance between students or concepts is larger.
pub(super) const MOST_VARIANCE: f64 = 9.0;

/// The rounds after which pairs of answers in one cell correct [`OWN`].
pub(super) const PAIR_ROUNDS: [usize; 3] = [10, 15, 20];
/// The weight of the fixed point beside those pairs.
pub(super) const FIXED_POINT_WEIGHT: f64 = 10.0;
/// Range of the corrected variance.
pub(super) const OWN_RANGE: (f64, f64) = (0.01, 9.0);
/// The share of a cell's variance that the fit of its own answers takes away, at most.
pub(super) const MOST_FITTED_SHARE: f64 = 0.5;
/// A cell with fewer pairs of answers than this counts as having none.
pub(super) const LEAST_PAIRS: f64 = 1e-6;

/// The rounds after which the passes of a concept give [`PROBLEM`].
pub(super) const PROBLEM_ROUNDS: [usize; 2] = [10, 15];
/// Least information of a pass that is compared with its neighbour.
pub(super) const LEAST_INFORMATION: f64 = 0.5;
/// Variance of two problems together at which a pair of passes has a quarter of its weight.
pub(super) const PAIR_NOISE: f64 = 0.6;
/// Range of the variance between problems.
pub(super) const PROBLEM_RANGE: (f64, f64) = (0.02, 3.0);

/// The threshold between With help and On my own; the shift of the ratings moves it.
pub(super) const MIDDLE_THRESHOLD: f64 = 0.35;
/// Distance from it to the other two thresholds before any evidence.
pub(super) const THRESHOLD_GAP: f64 = 1.15;
/// Variance of the logarithm of a slope or a gap of the ratings.
pub(super) const RATING_SCALE_VARIANCE: f64 = 0.25;
/// No rating is less likely than this.
pub(super) const LEAST_PROBABILITY: f64 = 1e-9;

/// Passes after which a report counts half for the trend of a concept.
pub(super) const TREND_HALF_LIFE_PASSES: f64 = 6.0;
/// Of the slopes of concepts, on the logit of success for each pass.
pub(super) const SLOPE: Prior = Prior {
    variance: 0.004,
    weight: 6.0,
};
/// Rounds of the variance of these slopes.
pub(super) const SLOPE_ROUNDS: usize = 12;
/// Standard deviation of the change of the class in a pass, beyond its trend.
pub(super) const CLASS_DRIFT: f64 = 0.08;
/// The same for the range of a share. It grows with the square root of the passes.
pub(super) const CLASS_WALK: f64 = 0.1;
/// The same of one student. It grows with the square root of the passes.
pub(super) const STUDENT_WALK: f64 = 0.3;

/// Normal point of the 80% interval.
pub(super) const INTERVAL_Z: f64 = 1.281_551_565_544_600_4;
/// Weight of evidence from which a student counts as having reported.
pub(super) const REPORTED_WEIGHT: f64 = 0.1;
/// Fewest students with a report before a concept is ranked without a tag, and with an answer
/// before the level of the class is known.
pub(super) const ENOUGH_REPORTERS: usize = 5;
/// Least weight of all results and practice from which the level of the class is known.
pub(super) const ENOUGH_ANSWERS: f64 = 350.0;
/// Share of the ratings, by weight, from which a class is sure of a concept.
pub(super) const SURE_SHARE: f64 = 2.0 / 3.0;
/// A class that is sure is wrong if its share is likely below this.
pub(super) const WRONG_BELOW: f64 = 0.5;
