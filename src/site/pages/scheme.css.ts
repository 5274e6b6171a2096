import type { APIRoute } from "astro";
import { atlas } from "../published.ts";
import { schemeStyles } from "../scheme-styles.ts";
import otherPlans from "../styles/other-plans.css?raw";

/** Every page draws the scheme's own body; the styles of a bee are in the program's. */
export const GET: APIRoute = () =>
  new Response(schemeStyles(atlas()) + (atlas().body_plan === "bee" ? "" : otherPlans), {
    headers: { "Content-Type": "text/css; charset=utf-8" },
  });
