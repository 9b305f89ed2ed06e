## Exercises and concepts of the teacher's own.
class-part-exercises = Ejercicios propios
class-part-concepts = Conceptos propios
own-lead = Ejercicios que escribiste, para cualquier concepto. Desde el próximo paquete de clase, los estudiantes los reciben alternados con los del programa.
own-none = Todavía no hay ejercicios propios. Importa una tabla (CSV) o ítems de QTI 3: se revisa cada línea, y ves lo que no va.
own-import = Importar ejercicios
own-import-for = Concepto para las líneas que no nombran ninguno
own-import-for-hint = Un ítem de QTI no tiene concepto; una tabla lo nombra en cada línea.
own-import-for-none = Ninguno: lo dice el archivo
own-col-concept = Concepto
own-col-question = Pregunta
own-col-answer = Respuesta
own-col-level = Nivel
own-not-in-rotation = no está en la rotación
own-look = Ver
own-look-at = Ver: { $question }
own-remove = Quitar
own-remove-it = Quitar: { $question }
own-remove-title = ¿Quitar este ejercicio?
own-remove-words = «{ $question }» se quita de la clase y, con el próximo paquete, de los dispositivos. La práctica hecha sigue contando.
own-removed = El ejercicio se quitó.
own-try-title = Como lo ve un estudiante
own-try = Revisar la respuesta
own-try-fill = Primero escribe una respuesta.
own-try-hints = Pistas
own-try-note = Aquí no se cuenta nada.
own-imports = Importaciones
own-import-on = { $date }: { $count ->
    [one] { $count } importado
   *[other] { $count } importados
}, { $refused } no
own-import-undone = deshecho
own-undo = Deshacer esta importación
own-undo-title = ¿Deshacer esta importación?
own-undo-words = Lo que trajo se quita. Su informe queda aquí.
own-undone = La importación se deshizo.
own-imported = { $count ->
    [one] Se importó { $count }
   *[other] Se importaron { $count }
}; { $refused } no.
own-line = Línea { $line }
own-refused = No se pudo importar
own-left-out = importado sin: { $parts }
own-missing-in = sin texto en { $languages }
own-report-file = { $file }: { $taken ->
    [one] { $taken } importado
   *[other] { $taken } importados
}, { $refused } no
own-concepts-lead = Conceptos propios, de una tabla (CSV) o de un paquete CASE de estándares. Ponlos en la rotación como los demás. Los estudiantes los practican con tus ejercicios.
own-concepts-none = Todavía no hay conceptos propios.
own-concepts-pick = Elegir un archivo
own-concepts-col-codes = Códigos
own-concepts-col-before = Viene después de
own-concepts-col-exercises = Ejercicios propios
own-concepts-placed = en la rotación
own-concepts-place = Poner en la rotación
own-concepts-place-all = Poner los { $count } en la rotación
own-concepts-placed-all = Se pusieron { $count } conceptos en los días con menos. Fija sus primeras lecciones.
own-concepts-from = { $file }: ¿cuáles serán conceptos?
own-concepts-count = { $picked } de { $all } elegidos
own-concepts-all = Elegir todos
own-concepts-no = No elegir ninguno
own-concepts-search = Buscar
own-concepts-strand = Área
own-concepts-strand-all = Área para los elegidos
own-concepts-grade = Grado
own-concepts-grade-all = Grado para los elegidos sin grado
own-concepts-choose = Elige
own-concepts-title = Título
own-concepts-i-can = Lo que el estudiante dice que puede
own-concepts-take = Crear { $count ->
    [one] { $count } concepto
   *[other] { $count } conceptos
}
own-concepts-cancel = Cancelar
own-concepts-more = { $count } más: búscalos.
own-concepts-missing = Elige un área y un grado para cada uno.
error-invalid-concepts-in-rotation = Uno de estos conceptos está en la rotación. Primero quítalo ahí.
error-invalid-answer-unreadable = Eso no se puede leer como respuesta.
error-not-found-import = Esta importación ya no está aquí.

## Why a line was not taken, and what helps.
line-fault-file-too-large = El archivo tiene más de { $most_bytes } bytes. Hazlo más pequeño o divídelo.
line-fault-too-many-files = Más de { $most } archivos a la vez. Importa los demás después.
line-fault-not-known = No es una tabla (CSV) ni un ítem de QTI 3, o está vacío o dañado. Guárdalo otra vez en el programa que lo hizo.
line-fault-not-utf8 = El texto no está en UTF-8. Guarda el archivo como «CSV UTF-8».
line-fault-loose-quote = Una comilla no se cierra o está sola en una celda. Escribe "" para una comilla dentro de una celda entre comillas.
line-fault-line-too-long = La línea es demasiado larga o tiene demasiadas celdas. Acórtala.
line-fault-wrong-cells = La línea tiene { $found } celdas; el encabezado, { $wanted }. Pon entre comillas los textos con comas.
line-fault-missing-column = Falta la columna «{ $column }» en el encabezado. Agrégala.
line-fault-unknown-column = No existe la columna «{ $column }». Revisa cómo está escrita.
line-fault-column-twice = La columna «{ $column }» está dos veces. Deja una.
line-fault-empty = «{ $column }» está vacío. Complétalo.
line-fault-unknown-concept = No hay un concepto «{ $text }» en el catálogo. Escribe su título o su id.
line-fault-two-concepts = «{ $text }» nombra más de un concepto. Escribe el id.
line-fault-unknown-kind = «{ $text }» no es un tipo de respuesta. Escribe uno como whole number, fraction u one choice.
line-fault-bad-level = El nivel es 1, 2 o 3, no «{ $text }».
line-fault-bad-form = La forma «{ $text }» no va con este tipo de respuesta. Déjala vacía para aceptar toda forma igual.
line-fault-key-breaks-form = La respuesta misma no está en la forma pedida. Cambia la respuesta o la forma.
line-fault-too-long = «{ $column }» tiene { $chars } caracteres; caben { $most }. Acórtalo.
line-fault-too-many = Hay { $found } { $column }; caben { $most }. Quita algunos.
line-fault-bad-character = «{ $column }» tiene un carácter que no es texto. Escríbelo de nuevo.
line-fault-bad-braces = «{ $text }» entre llaves no es un número. Escribe ahí una fracción o un número, o quita las llaves.
line-fault-bad-answer = «{ $text }» no es una respuesta del tipo «{ $kind }».
line-fault-not-a-choice = «{ $text }» no es una de las opciones. Escríbelo tal como está ahí.
line-fault-too-few-choices = Una pregunta de opciones necesita dos opciones o más.
line-fault-choices-alike = La opción «{ $text }» está dos veces.
line-fault-no-choices-here = Este tipo de respuesta no tiene opciones. Deja vacía la celda.
line-fault-translation-parts = «{ $column }» no tiene tantas partes como el texto que traduce.
line-fault-wrong-is-right = La respuesta incorrecta «{ $text }» es correcta.
line-fault-wrong-twice = La respuesta incorrecta «{ $text }» está dos veces.
line-fault-alone = «{ $column }» está solo: una respuesta incorrecta necesita su comentario, y al revés.
line-fault-same-as-line = El mismo ejercicio está en la línea { $line } de { $file }.
line-fault-already-there = La clase ya tiene este ejercicio.
line-fault-bank-full = En una clase caben { $most } ejercicios propios. Quita algunos antes.
line-fault-bank-too-long = Los ejercicios de la clase son demasiado largos en total para el paquete. Quita algunos antes.
line-fault-not-xml = No es XML bien formado: { $detail }. Guarda el ítem otra vez en el programa que lo hizo.
line-fault-entities = No se acepta un tipo de documento ni una entidad que no sea de XML. Quítalo del archivo.
line-fault-xml-too-large = El ítem tiene demasiados niveles o demasiadas partes.
line-fault-older-qti = Es un ítem de QTI 2. Expórtalo como QTI 3.
line-fault-not-an-item = «{ $element }» no es un ítem de QTI 3.
line-fault-unknown-element = «{ $element }» no se puede mostrar aquí, como una imagen o una tabla. Pregunta solo con palabras.
line-fault-not-one-question = El ítem tiene { $found } preguntas, pero puede tener una. Haz un ítem de cada una.
line-fault-no-declaration = No hay una declaración de respuesta «{ $text }».
line-fault-declaration-unfit = La cardinalidad «{ $cardinality }» y el tipo «{ $base_type }» no van con { $element }.
line-fault-no-key = El ítem no dice qué respuesta es correcta.
line-fault-unknown-processing = No se acepta la corrección por «{ $text }». Usa la plantilla match_correct o map_response.
line-fault-several-best = Más de una respuesta obtiene el máximo. Da a las demás un valor menor.
line-fault-none-best = Ninguna respuesta obtiene un valor mayor que cero.
line-fault-keys-disagree = La respuesta correcta no es la de mayor valor.
line-fault-not-a-number = «{ $text }» no es un número.
line-fault-unknown-language = «{ $text }» no es un idioma de este programa.
line-fault-unknown-strand = No hay un área «{ $text }». Escribe una de las doce, como fractions.
line-fault-bad-grade = El grado es de 1 a 12, no «{ $text }».
line-fault-bad-id = «{ $text }» no es un id: letras minúsculas y cifras unidas por guiones.
line-fault-concept-there = Ya hay un concepto «{ $text }».
line-fault-circle = Estos conceptos vienen uno después de otro en círculo: { $text }.
line-fault-concepts-full = En una clase caben { $most } conceptos propios.
line-fault-not-a-package = No es un paquete CASE: { $detail }.
line-fault-no-concept-chosen = Elige el concepto de los ítems e impórtalos otra vez.
