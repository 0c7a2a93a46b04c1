import { passwordFault } from "@cornerway/schema";
import { expect, it } from "vitest";
import { refusePassword } from "../../src/services/passwords.ts";

const about = { name: "Tilda Varrow", email: "tilda@varrow.example" };

// Two of the list that no rule of words and runs catches, and one written otherwise (@zxcvbn-ts/language-common 4.1.3).
it.each(["1qaz2wsx3edc", "q1w2e3r4t5y6", "Q1W2E3R4T5Y6"])("%s is refused as one that is tried first", (password) => {
  expect(passwordFault(password, [about.name, about.email])).toBeNull();
  const detail = "It is on the list of passwords that are tried first.";
  expect(refusePassword(password, about, "/password")).toMatchObject({
    ok: false,
    refusal: { code: "password-refused", fields: [{ pointer: "/password", detail }] },
  });
});

it("a phrase that is on no list is taken", () => {
  expect(refusePassword("seven lanterns by the quay", about, "/password")).toBeUndefined();
});
