import { createRoot } from "react-dom/client";
import { assess } from "@cornerway/engine";
import { emptyScheme, Scheme } from "@cornerway/schema";
import demo from "../../../../shared/demo/scheme.json";
import "../look/tokens.css";
import "../look/fonts.css";
import "../look/base.css";
import { nineContainers, nineContainersAssessed } from "./nine-containers.ts";
import { PreviewSheet } from "./PreviewSheet.tsx";

const asked = new URLSearchParams(location.search);
const root = document.getElementById("sheet");
if (root === null) throw new Error("preview.html has no place for the sheet");

const side = { south: "south", north: "north", east: "east", west: "west" } as const;
const sides = Object.values(side);
const chosenSide = sides.find((each) => each === asked.get("side")) ?? "south";

createRoot(root).render(
  <PreviewSheet
    {...shown(asked.get("scheme"))}
    review={asked.has("review")}
    side={chosenSide}
    storey={Number(asked.get("storey") ?? 1)}
  />,
);

function shown(name: string | null) {
  if (name === "empty") return { scheme: emptyScheme, assessment: null };
  if (name === "nine") return { scheme: nineContainers, assessment: nineContainersAssessed };
  const scheme = Scheme.parse(demo);
  return { scheme, assessment: assess(scheme) };
}
