## Copias, respaldos, segundo dispositivo, PIN, borrar.
safe-title = Cuidar los datos
safe-backup = Respaldo
safe-backup-text = Un archivo sellado con todo. Guárdalo en otro lugar, como una memoria USB. Sin su frase secreta nadie lo puede abrir.
safe-backup-make = Hacer un respaldo
safe-backup-open = Abrir un respaldo
safe-backup-made = El respaldo está guardado: { $file }
safe-backup-restored = El respaldo está abierto.
safe-backup-replaced = El respaldo está abierto. Lo que había antes se guarda entre las copias.
safe-passphrase = Frase secreta
safe-passphrase-again = La misma otra vez
safe-passphrase-hint = Al menos 8 letras, números o espacios. Cuatro palabras que no tienen que ver entre sí van bien. Escríbelas en papel: nadie te puede decir la frase después.
safe-passphrase-short = Usa al menos 8 letras, números o espacios.
safe-passphrase-differs = Las dos no son iguales.
safe-passphrase-for = Frase secreta de { $file }
safe-open = Abrir
safe-copies = Copias en este dispositivo
safe-copies-text = Surefoot hace una copia cada día que se usa y guarda las más nuevas.
safe-copies-none = Todavía no hay copias.
safe-copies-trouble = La última copia no se pudo hacer.
safe-copies-lock-trouble = No se pudieron sobrescribir todas las copias de antes del candado. Quizá alguien pueda leerlas sin la frase secreta.
safe-copy-daily = Copia del { $date }
safe-copy-change = Copia de antes de un Surefoot más nuevo
safe-copy-replaced = Reemplazada el { $date }
safe-copy-no-day = día desconocido
safe-copy-use = Volver a ella
safe-copy-used = Esa copia está en uso ahora. Lo que había antes se guarda entre las copias.
safe-copy-sure = ¿Volver a esta copia? Lo que vino después ya no se verá. Lo que hay ahora se guarda entre las copias.
safe-damaged-student = Los datos de { $name } no se pueden leer.
safe-damaged-someone = Los datos de un estudiante no se pueden leer.
safe-damaged-desk = El escritorio no se puede leer.
safe-damaged-others = Todo lo demás en este dispositivo funciona. El archivo se queda como se encontró.
safe-damaged-copy = Hay una copia buena del { $date }.
safe-damaged-none = No hay una copia buena en este dispositivo. Si tienes un respaldo, ábrelo.
safe-second = Segundo dispositivo
safe-second-text = Lleva todo a otro dispositivo tuyo. Los dos entregan entonces por tu asiento.
safe-second-make = Hacer un archivo para llevar
safe-second-made = El archivo para llevar está guardado: { $file }
safe-second-open = Abrir un archivo para llevar
safe-second-new = { $name } está ahora en este dispositivo.
safe-second-done = { $count ->
    [0] No había nada nuevo en el archivo.
    [one] Llegó { $count } entrada nueva.
   *[other] Llegaron { $count } entradas nuevas.
}
safe-pin = PIN
safe-pin-text = En una tableta compartida, un PIN cierra tus páginas a otros.
safe-pin-is = Hay un PIN.
safe-pin-set = Poner un PIN
safe-pin-change = Cambiar el PIN
safe-pin-remove = Quitar el PIN
safe-pin-saved = El PIN está puesto.
safe-pin-removed = El PIN ya no está.
safe-pin-digits = De 4 a 8 cifras
safe-pin-of = PIN de { $name }
safe-pin-wrong = Este no es el PIN.
safe-pin-slip = Toma tu papel. Solo tú puedes poner tu PIN, porque solo tú tienes el papel.
safe-pin-code = Código largo del papel
safe-pin-signs = Signos del PIN en el papel
safe-pin-forgot = ¿Lo olvidaste? Escribe aquí los signos del PIN de tu papel. Tu maestra o maestro puede imprimirlo otra vez. No se pierde nada.
safe-pin-reset = Quitar el PIN
safe-lock = Candado del escritorio
safe-lock-text = Un candado cifra en esta computadora los nombres de los estudiantes, los códigos de sus papeles y las llaves de las clases. La frase secreta se pide al abrir el escritorio y otra vez tras un tiempo sin uso.
safe-lock-limits = Las valoraciones y los resultados no se cifran. Se guardan por número de asiento.
safe-lock-backup = Primero haz un respaldo y guarda su frase secreta en otro lugar. Si olvidas la frase del escritorio, solo un respaldo trae los nombres de vuelta.
safe-lock-copies-removed = Esto sobrescribe las copias de esta computadora que se abren con la frase actual. Se hace una copia nueva. Lo que quitaste en los últimos diez minutos ya no se podrá recuperar.
safe-lock-copies = Esto sobrescribe las copias de esta computadora que se abren sin frase secreta o con la actual. Se hace una copia nueva. Lo que quitaste en los últimos diez minutos ya no se podrá recuperar.
safe-lock-is = El escritorio tiene candado.
safe-lock-set = Poner un candado
safe-lock-change = Cambiar la frase secreta
safe-lock-remove = Quitar el candado
safe-lock-was-set = El escritorio ahora tiene candado.
safe-lock-was-changed = La frase secreta está cambiada.
safe-lock-was-removed = Se quitó el candado. Los nombres y las llaves ya no están protegidos.
safe-lock-current = Frase secreta actual
safe-lock-new = Frase secreta nueva
safe-lock-wrong = Esta no es la frase secreta del escritorio.
safe-lock-idle = Cerrar el escritorio
safe-lock-idle-minutes = tras { $minutes } minutos sin uso
safe-lock-idle-never = nunca por sí solo
safe-lock-readable = { $count ->
    [one] { $count } copia de esta computadora quizá se abra sin la frase secreta. Cambia la frase para sobrescribirla.
   *[other] { $count } copias de esta computadora quizá se abran sin la frase secreta. Cambia la frase para sobrescribirlas.
}
lock-title = El escritorio está cerrado
lock-lead = Escribe la frase secreta del escritorio.
lock-kept = No se perdió nada. El escritorio se abre donde lo dejaste.
lock-open = Abrir el escritorio
lock-projector = Mostrar el repaso de hoy
lock-projector-text = Quien sustituye puede mostrar los ejercicios del día en el proyector. No aparecen nombres ni nada de cómo le va a la clase.
lock-projector-none = Hoy no hay nada que mostrar.
lock-forgot = ¿Olvidaste la frase secreta?
lock-forgot-text = Nadie puede abrir el escritorio sin ella. Abre un respaldo: el escritorio queda como estaba ese día y sin candado. Para tener valoraciones más nuevas, importa otra vez las entregas; lo que escribiste después falta.
lock-forgot-kept = El escritorio cerrado queda entre las copias de esta computadora. Puedes volver a él si recuerdas la frase.
lock-new-text = Sin un respaldo puedes empezar con un escritorio vacío.
lock-new = Empezar un escritorio vacío
lock-new-sure = ¿Empezar un escritorio vacío en lugar del cerrado? El escritorio cerrado queda entre las copias de esta computadora.
lock-new-done = El escritorio está vacío ahora. El escritorio cerrado está entre las copias.
safe-remove = Borrar
safe-remove-student = Borrarme de este dispositivo
safe-remove-student-sure = ¿Borrar todo lo de { $name } de este dispositivo, también las copias? No se puede deshacer. Los archivos que guardaste o entregaste en otra parte se quedan donde están.
safe-removed = Se borró todo.
safe-remove-text = Un estudiante o una clase se borra en la pantalla de la clase. También se borran las copias de este dispositivo; los archivos guardados en otra parte se quedan donde están.
safe-remove-all = Borrar todo
safe-remove-all-what = { $classes ->
    [one] { $classes } clase
   *[other] { $classes } clases
} con { $seats ->
    [one] { $seats } asiento
   *[other] { $seats } asientos
}, y { $students ->
    [0] ningún estudiante
    [one] { $students } estudiante
   *[other] { $students } estudiantes
} de este dispositivo.
safe-remove-all-type = Para seguir, escribe: { $word }
safe-remove-all-sure = ¿Borrar todas las clases y todos los estudiantes de este dispositivo, con todas las copias? No se puede deshacer. Los archivos guardados en otra parte se quedan donde están.
safe-remove-yes = Borrar para siempre
safe-year-over-class = El año escolar de { $title } terminó el { $date }. Guarda solo lo que aún se necesita: haz un respaldo si hace falta y luego borra la clase.
safe-year-over-student = { $name }: el año escolar terminó el { $date }. Cuando ya no se necesite nada, bórralo en los ajustes.
safe-class-key = Segunda computadora
safe-class-key-text = Un archivo sellado con las llaves y los nombres de esta clase. Una segunda computadora, tuya o de quien comparte la clase, puede abrir entonces las entregas. Una sola computadora guarda los paquetes de clase. Una llave de clase más nueva pone la otra al día.
safe-class-key-make = Guardar la llave de la clase
safe-class-key-made = La llave de la clase está guardada: { $file }
safe-class-key-open = Abrir una llave de clase
safe-class-key-done = La clase está ahora en esta computadora.
packs-who = ¿Quién guarda los paquetes de clase?
packs-stay = Esta computadora, como hasta ahora. La otra lee.
packs-over = Desde ahora la otra computadora. Esta lee.
packs-elsewhere = Otra computadora guarda los paquetes de esta clase. Lo que cambies aquí en la configuración se queda aquí.
packs-here = Volver a guardar aquí los paquetes
packs-here-ask = ¿Guardar los paquetes aquí?
packs-here-words = Hazlo solo si la otra computadora ya no los guarda. Si dos guardan paquetes, no coinciden, y cada estudiante recibe uno u otro.
packs-here-done = Ahora esta computadora guarda los paquetes de clase.
folder-title = Carpeta de la clase
folder-desk-text = Elige una carpeta que tu escuela ya comparte: en su red, en la nube o en una memoria USB. Surefoot pone allí el paquete de clase después de cada cambio e importa las entregas según llegan, mientras el escritorio está abierto. Surefoot mismo no envía nada: el sistema de tu escuela mueve los archivos. Cada estudiante elige la carpeta una vez en su dispositivo.
folder-desk-readers = Quien puede leer esta carpeta ve cuántos dispositivos entregan y qué días. No puede leer ninguna entrega. No contiene nombres de estudiantes.
folder-desk-name = Elegir la carpeta de la clase
folder-desk-looking = Surefoot la mira por primera vez.
folder-desk-waiting = Un paquete de clase con cambios llegará allí enseguida.
folder-desk-reached = Vista por última vez el { $date }. Sus paquetes de clase están al día.
folder-desk-undo = Los archivos que deshaces no vuelven solos. Vuelven con la siguiente entrega del estudiante o con Importar una carpeta.
folder-last-reached = La última vez que se vio fue el { $date }.
folder-stop = Dejar de usarla
folder-desk-stop = ¿Dejar de usar la carpeta de la clase?
folder-desk-stop-words = { $count ->
    [one] Deja de usarse para { $titles }. Los paquetes y las entregas ya no viajan solos. Lo que hay en la carpeta se queda.
   *[other] Deja de usarse para todas tus clases de aquí: { $titles }. Los paquetes y las entregas ya no viajan solos. Lo que hay en la carpeta se queda.
}
folder-desk-stopped = La carpeta de la clase ya no se usa.
folder-trouble-away = La carpeta de la clase no está ahora mismo.
folder-trouble-full = La carpeta de la clase está llena.
folder-trouble-read-only = Este dispositivo no puede escribir en la carpeta de la clase.
folder-trouble-silent = La carpeta de la clase no responde.
folder-trouble-no-pack = Esta carpeta no tiene ningún paquete de esta clase.
folder-trouble-too-many = La carpeta de la clase tiene demasiados archivos. Los paquetes de clase siguen llegando, pero puede faltar alguna entrega. Quita los archivos que no son de la clase.
folder-trouble-in-the-way = Otra cosa en la carpeta de la clase tiene el nombre de un archivo que va allí. Quítala.
folder-trouble-not-allowed = Este dispositivo ya no puede usar la carpeta de la clase. Elige la carpeta otra vez.
folder-trouble-changes-names = Esta carpeta da otros nombres a los archivos y Surefoot no la puede usar. Elige otra carpeta.
folder-trouble-other = La carpeta de la clase no se puede usar ahora mismo.
safe-notes = Lo que hay que saber
safe-note-law = La ley de tu lugar y las reglas de tu escuela sobre datos de niños son lo primero. Pregunta en tu escuela antes de empezar.
safe-note-grade = Una valoración es la opinión del propio estudiante. No es una nota ni un diagnóstico.
safe-note-special = Las decisiones sobre educación especial se toman en el procedimiento de tu escuela, nunca por este programa.
safe-note-names = Sin candado del escritorio, quien puede leer los archivos de esta computadora puede leer los nombres. Bloquea la computadora y cifra su disco.
removed-class = Se borró { $title }.
removed-seat = Se quitó a { $name } de { $title }.
removed-own-exercise = Se quitó un ejercicio tuyo de { $title }.
removed-own-import = Se deshizo una importación tuya en { $title }.
removed-more = { $count ->
    [one] Se puede recuperar uno más
   *[other] Se pueden recuperar { $count } más
}
removed-words = En el disco ya no está. Durante diez minutos, o hasta que se cierre Surefoot, se puede recuperar de la memoria.
removed-restore = Recuperar
removed-discard = Borrar ya para siempre
removed-restored = Está de vuelta, como estaba.
removed-moved = { $name } pasó de { $title } a { $to }.
removed-moved-words = Durante diez minutos, o hasta que cierres Surefoot, puedes devolver al estudiante, con todo.
removed-move-back = Devolver
removed-moved-keep = Dejarlo así
removed-warning = Sale enseguida del disco y de las copias de esta computadora. Durante diez minutos, o hasta que se cierre Surefoot, se puede recuperar; después nadie puede.
