import { isContinued } from "@cornerway/schema";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { leafHash } from "../../src/record/tree-head.ts";
import { consistencyProof, headOver, inclusionProof, isIncluded } from "../../src/record/tree-proofs.ts";

// The eight leaves and the proofs over them that implementations of RFC 6962 and RFC 9162 are commonly tested with, as the
// tests of several independent ones print them.
const leaves = ["", "00", "10", "2021", "3031", "40414243", "5051525354555657", "606162636465666768696a6b6c6d6e6f"].map(
  (hex) => leafHash(Buffer.from(hex, "hex")),
);
const head = "5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328";

const records = fc
  .array(fc.string(), { minLength: 1, maxLength: 70 })
  .map((texts) => texts.map((text) => leafHash(text)));
const runs = { seed: 9162, numRuns: 300 };

describe("inclusion", () => {
  it("gives the commonly printed head and proof of the first of eight leaves", () => {
    expect(headOver(leaves)).toBe(head);
    expect(inclusionProof(leaves, 0)).toEqual([
      "96a296d224f285c67bee93c30f8a309157f0daa35dc5b87e410b78630a09cfc7",
      "5f083f0a1a33ca076a95279832580db3e0ef4584bdff1f54c8a360f50de3031e",
      "6b47aaf29ee3c2af9af889bc1fb9254dabd31177f16232dd6aab035ca39bf6e4",
    ]);
  });

  it.each([
    {
      index: 5,
      of: 8,
      proof: [
        "bc1a0643b12e4d2d7c77918f44e0f4f79a838b6cf9ec5b5c283e1f4d88599e6b",
        "ca854ea128ed050b41b35ffc1b87b8eb2bde461e9e3b5596ece6b9d5975a0ae0",
        "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7",
      ],
    },
    { index: 2, of: 3, proof: ["fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125"] },
    {
      index: 1,
      of: 5,
      proof: [
        "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d",
        "5f083f0a1a33ca076a95279832580db3e0ef4584bdff1f54c8a360f50de3031e",
        "bc1a0643b12e4d2d7c77918f44e0f4f79a838b6cf9ec5b5c283e1f4d88599e6b",
      ],
    },
  ])("gives the commonly printed proof of leaf $index of $of", ({ index, of, proof }) => {
    expect(inclusionProof(leaves.slice(0, of), index)).toEqual(proof);
  });

  it("is shown by its proof for every leaf of any record, and for no other leaf, place or head", () => {
    fc.assert(
      fc.property(records, fc.nat(), (of, pick) => {
        const index = pick % of.length;
        const [leaf, proof, root] = [of[index] ?? "", inclusionProof(of, index), headOver(of)];
        expect(isIncluded(leaf, index, of.length, proof, root)).toBe(true);
        expect(isIncluded(leafHash("another"), index, of.length, proof, root)).toBe(false);
        expect(isIncluded(leaf, index, of.length, [...proof, root], root)).toBe(false);
        expect(isIncluded(leaf, index, of.length, proof, leafHash("another"))).toBe(false);
        if (proof.length > 0) expect(isIncluded(leaf, index, of.length, proof.slice(1), root)).toBe(false);
      }),
      runs,
    );
  });

  it("has no proof for a leaf that is not there", () => {
    expect(() => inclusionProof(leaves, 8)).toThrow(RangeError);
    expect(isIncluded(leaves[0] ?? "", 8, 8, [], head)).toBe(false);
  });
});

describe("consistency", () => {
  it("gives the commonly printed proof from six to eight leaves", () => {
    expect(consistencyProof(leaves, 6)).toEqual([
      "0ebc5d3437fbe2db158b9f126a1d118e308181031d0a949f8dededebc558ef6a",
      "ca854ea128ed050b41b35ffc1b87b8eb2bde461e9e3b5596ece6b9d5975a0ae0",
      "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7",
    ]);
  });

  it.each([
    {
      from: 2,
      to: 5,
      proof: [
        "5f083f0a1a33ca076a95279832580db3e0ef4584bdff1f54c8a360f50de3031e",
        "bc1a0643b12e4d2d7c77918f44e0f4f79a838b6cf9ec5b5c283e1f4d88599e6b",
      ],
    },
    {
      from: 3,
      to: 7,
      proof: [
        "0298d122906dcfc10892cb53a73992fc5b9f493ea4c9badb27b791b4127a7fe7",
        "07506a85fd9dd2f120eb694f86011e5bb4662e5c415a62917033d4a9624487e7",
        "fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125",
        "837dbb152e9b079010717e84e865da4ebc0fa198a806d59d31bf15accef22d0e",
      ],
    },
  ])("gives the commonly printed proof from $from to $to leaves", ({ from, to, proof }) => {
    expect(consistencyProof(leaves.slice(0, to), from)).toEqual(proof);
    const heads = [from, to].map((size) => ({ size, head: headOver(leaves, size) }));
    expect(heads[0] && heads[1] && isContinued(heads[0], heads[1], proof)).toBe(true);
  });

  it("is shown between any two heads of one record, and never with a leaf before the earlier one altered", () => {
    fc.assert(
      fc.property(records, fc.nat(), (of, pick) => {
        const size = (pick % of.length) + 1;
        const [earlier, later] = [
          { size, head: headOver(of, size) },
          { size: of.length, head: headOver(of) },
        ];
        expect(isContinued(earlier, later, consistencyProof(of, size))).toBe(true);
        const altered = of.with(pick % size, leafHash("altered"));
        const other = { size: of.length, head: headOver(altered) };
        expect(isContinued(earlier, other, consistencyProof(altered, size))).toBe(false);
      }),
      runs,
    );
  });

  it("has no proof from nothing, nor from more than there is", () => {
    expect(() => consistencyProof(leaves, 0)).toThrow(RangeError);
    expect(() => consistencyProof(leaves, 9)).toThrow(RangeError);
    expect(isContinued({ size: 9, head }, { size: 8, head }, [])).toBe(false);
  });
});
