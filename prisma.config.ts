import { defineConfig } from "prisma/config";

// `prisma generate` loads this file but needs no database; a connection string matters only to commands that connect.
export default defineConfig({
  schema: "prisma/schema.prisma",
  migrations: { path: "prisma/migrations" },
  datasource: { url: process.env["DATABASE_URL"] ?? "postgresql://localhost:5432/cornerway" },
});
