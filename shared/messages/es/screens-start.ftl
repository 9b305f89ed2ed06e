## La primera pantalla, entrar a la clase y la clase de ejemplo.
start-title = Surefoot
start-lead = Mira lo que sabes. Trabaja en lo que sigue.
start-who = ¿Quién eres?
start-student = Soy estudiante
start-student-text = Entra a tu clase con el código de tu papel.
start-teacher = Soy maestra o maestro
start-teacher-text = Prepara una clase y mira lo que necesita.
start-sample = Probar la clase de ejemplo
start-sample-text = Explora una clase inventada. Allí nada es real.
start-students = ¿Quién va a aprender?
start-add-student = Otro estudiante
start-desk = Escritorio docente
start-settings = Idioma y colores
start-language = Idioma
start-theme = Colores
opened-not-taken = No se abrió "{ $file }". { $why }

sample-bar = Una clase inventada. Aquí nadie es real.
sample-student = Tableta
sample-teacher = Escritorio
sample-leave = Salir
sample-making = Preparando la clase de ejemplo
sample-making-text = Estudiantes inventados entran, marcan, practican y entregan. Tarda un momento.
sample-progress = { $done } de { $total } pasos
sample-stopped = Lo paraste. No se guardó nada de la clase de ejemplo.
sample-nobody = La clase de ejemplo no tiene estudiantes en esta tableta.

join-title = Entra a tu clase
join-pack = Abre el paquete de la clase
join-pack-text = Tu maestra o maestro te dio un archivo. Su nombre termina en .sfclass. O tu clase tiene una carpeta compartida: elige esa.
join-pack-button = Elegir el archivo
join-folder-button = Elegir la carpeta de la clase
join-folder-choose = ¿Cuál es tu clase?
join-folder-none = No hay ningún paquete de clase en esta carpeta. Elige otra.
join-pack-concepts = { $concepts ->
    [one] { $concepts } concepto este año
   *[other] { $concepts } conceptos este año
}
join-code = Escribe el código largo de tu papel
join-code-text = El código dice cuál es tu asiento. No lleva ningún nombre.
join-code-label = Código
join-code-good = El código es correcto.
join-you = Elige un apodo y un dibujo
join-you-text = Se quedan en este dispositivo. No uses tu nombre completo.
join-nickname = Apodo
join-avatar = Dibujo
join-language = Tu idioma
join-finish = Entrar
join-steps = Paso { $step } de { $steps }

avatar-otter = Nutria
avatar-heron = Garza
avatar-fish = Pez
avatar-moth = Polilla
avatar-fern = Helecho
avatar-acorn = Bellota
avatar-pine = Pino
avatar-fox = Zorro
avatar-owl = Búho
avatar-turtle = Tortuga
avatar-snail = Caracol
avatar-bee = Abeja
avatar-hedgehog = Erizo
avatar-frog = Rana
avatar-sunflower = Girasol
avatar-mushroom = Hongo
