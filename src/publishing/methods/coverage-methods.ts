import type { Scheme } from "../../scheme/scheme.ts";
import { escapeHtml } from "../markdown.ts";
import { number, percent } from "./statement.ts";

/** Visits, and those of them whose records name nobody. */
export interface VisitCounts {
  visits: number;
  visits_without_recorder: number;
}

/**
 * What the methods page says of visits, of squares that are covered, and of taxa that are expected.
 *
 * @example coverageSentences(scheme, { visits: 40, visits_without_recorder: 10 })[1] // => "10 of 40 visits (25 %) name nobody …"
 */
export function coverageSentences({ settings }: Pick<Scheme, "settings">, counts: VisitCounts): string[] {
  const {
    minimum_visits: least,
    stricter_minimum_visits: more = 2 * least,
    minimum_visits_for_richness,
  } = settings.coverage;
  const group = escapeHtml(settings.group.many);
  return [
    "A visit is one place (a site named by the scheme, a 1 km square, or the record’s own square where it is coarser), one day, one recorder or party, however names are spelt and in whatever order a party is named. A record whose date spans days makes no visit.",
    withoutRecorder(counts),
    `The length of a visit’s list is the fewest ${group} that explain its names, in classes of one, two or three, and four or more. A list of one is often no list; only those declared complete tell what was not found.`,
    `A square is covered for a species in a period when at least ${least === 1 ? "one visit" : `${least} visits`} there recorded other ${group}. The species’ own records, and those of groups that may hold it, do not count towards it, so that a species cannot make its own gain or loss; nor does a visit that reports only what was not found, or a record of a provisional year or of what is not established there. Beside that rule everything is told under a stricter one of ${more} visits.`,
    "A square that nobody covered is hatched. A blank square was covered and the species not reported there, which is not proof of absence.",
    `<p>How many ${group} a square’s visits can be expected to find is estimated from those named on one visit (<i>Q</i><sub>1</sub>) and on two (<i>Q</i><sub>2</sub>) of <i>m</i>; observed over expected is its completeness.</p><p class="formula">expected = observed + ((<i>m</i> − 1)/<i>m</i>) <i>Q</i><sub>1</sub>² / (2 <i>Q</i><sub>2</sub>)</p><p class="formula">where <i>Q</i><sub>2</sub> = 0: expected = observed + ((<i>m</i> − 1)/<i>m</i>) <i>Q</i><sub>1</sub> (<i>Q</i><sub>1</sub> − 1) / 2</p>`,
    `It is a lower bound, with a log-normal 95 % interval, and speaks from ${minimum_visits_for_richness} visits. What was named once drives it, and so does a misidentification: it is given with and without species that rest on a single record. Source: A. Chao (1987), <i>Biometrics</i> 43: 783–791; small-sample form R. K. Colwell and others (2012), <i>Journal of Plant Ecology</i> 5: 3–21; sample coverage A. Chao and L. Jost (2012), <i>Ecology</i> 93: 2533–2547.`,
    "Our reading: samples are visits of everyday recording and mass events; surveys for one species, museum and literature lots, and records shown coarser are left out. A group is not counted where a member of it was recorded.",
  ];
}

function withoutRecorder({ visits, visits_without_recorder: nameless }: VisitCounts): string {
  if (visits === 0) return "";
  if (nameless === 0) return "Every visit names a recorder.";
  const share = nameless / visits < 0.005 ? "less than 1 %" : percent(nameless / visits);
  return `${number(nameless)} of ${number(visits)} visits (${share}) name nobody: there place and day alone make the visit, which may join several people’s lists.`;
}
