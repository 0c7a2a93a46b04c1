import type { Reaction } from "@cornerway/engine";
import { figuresIn, type UnitSystem } from "@cornerway/schema";
import { sumsByPad } from "./sums-by-pad.ts";

export interface ReactionsProps {
  reactions: readonly Reaction[];
  nameOf: (id: string) => string;
  units: UnitSystem;
}

/** What the ground gives at each pad. */
export function Reactions({ reactions, nameOf, units }: ReactionsProps) {
  const { force } = figuresIn(units);
  const sums = sumsByPad(reactions);
  return (
    <div className="forces-reactions">
      <table>
        <caption>The ground gives {force(sums.reduce((sum, { upKn }) => sum + upKn, 0))} in all</caption>
        <thead>
          <tr>
            <th scope="col">Pad</th>
            <th scope="col">Up</th>
            <th scope="col">Sideways</th>
          </tr>
        </thead>
        <tbody>
          {sums.map(({ elementId, upKn, levelKn }) => (
            <tr key={elementId}>
              <th scope="row">{nameOf(elementId)}</th>
              <td>{upKn < 0 ? `${force(-upKn)}, a pull` : force(upKn)}</td>
              <td>{force(levelKn)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
