## En un navegador: adónde van los archivos y qué protege el trabajo.
web-downloads = las descargas de este navegador
web-keep-soon = Tu trabajo está solo en este navegador. Entrégalo pronto. Así lo tiene también tu docente.
web-keep-now = { $days ->
    [one] Desde hace { $days } día, tu trabajo está solo en este navegador. Un navegador puede perderlo.
   *[other] Desde hace { $days } días, tu trabajo está solo en este navegador. Un navegador puede perderlo.
}
web-keep-how = Entrégalo ahora. O guarda en tus ajustes un archivo para otro dispositivo.
error-no-place-other-tab = Surefoot está abierto en otra pestaña o ventana.
error-no-place-other-tab-do = Ve a esa. O ciérrala y prueba otra vez aquí.
error-no-place-missing = Este navegador no puede guardar tu trabajo.
error-no-place-missing-do = ¿Es una ventana privada? Esa no guarda nada. Abre Surefoot en una ventana normal, o pide a una persona adulta un navegador más nuevo.
error-no-place-refused = Este navegador está configurado para no guardar nada.
error-no-place-refused-do = Pide a una persona adulta que deje guardar datos a esta página. Después prueba otra vez.
error-no-place-full = Este dispositivo no tiene espacio para tu trabajo.
error-no-place-full-do = Pide a una persona adulta que haga espacio. Después prueba otra vez.
error-not-loaded = Esta parte de Surefoot todavía no está en este dispositivo.
error-not-loaded-do = Conéctate a internet. Después prueba otra vez. Si sigue igual, dilo a tu docente.
web-framed = Surefoot no funciona dentro de otra página.
web-framed-do = Ábrelo en una pestaña propia.
web-version-before-ask = ¿Quieres usar el Surefoot de antes?
web-version-before-yes = Sí, usar el de antes
web-version-newest-ask = ¿Quieres usar otra vez el Surefoot más nuevo?
web-version-newest-yes = Sí, usar el más nuevo
web-version-why = Di que sí solo si te lo dijo tu docente. Tu trabajo se queda.
web-version-no = No, no cambiar nada
web-pin-text = Un PIN cierra tus páginas en la pantalla. Quien conoce bien los navegadores puede evitarlo.
