import {
  containerNumberWords,
  lastAnswer,
  lastInspection,
  mayReadEntry,
  type ChangeRequest,
  type ConditionNow,
  type Owed,
  type QuestionNow,
  type SiteItemNow,
  type SurveyedContainerNow,
} from "@cornerway/schema";
import type { Connection } from "../store/connection.ts";
import { readHeld } from "../store/membership-rows.ts";
import { readProjectIds, readProjectRow } from "../store/project-rows.ts";
import { readRequests } from "../store/request-rows.ts";
import { readConditions } from "./conditions/read-conditions.ts";
import { pricesOwed } from "./price-owed.ts";
import { readQuestions } from "./questions/read-questions.ts";
import { readSite } from "./site/read-site.ts";
import { readSurvey } from "./survey/read-survey.ts";

type OwedThing = Omit<Owed, "projectId" | "projectName">;

/** Beyond this many projects nobody looks at one desk. */
const mostProjects = 200;

/** Who owes whom what in the projects of one person, what is needed first coming first. */
export async function readOwed(db: Connection, personId: string): Promise<Owed[]> {
  const ids = (await readProjectIds(db, personId, { after: undefined, limit: mostProjects })) ?? [];
  const owed = await Promise.all(ids.map((id) => owedIn(db, id, personId)));
  return owed.flat().sort((one, other) => whenOf(one).localeCompare(whenOf(other)));
}

async function owedIn(db: Connection, projectId: string, personId: string): Promise<Owed[]> {
  const { roles } = await readHeld(db, projectId, personId);
  const { name: projectName } = await readProjectRow(db, projectId);
  const requests = mayReadEntry(roles, "request made") ? await readRequests(db, projectId) : [];
  const things = [
    ...(await readQuestions(db, { projectId, roles })).flatMap(ofQuestion),
    ...(await readConditions(db, { projectId, roles })).flatMap(ofCondition),
    ...requests.flatMap(ofRequest),
    ...(await pricesOwed(db, { projectId, roles }, requests)).map(ofPrice),
    ...(await readSurvey(db, { projectId, roles })).containers.flatMap(ofContainer),
    ...(await readSite(db, { projectId, roles })).items.flatMap(ofSiteItem),
  ];
  return things.map((thing) => ({ projectId, projectName, ...thing }));
}

function ofQuestion(question: QuestionNow): OwedThing[] {
  const { number, wanted: text, neededBy, owedBy, author, state, steps, askedAt } = question;
  if (owedBy === null) return [];
  const what = owedBy === "engineer" ? "answer" : state === "needs information" ? "information" : "question to close";
  const owedTo = owedBy === "engineer" ? author.role : (lastAnswer(question)?.by.role ?? "engineer");
  return [{ what, number, text, owedBy, owedTo, neededBy, since: steps.at(-1)?.at ?? askedAt }];
}

function ofCondition(condition: ConditionNow): OwedThing[] {
  const { number, text, waitsFor, state, owedBy, author, steps, raisedAt } = condition;
  if (waitsFor === null) return [];
  const [what, owedTo] =
    state === "open" ? (["condition", author.role] as const) : (["condition to close", owedBy] as const);
  return [{ what, number, text, owedBy: waitsFor, owedTo, neededBy: null, since: steps.at(-1)?.at ?? raisedAt }];
}

const ofRequest = ({ state, number, text, author, madeAt }: ChangeRequest): OwedThing[] =>
  state === "open"
    ? [{ what: "change", number, text, owedBy: "architect", owedTo: author.role, neededBy: null, since: madeAt }]
    : [];

const ofPrice = ({ number, text, author, madeAt, answer }: ChangeRequest): OwedThing => ({
  ...{ what: "price to agree", number, text, owedBy: "owner", owedTo: author.role, neededBy: null },
  since: answer?.at ?? madeAt,
});

/** A container that waits for the engineer's word, for its repair, or for a revision with what was measured of it. */
function ofContainer({ container, state, departures }: SurveyedContainerNow): OwedThing[] {
  const { number, containerNumber, steps, author, offeredAt } = container;
  const text = containerNumberWords(containerNumber);
  const owed = { number, text, neededBy: null, since: steps.at(-1)?.at ?? offeredAt };
  if (state === "inspected")
    return [
      {
        ...owed,
        what: "container to judge",
        owedBy: "engineer",
        owedTo: lastInspection(container)?.by.role ?? author.role,
      },
    ];
  if (state === "repair") return [{ ...owed, what: "container to repair", owedBy: "owner", owedTo: "engineer" }];
  return departures.length === 0 ? [] : [{ ...owed, what: "survey to draw", owedBy: "architect", owedTo: "engineer" }];
}

/** What does not stand as drawn: the engineer owes a word on a difference, whoever built owes what is missing. */
function ofSiteItem({ state, words }: SiteItemNow): OwedThing[] {
  const word = words.at(-1);
  if (word === undefined) return [];
  const owed = { number: word.number, text: word.text ?? word.key, neededBy: null, since: word.saidAt };
  if (state === "differs")
    return [{ ...owed, what: "difference to judge", owedBy: "engineer", owedTo: word.author.role }];
  return state === "missing" || state === "to mend"
    ? [{ ...owed, what: "site item to build", owedBy: "owner", owedTo: "engineer" }]
    : [];
}

/** What has no day comes after what has one, the longest owed first. */
const whenOf = ({ neededBy, since }: Owed): string => `${neededBy ?? "9999-12-31"} ${since}`;
