import "./jitless.ts";
import "./data/link-secret.ts"; // before the router reads the address
import { QueryClientProvider } from "@tanstack/react-query";
import { RouterProvider } from "@tanstack/react-router";
import { createRoot } from "react-dom/client";
import { askForAddress } from "./ask-ahead.ts";
import { queryClient } from "./data/query-client.ts";
import "./look/tokens.css";
import "./look/fonts.css";
import "./look/base.css";
import "./look/print.css";
import { router } from "./routes.tsx";

performance.setResourceTimingBufferSize(4000); // more than the page has parts: what is kept for without a line is told by them
askForAddress(location.pathname);

const place = document.getElementById("sheet");
if (place === null) throw new Error("index.html has no element with the id sheet");
createRoot(place).render(
  <QueryClientProvider client={queryClient}>
    <RouterProvider router={router} />
  </QueryClientProvider>,
);
// Beside the first sheet: only what comes after it hangs on this, and where it does not come the page works as ever.
void import("./data/keep-shell.ts").then(
  ({ keepShell }) => keepShell(),
  () => undefined,
);
