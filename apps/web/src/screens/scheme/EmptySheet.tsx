import { lazy, Suspense, type ReactNode } from "react";
import { Command } from "../../controls/Command.tsx";
import "./empty-sheet.css";

const TeachingDrawings = lazy(async () => ({
  default: (await import("../../drawing/empty/TeachingDrawings.tsx")).TeachingDrawings,
}));

/** Nothing drawn yet: the one thing to do, in the place of the first container, and four drawings that teach the picture. */
export const EmptySheet = ({
  onSet,
  asleepBecause,
  children,
}: {
  onSet: () => void;
  asleepBecause: string | undefined;
  /** The other way to begin. */
  children?: ReactNode;
}) => (
  <>
    <section className="empty-sheet">
      <h2>Set the first container here</h2>
      <p className="lettered">click, or press S and Enter · 40 ft high cube · change size with [ and ]</p>
      <Command next shortcut="S" onPress={onSet} asleepBecause={asleepBecause}>
        Take a container
      </Command>
      <div className="empty-other">{children}</div>
    </section>
    <div className="empty-lessons">
      <Suspense fallback={null}>
        <TeachingDrawings />
      </Suspense>
    </div>
  </>
);
