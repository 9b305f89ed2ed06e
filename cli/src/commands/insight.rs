//! `surefoot insight`.

/// Arguments of `surefoot insight`.
#[derive(clap::Args)]
pub struct Args {}

/// Runs the command.
pub fn run(_args: &Args) -> crate::Outcome {
    Err("not built yet".into())
}
