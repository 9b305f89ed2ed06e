//! Starts the window.
#![cfg_attr(not(debug_assertions), windows_subsystem = "windows")]

fn main() {
    surefoot_lib::run();
}
