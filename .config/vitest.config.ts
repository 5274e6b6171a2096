import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const root = fileURLToPath(new URL("..", import.meta.url));

export default defineConfig({
  root,
  test: {
    include: ["tests/**/*.test.ts"],
    setupFiles: [".config/vitest.setup.ts"],
    /** Dates and texts must not depend on where a test runs. */
    env: { TZ: "UTC", LANG: "C.UTF-8" },
    /** Whole builds and browsers are slow on two cores; a test that hangs still ends. */
    testTimeout: 60_000,
    hookTimeout: 120_000,
    reporters: [process.env["CI"] ? "dot" : "default", ["json", { outputFile: ".build/test-report.json" }]],
  },
});
