/**
 * What the formatter's own linter cannot see: promises nobody waits for, and docstrings on everything exported.
 * Unused names, style and layout are left to it. Components (.astro) are checked by `astro check`.
 */
import jsdoc from "eslint-plugin-jsdoc";
import tseslint from "typescript-eslint";

const typed = {
  files: ["**/*.ts", "**/*.js"],
  languageOptions: { parser: tseslint.parser, parserOptions: { projectService: true } },
  linterOptions: { reportUnusedDisableDirectives: "error" },
  plugins: { "@typescript-eslint": tseslint.plugin },
  rules: {
    "@typescript-eslint/no-floating-promises": "error",
    "@typescript-eslint/no-misused-promises": ["error", { checksVoidReturn: false }],
    "@typescript-eslint/await-thenable": "error",
    "@typescript-eslint/switch-exhaustiveness-check": ["error", { considerDefaultExhaustiveForUnions: true }],
    "@typescript-eslint/only-throw-error": "error",
  },
};

const documented = {
  files: ["src/**/*.ts", "src/**/*.js"],
  // Pages and endpoints are called by Astro alone, which says what each export is.
  ignores: ["src/site/pages/**"],
  plugins: { jsdoc },
  settings: { jsdoc: { mode: "typescript" } },
  rules: {
    "jsdoc/require-jsdoc": [
      "error",
      {
        publicOnly: true,
        require: {
          FunctionDeclaration: true,
          ClassDeclaration: true,
          ArrowFunctionExpression: true,
          FunctionExpression: true,
        },
      },
    ],
    "jsdoc/require-description": "error",
    "jsdoc/check-tag-names": "error",
    "jsdoc/empty-tags": "error",
  },
};

export default [{ ignores: ["**/node_modules", "dist", ".build", ".astro", "src/build/template"] }, typed, documented];
