import { InvalidSnapshot, type SnapshotItem } from './heard-unit.js';
import type { Node } from './node.js';
import { readUnit } from './read-unit.js';

/** Deeper documents are refused; the standard needs five levels. */
export const MAX_DEPTH = 32;
/** Characters of one value, and values of one machine. */
export const MAX_TEXT = 4096;
export const MAX_NODES = 2000;

const UNIT = 'equipment';
const LINK = 'links';

/**
 * Takes a document apart as it comes, XML and JSON alike: keeps one machine or link at a time and nothing else.
 *
 * @throws InvalidSnapshot when the document is too deep, or one machine too large
 */
export class NodeBuilder {
  private readonly open: (Node | null)[] = [];
  private building: Node | null = null;
  private nodes = 0;
  private isFleet = false;

  constructor(private readonly give: (item: SnapshotItem) => void) {}

  start(name: string): void {
    const local = name.slice(name.indexOf(':') + 1).toLowerCase();
    if (this.open.length >= MAX_DEPTH) throw new InvalidSnapshot(`It is nested deeper than ${MAX_DEPTH} levels.`);
    if (local === 'fleet') this.isFleet = true;
    let node: Node | null = null;
    if (this.building) {
      this.nodes += 1;
      if (this.nodes > MAX_NODES) throw new InvalidSnapshot(`One machine has more than ${MAX_NODES} values.`);
      node = { name: local, text: '', children: [] };
      this.open.at(-1)?.children.push(node);
    } else if (this.isFleet && (local === UNIT || local === LINK)) {
      node = { name: local, text: '', children: [] };
      this.building = node;
      this.nodes = 0;
    }
    this.open.push(node);
  }

  text(text: string): void {
    const node = this.open.at(-1);
    if (!node || text.trim() === '') return;
    if (node.text.length + text.length > MAX_TEXT)
      throw new InvalidSnapshot(`The value of "${node.name}" is longer than ${MAX_TEXT} characters.`);
    node.text += text;
  }

  end(): void {
    const node = this.open.pop() ?? null;
    if (node === null || node !== this.building) return;
    this.building = null;
    if (node.name === UNIT) this.give({ kind: 'unit', unit: readUnit(node) });
    else {
      const value = (name: string) => node.children.find((child) => child.name === name)?.text.trim() ?? '';
      if (value('href') !== '')
        this.give({ kind: 'link', link: { rel: value('rel').toLowerCase(), href: value('href') } });
    }
  }

  /** To be called after the last piece. */
  finish(): void {
    if (!this.isFleet) throw new InvalidSnapshot('It holds no Fleet: it is no snapshot of ISO 15143-3.');
  }
}
