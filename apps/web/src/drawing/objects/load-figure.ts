import type { FreeLoad, UnitSystem } from "@cornerway/schema";
import { printQuantity, unitOf } from "../../units/quantity.ts";
import type { Quantity } from "../../units/unit-scales.ts";

/** The figure of a free load in the person's units: "12.5 kN", "1.2 kN/m", "2.4 kPa". */
export function loadFigure(load: FreeLoad, units: UnitSystem): string {
  switch (load.shape) {
    case "point":
      return figure("force", load.downN, units);
    case "line":
      return figure("line load", load.downNPerM, units);
    case "area":
      return figure("pressure", load.pressurePa, units);
  }
}

const figure = (quantity: Quantity, value: number, units: UnitSystem): string =>
  `${Number(printQuantity(quantity, value, units))} ${unitOf(quantity, units)}`.replace("-", "−");
