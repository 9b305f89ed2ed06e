## Por qué está un concepto en la práctica.
reason-assigned = Tu maestra o maestro lo eligió. Llevas { $done } de { $of }.
reason-marked-not-yet = Marcaste Todavía no.
reason-marked-with-help = Marcaste Con ayuda.
reason-wrong-last-time = La última vez fue difícil.
reason-time-to-see-again = { $days ->
    [one] Lo viste ayer. Es hora de verlo otra vez.
   *[other] Lo viste hace { $days } días. Es hora de verlo otra vez.
}
reason-focus = Tú elegiste trabajarlo.
reason-chosen = Lo acabas de elegir.
reason-first-practice = Es nuevo para ti aquí.
reason-before = Ayuda con { $title }.
reason-before-plain = Ayuda con algo que estás aprendiendo.
