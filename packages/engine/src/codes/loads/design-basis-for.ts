import type { DesignBasis } from "../../loads/design-basis.ts";
import type { CodeEdition } from "../../loads/site-hazards.ts";
import { asce7Rules } from "./asce7/asce7-rules.ts";
import { codeSets } from "./code-sets.ts";
import { presumptiveSoil } from "./presumptive-soil.ts";

/** The one place where the adopted building code chooses: all its standards together, or none. */
export const designBasisFor = (edition: CodeEdition): DesignBasis => bases[edition];

const bases: Readonly<Record<CodeEdition, DesignBasis>> = {
  "IBC 2021": {
    codes: codeSets["IBC 2021"],
    ...asce7Rules("2016", "IBC 2021"),
    soil: (soil) => presumptiveSoil("2021", soil),
  },
  "IBC 2024": {
    codes: codeSets["IBC 2024"],
    ...asce7Rules("2022", "IBC 2024"),
    soil: (soil) => presumptiveSoil("2024", soil),
  },
};
