import { lazy } from "react";

/** The typed twins are fetched when something is first chosen or taken in hand; the first drawing does without. */
export const ChosenSlip = lazy(async () => ({ default: (await import("../../twin/ChosenSlip.tsx")).ChosenSlip }));
export const NewBeamSlip = lazy(async () => ({ default: (await import("../../twin/NewBeamSlip.tsx")).NewBeamSlip }));
export const NewOpeningSlip = lazy(async () => ({
  default: (await import("../../twin/NewOpeningSlip.tsx")).NewOpeningSlip,
}));
export const NewPostSlip = lazy(async () => ({ default: (await import("../../twin/NewPostSlip.tsx")).NewPostSlip }));
export const OpenWallSlip = lazy(async () => ({ default: (await import("../../twin/OpenWallSlip.tsx")).OpenWallSlip }));
export const NewUnitSlip = lazy(async () => ({ default: (await import("../../twin/NewUnitSlip.tsx")).NewUnitSlip }));
export const RemoveSlip = lazy(async () => ({ default: (await import("../../twin/RemoveSlip.tsx")).RemoveSlip }));
export const SeveralSlip = lazy(async () => ({ default: (await import("../../twin/SeveralSlip.tsx")).SeveralSlip }));
