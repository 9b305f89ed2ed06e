## La pantalla de lo enseñado de nuevo, y su botón en otras pantallas.
taught-title = Enseñado de nuevo
taught-lead = Qué se intentó, con quién, y si ayudó.
taught-open = Lo enseñado de nuevo
taught-empty-title = Aún no hay nada anotado
taught-empty-words = Anota lo que enseñaste de nuevo. Una vuelta después, Surefoot lo compara con lo que no se enseñó de nuevo.
taught-button = Enseñado de nuevo
taught-button-of = Enseñado de nuevo: { $title }
taught-add = Anotar algo
taught-form = ¿Qué se enseñó de nuevo?
taught-concept = Concepto
taught-date = El
taught-whom = Con quién
taught-whom-class = La clase, sin quienes constan como ausentes
taught-whom-some = Algunos estudiantes
taught-note = Qué hiciste (puede quedar vacío)
taught-note-help = Hasta 200 letras, sin nombres.
taught-save = Anotar
taught-nobody = Elige al menos un estudiante.
taught-noted = Anotado: { $title } se enseñó de nuevo.
taught-changed = La anotación se cambió.
taught-dropped = La anotación se quitó. Los resultados se conservan.
taught-drop = Quitar
taught-drop-of = Quitar la anotación: { $title }, { $date }
taught-edit = Cambiar
taught-edit-of = Cambiar la anotación: { $title }, { $date }
taught-numbers = Los números
taught-how-words = Todo lo informado hasta ese día predice las respuestas que siguen; así, un mal día que se arregla solo no cuenta como ayuda. { $count ->
    [one] { $count } concepto que no se enseñó de nuevo muestra
   *[other] { $count } conceptos que no se enseñaron de nuevo muestran
} lo que cambió de todos modos. Por azar, «subieron más» se dice de unas 5 de cada 100 que no cambiaron nada, y «probablemente» de unas 10 más.
taught-by = Mostrar
taught-by-all = Todo
taught-by-none = No hay nada anotado para esta elección.
taught-print = Imprimir esta lista
taught-of-class = con la clase

## Grupos pequeños que duran.
groups-continue = Seguir el { $date }
groups-continued = El grupo se guardó para el { $date }: quienes necesitan más y quienes faltaron.
groups-repeat = Usar otra vez
groups-repeated = Estos grupos están en el tablero. Nada se guarda hasta que los guardes.
groups-coming = Grupos para después
groups-missed = Ausentes ese día: { $who }
groups-partner = Cada grupo recibe a alguien que ya domina el concepto
groups-partner-words = Explica el concepto: lo domina, lo dice, y no está en un grupo en ese turno.
groups-partner-of = Lo explica: { $who }
groups-pairs = Parejas
groups-pairs-words = Quien necesita el concepto con quien lo domina.
groups-alone = por su cuenta: { $concept }
groups-show = Mostrar a la clase
groups-shown-title = Quién se sienta dónde
groups-shown-round = Turno { $slot }
groups-shown-group = Grupo { $nth }
groups-shown-others = Los demás: practiquen por su cuenta.
groups-shown-back = Volver
