import { parse } from "csv-parse/sync";
import { expect, it } from "vitest";
import { csvOf } from "../../src/description/csv.ts";

// RFC 4180: CRLF after every record, double quotes round what holds a comma, a quote or a line break, quotes doubled.
it("a table is RFC 4180", () => {
  expect(
    csvOf(
      ["name", "length_m"],
      [
        ["a, b", 1.5],
        ['6" pipe', null],
      ],
    ),
  ).toBe('name,length_m\r\n"a, b",1.5\r\n"6"" pipe",\r\n');
});

it("text that begins as a formula does is led by an apostrophe, and numbers are left alone", () => {
  const text = csvOf(
    ["cell", "number"],
    [
      ["=1+1", -5],
      ["+44", -0.5],
      ["-x", 1e-7],
      ["@sum", 0],
      ["\tx", 1],
      ["a=b", 2],
    ],
  );
  const cells: string[][] = parse(text, { from_line: 2 });
  expect(cells.map(([cell]) => cell)).toEqual(["'=1+1", "'+44", "'-x", "'@sum", "'\tx", "a=b"]);
  expect(cells.map(([, number]) => Number(number))).toEqual([-5, -0.5, 1e-7, 0, 1, 2]);
});
