import { catalogRows } from "@cornerway/engine";
import { contentDigest, digestOf, type Digest, type Scheme } from "@cornerway/schema";

const catalogDigest = digestOf(catalogRows);

/** Content digest of a scheme under the catalogue of this build. */
export const digestOfScheme = (scheme: Scheme): Digest => contentDigest(scheme, catalogDigest);
