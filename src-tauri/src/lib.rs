//! The Surefoot window: one page, two commands, and the dialogs of the system.
//!
//! The page uses the command `call`, which makes a call of the table in `surefoot-app` outside
//! the window's thread. The other files are what only a window needs: file dialogs, files that
//! other programs open with this one, the voice, sharing, blocking screenshots while a
//! PIN is typed, and starting on the sample class.
//!
//! Must never know a rule of Surefoot, and stores nothing.

#![cfg_attr(not(test), deny(clippy::indexing_slicing))]

#[cfg(target_os = "android")]
mod class_folder_android;
mod dialogs;
#[cfg(any(target_os = "android", test))]
mod documents;
mod opened;
#[cfg(any(not(desktop), test))]
mod outgoing;
mod sample;
#[cfg(target_os = "android")]
mod screen_android;
#[cfg(target_os = "android")]
mod share_android;
#[cfg(target_os = "android")]
mod voice_android;
#[cfg(desktop)]
mod voice_desktop;

use std::sync::Arc;
#[cfg(not(any(desktop, target_os = "android")))]
use surefoot_app::NoVoice;
use surefoot_app::{App, CallError, DeviceClock, Voice};
use tauri::{AppHandle, Manager as _, State, WebviewWindowBuilder};

/// The opened program, or why it could not be opened. The page shows the reason.
struct Program(Result<App, CallError>);

/// Makes a call of the page, by name and with its arguments as JSON. Calls read and write disks and
/// wait for dialogs, so they run outside the window's thread.
#[tauri::command]
async fn call(
    app: AppHandle,
    name: String,
    args: serde_json::Value,
) -> Result<serde_json::Value, CallError> {
    tauri::async_runtime::spawn_blocking(move || {
        let program: State<Program> = app.state();
        match &program.0 {
            Ok(program) => surefoot_app::dispatch(program, &name, args),
            Err(error) => Err(error.clone()),
        }
    })
    .await
    .map_err(|e| CallError::Storage {
        detail: e.to_string(),
    })?
}

/// Hides the window from screenshots while a PIN is typed, where the system can.
#[tauri::command]
fn protect_screen(window: tauri::WebviewWindow, on: bool) {
    // A system that cannot hide it shows it, as before.
    #[cfg(target_os = "android")]
    let _ = screen_android::protect(&window, on);
    #[cfg(not(target_os = "android"))]
    let _ = window.set_content_protected(on);
}

#[cfg(desktop)]
fn voice(_app: &tauri::App) -> Box<dyn Voice> {
    Box::new(voice_desktop::SystemVoice::default())
}

#[cfg(target_os = "android")]
fn voice(app: &tauri::App) -> Box<dyn Voice> {
    Box::new(voice_android::TabletVoice::new(app.handle().clone()))
}

#[cfg(not(any(desktop, target_os = "android")))]
fn voice(_app: &tauri::App) -> Box<dyn Voice> {
    Box::new(NoVoice)
}

fn set_up(app: &mut tauri::App, opened: &Arc<opened::Opened>) -> tauri::Result<()> {
    let data = app.path().app_data_dir()?;
    #[cfg(target_os = "android")]
    {
        let shared = app.path().app_cache_dir()?.join("share");
        // What cannot be wiped now is tried again before the next file is shared.
        let _ = outgoing::wipe_old(&shared, std::time::SystemTime::now());
        class_folder_android::clear(app.handle());
    }
    let dialogs = dialogs::SystemDialogs::new(app.handle().clone(), Arc::clone(opened));
    let program = App::open(&data, Box::new(dialogs), Box::new(DeviceClock), voice(app));
    if let Ok(program) = &program
        && std::env::args().any(|a| a == sample::FLAG)
    {
        sample::enter(program);
    }
    // The window opens last, because its page may call at once.
    app.manage(Program(program));
    for window in &app.config().app.windows.clone() {
        WebviewWindowBuilder::from_config(app.handle(), window)?.build()?;
    }
    Ok(())
}

/// Opens the window and returns when it is closed.
#[cfg_attr(mobile, tauri::mobile_entry_point)]
pub fn run() {
    let opened = Arc::new(opened::Opened::default());
    let builder = tauri::Builder::default();
    #[cfg(desktop)]
    let builder = {
        let here = std::env::current_dir().unwrap_or_default();
        opened.add_arguments(&std::env::args().collect::<Vec<_>>(), &here);
        let opened = Arc::clone(&opened);
        builder
            .plugin(tauri_plugin_single_instance::init(
                move |app, arguments, folder| {
                    opened.add_arguments(&arguments, folder.as_ref());
                    opened::tell(app);
                },
            ))
            .plugin(tauri_plugin_window_state::Builder::default().build())
    };
    #[cfg(target_os = "android")]
    let builder = builder.plugin(class_folder_android::plugin());
    let for_setup = Arc::clone(&opened);
    let built = builder
        .plugin(tauri_plugin_dialog::init())
        .plugin(tauri_plugin_fs::init())
        .on_window_event({
            let opened = Arc::clone(&opened);
            move |window, event| {
                if let tauri::WindowEvent::DragDrop(tauri::DragDropEvent::Drop { paths, .. }) =
                    event
                {
                    opened.add_paths(paths);
                    opened::tell(window.app_handle());
                }
            }
        })
        .invoke_handler(tauri::generate_handler![call, protect_screen])
        .setup(move |app| Ok(set_up(app, &for_setup)?))
        .build(tauri::generate_context!());
    match built {
        Ok(app) => app.run(move |app, event| {
            #[cfg(any(target_os = "macos", target_os = "ios", target_os = "android"))]
            if let tauri::RunEvent::Opened { urls } = &event {
                opened.add_addresses(urls);
                opened::tell(app);
            }
            let _ = (app, event, &opened);
        }),
        Err(error) => {
            eprintln!("surefoot: the window cannot be opened: {error}");
            std::process::exit(1);
        }
    }
}
