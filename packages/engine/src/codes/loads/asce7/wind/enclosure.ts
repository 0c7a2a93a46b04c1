import type { EnclosureFinding } from "../../../../loads/wind-pressures.ts";
import type { Enclosure, Envelope, EnvelopeSide } from "../../../../loads/wind-shape.ts";
import { openWorking } from "../../../../working/open-working.ts";
import type { Working } from "../../../../working/working.ts";
import { asce7, type Asce7Edition } from "../asce7-edition.ts";

/** The class of the envelope as drawn, and with every door open; the one with the larger internal pressure governs. */
export function classifyEnclosure(edition: Asce7Edition, envelope: Envelope): EnclosureFinding {
  const closed = classify(edition, envelope, false);
  const open = classify(edition, envelope, true);
  const governing =
    internalCoefficient[open.enclosure] > internalCoefficient[closed.enclosure] ? open.enclosure : closed.enclosure;
  return {
    closed: closed.enclosure,
    doorsOpen: open.enclosure,
    governing,
    coefficient: internalCoefficient[governing],
    workings: [...closed.workings, ...open.workings],
  };
}

/** Table 26.13-1, both signs, from memory. */
const internalCoefficient: Readonly<Record<Enclosure, number>> = {
  open: 0,
  "partially open": 0.18,
  enclosed: 0.18,
  "partially enclosed": 0.55,
};

type Classified = { enclosure: Enclosure; workings: Working[] };

function classify(edition: Asce7Edition, envelope: Envelope, doorsOpen: boolean): Classified {
  const tests = envelope.sides.map((side) => testSide(edition, envelope, side, doorsOpen));
  return { enclosure: classOf(tests), workings: tests.map(({ working }) => working) };
}

function classOf(tests: readonly SideTest[]): Enclosure {
  if (tests.every(({ mostlyOpen }) => mostlyOpen)) return "open";
  if (tests.some(({ dominant }) => dominant)) return "partially enclosed";
  return tests.every(({ tight }) => tight) ? "enclosed" : "partially open";
}

type SideTest = { mostlyOpen: boolean; dominant: boolean; tight: boolean; working: Working };

/** 26.2: each wall is tried as the one that receives positive pressure. 0.37 m² is the text's 4 ft². */
function testSide(edition: Asce7Edition, envelope: Envelope, side: EnvelopeSide, doorsOpen: boolean): SideTest {
  const others = envelope.sides.filter((other) => other !== side);
  const open = (of: EnvelopeSide) => of.openM2 + (doorsOpen ? of.doorsM2 : 0);
  const w = openWorking(
    `Enclosure, wind on side ${side.side}, doors ${doorsOpen ? "open" : "closed"}`,
    asce7(edition, "26.2"),
  );
  w.let("A_o", open(side), "m²", "openings in the wall", "derived");
  w.let("A_g", side.grossM2, "m²", "gross area of the wall", "derived");
  w.let(
    "A_oi",
    others.reduce((sum, of) => sum + open(of), envelope.roof.openM2),
    "m²",
    "openings elsewhere",
    "derived",
  );
  w.let(
    "A_gi",
    others.reduce((sum, of) => sum + of.grossM2, envelope.roof.grossM2),
    "m²",
    "gross area elsewhere",
    "derived",
  );
  w.compute("A_small", "min(0.37, 0.01 * A_g)", "m²");
  const mostlyOpen = w.when("A_o", ">=", "0.8 * A_g", "open building");
  const larger = w.when("A_o", ">", "1.1 * A_oi", "partially enclosed (1)");
  const sizeable = w.when("A_o", ">", "A_small", "partially enclosed (2)");
  const closedElsewhere = w.when("A_oi", "<=", "0.2 * A_gi", "partially enclosed (2)");
  return { mostlyOpen, dominant: larger && sizeable && closedElsewhere, tight: !sizeable, working: w.giving("A_o") };
}
