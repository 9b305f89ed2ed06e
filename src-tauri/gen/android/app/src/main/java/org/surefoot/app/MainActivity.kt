package org.surefoot.app

import android.content.Intent
import android.content.res.Configuration
import android.net.Uri
import android.os.Bundle
import android.provider.DocumentsContract
import android.view.View
import androidx.activity.OnBackPressedCallback
import androidx.activity.enableEdgeToEdge
import androidx.core.view.ViewCompat
import androidx.core.view.WindowInsetsCompat

class MainActivity : TauriActivity() {
  /** Whether the system ended the program and brings its task back. */
  private var comesBack = false

  /** Whether the file that a person chooses now is one to be made. */
  private var isMaking = false

  override fun onCreate(savedInstanceState: Bundle?) {
    comesBack = savedInstanceState != null
    isMaking = savedInstanceState?.getBoolean(IS_MAKING) ?: false
    val fromHistory = intent.flags and Intent.FLAG_ACTIVITY_LAUNCHED_FROM_HISTORY != 0
    // A file that was opened before is not opened again; the right to read it may be gone too.
    if (comesBack || fromHistory) intent = Intent(Intent.ACTION_MAIN)
    enableEdgeToEdge()
    super.onCreate(savedInstanceState)
    keepClear(findViewById(android.R.id.content))
    // On Android 11 and older, Back at the first screen would end the activity while threads
    // of the page still run.
    onBackPressedDispatcher.addCallback(
      this,
      object : OnBackPressedCallback(true) {
        override fun handleOnBackPressed() {
          moveTaskToBack(true)
        }
      },
    )
  }

  override fun onSaveInstanceState(outState: Bundle) {
    super.onSaveInstanceState(outState)
    outState.putBoolean(IS_MAKING, isMaking)
  }

  @Deprecated("What the page's dialogs call comes down to it.")
  override fun startActivityForResult(intent: Intent, requestCode: Int, options: Bundle?) {
    isMaking = intent.action == Intent.ACTION_CREATE_DOCUMENT
    @Suppress("DEPRECATION")
    super.startActivityForResult(intent, requestCode, options)
  }

  override fun onResume() {
    super.onResume()
    comesBack = false
  }

  override fun onConfigurationChanged(newConfig: Configuration) {
    super.onConfigurationChanged(newConfig)
    // The icons in the system's bars follow light and dark.
    enableEdgeToEdge()
  }

  /**
   * Takes what was picked while the system ended the program: nobody waits for it any more, so
   * a picked file comes in like one that another program opens. A file that was made for saving
   * is still empty and goes.
   */
  @Deprecated("The page's dialogs use its successor, which forgets them when the program ends.")
  override fun onActivityResult(requestCode: Int, resultCode: Int, data: Intent?) {
    @Suppress("DEPRECATION")
    super.onActivityResult(requestCode, resultCode, data)
    if (!comesBack || resultCode != RESULT_OK || data == null) return
    val made = data.data
    // A folder is no file; whoever chose it is asked again.
    if (made != null && DocumentsContract.isTreeUri(made)) return
    if (made != null && isMaking && isEmpty(made)) {
      remove(made)
    } else {
      Rust.onNewIntent(Intent(data).setAction(Intent.ACTION_VIEW))
    }
  }

  private fun isEmpty(file: Uri): Boolean =
    try {
      contentResolver.openAssetFileDescriptor(file, "r")?.use { it.length == 0L } ?: false
    } catch (e: Exception) {
      false
    }

  private fun remove(file: Uri) {
    try {
      DocumentsContract.deleteDocument(contentResolver, file)
    } catch (e: Exception) {
      Logger.warn("An empty file stays where it was made: $e")
    }
  }

  /** Keeps the page clear of the system's bars, a camera's cut-out and the keyboard. */
  private fun keepClear(content: View) {
    val parts = WindowInsetsCompat.Type.systemBars() or
      WindowInsetsCompat.Type.displayCutout() or
      WindowInsetsCompat.Type.ime()
    ViewCompat.setOnApplyWindowInsetsListener(content) { view, insets ->
      val room = insets.getInsets(parts)
      view.setPadding(room.left, room.top, room.right, room.bottom)
      // The page learns of none of it, so nothing is kept clear twice.
      WindowInsetsCompat.CONSUMED
    }
  }

  private companion object {
    const val IS_MAKING = "is-making"
  }
}
