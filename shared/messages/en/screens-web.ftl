## In a browser: where files go, and what protects the work.
web-downloads = the downloads of this browser
web-keep-soon = Your work is only in this browser. Hand it in soon. Then your teacher has it too.
web-keep-now = { $days ->
    [one] For { $days } day, your work has been only in this browser. A browser can lose it.
   *[other] For { $days } days, your work has been only in this browser. A browser can lose it.
}
web-keep-how = Hand it in now. Or save a file for a second device in your settings.
error-no-place-other-tab = Surefoot is open in another tab or window.
error-no-place-other-tab-do = Go to that one. Or close it, then try again here.
error-no-place-missing = This browser cannot keep your work.
error-no-place-missing-do = Is this a private window? It keeps nothing. Open Surefoot in a normal window, or ask a grown-up for a newer browser.
error-no-place-refused = This browser is set to keep nothing.
error-no-place-refused-do = Ask a grown-up to let this page keep its data. Then try again.
error-no-place-full = This device has no room for your work.
error-no-place-full-do = Ask a grown-up to make room. Then try again.
error-not-loaded = This part of Surefoot is not on this device yet.
error-not-loaded-do = Connect to the internet. Then try again. If this stays, tell your teacher.
web-framed = Surefoot does not run inside another page.
web-framed-do = Open it in a tab of its own.
web-version-before-ask = Do you want to use the Surefoot from before?
web-version-before-yes = Yes, use the one from before
web-version-newest-ask = Do you want to use the newest Surefoot again?
web-version-newest-yes = Yes, use the newest one
web-version-why = Say yes only if your teacher told you to. Your work stays.
web-version-no = No, change nothing
web-pin-text = A PIN closes your pages on the screen. Someone who knows browsers well can get around it.
