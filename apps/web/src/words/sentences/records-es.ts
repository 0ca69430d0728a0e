/** What the service notes beside a record: why it waits, why hours were not taken. */
export const RECORDS: readonly (readonly [english: string, spanish: string])[] = [
  [
    'The visit is no longer planned: planning again has replaced it.',
    'La visita ya no está planeada: al planear otra vez se reemplazó.',
  ],
  ['The visit was finished before this arrived.', 'La visita se terminó antes de que esto llegara.'],
  ['The visit was taken out of the plan before this arrived.', 'La visita se sacó del plan antes de que esto llegara.'],
  [
    'More than twelve hours without a stop: a clock was left running, it seems. Ask who worked; if it is wrong, keep it without effect, and the work is charged without it.',
    'Más de doce horas sin parar: parece que alguien dejó el reloj corriendo. Pregunte a quien trabajó; si está mal, guárdelo sin efecto, y el trabajo se cobra sin él.',
  ],
  ['It has no serial number, PIN or equipment id.', 'No trae número de serie, PIN ni número de equipo.'],
  ['"{told}" cannot be hours.', '«{told}» no pueden ser horas.'],
  [
    '"{told}" is not the time of a reading (RFC 3339, with its zone).',
    '«{told}» no es la hora de una lectura (RFC 3339, con su zona).',
  ],
  ['The reading lies in the future ({told}).', 'La lectura está en el futuro ({told}).'],
  ['Found at the machine and done there.', 'Hallado en la máquina y hecho ahí mismo.'],
  ['Done here, though it no longer stood in this visit.', 'Hecho aquí, aunque ya no estaba en esta visita.'],
  ['Done here, though the desk had closed it meanwhile.', 'Hecho aquí, aunque la oficina ya lo había cerrado.'],
  ['Make good: {what}', 'Reparar del todo: {what}'],
  ['Road call: {what}', 'Llamada: {what}'],
];
