/** Said on every sheet and screen that shows how to do work. */
export const MANUAL_FIRST =
  "The machine's own manual, local codes and licensed practice come first; nothing here replaces them.";

// 29 CFR 1910.147 (lockout: prepare, shut down, isolate, release stored energy, verify) and university extension advice
// on blade work; 29 CFR 1910.244(a) for jacks.
export const SHUT_DOWN =
  'Engine off, key out, wait until everything stands still; spark plug lead off and kept clear, or battery link out; try the start to prove it dead.';
export const JACK_AND_BLOCK =
  'Jack on firm ground, rated for the load; block or crib at once; never work under a deck held only by a jack or its lift.';
export const BLADES =
  'Blades cut when still: gloves on, hold the blade with a wooden block, never with the hand; eye protection for grinding.';
export const BENT_BLADE = 'Never straighten or weld a bent or cracked blade: replace it.';
export const BELT =
  'Idler springs store energy: release the tension with the tool meant for it, fingers clear of pulleys.';
export const HOT_OIL =
  'Hot oil burns: let the engine cool until the hand can rest on it; catch and hand in the old oil.';
export const FUEL = 'Fuel only outdoors, engine cool, no flame or smoking; approved can; wipe spills before starting.';
export const BATTERY =
  'Negative lead off first and on last; charging gas explodes: ventilate, no flame or spark; eye protection.';
export const PRESSURE =
  'Relieve hydraulic pressure before opening anything; look for leaks with a piece of card, never with the hand.';
export const INTERLOCK = 'A by-passed or dead safety switch: the machine must not be used until it is mended.';
export const TYRE = 'Inflate from the side, with a gauge, never above the figure on the side wall.';
