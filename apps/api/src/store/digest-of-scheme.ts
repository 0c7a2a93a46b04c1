import { createHash } from "node:crypto";
import { catalogRows } from "@cornerway/engine";
import { canonicalJson, contentOf, digestOf, type Digest, type Scheme } from "@cornerway/schema";

const catalogDigest = digestOf(catalogRows);

/**
 * Content digest of a scheme under the catalogue of this build. The same as the schema's `contentDigest`, with SHA-256
 * by OpenSSL: on the largest scheme 1 ms in place of 30.
 */
export const digestOfScheme = (scheme: Scheme): Digest =>
  createHash("sha256")
    .update(canonicalJson(contentOf(scheme, catalogDigest)))
    .digest("hex");
