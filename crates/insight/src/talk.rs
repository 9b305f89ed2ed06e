//! The talk plan: which concepts of the day to discuss, and in which way.
//!
//! The effects are our assumptions. They are settings, and the screens show them. For given effects
//! the choice is the best one. Sources: `docs/insight.md`, "Today's minutes".

/// What to do with a concept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Way {
    /// Teach it again, because too few could explain it to one another.
    TeachAgain,
    /// Students explain it in pairs, and the teacher gives the answer.
    PairTalk,
    /// A short look at it together.
    ShortLook,
}

/// Minutes and assumed effect of a way.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WayCost {
    /// Minutes it takes.
    pub minutes: u32,
    /// Assumed share of wrong answers that it corrects.
    pub effect: f64,
}

/// The settings of the plan.
#[derive(Debug, Clone, PartialEq)]
pub struct Settings {
    /// Class share below which it is taught again.
    pub teach_again_below: f64,
    /// Class share above which a short look is enough.
    pub short_look_above: f64,
    /// Teach again.
    pub teach_again: WayCost,
    /// Pair talk.
    pub pair_talk: WayCost,
    /// Short look.
    pub short_look: WayCost,
    /// Extra worth of a wrong answer of a student who was sure.
    pub sure_bonus: f64,
    /// Extra worth of a falling concept.
    pub falling_bonus: f64,
    /// Factor for a concept discussed in the last pass.
    pub just_discussed: f64,
    /// Extra worth for each dependant that is taught soon.
    pub dependant_bonus: f64,
    /// Concepts of a talk at most.
    pub most_concepts: usize,
}

impl Default for Settings {
    fn default() -> Self {
        Self {
            teach_again_below: 0.35,
            short_look_above: 0.70,
            teach_again: WayCost {
                minutes: 4,
                effect: 0.45,
            },
            pair_talk: WayCost {
                minutes: 2,
                effect: 0.5,
            },
            short_look: WayCost {
                minutes: 1,
                effect: 0.3,
            },
            sure_bonus: 0.5,
            falling_bonus: 0.2,
            just_discussed: 0.5,
            dependant_bonus: 0.25,
            most_concepts: 2,
        }
    }
}

/// A concept of the day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TodayConcept {
    /// Estimated share of the class that has it.
    pub share: f64,
    /// Sum over present students of the probability of a wrong answer.
    pub expected_wrong: f64,
    /// The same sum over those whose last rating was 2 or 3.
    pub sure_wrong: f64,
    /// Whether its trend is falling.
    pub falling: bool,
    /// Whether it was discussed in the last pass.
    pub discussed_last: bool,
    /// Number of dependants that are taught soon.
    pub dependants_soon: u32,
}

/// The minutes that a concept takes, and their worth.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Offer {
    /// The way that fits its class share.
    pub way: Way,
    /// Minutes it takes.
    pub minutes: u32,
    /// Worth in thousandths of a student corrected.
    pub value_thousandths: i64,
}

/// The plan: the concepts to discuss.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TalkPlan {
    /// Indices of the chosen concepts, in the given order.
    pub chosen: Vec<usize>,
    /// The sum of their worths, in thousandths.
    pub value_thousandths: i64,
    /// The sum of their minutes.
    pub minutes: u32,
    /// The offer of every concept, in the given order.
    pub offers: Vec<Offer>,
}

/// Returns the set of concepts with the greatest worth that fits into `minutes`. Of sets with the same
/// worth it takes the shortest, and of those the first in the given order.
#[must_use]
pub fn talk_plan(today: &[TodayConcept], minutes: u32, settings: &Settings) -> TalkPlan {
    let offers: Vec<Offer> = today.iter().map(|c| offer(c, settings)).collect();
    let mut best = TalkPlan {
        chosen: Vec::new(),
        value_thousandths: 0,
        minutes: 0,
        offers: Vec::new(),
    };
    let numbered: Vec<(usize, Offer)> = offers.iter().copied().enumerate().collect();
    extend(
        &numbered,
        minutes,
        settings.most_concepts,
        &mut Vec::new(),
        &mut best,
    );
    best.offers = offers;
    best
}

/// The plan while the level of the class is not known, and its shares say nothing: the weakest
/// concepts first, those discussed in the last pass after the others, as many as fit. Each is
/// offered as pair talk, the way that shows the teacher how many can explain it. No offer has
/// a worth. `today` says whether each concept was discussed in the last pass; its order is that
/// of the ranking, weakest first.
#[must_use]
pub fn talk_plan_by_order(today: &[bool], minutes: u32, settings: &Settings) -> TalkPlan {
    let cost = settings.pair_talk.minutes;
    let fit = minutes.checked_div(cost).unwrap_or_default() as usize;
    let mut order: Vec<usize> = (0..today.len()).collect();
    order.sort_by_key(|place| today.get(*place));
    order.truncate(settings.most_concepts.min(fit));
    order.sort_unstable();
    TalkPlan {
        value_thousandths: 0,
        minutes: order.iter().map(|_| cost).sum(),
        chosen: order,
        offers: today
            .iter()
            .map(|_| Offer {
                way: Way::PairTalk,
                minutes: cost,
                value_thousandths: 0,
            })
            .collect(),
    }
}

/// Tries every set in the given order; a later one wins only if it is better. `rest` are the concepts
/// after the chosen ones, with their indices.
fn extend(
    rest: &[(usize, Offer)],
    minutes: u32,
    most: usize,
    chosen: &mut Vec<(usize, Offer)>,
    best: &mut TalkPlan,
) {
    if chosen.len() == most {
        return;
    }
    let mut rest = rest;
    while let Some((next, after)) = rest.split_first() {
        rest = after;
        chosen.push(*next);
        let minutes_of = chosen.iter().map(|(_, offer)| offer.minutes);
        let used = minutes_of.fold(0, u32::saturating_add);
        if used <= minutes {
            let value: i64 = chosen
                .iter()
                .map(|(_, offer)| offer.value_thousandths)
                .sum();
            if value > best.value_thousandths
                || (value == best.value_thousandths && used < best.minutes)
            {
                best.value_thousandths = value;
                best.minutes = used;
                best.chosen = chosen.iter().map(|(place, _)| *place).collect();
            }
            extend(after, minutes, most, chosen, best);
        }
        chosen.pop();
    }
}

fn offer(concept: &TodayConcept, settings: &Settings) -> Offer {
    let (way, cost) = if concept.share < settings.teach_again_below {
        (Way::TeachAgain, settings.teach_again)
    } else if concept.share <= settings.short_look_above {
        (Way::PairTalk, settings.pair_talk)
    } else {
        (Way::ShortLook, settings.short_look)
    };
    let mut value =
        (concept.expected_wrong + settings.sure_bonus * concept.sure_wrong) * cost.effect;
    if concept.falling {
        value *= 1.0 + settings.falling_bonus;
    }
    if concept.discussed_last {
        value *= settings.just_discussed;
    }
    value *= 1.0 + settings.dependant_bonus * f64::from(concept.dependants_soon);
    Offer {
        way,
        minutes: cost.minutes,
        value_thousandths: thousandths(value),
    }
}

/// Rounds to thousandths, halves up.
#[expect(
    clippy::cast_possible_truncation,
    reason = "a class's worth is far inside i64, and the cast saturates"
)]
fn thousandths(value: f64) -> i64 {
    (value * 1000.0 + 0.5).floor() as i64
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn by_order_the_weakest_come_first_and_those_just_discussed_last() {
        let plan = |today: &[bool], minutes| {
            let plan = talk_plan_by_order(today, minutes, &Settings::default());
            assert_eq!(plan.offers.len(), today.len());
            (plan.chosen, plan.minutes)
        };
        assert_eq!(plan(&[false, false, false], 4), (vec![0, 1], 4));
        assert_eq!(plan(&[true, false, false], 9), (vec![1, 2], 4));
        assert_eq!(plan(&[true, false], 3), (vec![1], 2));
        assert_eq!(plan(&[true, true], 2), (vec![0], 2));
        assert_eq!(plan(&[false], 1), (vec![], 0));
        assert_eq!(plan(&[], 4), (vec![], 0));
    }

    fn concept(share: f64, expected_wrong: f64) -> TodayConcept {
        TodayConcept {
            share,
            expected_wrong,
            sure_wrong: 0.0,
            falling: false,
            discussed_last: false,
            dependants_soon: 0,
        }
    }

    #[test]
    fn the_way_follows_the_class_share() {
        let today = [0.349, 0.35, 0.70, 0.701].map(|share| concept(share, 1.0));
        let plan = talk_plan(&today, 10, &Settings::default());
        let ways: Vec<Way> = plan.offers.iter().map(|o| o.way).collect();
        assert_eq!(
            ways,
            [
                Way::TeachAgain,
                Way::PairTalk,
                Way::PairTalk,
                Way::ShortLook
            ]
        );
    }

    #[test]
    fn nothing_fits_into_no_time() {
        let plan = talk_plan(&[concept(0.5, 9.0)], 1, &Settings::default());
        assert!(plan.chosen.is_empty());
        assert_eq!(plan.value_thousandths, 0);
        assert!(talk_plan(&[], 9, &Settings::default()).offers.is_empty());
    }

    #[test]
    fn of_equals_the_shortest_then_the_first() {
        // Equal worth: 6 × .5 in two minutes, 10 × .3 in one.
        let today = [concept(0.5, 6.0), concept(0.9, 10.0), concept(0.9, 10.0)];
        let settings = Settings {
            most_concepts: 1,
            ..Settings::default()
        };
        assert_eq!(talk_plan(&today, 4, &settings).chosen, vec![1]);
    }

    proptest! {
        #[test]
        fn no_other_set_is_better(
            today in prop::collection::vec((0.0f64..1.0, 0.0f64..20.0, 0.0f64..8.0, any::<bool>(), any::<bool>(), 0u32..3), 0..7),
            minutes in 0u32..9,
        ) {
            let today: Vec<TodayConcept> = today
                .into_iter()
                .map(|(share, expected_wrong, sure_wrong, falling, discussed_last, dependants_soon)| TodayConcept {
                    share, expected_wrong, sure_wrong, falling, discussed_last, dependants_soon,
                })
                .collect();
            let plan = talk_plan(&today, minutes, &Settings::default());
            prop_assert!(plan.minutes <= minutes && plan.chosen.len() <= 2);
            for a in 0..today.len() {
                for b in a..today.len() {
                    let set: Vec<&Offer> =
                        if a == b { vec![&plan.offers[a]] } else { vec![&plan.offers[a], &plan.offers[b]] };
                    if set.iter().map(|o| o.minutes).sum::<u32>() <= minutes {
                        let value: i64 = set.iter().map(|o| o.value_thousandths).sum();
                        prop_assert!(value <= plan.value_thousandths);
                    }
                }
            }
        }
    }
}
