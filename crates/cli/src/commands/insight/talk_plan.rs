//! The method talk-plan.

use super::instances::{parse, settings};
use serde::Deserialize;
use serde_json::{Value, json};
use surefoot_insight::talk::{Settings, TodayConcept, Way, WayCost, talk_plan};

#[derive(Deserialize)]
struct Case {
    minutes: u32,
    today: Vec<Today>,
}

#[derive(Deserialize)]
struct Today {
    id: Value,
    q: f64,
    expected_wrong: f64,
    #[serde(default)]
    sure_wrong: f64,
    #[serde(default)]
    falling: bool,
    #[serde(default)]
    discussed_last: bool,
    #[serde(default)]
    dependants_soon: u32,
}

#[derive(Deserialize, Default)]
#[serde(default)]
struct Parameters {
    eta: Option<f64>,
    fall: Option<f64>,
    fresh: Option<f64>,
    dep: Option<f64>,
    lo: Option<f64>,
    hi: Option<f64>,
    minutes: Ways<u32>,
    eff: Ways<f64>,
    most: Option<usize>,
}

#[derive(Deserialize, Default)]
struct Ways<T> {
    pair: Option<T>,
    look: Option<T>,
    again: Option<T>,
}

impl Parameters {
    fn settings(self) -> Settings {
        let d = Settings::default();
        let cost = |minutes: Option<u32>, effect: Option<f64>, d: WayCost| WayCost {
            minutes: minutes.unwrap_or(d.minutes),
            effect: effect.unwrap_or(d.effect),
        };
        Settings {
            teach_again_below: self.lo.unwrap_or(d.teach_again_below),
            short_look_above: self.hi.unwrap_or(d.short_look_above),
            teach_again: cost(self.minutes.again, self.eff.again, d.teach_again),
            pair_talk: cost(self.minutes.pair, self.eff.pair, d.pair_talk),
            short_look: cost(self.minutes.look, self.eff.look, d.short_look),
            sure_bonus: self.eta.unwrap_or(d.sure_bonus),
            falling_bonus: self.fall.unwrap_or(d.falling_bonus),
            just_discussed: self.fresh.unwrap_or(d.just_discussed),
            dependant_bonus: self.dep.unwrap_or(d.dependant_bonus),
            most_concepts: self.most.unwrap_or(d.most_concepts),
        }
    }
}

/// The chosen concepts, their value, and the offer of every concept.
pub fn answer(case: &Value, file: &Value) -> Result<Value, String> {
    let settings = settings::<Parameters>(file, "parameters")?.settings();
    let case: Case = parse(case)?;
    let today: Vec<TodayConcept> = case
        .today
        .iter()
        .map(|c| TodayConcept {
            share: c.q,
            expected_wrong: c.expected_wrong,
            sure_wrong: c.sure_wrong,
            falling: c.falling,
            discussed_last: c.discussed_last,
            dependants_soon: c.dependants_soon,
        })
        .collect();
    let plan = talk_plan(&today, case.minutes, &settings);
    let offers: Vec<Value> = case
        .today
        .iter()
        .zip(&plan.offers)
        .map(|(c, offer)| {
            json!({
                "id": c.id, "way": word(offer.way), "minutes": offer.minutes,
                "value": offer.value_thousandths,
            })
        })
        .collect();
    let chosen: Vec<&Value> = plan
        .chosen
        .iter()
        .filter_map(|place| Some(&case.today.get(*place)?.id))
        .collect();
    Ok(json!({
        "chosen": chosen, "value": plan.value_thousandths, "per_concept": offers,
    }))
}

fn word(way: Way) -> &'static str {
    match way {
        Way::TeachAgain => "again",
        Way::PairTalk => "pair",
        Way::ShortLook => "look",
    }
}
