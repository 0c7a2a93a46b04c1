import { designBasisFor } from "@cornerway/engine";
import type { Derived } from "../derived.ts";
import type { CalculationFlow } from "../paper/calculation-flow.ts";
import { day } from "../paper/words.ts";
import type { ChoiceAct, SetSource } from "../set-source.ts";
import { written } from "../written.ts";
import { certaintyWords } from "./words.ts";

/** What the design rests on, before anything is worked out. */
export function layCriteria(flow: CalculationFlow, source: SetSource, derived: Derived): void {
  flow.subject("Criteria and basis");
  flow.paragraph(
    "What follows judges one revision of the scheme, by the assessment the service recorded for it. BY and CHECKED at the head of each page are for the engineer in responsible charge and a second engineer; they are blank until these persons sign.",
  );
  flow.table({
    name: "Criteria",
    columns: [
      { heading: "Item", share: 26 },
      { heading: "Basis", share: 74 },
    ],
    rows: criteriaRows(source),
    size: 8.4,
  });
  flow.heading("What each floor and roof is used for");
  flow.table({
    name: "Uses",
    columns: [
      { heading: "Container", share: 14 },
      { heading: "Surface", share: 14 },
      { heading: "Use", share: 40 },
      { heading: "Imposed load by the code", share: 30, right: true },
    ],
    rows: source.scheme.uses.map(({ containerId, surface, occupancy }) => {
      const load = designBasisFor(source.scheme.site.edition).gravity.occupancy(occupancy);
      const partitions =
        load.partitionsPa > 0 ? ` + ${written[source.units].pressure(load.partitionsPa)} partitions` : "";
      return [
        derived.tag(containerId),
        surface,
        occupancy,
        `${written[source.units].pressure(load.pressurePa)}${partitions}`,
      ];
    }),
  });
  flow.heading("Loads entered on floors and roofs");
  flow.table({
    name: "Loads entered",
    columns: [
      { heading: "Container", share: 14 },
      { heading: "Surface", share: 14 },
      { heading: "What", share: 40 },
      { heading: "Load", share: 30, right: true },
    ],
    rows: [
      ...source.scheme.loads.map((load) => [
        derived.tag(load.containerId),
        load.surface,
        load.case === "imposed" ? "imposed" : "finishes",
        written[source.units].pressure(load.pressurePa),
      ]),
      ...source.scheme.freeLoads.map((load) => [
        derived.tag(load.containerId),
        load.surface,
        `${load.tag}, ${load.note} (${load.case})`,
        freeLoadWords(load),
      ]),
    ],
  });
}

const freeLoadWords = (load: SetSource["scheme"]["freeLoads"][number]): string => {
  switch (load.shape) {
    case "point":
      return `${load.downN / 1000} kN down, ${load.alongXN / 1000} and ${load.alongYN / 1000} kN aside`;
    case "line":
      return `${load.downNPerM / 1000} kN/m`;
    case "area":
      return `${load.pressurePa / 1000} kPa over ${load.lengthUm / 1e6} × ${load.widthUm / 1e6} m`;
  }
};

const choiceWords = (choice: SetSource["sheetWallsChosen"]): string =>
  choice === null
    ? "nobody: the rule stands as every project begins with it"
    : [
        ...(choice.asked === null ? [] : [`asked for by ${actWords(choice.asked)}`]),
        `drawn by ${actWords(choice.drawn)}`,
      ].join("; ");

const actWords = ({ by, role, at }: ChoiceAct): string => `${by}, ${role}, ${day(at)}`;

/** The criteria as rows of name and value; the general notes sheet tells the same. */
export function criteriaRows({ scheme, units, sheetWallsChosen }: SetSource): string[][] {
  const say = written[units];
  const { basis, site } = scheme;
  const { codes } = designBasisFor(site.edition);
  const { hazards } = basis;
  return [
    ["Building code", site.edition],
    [
      "Documents it calls for",
      `${codes.loads}; ${codes.steel}; ${codes.coldFormed} (set ${certaintyWords[codes.certainty]})`,
    ],
    ...(hazards === null
      ? [["Wind, snow, earthquake", "no values of the site are entered: not judged"]]
      : [
          ["Risk category", hazards.riskCategory],
          [
            "Wind",
            `${say.speed(hazards.wind.speedMs)} basic, exposure ${hazards.wind.exposure}, ground ${say.height(hazards.wind.elevationM)} above sea level, topographic factor ${hazards.wind.topographicFactor} (${hazards.wind.edition})`,
          ],
          [
            "Snow",
            `${say.pressure(hazards.snow.groundPa)} on the ground, roof ${hazards.snow.roofExposure}, ${hazards.snow.thermal} (${hazards.snow.edition})`,
          ],
          [
            "Earthquake",
            `Ss ${hazards.seismic.ss} g, S1 ${hazards.seismic.s1} g, site class ${hazards.seismic.siteClass}, TL ${hazards.seismic.longPeriodS} s (${hazards.seismic.edition})`,
          ],
        ]),
    ["Systems against earthquakes", `along x: ${basis.systems.x}; along y: ${basis.systems.y}`],
    [
      "Sheet walls",
      basis.sheetWalls.rule === "counted"
        ? "counted by rational analysis"
        : `${basis.sheetWalls.rule}: ${basis.sheetWalls.reason}`,
    ],
    ["Sheet walls, chosen by", choiceWords(sheetWallsChosen)],
    [
      "Ground",
      basis.soil.report === undefined
        ? `${basis.soil.class}, presumptive: no soil report is laid in`
        : `${say.pressure(basis.soil.report.bearingPa)} allowed, ${basis.soil.report.source}`,
    ],
    ["Concrete of pads", say.stress(basis.concreteMpa)],
    ["Level as built", `within ${say.small(basis.levelErrorUm / 1000)} either way at pads, posts and seats`],
    ["Settlement of one support", say.small(basis.settlementUm / 1000)],
    [
      "Lifting",
      `factor ${basis.lifting.factor} on the weight, legs ${basis.lifting.legMdeg / 1000}° from the horizontal, ${basis.lifting.equalised ? "equalised" : "not equalised: two legs may carry all"}`,
    ],
    ["Friction, steel on steel or concrete", String(basis.friction)],
    ["Flood, fire, vibration, fatigue", "not judged by the program"],
  ];
}
