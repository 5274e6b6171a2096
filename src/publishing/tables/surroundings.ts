/** Habitats, flowers and the like, used against available. */
import { number, type PublishedTable, TAXON, TAXON_KEY, text, whole, yes } from "./fields.ts";

export const SURROUNDINGS_TABLES: readonly PublishedTable[] = [
  {
    name: "surroundings_use",
    title: "Habitats, flowers, nest sites and hosts",
    description:
      "How often each term was stated with a taxon, against how often in all: the ratio is that of visited places and looked-at flowers, never of preference. Habitats are counted by visits, the rest by taxa on visits; only everyday recording that states a term counts. Terms are not additive: a visit can state several.",
    fields: [
      TAXON,
      text("caste", "caste, sex or stage; all for every record of the taxon"),
      text("kind", "kind of surroundings, as the scheme tells them apart"),
      text("term", "term of that kind"),
      whole("n_taxon_term", "visits (taxa on visits) with the taxon that state the term"),
      whole("n_term", "visits (taxa on visits) of any taxon that state the term"),
      whole("n_taxon", "visits (taxa on visits) with the taxon that state any term of the kind"),
      whole("n_all", "visits (taxa on visits) that state any term of the kind"),
      number("ratio", "(n_taxon_term / n_taxon) / (n_term / n_all); empty where not given"),
      number("ratio_low", "lower end of its 95 % interval, between 10 km squares"),
      number("ratio_high", "upper end"),
      yes("judged", "whether enough was stated for the ratio to be given"),
      text("reason", "why it is not"),
    ],
    needs: "surroundings",
    primaryKey: ["taxon_id", "caste", "kind", "term"],
    foreignKeys: [TAXON_KEY],
    query:
      "SELECT taxon_id, caste, kind, term, n_taxon_term, n_term, n_taxon, n_all, round(ratio, 4) AS ratio, round(low, 4) AS ratio_low, round(high, 4) AS ratio_high, judged, reason FROM surroundings_use",
  },
];
