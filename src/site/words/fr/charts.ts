import type { WordsOf } from "../catalogue.ts";
import type en from "../en/charts.ts";

export default {
  "charts.records": "{n, plural, one {# donnée} other {# données}}",
  "charts.records-vague": "{n, plural, one {# donnée} other {# données}}, et {vague, number} de plus sans date précise",
  "charts.caste-season":
    "{label} : {n, plural, one {# donnée} other {# données}} ; huit sur dix des {from} aux {to}, la moitié avant la fin des {half}.",
  "charts.too-few": "Trop peu pour un dessin : {list}.",
  "charts.too-few-caste": "{label}, {n, plural, one {# donnée} other {# données}}",
  "charts.season-of": "{name} : {season}",
  "charts.no-season": "{name} : trop peu de données datées pour une saison",
  "charts.years":
    "Données par année, {first} à {last} ; le plus grand nombre en {fullest}, {n, plural, one {# donnée} other {# données}}.",
  "charts.period": "{label} : {n, plural, one {# donnée} other {# données}}",
  "charts.period-unused":
    "{label} : {n, plural, one {# donnée} other {# données}}, qui ne servent pas à juger l’évolution",
} satisfies WordsOf<typeof en>;
