//! Two models of what remains of a lesson. They differ in form from each other and from the
//! model behind the schedule. A good rule does well in both.

/// Which model.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// Power-law traces: every meeting leaves a trace that fades by a power of
    /// its age, faster the stronger the memory was (form of Pavlik & Anderson 2005).
    Traces,
    /// Leaky stores: a cascade of stores that leak at different paces, each
    /// filled by what the quicker ones still miss (form of Mozer et al. 2009).
    Pools,
}

impl Kind {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Traces, Self::Pools];

    /// Returns its name in the table.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::Traces => "traces",
            Self::Pools => "pools",
        }
    }
}

/// Kinds of meetings with a concept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lesson {
    /// Seen in the review before it was taught.
    Preview,
    /// Taught.
    Taught,
    /// Right in the review.
    ClassRight,
    /// Wrong in the review.
    ClassWrong,
    /// Right alone at home.
    HomeAlone,
    /// Right with help at home.
    HomeHelped,
    /// Wrong at home, with the steps shown.
    HomeWrong,
}

/// Weights of a lesson's trace.
fn trace_weight(lesson: Lesson) -> f64 {
    match lesson {
        Lesson::Preview => 0.1,
        Lesson::Taught => 1.2,
        Lesson::ClassRight => 0.6,
        Lesson::ClassWrong => 0.4,
        Lesson::HomeAlone => 1.0,
        Lesson::HomeHelped => 0.9,
        Lesson::HomeWrong => 0.5,
    }
}

/// Strength of a lesson's filling.
fn pool_rate(lesson: Lesson) -> f64 {
    match lesson {
        Lesson::Preview => 0.02,
        Lesson::Taught => 0.30,
        Lesson::ClassRight => 0.14,
        Lesson::ClassWrong => 0.06,
        Lesson::HomeAlone => 0.22,
        Lesson::HomeHelped => 0.15,
        Lesson::HomeWrong => 0.07,
    }
}

/// Days in which each store leaks to about a third.
const LEAK_DAYS: [f64; 4] = [2.0, 12.0, 70.0, 400.0];
/// The weight of each store.
const STORE_WEIGHTS: [f64; 4] = [0.15, 0.2, 0.3, 0.35];

/// What one student holds of one concept.
#[derive(Debug, Clone)]
pub enum Knowledge {
    /// Traces: (day, weight, decay), and how easily this student recalls it.
    Traces {
        /// The traces.
        traces: Vec<(i32, f64, f64)>,
        /// The sum of skill, easiness and gap.
        ease: f64,
    },
    /// Stores and the day they were last brought up to date.
    Pools {
        /// Levels of the stores, 0 to 1.
        stores: [f64; 4],
        /// Day of `stores`.
        on: i32,
        /// How quickly this student learns it, times the lesson's rate.
        quickness: f64,
    },
}

const DECAY_BASE: f64 = 0.22;
const DECAY_BY_STRENGTH: f64 = 0.09;
const RECALL_SPREAD: f64 = 0.6;
const RECALL_THRESHOLD: f64 = 0.62;

impl Knowledge {
    /// Returns knowledge with nothing learned yet. `ease` is the sum of skill, easiness and gap,
    /// about -2 to 2.
    #[must_use]
    pub fn new(kind: Kind, ease: f64) -> Self {
        match kind {
            Kind::Traces => Self::Traces {
                traces: Vec::new(),
                ease,
            },
            Kind::Pools => Self::Pools {
                stores: [0.0; 4],
                on: 0,
                quickness: (0.7 * ease).exp(),
            },
        }
    }

    fn strength(traces: &[(i32, f64, f64)], day: i32) -> f64 {
        traces
            .iter()
            .map(|(on, weight, decay)| weight * (f64::from(day - on) + 0.5).powf(-decay))
            .sum()
    }

    fn leaked(stores: &[f64; 4], days: i32) -> [f64; 4] {
        let mut now = *stores;
        for (level, leak) in now.iter_mut().zip(LEAK_DAYS) {
            *level *= (-f64::from(days) / leak).exp();
        }
        now
    }

    fn filled(stores: &[f64; 4], upto: usize) -> f64 {
        let weight: f64 = STORE_WEIGHTS.iter().take(upto + 1).sum();
        stores
            .iter()
            .zip(STORE_WEIGHTS)
            .take(upto + 1)
            .map(|(level, w)| level * w)
            .sum::<f64>()
            / weight
    }

    /// Returns the true probability of answering right alone on a calendar day.
    #[must_use]
    pub fn knows(&self, day: i32) -> f64 {
        match self {
            Self::Traces { traces, ease } => {
                let strength = Self::strength(traces, day);
                if strength <= 0.0 {
                    return 0.0;
                }
                let logit = (strength.ln() - RECALL_THRESHOLD) / RECALL_SPREAD + ease;
                1.0 / (1.0 + (-logit).exp())
            }
            Self::Pools { stores, on, .. } => {
                Self::filled(&Self::leaked(stores, day - on), 3).clamp(0.0, 1.0)
            }
        }
    }

    /// Learns from a meeting on a day, at `ready` (0 to 1) of its full worth.
    pub fn learn(&mut self, day: i32, lesson: Lesson, ready: f64) {
        match self {
            Self::Traces { traces, .. } => {
                let strength = Self::strength(traces, day);
                let decay = (DECAY_BASE + DECAY_BY_STRENGTH * strength).min(0.9);
                traces.push((day, trace_weight(lesson) * ready, decay));
            }
            Self::Pools {
                stores,
                on,
                quickness,
            } => {
                let mut now = Self::leaked(stores, day - *on);
                let rate = (pool_rate(lesson) * ready * *quickness).min(0.9);
                let missing: [f64; 4] =
                    std::array::from_fn(|i| (1.0 - Self::filled(&now, i)).max(0.0));
                for (level, missing) in now.iter_mut().zip(missing) {
                    *level = (*level + rate * missing).min(1.5);
                }
                *stores = now;
                *on = day;
            }
        }
    }
}
