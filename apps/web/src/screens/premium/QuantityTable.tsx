import type { PremiumQuantities } from "@cornerway/schema";
import { volumeWords } from "../../units/volume-words.ts";
import { useUnits } from "../../units/use-units.ts";
import { hoursWords, lengthWords, massWords } from "./take-off-words.ts";

/** The take-off in the sums a price is asked in. */
export function QuantityTable({ quantities }: { quantities: PremiumQuantities }) {
  const units = useUnits();
  const { cutM, weldM, steelKg, connections, pads, padConcreteM3, craneLifts, hours } = quantities;
  const rows: [string, string][] = [
    ["Cut", lengthWords(cutM, units)],
    ...weldM.map(({ legMm, lengthM }): [string, string] => [`Weld, ${legMm} mm fillet`, lengthWords(lengthM, units)]),
    ...steelKg.map(({ section, massKg }): [string, string] => [`Steel, ${section}`, massWords(massKg, units)]),
    ...connections.map(({ kind, count }): [string, string] => [`Connection, ${kind}`, String(count)]),
    ["Pads beyond those of the plain stack", String(pads)],
    ["Concrete of pads beyond the usual size", volumeWords(padConcreteM3, units)],
    ["Crane picks", String(craneLifts)],
    ["Shop", hoursWords(hours.shop)],
    ["Site", hoursWords(hours.site)],
    ["Crane", hoursWords(hours.crane)],
    ["Engineering", hoursWords(hours.engineering)],
  ];
  return (
    <section>
      <h2 className="caption">Take-off</h2>
      <table>
        <tbody>
          {rows.map(([what, quantity]) => (
            <tr key={what}>
              <th scope="row">{what}</th>
              <td className="figure">{quantity}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
