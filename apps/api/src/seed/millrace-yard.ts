import type { Opening, Scheme } from "@cornerway/schema";
import type { DemoOffice } from "./demo-office.ts";

/**
 * Three revisions: A without the lookout and with a door too wide, narrowed as asked; B with the lookout T1, set back in a
 * request that is declined, stamped to revise, so it is assessed here; C with one window more. One question is answered with a condition, one is open. A and C are assessed by the first worker. The draft is C.
 */
export async function millraceYard(office: DemoOffice, scheme: Scheme): Promise<void> {
  const withLookout = without(scheme, { openings: ["w9"] });
  const narrowed = without(withLookout, { containers: ["t1"], openings: ["w7", "w8"] });

  await office.drawTo(widened(narrowed));
  await office.send("First issue for your reading.");
  const pier = await office.write("engineer", {
    ...{ elementId: "d3", revision: "A" },
    text: "Only 0.30 m of wall is left between W3 and D3. What must the door be wide for?",
  });
  const narrow = await office.ask("A", "Narrow D3 to 1.50 m and leave 1.90 m of wall beside W3.", [
    { kind: "opening.shape", id: "d3", ...shapeOf(narrowed, "d3") },
  ]);
  await office.takeIn(narrow);
  await office.write("architect", {
    ...{ elementId: "d3", revision: "A", answers: pier },
    text: "For the workbench, and it turns. 1.50 m will do.",
  });
  await office.settle("engineer", pier);

  await office.drawTo(withLookout);
  await office.send("D3 is narrowed as asked. New: T1, the lookout over the race.");
  await office.assess("B");
  await office.write("owner", {
    ...{ elementId: "t1", revision: "B" },
    text: "The lookout is why I build this at all. Tell me early what it needs.",
  });
  await office.write("engineer", {
    ...{ elementId: "t1", revision: "B" },
    text: "As drawn it goes over by 0.94 m. Either two posts under its south end, each with a pad, or set it back.",
  });
  const door = await office.question("architect", {
    ...{ elementId: "d3", view: "south elevation", revision: "B", neededBy: "2027-01-15" },
    wanted: "May D3 stay 1.50 m wide once T1 stands above it?",
    mayGive: "It may come down to 1.20 m.",
  });
  await office.answer(door, "B", {
    text: "It may, as long as its frame carries what comes down beside it.",
    condition: "The jambs of D3 run from rail to rail, welded at both ends.",
  });
  const setBack = await office.ask("B", "Set T1 back by 2.40 m: it then stands by its own weight.", [
    { kind: "container.move", id: "t1", ...movedNorth(scheme, "t1", 2_400_000) },
  ]);
  await office.stamp("B", "T1 has nothing to stand on at its south end. See the note on T1 and request 2.");
  await office.decline(setBack, "From there it does not see over the mill wall. Rather two posts, clear of the gate.");

  await office.drawTo(scheme);
  await office.send("W9 is new, for the workshop. T1 stays where it was: where may the posts come?");
  await office.question("owner", {
    ...{ elementId: "t1", view: "south elevation", revision: "C", neededBy: "2027-01-29" },
    wanted: "What does the lookout need to stay where it is?",
    mayGive: "W9 may go. The lookout may not.",
  });
}

/** A scheme without some of its units and openings, and without what lies on the units. */
function without(scheme: Scheme, gone: { containers?: string[]; openings?: string[] }): Scheme {
  const { containers = [], openings = [] } = gone;
  return {
    ...scheme,
    containers: scheme.containers.filter(({ id }) => !containers.includes(id)),
    openings: scheme.openings.filter(({ id }) => !openings.includes(id)),
    loads: scheme.loads.filter(({ containerId }) => !containers.includes(containerId)),
  };
}

/** The workshop's door as it was first drawn. */
const widened = (scheme: Scheme): Scheme => ({
  ...scheme,
  openings: scheme.openings.map((one) => (one.id === "d3" ? { ...one, offsetUm: 3_000_000, widthUm: 3_400_000 } : one)),
});

function shapeOf({ openings }: Scheme, id: string): Pick<Opening, "offsetUm" | "sillUm" | "widthUm" | "heightUm"> {
  const { offsetUm, sillUm, widthUm, heightUm } = found(openings, id);
  return { offsetUm, sillUm, widthUm, heightUm };
}

function movedNorth({ containers }: Scheme, id: string, byUm: number) {
  const { xUm, yUm, zUm } = found(containers, id);
  return { xUm, yUm: yUm + byUm, zUm };
}

function found<T extends { id: string }>(elements: readonly T[], id: string): T {
  const element = elements.find((one) => one.id === id);
  if (element === undefined) throw new Error(`the demo scheme has no ${id}`);
  return element;
}
