//! Reads aloud on an Android tablet with its text-to-speech service. Uses JNI, because no
//! listener is needed.

use jni::JNIEnv;
use jni::errors::Result;
use jni::objects::{GlobalRef, JObject, JValue};
use std::sync::atomic::{AtomicU64, Ordering};
use std::sync::{Mutex, PoisonError, mpsc};
use std::time::Duration;
use surefoot_app::{CallError, Language, Voice, VoiceMissing};
use tauri::{AppHandle, Manager as _, Runtime};

/// Enough for a busy tablet to answer.
const PATIENCE: Duration = Duration::from_secs(10);

/// Time between two checks of the service.
const CHECK_AGAIN: Duration = Duration::from_millis(200);

/// Checks until the service counts as missing; on a slow tablet it takes 15 seconds to start.
const MOST_CHECKS: u32 = 75;

/// `TextToSpeech.SUCCESS`, which is also `LANG_AVAILABLE`.
const SUCCESS: i32 = 0;

/// The speech service of the tablet.
pub struct TabletVoice<R: Runtime> {
    app: AppHandle<R>,
    service: Mutex<Option<GlobalRef>>,
    turn: AtomicU64,
}

fn none() -> CallError {
    CallError::NoVoice {
        missing: VoiceMissing::TabletVoice,
    }
}

impl<R: Runtime> TabletVoice<R> {
    pub fn new(app: AppHandle<R>) -> Self {
        Self {
            app,
            service: Mutex::default(),
            turn: AtomicU64::new(0),
        }
    }

    /// Does `work` on the main thread of the tablet.
    fn there<T: Send + 'static>(
        &self,
        work: impl FnOnce(&mut JNIEnv, &JObject) -> Result<T> + Send + 'static,
    ) -> std::result::Result<T, CallError> {
        let window = self.app.get_webview_window("main").ok_or_else(none)?;
        let (tell, told) = mpsc::channel();
        window
            .with_webview(move |webview| {
                webview.jni_handle().exec(move |env, activity, _webview| {
                    let done = work(env, activity);
                    if done.is_err() && env.exception_check().unwrap_or(false) {
                        // Writes the exception to the system's log. It must be cleared, or it
                        // ends the program.
                        let _ = env.exception_describe();
                        let _ = env.exception_clear();
                    }
                    let _ = tell.send(done.ok());
                });
            })
            .map_err(|_| none())?;
        told.recv_timeout(PATIENCE).ok().flatten().ok_or_else(none)
    }

    /// The service. It is made once and starts a little later.
    fn service(&self) -> std::result::Result<GlobalRef, CallError> {
        let mut service = self.service.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some(made) = &*service {
            return Ok(made.clone());
        }
        let made = self.there(|env, activity| {
            // The service would keep an activity, which ends before the program does.
            let program = env
                .call_method(
                    activity,
                    "getApplicationContext",
                    "()Landroid/content/Context;",
                    &[],
                )?
                .l()?;
            // Without a listener, because JNI cannot implement an interface.
            let nothing = JObject::null();
            let made = env.new_object(
                "android/speech/tts/TextToSpeech",
                "(Landroid/content/Context;Landroid/speech/tts/TextToSpeech$OnInitListener;)V",
                &[(&program).into(), (&nothing).into()],
            )?;
            env.new_global_ref(made)
        })?;
        *service = Some(made.clone());
        Ok(made)
    }

    /// Ends the service, so that the next text gets a new one.
    fn forget(&self) {
        let service = self
            .service
            .lock()
            .unwrap_or_else(PoisonError::into_inner)
            .take();
        if let Some(service) = service {
            // One that does not answer has ended already.
            let _ = self.there(move |env, _| {
                env.call_method(service.as_obj(), "shutdown", "()V", &[])?
                    .v()
            });
        }
    }

    fn read(&self, text: &str, language: Language) -> std::result::Result<(), CallError> {
        let mine = self.turn.fetch_add(1, Ordering::SeqCst) + 1;
        let is_mine = || self.turn.load(Ordering::SeqCst) == mine;
        let service = self.service()?;
        for look in 0.. {
            let (service, text) = (service.clone(), text.to_owned());
            let taken = self
                .there(move |env, _| hand_over(env, service.as_obj(), &text, language.as_str()))?;
            if taken {
                break;
            }
            if look >= MOST_CHECKS {
                return Err(none());
            }
            std::thread::sleep(CHECK_AGAIN);
            if !is_mine() {
                return Ok(());
            }
        }
        // The service needs some time to begin.
        loop {
            std::thread::sleep(CHECK_AGAIN);
            let service = service.clone();
            let reads = self.there(move |env, _| {
                env.call_method(service.as_obj(), "isSpeaking", "()Z", &[])?
                    .z()
            })?;
            if !reads || !is_mine() {
                return Ok(());
            }
        }
    }
}

/// Gives a text to the service. Returns whether it accepted the text.
fn hand_over(env: &mut JNIEnv, service: &JObject, text: &str, language: &str) -> Result<bool> {
    let language = env.new_string(language)?;
    let place = env.new_object(
        "java/util/Locale",
        "(Ljava/lang/String;)V",
        &[(&language).into()],
    )?;
    let set = env
        .call_method(
            service,
            "setLanguage",
            "(Ljava/util/Locale;)I",
            &[(&place).into()],
        )?
        .i()?;
    if set < SUCCESS {
        return Ok(false);
    }
    let text = env.new_string(text)?;
    let name = env.new_string("surefoot")?;
    let nothing = JObject::null();
    // QUEUE_FLUSH: stops the text before.
    let taken = env
        .call_method(
            service,
            "speak",
            "(Ljava/lang/CharSequence;ILandroid/os/Bundle;Ljava/lang/String;)I",
            &[
                (&text).into(),
                JValue::Int(0),
                (&nothing).into(),
                (&name).into(),
            ],
        )?
        .i()?;
    Ok(taken == SUCCESS)
}

impl<R: Runtime> Voice for TabletVoice<R> {
    fn speak(&self, text: &str, language: Language) -> std::result::Result<(), CallError> {
        let read = self.read(text, language);
        if read.is_err() {
            self.forget();
        }
        read
    }

    fn stop(&self) {
        self.turn.fetch_add(1, Ordering::SeqCst);
        let service = self
            .service
            .lock()
            .unwrap_or_else(PoisonError::into_inner)
            .clone();
        if let Some(service) = service {
            // A service that has ended reads nothing.
            let _ = self
                .there(move |env, _| env.call_method(service.as_obj(), "stop", "()I", &[])?.i());
        }
    }
}
