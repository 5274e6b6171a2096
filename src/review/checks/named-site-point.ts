import { addFindings, type Check, type CheckContext } from "../check.ts";
import { sqlWith } from "../sql-with.ts";

/** Points known no better than this name no 2 km square by themselves, whatever they stand for. */
const FINEST_M = 500;

/** One point that many records share: the label of a site, which may be larger than a 2 km square. */
export const namedSitePoint: Check = {
  name: "named_site_point",
  severity: "ask",
  asks: "Do many records of many recorders and days have exactly one point, as the label of a site has? Asked once a point; silent where sites.csv says how far the site reaches.",
  find,
};

function find({ database, scheme }: CheckContext): Promise<void> {
  const { records, days, recorders } = scheme.settings.checks.site_points;
  return addFindings(
    database,
    namedSitePoint,
    sqlWith(import.meta.url, "named-site-point.sql", { records, days, recorders, finest_m: FINEST_M }),
  );
}
