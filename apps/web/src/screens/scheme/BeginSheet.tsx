import { BringIn, type BringInProps } from "./BringIn.tsx";
import { EmptySheet } from "./EmptySheet.tsx";

/** A sheet with nothing on it: the first container is set, or a scheme brought in. */
export const BeginSheet = ({ onSet, ...bringIn }: BringInProps & { onSet: () => void }) => (
  <EmptySheet onSet={onSet} asleepBecause={bringIn.asleepBecause}>
    <BringIn {...bringIn} />
  </EmptySheet>
);
