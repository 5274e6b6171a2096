import type { WordsOf } from "../catalogue.ts";
import type en from "../en/reasons.ts";

export default {
  "reason.comparable":
    "{n, plural, one {# carré comparable} other {# carrés comparables}}, il en faut {needed, number}",
  "reason.no-square": "aucun carré à l’une ni à l’autre période",
  "reason.newcomer": "nouvelle venue : aucun carré à la première période",
  "reason.no-comparable": "aucun carré comparable",
  "reason.not-earlier": "à la première période, notée dans aucun carré comparable",
  "reason.not-earlier-in-part": "aucun carré à la première période dans cette partie des données",
  "reason.no-hectad-in-both": "aucun carré de 10 km n’en a de données aux deux périodes",
  "reason.tetrad-share":
    "seulement {from, number} % et {to, number} % de ses données des deux périodes, dans les mêmes carrés de 10 km, sont précises à 2 km ; il en faut {needed, number} % à chacune",
  "reason.withheld": "ses lieux sont tenus secrets",
  "reason.some-withheld": "une partie de ses lieux est tenue secrète",
  "reason.shown-at": "ses données sont montrées à {level}",
  "reason.some-shown-at": "une partie de ses données est montrée à {level}",
  "reason.of-no-list":
    "ses données sont montrées moins précises qu’elles ne sont connues et n’appartiennent ici à aucune liste",
  "reason.lists-not-complete":
    "ses données sont montrées moins précises qu’elles ne sont connues, de sorte que ses listes ne sont pas complètes ici",
  "reason.own-members": "un groupe ne se compare pas à ses propres membres",
  "reason.group-too-small":
    "groupe trop petit : {n, plural, one {# taxon} other {# taxons}}, il en faut {needed, number}",
  "reason.group-too-small-earlier":
    "groupe trop petit : {n, plural, one {# taxon} other {# taxons}} avec {squares, number} carrés ou plus à la première période, il en faut {needed, number}",
  "reason.none-in-both": "aucun carré à la première période parmi ceux notés aux deux",
  "reason.few-earlier":
    "{n, plural, one {# carré} other {# carrés}} à la première période, il en faut {needed, number}",
  "reason.equally-common": "tous les taxons du groupe sont aussi communs les uns que les autres",
  "reason.few-benchmarks":
    "trop peu de taxons repères : {mean, number} par carré en moyenne, il en faut {needed, number}",
  "reason.few-at-equal-effort":
    "trop peu de taxons ont assez de carrés à effort égal : {n, number}, il en faut {needed, number}",
  "reason.squares-at-equal-effort":
    "{n, plural, one {# carré} other {# carrés}} à effort égal aux deux périodes ensemble, il en faut {needed, number}",
  "reason.none-at-equal-effort-earlier": "aucun carré à effort égal à la première période",
  "reason.none-at-equal-effort-later": "aucun carré à effort égal à la seconde période",
  "reason.in-every-square": "notée dans tous les carrés comparés",
  "reason.separated":
    "les carrés où elle fut trouvée à certaines visites et non à d’autres sont trop peu nombreux pour comparer",
  "reason.lists-alike": "ses listes diffèrent trop peu pour comparer",
  "reason.one-square": "ce que disent ses listes tient à un seul carré",
  "reason.no-lists": "aucune liste à comparer",
  "reason.no-complete-lists": "aucune liste déclarée complète pour {years}",
  "reason.few-complete-lists":
    "{n, plural, one {# liste complète} other {# listes complètes}} pour {years} là où elle fut un jour notée, il en faut {needed, number}",
  "reason.few-lists-name-it":
    "{n, plural, one {# liste complète la mentionne} other {# listes complètes la mentionnent}}, il en faut {needed, number}",
  "reason.few-squares-with-lists":
    "{n, plural, one {# carré} other {# carrés}} avec des listes complètes aux deux périodes, il en faut {needed, number}",
  "reason.no-list-names-it":
    "{n, plural, one {l’unique liste complète (#)} other {aucune des # listes complètes}} pour {years} ne la mentionne",
  "reason.years-until": "les années jusqu’en {year}",
  "reason.few-records":
    "{n, plural, one {# donnée datée} other {# données datées}} au jour près, il en faut {needed, number}",
  "reason.few-visits":
    "{n, plural, one {# visite datée} other {# visites datées}} au jour près, il en faut {needed, number}",
  "reason.little-visited":
    "{n, number} visites sur {all, number} tombent dans des tiers de mois où moins de {needed, number} visites ont noté quoi que ce soit du groupe",
  "reason.round-the-year": "notée de part et d’autre du jour où l’année commence (réglage season.year_starts)",
  "reason.few-years":
    "{n, plural, one {# année} other {# années}} avec {visits, number} visites ou plus, il en faut {needed, number}",
  "reason.without-latitude": "{n, number} visites sur {all, number} n’ont pas de carré de 10 km qui dise leur latitude",
  "reason.not-all-season":
    "même au cours des {years, number} dernières années, {percent, number} % de ses visites tombent dans des tiers de mois visités moins de {visits, number} fois certaines années",
  "reason.entangled":
    "la latitude, le territoire ou la caste ont changé au fil des années et ne peuvent en être séparés",
  "reason.no-end": "son intervalle n’a pas de borne",
  "reason.without-caste":
    "{n, number} visites sur {all, number} n’indiquent pas de caste, et les castes ne volent pas en même temps",
  "reason.seldom-with-it": "trop rarement indiqué avec elle : {n, number}, il en faut {needed, number}",
  "reason.seldom-in-all": "trop rarement indiqué en tout : {n, number}, il en faut {needed, number}",
  "reason.one-hectad": "tout fut indiqué dans un seul carré de 10 km",
  "reason.visits-of-square": "{n, plural, one {# visite} other {# visites}}, il en faut {needed, number}",
  "reason.not-established": "aucune donnée établie",
  "reason.tetrads-not-shown": "ses carrés de 2 km ne sont volontairement pas montrés",
  "reason.no-tetrad": "aucune donnée n’est assez précise pour remplir un carré de 2 km",
  "reason.no-hectad": "aucune donnée n’est assez précise pour remplir un carré de 10 km",
  "reason.too-far-apart": "ses carrés sont trop éloignés pour un seul polygone convexe",
  "reason.named-square": "a donné un carré de {size}",
  "reason.outside-grid": "hors du carroyage",
  "reason.too-imprecise": "trop imprécis : son cercle déborde sur d’autres carrés",
  "reason.place-withheld": "lieu tenu secret",
  "reason.coarsened": "montré à {level}",
  "reason.called-changed": "{percent, number} % d’espèces inchangées furent déclarées changées (cas : {how})",
  "reason.held-truth": "{percent, number} % de ses intervalles de confiance à 95 % contenaient la vérité (cas : {how})",
  "reason.how-nothing": "rien ne change",
  "reason.how-doubles": "l’effort double",
  "reason.how-doubles-and-moves": "l’effort double et se déplace, dans l’espace et la saison",
  "reason.how-north": "l’effort se déplace vers le nord et les hauteurs",
  "reason.how-earlier": "l’effort avance de deux semaines dans l’année",
  "reason.how-species": "les espèces évoluent, non l’effort",
  "reason.how-species-and-effort": "les espèces évoluent, l’effort double et se déplace",
  "reason.how-demonstration": "la démonstration, où aucune espèce n’évolue",
  "reason.truth-made": "Groupes inventés de {species, number} espèces, {seeds} ; Node {node}, DuckDB {engine}.",
  "reason.truth-made-demonstration":
    "Groupes inventés de {species, number} espèces, {seeds}, et la démonstration sans évolution des espèces, {more} ; Node {node}, DuckDB {engine}.",
  "reason.seed": "graine aléatoire {seed}",
  "reason.seeds": "graines aléatoires {from} à {to}",
  "reason.grid-british": "carroyage national britannique",
  "reason.grid-channel-islands": "carroyage des îles Anglo-Normandes",
  "reason.grid-irish": "carroyage irlandais",
  "reason.grid-laea": "carroyage européen de référence (ETRS89-LAEA)",
  "reason.grid-mgrs": "carroyage militaire MGRS (UTM)",
  "reason.not-stated": "non indiqué",
} satisfies WordsOf<typeof en>;
