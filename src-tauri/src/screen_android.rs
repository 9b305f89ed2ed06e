//! Keeps screenshots and the list of recent programs from showing the screen, by JNI.

use jni::JNIEnv;
use jni::errors::Result;
use jni::objects::{JObject, JValue};
use tauri::{Runtime, WebviewWindow};

/// `WindowManager.LayoutParams.FLAG_SECURE`.
const SECURE: i32 = 0x2000;

/// Hides the window from screenshots, or shows it again.
pub fn protect<R: Runtime>(window: &WebviewWindow<R>, on: bool) -> tauri::Result<()> {
    window.with_webview(move |webview| {
        webview.jni_handle().exec(move |env, activity, _webview| {
            if set(env, activity, on).is_err() && env.exception_check().unwrap_or(false) {
                // Goes to the system's log; if it is not cleared, it ends the program.
                let _ = env.exception_describe();
                let _ = env.exception_clear();
            }
        });
    })
}

fn set(env: &mut JNIEnv, activity: &JObject, on: bool) -> Result<()> {
    let window = env
        .call_method(activity, "getWindow", "()Landroid/view/Window;", &[])?
        .l()?;
    let flags = if on { SECURE } else { 0 };
    env.call_method(
        &window,
        "setFlags",
        "(II)V",
        &[JValue::Int(flags), JValue::Int(SECURE)],
    )?;
    Ok(())
}
