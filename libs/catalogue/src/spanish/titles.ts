/** Titles of the catalogue's work, by its code. */
export const TITLES = {
  'change-engine-oil': 'Cambiar aceite y filtro del motor',
  'change-hydraulic-oil': 'Cambiar aceite y filtro hidráulicos',
  'check-before-first-cut': 'Revisión antes del primer corte',
  'check-fasteners': 'Revisar tornillería, guardas y plataforma',
  'check-tyres': 'Revisar llantas y presiones',
  'clean-air-filter': 'Revisar y limpiar filtro de aire',
  'grease-driveline': 'Engrasar transmisión y revisar caja',
  'grease-spindles': 'Engrasar husillos',
  'inspect-belts': 'Revisar correas y tensores',
  'inspect-spindle-bearings': 'Revisar juego, ruido y calor de rodamientos de husillo',
  'level-deck': 'Nivelar la plataforma y ajustar su inclinación',
  'overhaul-before-storage': 'Revisión general antes de guardar',
  'replace-air-filter': 'Cambiar filtro de aire',
  'replace-blades': 'Cambiar cuchillas',
  'replace-deck-belt': 'Cambiar correa de la plataforma',
  'replace-spark-plugs': 'Cambiar bujías y filtro de combustible',
  'replace-spindle-bearings': 'Cambiar rodamientos de husillo',
  'service-battery': 'Limpiar bornes de batería, revisar carga',
  'sharpen-blades': 'Afilar y balancear cuchillas',
  'test-interlock': 'Probar interruptores de seguridad y paro de cuchillas',
} as const;

/** What a caller says of a machine, by the catalogue's code. */
export const SYMPTOM_TITLES = {
  'bearing-noise': 'Aullido o rechinido de la plataforma',
  'belt-shed': 'La correa se salió o se rompió',
  'no-start': 'El motor no gira o no arranca',
  other: 'Otra cosa',
  overheats: 'Se calienta o pierde fuerza',
  shaking: 'La plataforma vibra',
  'spindle-seized': 'Una cuchilla no gira',
  'uneven-cut': 'Corte desigual o rasgado',
  'weak-drive': 'No avanza o avanza débil',
} as const;
