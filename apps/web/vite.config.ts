import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

const service = process.env["SERVICE_URL"] ?? "http://127.0.0.1:3000";

export default defineConfig({
  plugins: [react()],
  build: {
    // The content-security policy admits no data: or inline source, so every asset is a file of its own.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    target: "es2023",
    sourcemap: true,
    // Parts fetched later share chunks with the first page: what makes zod make no code from text lies in one chunk with
    // zod itself, so that it has run before any schema, whichever part asks for one first.
    rolldownOptions: {
      output: { codeSplitting: { groups: [{ name: "zod", test: /node_modules\/zod\/|src\/jitless/ }] } },
    },
  },
  worker: { format: "es" },
  server: { proxy: { "/api": { target: service, ws: true } } },
});
