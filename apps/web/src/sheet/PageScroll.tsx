import type { ReactNode } from "react";
import "./page-scroll.css";

/** A wide table that scrolls in its place on a narrow page; by keyboard as well, so it takes the focus and has a name. */
export const PageScroll = ({ label, children }: { label: string; children: ReactNode }) => (
  // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- what scrolls must be reached by keyboard (WCAG 2.1.1)
  <div className="page-scroll" role="region" aria-label={label} tabIndex={0}>
    {children}
  </div>
);
