//! `surefoot memory`: the state of memory after each review of each history.

use crate::out::{CommandResult, print_json, put_line};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use std::path::PathBuf;
use surefoot_practice::fit;
use surefoot_practice::memory::{AfterReview, Memory, Review};

/// Arguments of `surefoot memory`.
#[derive(clap::Args)]
pub struct Args {
    /// A JSON file with `parameter_sets` and `histories`.
    #[arg(long)]
    histories: PathBuf,
    /// Fit the parameters of the model to all histories instead, and check the fit on the last
    /// third of the days, which it does not use.
    #[arg(long)]
    fit: bool,
}

#[derive(Deserialize)]
struct Histories {
    parameter_sets: BTreeMap<String, Vec<f32>>,
    histories: Vec<History>,
}

#[derive(Deserialize)]
struct History {
    id: String,
    parameter_set: String,
    desired_retention: f32,
    reviews: Vec<Review>,
    /// For a fit: the day of the first review, from any day that is the same for all.
    #[serde(default)]
    first_day: u32,
}

#[derive(Serialize)]
struct Replayed {
    histories: Vec<ReplayedHistory>,
}

#[derive(Serialize)]
struct ReplayedHistory {
    id: String,
    after_each_review: Vec<AfterReview>,
}

/// Runs the command.
pub fn run(args: &Args) -> CommandResult {
    let name = args.histories.display();
    let text =
        std::fs::read_to_string(&args.histories).map_err(|e| format!("cannot read {name}: {e}"))?;
    let asked: Histories =
        serde_json::from_str(&text).map_err(|e| format!("{name} is no file of histories: {e}"))?;
    if args.fit {
        let pooled: Vec<fit::History> = asked
            .histories
            .into_iter()
            .map(|history| fit::History {
                first_day: history.first_day,
                reviews: history.reviews,
            })
            .collect();
        return print_json(&fit::fit(&pooled).map_err(|e| e.to_string())?);
    }
    let mut models = BTreeMap::new();
    for (set, parameters) in &asked.parameter_sets {
        let model =
            Memory::with_parameters(parameters).map_err(|e| format!("parameter set {set}: {e}"))?;
        models.insert(set.as_str(), model);
    }
    let mut histories = Vec::with_capacity(asked.histories.len());
    for history in &asked.histories {
        let id = history.id.clone();
        let model = models
            .get(history.parameter_set.as_str())
            .ok_or_else(|| format!("history {id}: no parameter set {}", history.parameter_set))?;
        let after_each_review = model
            .replay(&history.reviews, history.desired_retention)
            .map_err(|e| format!("history {id}: {e}"))?;
        histories.push(ReplayedHistory {
            id,
            after_each_review,
        });
    }
    let text = serde_json::to_string(&Replayed { histories }).map_err(|e| e.to_string())?;
    put_line!("{text}");
    Ok(())
}
