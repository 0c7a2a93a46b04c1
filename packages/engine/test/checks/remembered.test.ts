import { describe, expect, it } from "vitest";
import { remembered } from "../../src/checks/remembered.ts";

describe("a function that remembers", () => {
  it("works out a question once however often it is asked, and questions that say anything else by themselves", () => {
    const asked: string[] = [];
    const square = remembered(({ side, of }: { readonly side: number; readonly of: string }) => {
      asked.push(`${side} ${of}`);
      return side * side;
    });
    expect([square({ side: 3, of: "steel" }), square({ side: 3, of: "steel" })]).toEqual([9, 9]);
    expect([square({ side: 4, of: "steel" }), square({ side: 3, of: "wood" })]).toEqual([16, 9]);
    expect(asked).toEqual(["3 steel", "4 steel", "3 wood"]);
  });

  it("forgets what was asked longest ago, and then works it out again", () => {
    let worked = 0;
    const same = remembered((question: number) => {
      worked++;
      return question;
    });
    for (let n = 0; n < 1025; n++) same(n);
    same(1024);
    expect(worked).toBe(1025);
    same(0);
    expect(worked).toBe(1026);
  });
});
