//! Lets Tauri check the configuration and embed it.

fn main() {
    tauri_build::build();
}
