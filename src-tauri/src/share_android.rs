//! Shares a file of the cache folder with another Android program by the share sheet. Uses JNI,
//! because it needs no answer.

use jni::JNIEnv;
use jni::errors::Result;
use jni::objects::{JClass, JObject, JValue};
use std::path::Path;
use std::sync::mpsc;
use std::time::Duration;
use tauri::{Runtime, WebviewWindow};

/// Enough for a slow tablet to show the sheet.
const PATIENCE: Duration = Duration::from_secs(20);

/// `Intent.FLAG_GRANT_READ_URI_PERMISSION`.
const GRANT_READ: i32 = 1;

/// Shows the share sheet for the file at `path`.
///
/// # Errors
/// Returns words for the log if the system refuses or does not answer.
pub fn send_file<R: Runtime>(
    window: &WebviewWindow<R>,
    path: &Path,
    media_type: &'static str,
) -> std::result::Result<(), String> {
    let path = path.to_string_lossy().into_owned();
    let (tell, told) = mpsc::channel();
    window
        .with_webview(move |webview| {
            webview.jni_handle().exec(move |env, activity, _webview| {
                let sent = send(env, activity, &path, media_type);
                if sent.is_err() && env.exception_check().unwrap_or(false) {
                    // Writes the exception to the system's log. It must be cleared, or it ends the
                    // program.
                    let _ = env.exception_describe();
                    let _ = env.exception_clear();
                }
                let _ = tell.send(sent.map_err(|e| e.to_string()));
            });
        })
        .map_err(|e| e.to_string())?;
    told.recv_timeout(PATIENCE).map_err(|e| e.to_string())?
}

/// Finds a class by name with the class loader of the activity, because the system's does not know
/// androidx.
fn class<'a>(env: &mut JNIEnv<'a>, activity: &JObject, name: &str) -> Result<JClass<'a>> {
    let loader = env
        .call_method(activity, "getClassLoader", "()Ljava/lang/ClassLoader;", &[])?
        .l()?;
    let name = env.new_string(name)?;
    let found = env.call_method(
        &loader,
        "loadClass",
        "(Ljava/lang/String;)Ljava/lang/Class;",
        &[(&name).into()],
    )?;
    Ok(found.l()?.into())
}

/// The address of a file at the file provider.
fn address<'a>(env: &mut JNIEnv<'a>, activity: &JObject, path: &str) -> Result<JObject<'a>> {
    let path = env.new_string(path)?;
    let file = env.new_object("java/io/File", "(Ljava/lang/String;)V", &[(&path).into()])?;
    let package = env
        .call_method(activity, "getPackageName", "()Ljava/lang/String;", &[])?
        .l()?;
    let package: String = env.get_string(&package.into())?.into();
    let authority = env.new_string(format!("{package}.fileprovider"))?;
    let provider = class(env, activity, "androidx.core.content.FileProvider")?;
    env.call_static_method(
        &provider,
        "getUriForFile",
        "(Landroid/content/Context;Ljava/lang/String;Ljava/io/File;)Landroid/net/Uri;",
        &[activity.into(), (&authority).into(), (&file).into()],
    )?
    .l()
}

fn send(env: &mut JNIEnv, activity: &JObject, path: &str, media_type: &str) -> Result<()> {
    let address = address(env, activity, path)?;
    let action = env.new_string("android.intent.action.SEND")?;
    let intent = env.new_object(
        "android/content/Intent",
        "(Ljava/lang/String;)V",
        &[(&action).into()],
    )?;
    let media_type = env.new_string(media_type)?;
    env.call_method(
        &intent,
        "setType",
        "(Ljava/lang/String;)Landroid/content/Intent;",
        &[(&media_type).into()],
    )?;
    let key = env.new_string("android.intent.extra.STREAM")?;
    env.call_method(
        &intent,
        "putExtra",
        "(Ljava/lang/String;Landroid/os/Parcelable;)Landroid/content/Intent;",
        &[(&key).into(), (&address).into()],
    )?;
    // The right to read is given with the clip, not with the extra.
    let nothing = JObject::null();
    let clip = env
        .call_static_method(
            "android/content/ClipData",
            "newRawUri",
            "(Ljava/lang/CharSequence;Landroid/net/Uri;)Landroid/content/ClipData;",
            &[(&nothing).into(), (&address).into()],
        )?
        .l()?;
    env.call_method(
        &intent,
        "setClipData",
        "(Landroid/content/ClipData;)V",
        &[(&clip).into()],
    )?;
    env.call_method(
        &intent,
        "addFlags",
        "(I)Landroid/content/Intent;",
        &[JValue::Int(GRANT_READ)],
    )?;
    let chooser = env
        .call_static_method(
            "android/content/Intent",
            "createChooser",
            "(Landroid/content/Intent;Ljava/lang/CharSequence;)Landroid/content/Intent;",
            &[(&intent).into(), (&nothing).into()],
        )?
        .l()?;
    env.call_method(
        activity,
        "startActivity",
        "(Landroid/content/Intent;)V",
        &[(&chooser).into()],
    )?;
    Ok(())
}
