/** What an import did to one kind of row. */
export interface ImportCount {
  read: number;
  added: number;
  changed: number;
  unchanged: number;
}

export function newCount(read = 0): ImportCount {
  return { read, added: 0, changed: 0, unchanged: 0 };
}
