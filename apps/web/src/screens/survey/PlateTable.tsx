import type { Inspection } from "@cornerway/schema";
import { inThousands } from "../../units/in-thousands.ts";
import { PageScroll } from "../../sheet/PageScroll.tsx";

const kilograms = (kg: number): string => `${inThousands(kg)} kg`;

/** What the plate says, and the floor; a dash where it cannot be read. */
export const PlateTable = ({ inspection: { plate, floor, measuredWith, text } }: { inspection: Inspection }) => (
  <>
    <PageScroll label="Table of plate facts">
      <table>
        <thead>
          <tr className="caption">
            <th scope="col">Approval</th>
            <th scope="col">Made</th>
            <th scope="col">Tare</th>
            <th scope="col">Greatest gross mass</th>
            <th scope="col">Stacking at 1.8 g</th>
            <th scope="col">Racking test</th>
          </tr>
        </thead>
        <tbody>
          <tr>
            <td>{plate.approvalNumber ?? "–"}</td>
            <td>{plate.madeIn ?? "–"}</td>
            <td>{plate.tareKg === null ? "–" : kilograms(plate.tareKg)}</td>
            <td>{kilograms(plate.maxGrossKg)}</td>
            <td>{kilograms(plate.stackingKg)}</td>
            <td>{plate.rackingN === null ? "–" : `${inThousands(plate.rackingN / 1000)} kN`}</td>
          </tr>
        </tbody>
      </table>
    </PageScroll>
    {floor === null ? null : <p>Floor: {floor}.</p>}
    {measuredWith === null ? null : <p>Thickness measured with {measuredWith}.</p>}
    {text === null ? null : <p className="said-by-person">{text}</p>}
  </>
);
