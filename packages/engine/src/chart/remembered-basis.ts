import type { CheckBasis } from "../checks/check-basis.ts";
import type { CheckedMember, MemberStrengths } from "../checks/checked-member.ts";
import type { Capacities } from "../checks/member-utilisation.ts";

/** The same checks, with strengths of members and sheets worked out once: they depend on no load. */
export function rememberedBasis(basis: CheckBasis): CheckBasis {
  const members = new Map<string, MemberStrengths>();
  const capacities = new Map<MemberStrengths, Capacities>();
  const sheets = new Map<string, ReturnType<CheckBasis["sheetShear"]>>();
  const posts = new Map<string, ReturnType<CheckBasis["frontPost"]>>();
  return {
    ...basis,
    memberStrengths: (member) => taken(members, keyOf(member), () => basis.memberStrengths(member)),
    capacities: (strengths) => taken(capacities, strengths, () => basis.capacities(strengths)),
    sheetShear: (panel) =>
      taken(sheets, JSON.stringify([panel.sheet, panel.steel, panel.heightMm]), () => basis.sheetShear(panel)),
    frontPost: (post) => taken(posts, `front ${JSON.stringify(post)}`, () => basis.frontPost(post)),
    doorPost: (post) => taken(posts, `door ${JSON.stringify(post)}`, () => basis.doorPost(post)),
  };
}

const keyOf = ({ element, section, steel, lengths, unbracedMm, cb }: CheckedMember): string =>
  JSON.stringify([element, section, steel, lengths, unbracedMm, cb]);

function taken<K, V>(known: Map<K, V>, key: K, make: () => V): V {
  const found = known.get(key);
  if (found !== undefined) return found;
  const value = make();
  known.set(key, value);
  return value;
}
