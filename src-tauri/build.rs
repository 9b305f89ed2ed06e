//! Checks the configuration and gathers it for the program.

fn main() {
    tauri_build::build();
}
