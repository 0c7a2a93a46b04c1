import type { Assessment, Scheme } from "@cornerway/schema";
import type { Drawn } from "./drawn.ts";

/** A post or beam that is still drawn, and no longer serves. */
export interface SupportLost {
  readonly id: string;
  readonly loses: "its load" | "its ground";
}

/** Posts and beams drawn before and after which held something and hold nothing now, or had a way to the ground and have none. */
export function supportsLost(before: Drawn, after: Drawn): SupportLost[] {
  const [held, holds] = [holding(before.result), holding(after.result)];
  const [adrift, astray] = [withoutGround(before.result), withoutGround(after.result)];
  const there = new Set(supportIds(before.scheme));
  return supportIds(after.scheme)
    .filter((id) => there.has(id))
    .toSorted()
    .flatMap((id): SupportLost[] => [
      ...(held.has(id) && !holds.has(id) ? [{ id, loses: "its load" } as const] : []),
      ...(astray.has(id) && !adrift.has(id) ? [{ id, loses: "its ground" } as const] : []),
    ]);
}

const supportIds = ({ posts, beams }: Scheme): string[] => [...posts, ...beams].map(({ id }) => id);

const holding = ({ marks }: Assessment): Set<string> =>
  new Set(
    marks.flatMap(({ fact, elements }) =>
      fact.kind === "post-carries" || fact.kind === "beam-carries" ? elements.slice(0, 1) : [],
    ),
  );

const withoutGround = ({ marks }: Assessment): Set<string> =>
  new Set(
    marks.flatMap(({ fact, elements }) =>
      fact.kind === "post-without-ground" || fact.kind === "beam-end-without-support" ? elements.slice(0, 1) : [],
    ),
  );
