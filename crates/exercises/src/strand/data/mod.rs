//! Graphs and line plots.

pub mod graphs;
pub mod line_plots;
