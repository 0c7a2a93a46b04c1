import { z } from "zod";
import { Digest, ElementId, SiteWordId } from "./ids.ts";
import { mostPhotos } from "./kept-file.ts";
import { Author, Moment, RevisionLetter } from "./review.ts";
import { Role } from "./roles.ts";
import { Photo } from "./survey.ts";
import { personText } from "./text.ts";

/** What is built or looked at on site, one by one. */
export const siteItemKinds = [
  ...["post", "beam", "seat", "framing", "tie", "lock", "pad"],
  ...["weld", "hold point"],
] as const;
export const SiteItemKind = z.enum(siteItemKinds).meta({ id: "SiteItemKind" });
export type SiteItemKind = z.infer<typeof SiteItemKind>;

/** What is looked at before the next step. Common practice, no published source. */
export const holdPoints = [
  "container surveyed",
  "steel as assumed before cutting",
  "ground and level of the pad",
  "in its place before cutting",
  "shored before cutting",
] as const;
export const HoldPoint = z.enum(holdPoints).meta({ id: "HoldPoint" });
export type HoldPoint = z.infer<typeof HoldPoint>;

/** Names an item over all revisions: its kind, its hold point where it is one, and its element. */
export const SiteItemKey = z
  .string()
  .regex(/^[a-z ]{3,60}:[a-z0-9][a-z0-9-]{0,39}$/, "the key of an item of this site")
  .meta({ id: "SiteItemKey" });

export const SiteItem = z
  .strictObject({
    key: SiteItemKey,
    kind: SiteItemKind,
    point: HoldPoint.nullable(),
    elementId: ElementId,
    /** All weld of the element; null for everything else. */
    weldM: z.number().nullable(),
  })
  .meta({ id: "SiteItem" });
export type SiteItem = z.infer<typeof SiteItem>;

const about = { id: SiteWordId, revision: RevisionLetter, key: SiteItemKey };
const photos = (least: number) => z.array(Photo).min(least).max(mostPhotos);
const words = personText(2000);

const seen = {
  built: z.strictObject({ says: z.literal("built"), ...about, photos: photos(1), text: words.nullable() }),
  differs: z.strictObject({ says: z.literal("differs"), ...about, photos: photos(1), text: words }),
  missing: z.strictObject({ says: z.literal("missing"), ...about, photos: photos(0), text: words }),
};
const judged = {
  accepted: z.strictObject({ says: z.literal("accepted"), ...about, text: words }),
  mend: z.strictObject({ says: z.literal("to mend"), ...about, text: words }),
  reopened: z.strictObject({ says: z.literal("reopened"), ...about, text: words }),
};

/** What someone on site says of an item: it stands as drawn, it stands otherwise, or it is not there. */
export const NewSiteWord = z
  .discriminatedUnion("says", [seen.built, seen.differs, seen.missing])
  .meta({ id: "NewSiteWord" });
export type NewSiteWord = z.infer<typeof NewSiteWord>;

/** What the engineer says then. */
export const NewSiteJudgement = z
  .discriminatedUnion("says", [judged.accepted, judged.mend, judged.reopened])
  .meta({ id: "NewSiteJudgement" });
export type NewSiteJudgement = z.infer<typeof NewSiteJudgement>;

const said = { number: z.int().min(1), elementId: ElementId, drawnDigest: Digest, author: Author, saidAt: Moment };

/** `drawnDigest` is that of the element, and of what it hangs on, as the revision draws them. */
export const SiteWord = z
  .discriminatedUnion("says", [
    seen.built.extend(said),
    seen.differs.extend(said),
    seen.missing.extend(said),
    judged.accepted.extend(said),
    judged.mend.extend(said),
    judged.reopened.extend(said),
  ])
  .meta({ id: "SiteWord" });
export type SiteWord = z.infer<typeof SiteWord>;

export const siteItemStates = ["open", "built", "differs", "missing", "accepted", "to mend"] as const;
export const SiteItemState = z.enum(siteItemStates).meta({ id: "SiteItemState" });
export type SiteItemState = z.infer<typeof SiteItemState>;

export const SiteItemNow = z
  .strictObject({
    item: SiteItem,
    state: SiteItemState,
    /** True where something was said of it as an earlier revision drew it, and it is drawn otherwise since. */
    drawnOtherwise: z.boolean(),
    /** Who acts next; null once it is closed. */
    waitsFor: z.array(Role).nullable(),
    /** Everything said of it, the earliest first. */
    words: z.array(SiteWord),
  })
  .meta({ id: "SiteItemNow" });
export type SiteItemNow = z.infer<typeof SiteItemNow>;

/** How what is built stands to the revision it is built from. */
export const BuiltState = z.enum(["nothing to build from", "being built", "as drawn", "not built as drawn"]);
export type BuiltState = z.infer<typeof BuiltState>;

export const SiteNow = z
  .strictObject({
    /** The newest revision that is issued for seal or stamped so that work goes on; null while there is none. */
    revision: RevisionLetter.nullable(),
    by: z.enum(["issued for seal", "stamped"]).nullable(),
    built: BuiltState,
    items: z.array(SiteItemNow),
  })
  .meta({ id: "SiteNow" });
export type SiteNow = z.infer<typeof SiteNow>;
