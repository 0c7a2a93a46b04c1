import type { Operation, Scheme } from "@cornerway/schema";

/** The operations that draw a scheme on an empty sheet, units before what belongs to them. */
export const operationsOfScheme = (scheme: Scheme): Operation[] => [
  { kind: "site.change", site: scheme.site },
  ...scheme.containers.map((container): Operation => ({ kind: "container.place", container })),
  ...scheme.openings.map((opening): Operation => ({ kind: "opening.cut", opening })),
  ...scheme.posts.map((post): Operation => ({ kind: "post.set", post })),
  ...scheme.pads.map((pad): Operation => ({ kind: "pad.set", pad })),
  ...scheme.loads.map((load): Operation => ({ kind: "load.put", load })),
];
