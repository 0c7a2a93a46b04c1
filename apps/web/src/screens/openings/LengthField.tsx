import { useId, useState } from "react";

/** The typed twin of a place on the chart: metres, taken when the field is left or Enter is pressed. */
export function LengthField(props: {
  readonly label: string;
  readonly valueMm: number;
  readonly onSet: (valueMm: number) => void;
}) {
  const { label, valueMm, onSet } = props;
  const id = useId();
  const shown = (valueMm / 1000).toFixed(3);
  const [typed, setTyped] = useState<string | null>(null);
  const take = () => {
    const metres = Number(typed);
    if (typed !== null && Number.isFinite(metres) && metres > 0) onSet(Math.round(metres * 1000));
    setTyped(null);
  };
  return (
    <label className="field" htmlFor={id}>
      {`${label}, m`}
      <input
        id={id}
        inputMode="decimal"
        value={typed ?? shown}
        onChange={({ target }) => setTyped(target.value)}
        onBlur={take}
        onKeyDown={({ key }) => {
          if (key === "Enter") take();
        }}
      />
    </label>
  );
}
