import { z } from "zod";
import { Digest, RequestId } from "./ids.ts";
import { Premium, PremiumLine } from "./premium.ts";
import { RevisionLetter } from "./review.ts";

/** The cost book a price was made with. */
export const PricedWith = z.strictObject({ number: z.int().min(0), digest: Digest }).meta({ id: "PricedWith" });

/** What a revision costs above the plain stack. `premiumDigest` is that of `premium`. */
export const RevisionPremium = z
  .strictObject({
    revision: RevisionLetter,
    contentDigest: Digest,
    /** False until the revision is assessed: no marks are counted in. */
    assessed: z.boolean(),
    costBook: PricedWith,
    premium: Premium,
    premiumDigest: Digest,
  })
  .meta({ id: "RevisionPremium" });
export type RevisionPremium = z.infer<typeof RevisionPremium>;

/** One line that is not the same before and after; the missing side is null. */
export const DifferentLine = z
  .strictObject({
    elementId: z.string(),
    item: PremiumLine.shape.item,
    section: z.string().nullable(),
    before: PremiumLine.nullable(),
    after: PremiumLine.nullable(),
    money: z.number(),
  })
  .meta({ id: "DifferentLine" });
export type DifferentLine = z.infer<typeof DifferentLine>;

const difference = {
  currency: z.string(),
  forShow: z.boolean(),
  costBook: PricedWith,
  totalBefore: z.number(),
  totalAfter: z.number(),
  /** Their money together is the difference of the totals. */
  lines: z.array(DifferentLine),
  /** Elements of the later one whose steel the catalogue does not know: not in its total. */
  notPriced: z.array(z.string()),
};

/** What makes up the difference between two revisions, both priced with the book as it is now. */
export const PremiumDifference = z
  .strictObject({ before: RevisionLetter, after: RevisionLetter, ...difference })
  .meta({ id: "PremiumDifference" });
export type PremiumDifference = z.infer<typeof PremiumDifference>;

/**
 * What a change request adds to the revision it was made on, by what it draws; `contentDigest` is that of the revision
 * with the request in it. What it leaves open is known once a revision holds it.
 */
export const RequestPremium = z
  .strictObject({
    requestId: RequestId,
    revision: RevisionLetter,
    contentDigest: Digest,
    ...difference,
    premiumDigest: Digest,
  })
  .meta({ id: "RequestPremium" });
export type RequestPremium = z.infer<typeof RequestPremium>;
