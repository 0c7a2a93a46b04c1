import type { DesignBasis, NotionalRule } from "../../loads/design-basis.ts";
import type { CodeEdition } from "../../loads/site-hazards.ts";
import { asce7Rules } from "./asce7/asce7-rules.ts";
import { codeSets } from "./code-sets.ts";
import { presumptiveSoil } from "./presumptive-soil.ts";

/** The one place where the adopted building code chooses: all its standards together, or none. */
export const designBasisFor = (edition: CodeEdition): DesignBasis => bases[edition];

/** AISC 360 C2.2b and C2.1(d), from memory. */
const notional = (edition: string): NotionalRule => ({
  share: 0.002,
  allowableFactor: 1.6,
  clause: { document: "AISC 360", edition, place: "C2.2b", certainty: "memory" },
});

const bases: Readonly<Record<CodeEdition, DesignBasis>> = {
  "IBC 2021": {
    codes: codeSets["IBC 2021"],
    ...asce7Rules("2016", "IBC 2021"),
    notional: notional("2016"),
    soil: (soil) => presumptiveSoil("2021", soil),
  },
  "IBC 2024": {
    codes: codeSets["IBC 2024"],
    ...asce7Rules("2022", "IBC 2024"),
    notional: notional("2022"),
    soil: (soil) => presumptiveSoil("2024", soil),
  },
};
