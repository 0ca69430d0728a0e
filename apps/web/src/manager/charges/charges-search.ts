export interface ChargesSearch {
  readonly state?: 'issued';
}

export function chargesSearch(search: Record<string, unknown>): ChargesSearch {
  return search['state'] === 'issued' ? { state: 'issued' } : {};
}
