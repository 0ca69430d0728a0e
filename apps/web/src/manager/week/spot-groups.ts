/** A place on the map, pixels. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

interface Group extends Spot {
  readonly members: readonly number[];
}

/**
 * Gathers spots until no two groups stand nearer to each other than `apart`, so that each can be seen and pressed by
 * itself. A group stands in the middle of its members.
 *
 * @returns indices of the spots, one list per group, in order of each group's first spot
 */
export function spotGroups(spots: readonly Spot[], apart: number): readonly (readonly number[])[] {
  let groups: readonly Group[] = spots.map(({ x, y }, index) => ({ x, y, members: [index] }));
  for (;;) {
    const gathered: Group[] = [];
    for (const group of groups) {
      const near = gathered.findIndex((each) => Math.hypot(each.x - group.x, each.y - group.y) < apart);
      if (near < 0) gathered.push(group);
      else gathered[near] = joined(gathered[near]!, group);
    }
    // The middle of a group may have come near another one.
    if (gathered.length === groups.length) return gathered.map((group) => group.members);
    groups = gathered;
  }
}

function joined(one: Group, other: Group): Group {
  const [m, n] = [one.members.length, other.members.length];
  return {
    x: (m * one.x + n * other.x) / (m + n),
    y: (m * one.y + n * other.y) / (m + n),
    members: [...one.members, ...other.members],
  };
}
