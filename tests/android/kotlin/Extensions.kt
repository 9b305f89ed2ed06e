// The functions of androidx that only Kotlin sees, so the described classes lack them.
@file:Suppress("unused", "UNUSED_PARAMETER")

package androidx.activity

fun ComponentActivity.enableEdgeToEdge(): Unit = EdgeToEdge.enable(this)
