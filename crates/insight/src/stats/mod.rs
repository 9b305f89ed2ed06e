//! Statistics that the libraries in use do not have.
//!
//! `statrs` has the normal distribution and Student's. Each function here is small. Its tests
//! compare it with published examples, and `tests/oracle` with scipy, statsmodels and
//! scikit-learn.

mod agreement;
mod association;
mod beta_binomial;
mod brier;
mod mann_kendall;
mod many_tests;
mod special;
mod wilson;

pub use agreement::{Kappa, KappaWeights, weighted_kappa};
pub use association::{Association, goodman_kruskal};
pub use beta_binomial::{BetaPrior, beta_by_moments};
pub use brier::{BrierParts, LevelCount, brier_parts, brier_score};
pub use mann_kendall::{MannKendall, Slope, mann_kendall, theil_sen};
pub(super) use mann_kendall::{continuity_z, sign, tie_corrected_variance};
pub use many_tests::benjamini_hochberg;
pub(super) use special::count;
pub use special::{
    logistic, logit, mean, median, normal_cdf, normal_quantile, normal_two_sided, student_quantile,
};
pub use wilson::wilson_interval;
