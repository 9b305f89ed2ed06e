## The first screen of the desk: what the class needs now
tab-now = Ahora
now-title = Lo que tu clase necesita ahora
now-list = Qué hacer, lo más importante primero
now-reporting = Han informado { $reporting } de { $seats } asientos; el informe más reciente: { $newest }.
now-talk-today = Habla hoy de «{ $concept }».
now-talk-day = Habla de «{ $concept }» el { $date }.
now-talk-wrong = { $count ->
    [0] Casi nadie lo haría mal.
    [one] Cerca de un estudiante lo haría mal.
   *[other] Cerca de { $count } estudiantes lo harían mal.
}
now-talk-order = Según las valoraciones, está entre los primeros de ese día.
now-way-teach-again = Enséñalo otra vez, unos { $minutes } minutos.
now-way-pair-talk = Que lo expliquen en parejas, unos { $minutes } minutos.
now-way-short-look = Basta un vistazo breve, { $minutes ->
    [one] cerca de un minuto.
   *[other] unos { $minutes } minutos.
}
now-sure-and-wrong = La clase se siente segura con «{ $concept }», pero la mayoría de las respuestas son incorrectas.
now-sure-and-wrong-why = { $sure } de { $rated } que lo valoraron eligieron Por mi cuenta o Podría enseñarlo.
now-weak = «{ $concept }» { $certainty ->
    [clear] está flojo
    [likely] probablemente está flojo
   *[other] puede estar flojo
} en la clase.
now-weak-order = «{ $concept }» está entre los más flojos según las valoraciones.
now-weak-heads = Lo dominan unos { $about } de { $of } estudiantes; lo probable es de { $low } a { $high }.
now-weak-low = { $low } de { $rated } que lo valoraron eligieron Todavía no o Con ayuda.
now-nothing-weak = { $certainty ->
    [not_sure] Ningún concepto está claramente flojo en la clase ahora.
   *[other] Ningún concepto está flojo en la clase ahora.
}
now-nothing-weak-why = { $count ->
    [one] Al menos 7 de cada 10 estudiantes dominan el único concepto enseñado y valorado.
   *[other] Al menos 7 de cada 10 estudiantes dominan cada uno de los { $count } conceptos enseñados y valorados.
}
now-together = { $count } estudiantes podrían trabajar «{ $concept }» en { $groups ->
    [one] un grupo pequeño
   *[other] grupos pequeños
}.
now-together-why = Parece que lo necesitan, y la mayor parte de quienes informaron no.
now-together-why-order = Cada uno eligió por última vez Todavía no o Con ayuda.
now-taught-again = «{ $concept }»: { $help ->
    [rose_more] los resultados subieron más que en lo que no se enseñó de nuevo.
    [likely_rose_more] los resultados probablemente subieron más que en lo que no se enseñó de nuevo.
    [no_sign] no hay señal de que ayudara mucho enseñarlo de nuevo.
    [cannot_tell] aún no se puede decir si ayudó enseñarlo de nuevo.
   *[other] no se puede decir si ayudó enseñarlo de nuevo.
}
now-taught-again-why = { $count ->
    [one] Un estudiante lo vio de nuevo el { $date }.
   *[other] { $count } estudiantes lo vieron de nuevo el { $date }.
}
now-sure-but-wrong = { $count ->
    [one] Un estudiante dice que lo sabe y le sale mal: «{ $concept }».
   *[other] { $count } estudiantes dicen que lo saben y les sale mal: «{ $concept }».
}
now-sure-but-wrong-why = Desde la última valoración hubo más respuestas incorrectas o con ayuda que correctas.
now-unsure-but-right = { $count ->
    [one] Un estudiante puede hacerlo y todavía no se fía: «{ $concept }».
   *[other] { $count } estudiantes pueden hacerlo y todavía no se fían: «{ $concept }».
}
now-unsure-but-right-why = Desde la última valoración hubo más respuestas correctas sin ayuda que incorrectas o con ayuda.
now-certain-counted = Esto está contado.
now-certain-clear = Esto está claro.
now-certain-likely = Esto es probable.
now-certain-not-sure = Esto aún no es seguro. Pregunta antes a algunos estudiantes.
now-certain-ratings-alone = Esto se basa solo en valoraciones.
now-certain-ask-first = Pocos han informado. Pregunta antes a la clase.
now-do-show = Mostrar en el proyector
now-do-group = Proponer grupos
now-do-assign = Asignar práctica
now-do-print = Imprimir una hoja
now-numbers = Los números
now-who = ¿Quiénes?
now-who-hide = Ocultar quiénes
now-nothing-title = Todavía no se ha entregado nada
now-nothing-words = Los estudiantes valoran cada concepto después del repaso y entregan un archivo pequeño. Entonces esta página dice en pocas frases lo que la clase necesita.
now-none-yet = Han llegado informes, pero ninguno de un concepto ya enseñado. Las frases llegarán con los primeros.
now-known = Lo que se sabe y lo que vendrá
now-known-order = Las valoraciones dicen qué conceptos están más flojos que otros. Cuántos estudiantes dominan un concepto se dice a partir de unos 430 resultados de cinco estudiantes o más.
now-known-small = Esta clase tiene menos de cinco estudiantes. Por eso solo se pueden decir cuentas y un orden.
now-known-trend = { $passes ->
    [0] Si un concepto sube o baja se dice tras seis vueltas con tres valoraciones. Aún no hay ninguna.
    [one] Si un concepto sube o baja se dice tras seis vueltas con tres valoraciones. Hasta ahora hay una.
   *[other] Si un concepto sube o baja se dice tras seis vueltas con tres valoraciones. Hasta ahora hay { $passes }.
}
now-board = Todo el tablero
now-lacking = { $count ->
    [0] A quién le falta: no falta nada
   *[other] A quién le falta: { $count } por revisar
}

## Today and the next school day
days-title = Hoy y el próximo día de clase
days-today = Hoy
days-tomorrow = Mañana
days-on = { $name }, día { $day }
days-first-lesson = Primera lección ese día.
days-preview = Aún no se ha enseñado.
days-talk-teach-again = Enséñalo otra vez.
days-talk-pair-talk = Que lo expliquen en parejas.
days-talk-short-look = Dale un vistazo breve.
days-weak-before = Mira antes esto: { $concepts }.
days-plan = Preparar la charla
days-sheet = Imprimir una hoja para copiar
days-paper = { $count ->
    [one] Un estudiante trabaja en papel.
   *[other] { $count } estudiantes trabajan en papel.
}
days-none = No quedan días de clase.
days-open = Hoy y el próximo día de clase: qué preparar y qué copiar
