import type { HeardUnit } from './heard-unit.js';
import type { Node } from './node.js';
import { hoursOf, instantOf } from './values.js';

const MAX_IDENTITY = 100;

/**
 * A machine out of its element: ISO/TS 15143-3 (clauses 11.2 and 11.4), with the variants met in the field: header fields
 * as attributes, AEMP 1.2 `Make`, `dateTime` or a child in place of `datetime`, hours as text or as ISO 8601 duration.
 */
export function readUnit(equipment: Node): HeardUnit {
  const header = child(equipment, 'equipmentheader') ?? equipment;
  const maker = identity(header, 'oemname') ?? identity(header, 'make');
  const unit = {
    maker,
    model: identity(header, 'model'),
    equipmentId: identity(header, 'equipmentid'),
    serial: identity(header, 'serialnumber'),
    pin: identity(header, 'pin'),
  };
  if (unit.equipmentId === null && unit.serial === null && unit.pin === null)
    return { ...unit, hours: null, fault: 'It has no serial number, PIN or equipment id.' };
  const meter = child(equipment, 'cumulativeoperatinghours');
  if (!meter) return { ...unit, hours: null, fault: null };
  const told = text(child(meter, 'hour') ?? meter);
  const at = text(child(meter, 'datetime'));
  if (told === '') return { ...unit, hours: null, fault: null };
  const hours = hoursOf(told);
  const instant = instantOf(at);
  if (hours === null) return { ...unit, hours: null, fault: `"${short(told)}" cannot be hours.` };
  if (instant === null)
    return { ...unit, hours: null, fault: `"${short(at)}" is not the time of a reading (RFC 3339, with its zone).` };
  return { ...unit, hours: { at: instant, hours }, fault: null };
}

const child = (node: Node, name: string) => node.children.find((each) => each.name === name);
const text = (node: Node | undefined) => node?.text.trim() ?? '';
const short = (value: string) => (value.length > 40 ? `${value.slice(0, 40)}…` : value);

/** A name or number of a machine; one that no maker would give is none. */
function identity(node: Node, name: string): string | null {
  const value = text(child(node, name));
  // biome-ignore lint/suspicious/noControlCharactersInRegex: those are what is refused
  return value === '' || value.length > MAX_IDENTITY || /[\u0000-\u001f\u007f]/.test(value) ? null : value;
}
