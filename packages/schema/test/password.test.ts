import { describe, expect, it } from "vitest";
import { longestPassword, passwordFault } from "../src/index.ts";

const about = ["Tilda Varrow", "tilda@varrow.example"];

describe("passwordFault", () => {
  // NIST SP 800-63B-4 section 3.1.1.2: length counts, kinds of characters do not; phrases with blanks are taken.
  it.each([
    "correct horse battery staple",
    "seven lanterns by the quay",
    "lowercaseandlongenoughtohold",
    "ein langer Satz für den Hafen",
    "прогулка у старой мельницы",
    "k7#mQ!zr2&Lp",
    "Tilda keeps brass lanterns dry",
    "winding stairs, 14 of them",
  ])("takes %j", (password) => {
    expect(passwordFault(password, about)).toBeNull();
  });

  it.each([
    ["eleven char", /has 12 characters or more; this one has 11/],
    ["k7#mQ!zr2&L".repeat(12), /128 characters at most; this one has 132/],
    ["aaaaaaaaaaaa", /one short piece over and over/],
    ["abcabcabcabcabc", /one short piece over and over/],
    ["TildaVarrow1", /your own name or address/],
    ["tilda@varrow.example", /your own name or address/],
    ["password1234", /guessed first/],
    ["P@ssw0rd2024!", /guessed first/],
    ["Passwort12345", /guessed first/],
    ["qwertyuiop123", /guessed first/],
    ["abcdefghijkl", /guessed first/],
    ["123456789012", /guessed first/],
    ["987654321098", /guessed first/],
    ["welcomewelcome1", /guessed first/],
    ["Cornerway2026!", /guessed first/],
    ["iloveyou12345678", /guessed first/],
    ["letmein letmein", /guessed first|over and over/],
    ["    a     b   ", /over and over|guessed first/],
  ])("refuses %j", (password, why) => {
    expect(passwordFault(password, about)).toMatch(why);
  });

  it("counts characters, not the units they are kept in", () => {
    expect(passwordFault("🏗️🧱🪜🔩🪵".repeat(2).slice(0, 8))).toMatch(/this one has [1-9]\b/);
    const longest = "ein langer Satz für den Hafen ".repeat(5).slice(0, longestPassword);
    expect(passwordFault(longest)).toBeNull();
  });
});
