/** What the starter catalogue says of cautions, steps, torques, consumables and parts: English, then Spanish. */
export const TEXTS: readonly (readonly [english: string, spanish: string])[] = [
  // Cautions
  [
    "The machine's own manual, local codes and licensed practice come first; nothing here replaces them.",
    'El manual de la propia máquina, las normas locales y la práctica autorizada van primero; nada de esto los reemplaza.',
  ],
  [
    'Engine off, key out, wait until everything stands still; spark plug lead off and kept clear, or battery link out; try the start to prove it dead.',
    'Motor apagado, llave fuera, esperar a que todo esté quieto; cable de bujía desconectado y apartado, o batería desconectada; intentar arrancar para comprobar que está muerta.',
  ],
  [
    'Jack on firm ground, rated for the load; block or crib at once; never work under a deck held only by a jack or its lift.',
    'Gato sobre suelo firme y de capacidad suficiente; calzar enseguida con bloques; nunca trabajar bajo una plataforma sostenida solo por un gato o por su propio elevador.',
  ],
  [
    'Blades cut when still: gloves on, hold the blade with a wooden block, never with the hand; eye protection for grinding.',
    'Las cuchillas cortan aun quietas: guantes puestos, sujetar la cuchilla con un bloque de madera, nunca con la mano; protección para los ojos al esmerilar.',
  ],
  [
    'Never straighten or weld a bent or cracked blade: replace it.',
    'Nunca enderezar ni soldar una cuchilla doblada o rajada: cambiarla.',
  ],
  [
    'Idler springs store energy: release the tension with the tool meant for it, fingers clear of pulleys.',
    'Los resortes de los tensores guardan energía: soltar la tensión con la herramienta debida, dedos lejos de las poleas.',
  ],
  [
    'Hot oil burns: let the engine cool until the hand can rest on it; catch and hand in the old oil.',
    'El aceite caliente quema: dejar enfriar el motor hasta poder apoyar la mano; recoger y entregar el aceite usado.',
  ],
  [
    'Fuel only outdoors, engine cool, no flame or smoking; approved can; wipe spills before starting.',
    'Combustible solo al aire libre, motor frío, sin llama ni cigarro; bidón aprobado; limpiar derrames antes de arrancar.',
  ],
  [
    'Negative lead off first and on last; charging gas explodes: ventilate, no flame or spark; eye protection.',
    'El cable negativo se quita primero y se pone al final; el gas de carga explota: ventilar, sin llama ni chispa; protección para los ojos.',
  ],
  [
    'Relieve hydraulic pressure before opening anything; look for leaks with a piece of card, never with the hand.',
    'Quitar la presión hidráulica antes de abrir nada; buscar fugas con un cartón, nunca con la mano.',
  ],
  [
    'A by-passed or dead safety switch: the machine must not be used until it is mended.',
    'Interruptor de seguridad puenteado o muerto: la máquina no se debe usar hasta repararlo.',
  ],
  [
    'Inflate from the side, with a gauge, never above the figure on the side wall.',
    'Inflar desde un lado, con manómetro, nunca por encima de la cifra del flanco.',
  ],
  ['Do not mow on: a part may fly off.', 'No siga segando: una pieza puede salir disparada.'],
  [
    'Stop the engine and let it cool before anything is opened.',
    'Apague el motor y déjelo enfriar antes de abrir nada.',
  ],
  // Blades
  [
    'Mark each blade and its spindle; look for bends, cracks, thin ends and rounded corners: such a blade is replaced.',
    'Marcar cada cuchilla y su husillo; buscar dobleces, grietas, puntas delgadas y esquinas redondeadas: esa cuchilla se cambia.',
  ],
  [
    'Grind along the old angle, taking the same from both ends; do not burn the edge.',
    'Esmerilar siguiendo el ángulo anterior, quitando lo mismo de ambas puntas; no quemar el filo.',
  ],
  [
    'Balance on a cone until neither end falls; refit the right way up.',
    'Balancear sobre un cono hasta que ninguna punta caiga; montar con el lado correcto hacia arriba.',
  ],
  [
    'Tighten each bolt with a torque wrench; spin by hand and compare the tips’ heights.',
    'Apretar cada tornillo con torquímetro; girar a mano y comparar la altura de las puntas.',
  ],
  ['Compare part, length and bore with the old blades.', 'Comparar pieza, largo y agujero con las cuchillas viejas.'],
  [
    'Clean the seats; fit the right way up; tighten each bolt with a torque wrench.',
    'Limpiar los asientos; montar con el lado correcto hacia arriba; apretar cada tornillo con torquímetro.',
  ],
  ['Spin by hand and compare the tips’ heights.', 'Girar a mano y comparar la altura de las puntas.'],
  // Spindles
  [
    'Wipe each nipple; two or three strokes, until fresh grease shows; never mix grease of different soaps.',
    'Limpiar cada grasera; dos o tres bombeos, hasta que salga grasa nueva; nunca mezclar grasas de jabones distintos.',
  ],
  [
    'Wipe off what came out; look whether it is dark, watery or holds metal.',
    'Limpiar lo que salió; mirar si es oscuro, aguado o trae metal.',
  ],
  ['Debris cup in place and clear.', 'Guardapolvo en su lugar y limpio.'],
  [
    'Rock each blade up and down at its tip: no play to feel.',
    'Mover cada cuchilla arriba y abajo por la punta: sin juego.',
  ],
  [
    'Turn by hand: smooth, rough or locked; listen; feel the housing after a run for heat.',
    'Girar a mano: suave, áspero o trabado; escuchar; tras una marcha, tocar la carcasa por si está caliente.',
  ],
  ['Record the feel for each spindle.', 'Anotar el tacto de cada husillo.'],
  [
    'Press the old bearings out; a bearing pulled through its balls is never used again.',
    'Sacar los rodamientos viejos con prensa; un rodamiento jalado por sus bolas no se usa más.',
  ],
  [
    'Look at the housing’s step for wear and at the spacer: ends flat and free of a rolled lip, since a shortened spacer over-preloads the bearings.',
    'Mirar si el escalón de la carcasa está gastado, y el separador: extremos planos y sin reborde, pues un separador acortado precarga de más los rodamientos.',
  ],
  [
    'Press each bearing in by its outer ring, square, until it seats on the step; never through the balls.',
    'Meter cada rodamiento con prensa por su aro exterior, a escuadra, hasta asentar en el escalón; nunca a través de las bolas.',
  ],
  [
    'Key in its keyway; pulley and blade back; debris cup refitted.',
    'Chaveta en su chavetero; polea y cuchilla puestas; guardapolvo montado.',
  ],
  ['Turn by hand: smooth, without play.', 'Girar a mano: suave, sin juego.'],
  // Belts
  [
    'Look all round for cracks, frays, missing pieces, a changed profile, glaze, oil.',
    'Mirar todo el contorno: grietas, deshilachado, pedazos faltantes, perfil cambiado, brillo, aceite.',
  ],
  [
    'Push midway: taut as the manual says; idler arm moves freely and springs back; idler bearings turn quietly.',
    'Empujar a la mitad: tensa como dice el manual; el brazo tensor se mueve libre y regresa; sus rodamientos giran sin ruido.',
  ],
  [
    'Pulleys in line, no sharp or worn flanks; record the wear.',
    'Poleas alineadas, sin flancos filosos ni gastados; anotar el desgaste.',
  ],
  [
    'Compare section and length with the old belt and the manual.',
    'Comparar sección y largo con la correa vieja y el manual.',
  ],
  [
    'Clean the pulleys; turn each by hand and feel its bearing.',
    'Limpiar las poleas; girar cada una a mano y sentir su rodamiento.',
  ],
  [
    'Lay the belt after the diagram; set the tension; turn the deck by hand once round.',
    'Tender la correa según el diagrama; ajustar la tensión; dar una vuelta a mano.',
  ],
  [
    'A new belt is checked three times in its first 24 h of use.',
    'Una correa nueva se revisa tres veces en sus primeras 24 h de uso.',
  ],
  // Engine, hydraulics, tyres
  [
    'Warm, not hot; drain into a pan; new drain washer.',
    'Tibio, no caliente; vaciar en una bandeja; arandela de drenaje nueva.',
  ],
  [
    'Oil the seal of the new filter; hand-tight plus the part turn printed on it.',
    'Aceitar el sello del filtro nuevo; apretar a mano más la fracción de vuelta impresa en él.',
  ],
  [
    'Fill, run for a minute, look for leaks, check the level on the flat.',
    'Llenar, marchar un minuto, buscar fugas, revisar el nivel en terreno plano.',
  ],
  [
    'Open without letting dirt fall in; blow from inside at low pressure; hold to the light.',
    'Abrir sin dejar caer suciedad; soplar desde dentro a baja presión; mirar al trasluz.',
  ],
  ['Wipe the housing; seal seats all round.', 'Limpiar la caja; el sello asienta en todo el contorno.'],
  [
    'Wipe the housing before the new element goes in; seal seats all round.',
    'Limpiar la caja antes de meter el elemento nuevo; el sello asienta en todo el contorno.',
  ],
  ['Gap after the manual; start the thread by hand.', 'Calibrar según el manual; empezar la rosca a mano.'],
  [
    'Clamp the hose before the filter comes off; arrow with the flow; look for leaks.',
    'Prensar la manguera antes de quitar el filtro; flecha en el sentido del flujo; buscar fugas.',
  ],
  [
    'Clean round the filler and the filter before opening.',
    'Limpiar alrededor del llenado y del filtro antes de abrir.',
  ],
  [
    'Drain, new filter filled where it stands upright, fill, bleed after the manual with the drive wheels off the ground and blocked.',
    'Vaciar; filtro nuevo, lleno si va vertical; llenar; purgar según el manual con las ruedas motrices en el aire y la máquina calzada.',
  ],
  ['Look for leaks; check the level cold.', 'Buscar fugas; revisar el nivel en frío.'],
  [
    'Gauge each tyre cold; set to the manual; look for cuts and thorns.',
    'Medir cada llanta en frío; ajustar según el manual; buscar cortes y espinas.',
  ],
  ['Always before the deck is levelled.', 'Siempre antes de nivelar la plataforma.'],
  ['Tyres first; machine on flat ground, brake on.', 'Primero las llantas; máquina en suelo plano, freno puesto.'],
  [
    'Measure blade tip heights side to side and front to rear with the blades turned as the manual says.',
    'Medir la altura de las puntas de lado a lado y de frente a atrás, con las cuchillas giradas como dice el manual.',
  ],
  ['Set hangers evenly; measure again; record.', 'Ajustar los colgantes por igual; medir otra vez; anotar.'],
  // Battery, safety, frame
  [
    'Clean posts and clamps bright, grease thinly; hold-down tight.',
    'Limpiar bornes y terminales hasta el brillo, engrasar apenas; sujeción firme.',
  ],
  ['Measure at rest and while cranking; record.', 'Medir en reposo y al dar marcha; anotar.'],
  [
    'Seat or platform, brake, drive levers and blade switch, each by itself as the manual says: the engine must not start, or must stop.',
    'Asiento o plataforma, freno, palancas e interruptor de cuchillas, uno por uno como dice el manual: el motor no debe arrancar, o debe pararse.',
  ],
  [
    'Time the blades from switch-off to standstill against the manual.',
    'Medir el tiempo de paro de las cuchillas desde que se apagan y comparar con el manual.',
  ],
  ['Nobody near the deck; record pass or fail.', 'Nadie cerca de la plataforma; anotar si pasa o no.'],
  [
    'Wheel nuts, deck hangers, spindle housings, engine mounts: by wrench, not by eye.',
    'Tuercas de rueda, colgantes, carcasas de husillo, soportes de motor: con llave, no a ojo.',
  ],
  [
    'Guards, chute and covers complete; no cracks in the shell.',
    'Guardas, ducto y tapas completos; sin grietas en el casco.',
  ],
  [
    'Shield whole and chained; joints and tube greased; gearbox oil to the mark.',
    'Protector entero y con su cadena; crucetas y tubo engrasados; aceite de la caja hasta la marca.',
  ],
  [
    'Wash the deck, let it dry, look at shell, spindles, belts, hoses and tyres; list what is replaced before spring.',
    'Lavar la plataforma, dejar secar, mirar casco, husillos, correas, mangueras y llantas; anotar lo que se cambia antes de la primavera.',
  ],
  [
    'Fuel stabilised or drained after the engine’s manual; battery charged and kept from frost.',
    'Combustible estabilizado o vaciado según el manual del motor; batería cargada y lejos de la helada.',
  ],
  [
    'Oil, fuel, battery, tyres, belts, blades, guards, safety switches; ten minutes’ run, then look and feel again.',
    'Aceite, combustible, batería, llantas, correas, cuchillas, guardas, interruptores de seguridad; diez minutos de marcha y mirar y tocar otra vez.',
  ],
  // Torques
  ['blade bolts', 'tornillos de cuchilla'],
  ['spindle housing bolts', 'tornillos de la carcasa del husillo'],
  ['spindle centre bolt', 'tornillo central del husillo'],
  ['drain plug', 'tapón de drenaje'],
  ['spark plugs', 'bujías'],
  [
    "the machine's manual gives the figure (manuals range from 50 to 90 ft-lb)",
    'el manual de la máquina da el valor (los manuales van de 50 a 90 ft-lb)',
  ],
  ["the engine's manual gives the figure", 'el manual del motor da el valor'],
  ['common practice, no source', 'práctica común, sin fuente'],
  ['about; common practice, no source', 'aproximado; práctica común, sin fuente'],
  // Consumables and parts
  ['grease, lithium complex, NLGI 2', 'grasa, complejo de litio, NLGI 2'],
  ['engine oil, SAE 10W-30, API SJ or later', 'aceite de motor, SAE 10W-30, API SJ o posterior'],
  ['oil filter, spin-on, 3/4-16 UNF', 'filtro de aceite, roscado, 3/4-16 UNF'],
  ['air filter element', 'elemento del filtro de aire'],
  ['spark plug, 14 mm thread', 'bujía, rosca de 14 mm'],
  ['fuel filter, 1/4 in hose', 'filtro de combustible, manguera de 1/4 in'],
  ['hydraulic oil, ISO VG 46', 'aceite hidráulico, ISO VG 46'],
  ['hydraulic filter, spin-on, 1-12 UNF', 'filtro hidráulico, roscado, 1-12 UNF'],
  ['fuel stabiliser', 'estabilizador de combustible'],
  ['deep groove ball bearing, two metal shields', 'rodamiento rígido de bolas, dos tapas metálicas'],
  ['deck drive belt, wrapped B section', 'correa de la plataforma, forrada, sección B'],
  [
    'deep groove ball bearing, two metal shields {designation}',
    'rodamiento rígido de bolas, dos tapas metálicas {designation}',
  ],
  ['blade set', 'juego de cuchillas'],
];
