package org.surefoot.app

import android.os.Bundle
import android.view.View
import androidx.activity.enableEdgeToEdge
import androidx.core.view.ViewCompat
import androidx.core.view.WindowInsetsCompat

class MainActivity : TauriActivity() {
  override fun onCreate(savedInstanceState: Bundle?) {
    enableEdgeToEdge()
    super.onCreate(savedInstanceState)
    keepClear(findViewById(android.R.id.content))
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
}
