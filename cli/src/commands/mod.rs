//! One file per command.

pub mod catalogue;
pub mod exercises;
pub mod insight;
pub mod memory;
pub mod rehearse;
pub mod simulate;

/// Prints a value as JSON.
pub fn print_json(value: &impl serde::Serialize) -> crate::Outcome {
    let text = serde_json::to_string_pretty(value).map_err(|error| error.to_string())?;
    println!("{text}");
    Ok(())
}
