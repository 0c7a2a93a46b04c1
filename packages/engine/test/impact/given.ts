import type { Drawn } from "@cornerway/engine";
import {
  digestOf,
  type Author,
  type ChangeRequest,
  type DecisionShown,
  type Given,
  type QuestionNow,
  type Standing,
  type StampNow,
} from "@cornerway/schema";

/** A revision judged in every way there is: units asked about, parts stamped, marks disposed of, pads asked for. */
export function given({ scheme, result }: Drawn): Given {
  const content = digestOf(scheme);
  const bound = { revision: "A", contentDigest: content, resultDigest: digestOf(result) };
  const unitIds = scheme.containers.map(({ id }) => id);
  const partIds = [...scheme.openings.slice(0, 4), ...scheme.posts, ...scheme.pads.slice(-3)].map(({ id }) => id);
  return {
    questions: unitIds.map((elementId, at) => answered(elementId, at + 1, bound)),
    stamps: [undefined, ...partIds].map((elementId) => stamped(elementId, bound)),
    seal: {
      checks: [
        {
          check: {
            id: uuid("check"),
            number: 1,
            ...bound,
            outcome: "agrees",
            text: "",
            points: [],
            author,
            checkedAt: at,
          },
          standing,
        },
      ],
      issues: [{ issue: { id: uuid("issue"), number: 1, ...bound, author, issuedAt: at, steps: [] }, standing }],
      confirmations: [
        {
          id: uuid("confirmation"),
          number: 1,
          values: ["Yield of the rail: 343 MPa"],
          against: "the text",
          author,
          confirmedAt: at,
        },
      ],
      dispositions: result.marks.slice(0, 8).map((mark, index) => ({
        disposition: {
          ...{
            id: uuid(`disposed ${mark.id}`),
            number: index + 1,
            ...bound,
            markId: mark.id,
            markDigest: digestOf(mark),
          },
          ...{ reason: "by hand", calculation: { fileId: uuid("file"), digest: content }, author, disposedAt: at },
        },
        stands: true,
        standing,
      })),
    },
    decisions: [decided(bound.revision, content)],
    requests: scheme.pads.map((pad, index) => takenIn(index + 1, content, [{ kind: "pad.set", pad }])),
  };
}

const at = "2027-03-10T09:00:00.000Z";
const author: Author = { id: uuid("someone"), name: "Someone", role: "engineer" };
const standing: Standing = {
  ...{ state: "stands", revision: "A", newest: "A" },
  changed: { elements: [], results: [], whole: [] },
};

/** An id made of a name, the same each time. */
function uuid(name: string): string {
  const hex = digestOf(name).replaceAll(/[^0-9a-f]/g, "");
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-4${hex.slice(13, 16)}-8${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
}

type Bound = { revision: string; contentDigest: string; resultDigest: string };

const answered = (elementId: string, number: number, bound: Bound): QuestionNow => ({
  ...{ id: uuid(`question ${elementId}`), elementId, view: "plan", revision: "A", wanted: "May it stay?" },
  ...{ mayGive: null, neededBy: "2027-04-01", number, author, askedAt: at, state: "answered", owedBy: null, standing },
  steps: [{ step: "answered", id: uuid("step"), by: author, at, ...bound, answer: { kind: "as drawn", text: null } }],
});

const stamped = (elementId: string | undefined, bound: Bound): StampNow => ({
  stamp: {
    ...{ id: uuid(`stamp ${elementId ?? "whole"}`), ...bound, disposition: "No exceptions taken", text: "", author },
    ...(elementId === undefined ? {} : { elementId }),
    pressedAt: at,
  },
  standing,
});

const decided = (revision: string, content: string): DecisionShown => ({
  decision: {
    ...{ id: uuid("decision"), revision, requestId: null, decision: "agree", reason: null, contentDigest: content },
    ...{ costBookDigest: content, premiumDigest: content, money: 1000, currency: "USD", forShow: true },
    ...{ author, decidedAt: at },
  },
  stale: [],
  latest: true,
});

const takenIn = (number: number, content: string, operations: ChangeRequest["operations"]): ChangeRequest => ({
  ...{ id: uuid(`request ${number}`), number, revision: "A", contentDigest: content, text: "A pad" },
  ...{ operations, author, madeAt: at, state: "taken in", answer: { by: author, at, reason: null } },
});
