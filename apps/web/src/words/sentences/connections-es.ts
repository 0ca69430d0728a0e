/** What became of asking and telling other systems. */
export const CONNECTIONS: readonly (readonly [english: string, spanish: string])[] = [
  [
    'The road server gave no answer: its drive times of more than a month ago were used.',
    'El servidor de rutas no respondió: se usaron sus tiempos de hace más de un mes.',
  ],
  [
    'The road server gave no answer: drive times were estimated from distances.',
    'El servidor de rutas no respondió: los tiempos se estimaron por las distancias.',
  ],
  [
    'Work had begun on {date}: what was planned for that day stays as it was.',
    'El trabajo ya había empezado el {date}: lo planeado para ese día queda como estaba.',
  ],
  [
    'Visits before these days that nobody can make where they stand: {n}; their work counts as done here, so plan their week again first, then this one.',
    'Visitas de antes de estos días que nadie puede hacer donde están: {n}; aquí su trabajo cuenta como hecho, así que planee de nuevo primero su semana y luego esta.',
  ],
  [
    'Its promise could not be kept when the week was planned again.',
    'Su promesa no se pudo cumplir al planear otra vez la semana.',
  ],
  [
    'It could not stay where it was held fast when the week was planned again.',
    'No pudo quedarse donde estaba fijada al planear otra vez la semana.',
  ],
  ['Another visit took its work when the week was changed.', 'Otra visita tomó su trabajo al cambiar la semana.'],
  ['It was given up when the week was changed.', 'Se renunció a ella al cambiar la semana.'],
  ['Its call was closed, and it had no other work.', 'Su llamada se cerró y no tenía otro trabajo.'],
  [
    'It was begun. What was left of its work was planned anew.',
    'Ya se había empezado. Lo que quedaba de su trabajo se planeó de nuevo.',
  ],
  [
    'Nothing of its work was left to do when the week was planned again.',
    'No quedaba nada de su trabajo por hacer al planear otra vez la semana.',
  ],
  ['Nothing answers at this address.', 'Nada responde en esta dirección.'],
  ['The name in this address is not known.', 'No se conoce el nombre de esta dirección.'],
  ['The connection broke off.', 'La conexión se cortó.'],
  ['No way leads to this address.', 'Ningún camino lleva a esta dirección.'],
  ['It did not answer in time.', 'No respondió a tiempo.'],
  ['Its certificate or its encryption is not to be trusted.', 'No se puede confiar en su certificado o en su cifrado.'],
  ['Only https addresses are called.', 'Solo se llama a direcciones https.'],
  ['{host} has no address.', '{host} no tiene dirección.'],
  [
    '{host} leads to {address}, which is not a public address.',
    '{host} lleva a {address}, que no es una dirección pública.',
  ],
  ['The receiver answered 410: it is gone.', 'El destino respondió 410: ya no existe.'],
  ['Nothing could be delivered for five days.', 'En cinco días no se pudo entregar nada.'],
  ['Switched off by hand.', 'Desactivado a mano.'],
  ['The sender answered {status}.', 'El emisor respondió {status}.'],
  ['It was left after {n} pages.', 'Se dejó después de {n} páginas.'],
  ['Its next page ({address}) is not with the same sender.', 'Su página siguiente ({address}) no es del mismo emisor.'],
  ['It is not JSON: {fault}', 'No es JSON: {fault}'],
  ['It is larger than {n} MiB.', 'Pasa de {n} MiB.'],
  ['It is not UTF-8.', 'No está en UTF-8.'],
  ['It is nested deeper than {n} levels.', 'Está anidado a más de {n} niveles.'],
  ['One machine has more than {n} values.', 'Una máquina trae más de {n} valores.'],
  ['The value of "{name}" is longer than {n} characters.', 'El valor de «{name}» pasa de {n} caracteres.'],
  ['It holds no Fleet: it is no snapshot of ISO 15143-3.', 'No contiene Fleet: no es una instantánea de ISO 15143-3.'],
  ['Line {n}: {fault}', 'Línea {n}: {fault}'],
];
