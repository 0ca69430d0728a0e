/** What the shop's history is said to rest on. Figures stand in braces. */
export const LEARNED: readonly (readonly [english: string, spanish: string])[] = [
  // Lives of parts
  ['From {n} failures of its own.', 'De {n} fallas propias.'],
  ['{n} failures of its own', '{n} fallas propias'],
  ['{n} failure of its own', '{n} falla propia'],
  ['Only {own}: assumed before, {belief}.', 'Solo {own}: se supone de antemano {belief}.'],
  ['Only {own}.', 'Solo {own}.'],
  [
    'the ISO 281 life of two {bearing} in a spindle, cut by dirt to about {share} %: scale near {scale} h, shape near {shape}, worth half a failure',
    'la vida ISO 281 de dos {bearing} en un husillo, reducida por la suciedad a cerca del {share} %: escala cerca de {scale} h, forma cerca de {shape}, con el peso de media falla',
  ],
  [
    "the catalogue's shape near {shape} and the life that makes the shop's interval the best one, scale near {scale} h, worth one failure",
    'la forma del catálogo, cerca de {shape}, y la vida que hace del intervalo del taller el mejor, escala cerca de {scale} h, con el peso de una falla',
  ],
  ['No failure in the pool: the stated prior alone.', 'Ninguna falla en el conjunto: solo lo supuesto de antemano.'],
  [
    'There is no other group to learn from: the stated prior and the group’s own lives.',
    'No hay otro grupo del que aprender: lo supuesto de antemano y las vidas propias del grupo.',
  ],
  [
    'Learned from {failures} in {groups} groups: shape about {shape}, scale about {scale} h; in each group the pool counts like {worth}.',
    'Aprendido de {failures} en {groups} grupos: forma cerca de {shape}, escala cerca de {scale} h; en cada grupo el conjunto cuenta como {worth}.',
  ],
  ['{n} failures', '{n} fallas'],
  ['1 failure', '1 falla'],
  [
    'A part’s hours are the machine’s hours while it was fitted.',
    'Las horas de una pieza son las de la máquina mientras la llevó.',
  ],
  [
    '{n} first parts are taken to be as old as the machine, and watched only since the machine was taken on.',
    '{n} primeras piezas se toman por tan viejas como la máquina, y observadas solo desde que se recibió la máquina.',
  ],
  [
    '1 first part is taken to be as old as the machine, and watched only since the machine was taken on.',
    '1 primera pieza se toma por tan vieja como la máquina, y observada solo desde que se recibió la máquina.',
  ],
  [
    '{n} failures share their cause with another and count once.',
    '{n} fallas comparten su causa con otra y cuentan una sola vez.',
  ],
  [
    '1 failure shares its cause with another and counts once.',
    '1 falla comparte su causa con otra y cuenta una sola vez.',
  ],
  [
    'Parts still running, and parts taken out early, count as not failed up to their age.',
    'Las piezas aún en marcha y las quitadas antes cuentan como no falladas hasta su edad.',
  ],
  ['{n} lives without any watched running hours left out', '{n} vidas sin horas observadas, dejadas fuera'],
  ['1 life without any watched running hours left out', '1 vida sin horas observadas, dejada fuera'],
  ['{n} rows without a usable age left out', '{n} filas sin edad utilizable, dejadas fuera'],
  ['1 row without a usable age left out', '1 fila sin edad utilizable, dejada fuera'],
  ['There is no life on record with watched running hours.', 'No consta ninguna vida con horas observadas.'],
  [
    'None of {n} lives has ended in failure: only a lower bound of life can be stated, under an assumed shape.',
    'Ninguna de {n} vidas acabó en falla: solo se puede dar un mínimo, con una forma supuesta.',
  ],
  [
    'Only one of {n} lives has ended in failure: one failure cannot tell ageing from chance. A shape has to be assumed.',
    'Solo una de {n} vidas acabó en falla: una falla no distingue el envejecimiento del azar. Hay que suponer una forma.',
  ],
  [
    'All failures lie at one age, or so near to it that no spread of lives can be told: a shape has to be assumed.',
    'Todas las fallas están a una misma edad, o tan cerca que no se ve dispersión: hay que suponer una forma.',
  ],
  // Replacement
  [
    'A failure costs the planned work and the harm set at the service item; the drive is left out.',
    'Una falla cuesta el trabajo planeado y el daño fijado en el trabajo de servicio; el viaje queda fuera.',
  ],
  // Grades of a part
  [
    'Both grades age alike: their lives differ by one factor (Weibull with a common shape).',
    'Ambas calidades envejecen igual: sus vidas difieren por un factor (Weibull de forma común).',
  ],
  ['Severity of duty is taken out of the comparison.', 'La dureza del trabajo se descuenta en la comparación.'],
  ['All lives have the same severity of duty on record.', 'Todas las vidas constan con la misma dureza de trabajo.'],
  [
    'Which grade was fitted where is taken to have nothing else to do with how long it lasts.',
    'Se supone que dónde se montó cada calidad no tiene otra relación con cuánto dura.',
  ],
  [
    'Only parts whose fitting is on record count; a slot’s first part has no known grade.',
    'Solo cuentan piezas cuyo montaje consta; la primera pieza de un lugar no tiene calidad conocida.',
  ],
  [
    'Yes: {first} lasts {ratio} times as long as {second} here ({range}).',
    'Sí: aquí {first} dura {ratio} veces lo que {second} ({range}).',
  ],
  [
    'No: {first} lasts only {ratio} times as long as {second} here ({range}).',
    'No: aquí {first} dura solo {ratio} veces lo que {second} ({range}).',
  ],
  [
    'The data cannot tell: {first} may last {ratio} times as long as {second}, but the {range} holds 1; log-rank p {p}.',
    'Los datos no lo dicen: {first} puede durar {ratio} veces lo que {second}, pero el {range} contiene el 1; log-rank p {p}.',
  ],
  [
    'The data cannot tell: {first} may last {ratio} times as long as {second}, but the {range} holds 1.',
    'Los datos no lo dicen: {first} puede durar {ratio} veces lo que {second}, pero el {range} contiene el 1.',
  ],
  ['{level} % interval {low} to no upper bound', 'intervalo del {level} %, desde {low} sin tope'],
  [
    '{level} % interval {low} to no upper bound; log-rank p {p}',
    'intervalo del {level} %, desde {low} sin tope; log-rank p {p}',
  ],
  ['{level} % interval {low} to {high}; log-rank p {p}', 'intervalo del {level} %, de {low} a {high}; log-rank p {p}'],
  ['{level} % interval {low} to {high}', 'intervalo del {level} %, de {low} a {high}'],
  ['below 0.001', 'menor que 0.001'],
  [
    'The data cannot tell ({first}; {second}): each grade needs at least one failure, and three together.',
    'Los datos no lo dicen ({first}; {second}): cada calidad necesita al menos una falla, y tres entre ambas.',
  ],
  ['{grade}: {failures} in {n} lives', '{grade}: {failures} en {n} vidas'],
  ['{grade}: {failures} in 1 life', '{grade}: {failures} en 1 vida'],
  // Machines
  ['{n} repairs are too few to see a trend.', '{n} reparaciones son muy pocas para ver una tendencia.'],
  ['1 repair is too few to see a trend.', '1 reparación es muy poco para ver una tendencia.'],
  ['No trend to be seen in its repairs.', 'No se ve tendencia en sus reparaciones.'],
  ['Repairs come closer and closer together.', 'Las reparaciones vienen cada vez más seguidas.'],
  ['Repairs come farther and farther apart.', 'Las reparaciones vienen cada vez más espaciadas.'],
  [
    'Only unplanned repairs count; each costs what its service item costs after a failure.',
    'Solo cuentan las reparaciones imprevistas; cada una cuesta lo que su trabajo de servicio cuesta tras una falla.',
  ],
  [
    'A new machine needs repairs at the mean rate of its class in this shop and is worth nothing at the end of its life.',
    'Una máquina nueva necesita reparaciones al ritmo medio de su clase en este taller, y no vale nada al final de su vida.',
  ],
  ['It runs {hours} h next year, assumed.', 'Trabaja {hours} h el próximo año, supuesto.'],
  ['It runs {hours} h next year.', 'Trabaja {hours} h el próximo año.'],
  // Bearings and blade tips
  [
    'Life and load factors: ISO 281 through bearing makers’ pages; the standard’s own text not seen.',
    'Factores de vida y carga: ISO 281 según páginas de fabricantes de rodamientos; el texto de la norma no se vio.',
  ],
  [
    'Dimensions: ISO 15; ratings: one maker’s 2018 catalogue. Ratings differ by maker: enter yours.',
    'Dimensiones: ISO 15; capacidades: catálogo de 2018 de un fabricante. Varían según el fabricante: ponga las suyas.',
  ],
  [
    'Contamination is a stated range, from memory, not a measurement.',
    'La suciedad es un intervalo supuesto, de memoria, no una medida.',
  ],
  [
    'ANSI B71.1 (consumer) and B71.4 (commercial) mowers: 19,000 ft/min; through secondary sources, the standards’ own text not seen',
    'Segadoras ANSI B71.1 (de consumo) y B71.4 (comerciales): 19,000 ft/min; por fuentes secundarias, el texto de las normas no se vio',
  ],
];
