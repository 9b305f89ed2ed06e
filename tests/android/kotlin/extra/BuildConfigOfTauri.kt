package app.tauri

object BuildConfig {
  const val DEBUG = false
}
