import { createHash } from "node:crypto";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { appendLeaf, leafHash, treeHead } from "../../src/record/tree-head.ts";

/**
 * Leaf inputs and the roots of the trees over the first one to eight of them: the vectors that implementations of
 * RFC 6962 and RFC 9162 are tested with, as several independent ones print them; the property below holds them against the
 * RFC's own definition.
 */
const inputs = ["", "00", "10", "2021", "3031", "40414243", "5051525354555657", "606162636465666768696a6b6c6d6e6f"];
const roots = [
  "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d",
  "fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125",
  "aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77",
  "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7",
  "4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4",
  "76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef",
  "ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c",
  "5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328",
];

const leaves = inputs.map((hex) => leafHash(Buffer.from(hex, "hex")));

const frontierOf = (hashes: readonly string[]) =>
  hashes.reduce<string[]>((frontier, leaf, size) => appendLeaf(frontier, size, leaf), []);

/** RFC 9162 section 2.1.1, word for word: split at the largest power of two smaller than n. Written apart from the code. */
function definition(entries: readonly Buffer[]): Buffer {
  const sha256 = (...parts: Buffer[]) => createHash("sha256").update(Buffer.concat(parts)).digest();
  const [only] = entries;
  if (only === undefined) return sha256();
  if (entries.length === 1) return sha256(Buffer.of(0), only);
  let k = 1;
  while (k * 2 < entries.length) k *= 2;
  return sha256(Buffer.of(1), definition(entries.slice(0, k)), definition(entries.slice(k)));
}

describe("treeHead(appendLeaf(…))", () => {
  it.each(roots.map((root, at) => [at + 1, root] as const))(
    "over the first %i of the known leaves is the known root",
    (count, root) => {
      expect(treeHead(frontierOf(leaves.slice(0, count)))).toBe(root);
    },
  );

  it("over no leaf is the SHA-256 of nothing (FIPS 180-4)", () => {
    expect(treeHead([])).toBe("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
  });

  it("is the tree hash as RFC 9162 defines it, over any entries", () => {
    const entries = fc.array(fc.uint8Array({ maxLength: 20 }), { maxLength: 70 });
    fc.assert(
      fc.property(entries, (list) => {
        const head = treeHead(frontierOf(list.map(leafHash)));
        expect(head).toBe(definition(list.map((bytes) => Buffer.from(bytes))).toString("hex"));
      }),
      { seed: 9162, numRuns: 200 },
    );
  });

  it("keeps as many hashes as the count of leaves has ones in binary", () => {
    const hashes = Array.from({ length: 200 }, (_, n) => leafHash(String(n)));
    for (const count of [1, 2, 3, 7, 8, 127, 128, 200]) {
      expect(frontierOf(hashes.slice(0, count))).toHaveLength(count.toString(2).replaceAll("0", "").length);
    }
  });

  it("throws when the frontier is shorter than the count of leaves needs", () => {
    expect(() => appendLeaf([], 1, leafHash(""))).toThrow(RangeError);
  });
});
