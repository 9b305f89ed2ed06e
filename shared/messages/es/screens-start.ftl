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
join-pack-text = Tu maestra o maestro te dio un archivo. Su nombre termina en .sfclass.
join-pack-button = Elegir el archivo
join-pack-concepts = { $concepts ->
    [one] { $concepts } concepto este año
   *[other] { $concepts } conceptos este año
}
join-code = Escribe el código largo de tu papel
join-code-text = El código dice cuál es tu asiento. No lleva ningún nombre.
join-code-label = Código
join-code-good = El código es correcto.
join-again = ¿Eres tú?
join-again-text = Alguien entró en este dispositivo con el mismo papel. Cada estudiante tiene su propio papel.
join-again-mine = Sí, soy yo
join-again-other = No, escribo mi propio código
join-again-beside = No, y no tengo otro papel
join-again-beside-text = Entonces dilo en clase. Tu trabajo todavía puede llegar a su lugar.
slip-new = Un papel nuevo
slip-new-text = ¿Pasaste a otra clase, o entraste con el papel de otra persona? Abre el paquete de clase y escribe tu código nuevo. Todo lo que hiciste se queda.
slip-new-pin = Tu PIN se quita, porque es del papel de antes. Ponlo otra vez con el nuevo.
slip-pick = Elegir el paquete de clase
slip-take = Usar este papel
slip-changed = Ahora estás en { $title }.
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
