import { describe, expect, it } from "vitest";
import { parseComments } from "../../src/services/plan-check/parse-comments.ts";

describe("parseComments(sheet)", () => {
  it("reads a quoted comment of several lines from CSV, whatever the order of its columns (RFC 4180)", () => {
    const text = 'Sheet,No.,Comment,Discipline\r\nS2.1,3,"Show the ""drift"" load,\r\nplease",Structural\r\n';
    expect(parseComments({ form: "csv", text })).toEqual({
      ok: true,
      comments: [{ number: "3", text: 'Show the "drift" load,\r\nplease', discipline: "Structural", about: "S2.1" }],
    });
  });

  it("reads numbered lines of a letter, a line without a number going on with the one before", () => {
    const text = "1. Seal is missing.\n\nS-2) Pads B1 and B2:\n  state the soil value.\n14: Show hold-downs.";
    const read = parseComments({ form: "lines", text });
    expect(read.ok && read.comments.map(({ number, text: words }) => [number, words])).toEqual([
      ["1", "Seal is missing."],
      ["S-2", "Pads B1 and B2:\nstate the soil value."],
      ["14", "Show hold-downs."],
    ]);
  });

  it.each([
    ["csv", "a,b\n1,2\n", /must name a column “number”/],
    ["csv", "No.,Comment\n1,\n", /row 2 has no comment/],
    ["csv", 'No.,Comment\n1,"open', /not CSV/],
    ["csv", "No.,Comment\n1,x\n1,y\n", /number 1 comes twice/],
    ["lines", "Dear applicant\n1. x", /line 1 stands before the first number/],
    ["lines", "   \n", /there is no comment/],
  ] as const)("says where a %s sheet cannot be read", (form, text, why) => {
    const read = parseComments({ form, text });
    expect(read.ok ? "read" : read.why).toMatch(why);
  });
});
