import { describe, expect, it } from "vitest";
import {
  acts,
  administratorMayDo,
  beforeConfirmation,
  may,
  mayDo,
  mayReadEntry,
  maySee,
  recordKinds,
  roles,
  rolesExclude,
  type Act,
  type Role,
} from "../src/index.ts";

const actsOf = (role: Role) => acts.filter((act) => may([role], act));

describe("who may do what", () => {
  it.each<[Role, Act[]]>([
    [
      "architect",
      [
        "draw",
        "send-revision",
        "run-assessment",
        "write-note",
        "settle-note",
        "answer-request",
        "read-prices",
        "keep-options",
        "pick-option",
        "ask-question",
        "meet-condition",
        "keep-file",
        "survey-container",
        "assign-container",
        "close-site-item",
        "print-set",
        "keep-comments",
        "answer-comment",
        "close-comment",
        "read-draft",
        "read-revisions",
        "read-record",
        "read-people",
        "leave-project",
        "invite",
        "set-expiry",
        "keep-webhooks",
        "take-archive",
      ],
    ],
    [
      "engineer",
      [
        "run-assessment",
        "write-note",
        "settle-note",
        "make-request",
        "press-stamp",
        "read-prices",
        "keep-cost-book",
        "answer-question",
        "meet-condition",
        "judge-condition",
        "dispose-mark",
        "confirm-value",
        "issue-for-seal",
        "keep-file",
        "survey-container",
        "judge-container",
        "close-site-item",
        "judge-site-item",
        "print-set",
        "keep-comments",
        "answer-comment",
        "close-comment",
        "read-draft",
        "read-revisions",
        "read-record",
        "read-people",
        "leave-project",
      ],
    ],
    [
      "checker",
      [
        "write-note",
        "settle-note",
        "read-prices",
        "ask-question",
        "judge-condition",
        "check-revision",
        "print-set",
        "close-comment",
        "read-draft",
        "read-revisions",
        "read-record",
        "read-people",
        "leave-project",
      ],
    ],
    [
      "owner",
      [
        "write-note",
        "settle-note",
        "read-prices",
        "keep-cost-book",
        "decide",
        "pick-option",
        "ask-question",
        "meet-condition",
        "keep-file",
        "survey-container",
        "close-site-item",
        "print-set",
        "keep-comments",
        "close-comment",
        "read-revisions",
        "read-record",
        "read-people",
        "leave-project",
        "invite",
        "confirm-engineer",
        "remove-person",
        "set-expiry",
        "keep-webhooks",
      ],
    ],
    ["reader", ["close-comment", "read-revisions", "read-record", "read-people", "leave-project"]],
  ])("the %s: %j", (role, expected) => {
    expect(actsOf(role)).toEqual(expected);
  });

  it("is more for whoever holds more roles, and nothing for whoever holds none", () => {
    for (const act of acts) {
      expect(may(["owner", "architect"], act)).toBe(may(["owner"], act) || may(["architect"], act));
      expect(may([], act)).toBe(false);
    }
  });

  it("never lets one role both draw and judge, and keeps the roles that do apart in one person", () => {
    for (const role of roles) expect(may([role], "draw") && may([role], "press-stamp")).toBe(false);
    const judging: Act[] = ["press-stamp", "make-request", "answer-question"];
    for (const draws of mayDo.draw) {
      for (const judges of judging.flatMap((act) => mayDo[act])) {
        expect(rolesExclude.some((pair) => pair.includes(draws) && pair.includes(judges))).toBe(true);
      }
    }
  });
});

describe("an administrator of the service", () => {
  it("sees to the people of any project, and neither draws, judges, reads what is drawn nor confirms the engineer", () => {
    const people: Act[] = ["read-people", "invite", "remove-person", "set-expiry"];
    expect([...administratorMayDo].sort()).toEqual(people.sort());
  });
});

describe("an engineer whom the owner has not confirmed", () => {
  it("does a part of what an engineer does, and all of it is reading, but for leaving", () => {
    const read = beforeConfirmation.filter((act) => act !== "leave-project");
    for (const act of read) expect(may(["engineer"], act) && act.startsWith("read-")).toBe(true);
  });
});

describe("who may see what", () => {
  it("names every kind of entry once", () => {
    expect(Object.keys(maySee).sort()).toEqual([...recordKinds].sort());
  });

  it("keeps drawing acts from those who may not read the draft", () => {
    for (const role of roles) expect(mayReadEntry([role], "drawn")).toBe(may([role], "read-draft"));
  });

  it("shows the reader issued revisions and what was decided on them, never drafts, notes or requests", () => {
    expect(recordKinds.filter((kind) => mayReadEntry(["reader"], kind))).toEqual([
      ...["project opened", "role given", "role confirmed", "role removed", "role expired", "expiry set"],
      ...["revision sent", "assessed", "stamp pressed"],
      ...["set printed", "authority described", "comments brought in", "comment followed"],
      ...["revision checked", "mark disposed", "values confirmed", "issued for seal", "sealed copy kept"],
      ...["container offered", "container followed", "survey limits set", "site word said", "brought in"],
    ]);
  });

  it("shows whoever writes an entry of a kind that entry", () => {
    const writtenBy = {
      drawn: "draw",
      "revision sent": "send-revision",
      "note written": "write-note",
      "note settled": "settle-note",
    } as const;
    for (const kind of ["drawn", "revision sent", "note written", "note settled"] as const) {
      for (const role of mayDo[writtenBy[kind]]) expect(mayReadEntry([role], kind)).toBe(true);
    }
    for (const role of mayDo["press-stamp"]) expect(mayReadEntry([role], "stamp pressed")).toBe(true);
    for (const role of mayDo["answer-request"]) expect(mayReadEntry([role], "request taken in")).toBe(true);
  });
});
