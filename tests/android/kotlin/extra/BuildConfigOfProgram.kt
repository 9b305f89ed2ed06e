package org.surefoot.app

object BuildConfig {
  const val DEBUG = false
}
