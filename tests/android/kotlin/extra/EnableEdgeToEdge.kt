// What only Kotlin sees is not among the described classes: functions of androidx that extend
// others, classes that a build writes, and one of Jackson that Debian lacks.
package androidx.activity

fun ComponentActivity.enableEdgeToEdge(): Unit = EdgeToEdge.enable(this)
