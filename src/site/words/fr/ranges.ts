import type { WordsOf } from "../catalogue.ts";
import type en from "../en/ranges.ts";

export default {
  "ranges.title": "Aire de répartition",
  "ranges.method":
    "Zone d’occupation : 4 km² par carré de 2 km avec une donnée. Zone d’occurrence : le plus petit polygone convexe autour de ces carrés, et autour des carrés de 10 km où aucune donnée n’atteint 2 km.",
  "ranges.none": "Aucune donnée établie {where}.",
  "ranges.no-area": "Sa zone d’occupation **n’est pas donnée** {where} : {reason}.",
  "ranges.within": "Ses données tiennent dans une zone d’occurrence de **{extent}**.",
  "ranges.recorded":
    "Notée dans **{n, plural, one {# carré} other {# carrés}} de 2 km** {where}, une zone d’occupation d’au moins **{area}**.",
  "ranges.recorded-within":
    "Notée dans **{n, plural, one {# carré} other {# carrés}} de 2 km** {where}, une zone d’occupation d’au moins **{area}**, dans une zone d’occurrence de **{extent}**.",
  "ranges.below": "au-dessous de {area}",
  "ranges.coarser":
    "{n, plural, one {# donnée volontairement montrée moins précise ne remplit} other {# données volontairement montrées moins précises ne remplissent}} aucun carré de 2 km",
  "ranges.not-established":
    "{n, plural, one {# donnée d’animaux non établis laissée} other {# données d’animaux non établis laissées}} de côté",
  "ranges.raised": "le polygone est plus petit que la zone d’occupation, et lui est rendu égal",
  "ranges.no-assessment":
    "<b>Ceci n’est pas une évaluation pour la Liste rouge.</b> Un seuil du critère B ne compte qu’avec deux de trois autres conditions (peu de localités, déclin continu, fluctuations extrêmes) et, dans un seul pays, selon les lignes directrices régionales. Des chiffres tirés de données sont des minimums : personne n’a cherché partout.",
  "ranges.grids":
    "Carrés de : {grids}{several, select, yes { (additionnés)} other {}}. L’ensemble des territoires ne forme une unité d’évaluation que si l’unité les comprend tous.",
  "ranges.all-dates": "Toutes dates",
  "ranges.of-all-dates": "toutes dates",
  "ranges.others": "Aire de répartition : {periods}",
  "ranges.note":
    "Au-dessous de : le plus petit seuil du critère B auquel le chiffre est strictement inférieur, pour la zone d’occupation (B2 : 10, 500, 2 000 km²) et pour la zone d’occurrence (B1 : 100, 5 000, 20 000 km²) ; aucun si rien n’est indiqué. Territoires et périodes peuvent partager des carrés et ne s’additionnent pas. Davantage de données suffit à faire croître les deux chiffres : {records, number} données établies de toutes dates sont à leur base.",
  "ranges.records-in": "Données de",
  "ranges.occupancy": "Zone d’occupation",
  "ranges.occupancy-squares": "carrés de 2 km, 4 km² chacun",
  "ranges.extent": "Zone d’occurrence",
  "ranges.without-tetrad": "Carrés de 10 km sans donnée à 2 km",
  "ranges.squares": "{n, plural, one {# carré} other {# carrés}}",
  "ranges.not-given": "non donnée : {reason}",
  "ranges.part-of": "{part, number} sur {all, number}",
  "ranges.regions": "Régions",
  "ranges.regions-method":
    "Une donnée compte pour la région qu’elle indique, sinon pour celle où se trouve son carré le plus fin.",
  "ranges.regions-sentence":
    "Notée dans **{found, number}** {found, plural, one {région} other {régions}} sur {all, number}.",
  "ranges.regions-none":
    "{n, plural, one {# donnée n’est d’aucune région unique} other {# données ne sont d’aucune région unique}}.",
  "ranges.regions-note":
    "Ne pas avoir été notée dans une région n’est pas une absence. Les carrés ne s’additionnent pas : un carré peut compter dans deux régions.",
  "ranges.regions-summary": "{layer} où elle a été notée, avec la première et la dernière année",
  "ranges.regions-caption": "Données de toutes dates",
  "ranges.region": "Région",
  "ranges.first": "Première",
  "ranges.last": "Dernière",
  "ranges.hectads": "Carrés de 10 km",
  "ranges.tetrads": "Carrés de 2 km",
  "ranges.records": "Données",
  "ranges.not-assigned": "Non attribuées",
  "ranges.not-assigned-why": "(en limite, ou dans aucune)",
  "ranges.first-years": "Premières années",
  "ranges.first-years-method":
    "Un taxon sans carré à la première période n’a pas d’évolution à montrer, seulement l’année où il fut d’abord noté en chaque lieu.",
  "ranges.first-years-none": "Aucun de ses carrés n’a d’année.",
  "ranges.first-years-one": "D’abord notée en **{first}**, dans {n, plural, =1 {un carré} other {{words} carrés}}.",
  "ranges.first-years-more":
    "D’abord notée en **{first}**, dans {n, plural, =1 {un carré} other {{words} carrés}} ; en {last}, dans **{all}**.",
  "ranges.first-years-class": "{n, plural, one {# carré noté} other {# carrés notés}} d’abord en {years}",
  "ranges.first-years-description":
    "{classes} ; {n, plural, one {# carré couvert} other {# carrés couverts}} à aucune des deux périodes.",
  "ranges.first-recorded": "D’abord notée : {years}",
  "ranges.covered-in-neither": "Couvert à aucune des deux périodes",
  "ranges.nobody-can-say": "personne ne peut le dire",
  "ranges.first-years-map": "En quelle année l’espèce ({name}) fut-elle d’abord notée dans chaque carré de 10 km ?",
  "ranges.first-years-caption":
    "Plus le carré est grand, plus la première donnée est ancienne. Blanc : couvert à l’une des périodes, sans y avoir été notée. Hachuré : couvert à aucune des deux périodes.",
  "ranges.first-years-undated":
    "{n, plural, one {# sans année n’est pas dessiné} other {# sans année ne sont pas dessinés}}.",
  "ranges.first-years-late": "Une première donnée peut venir longtemps après la première arrivée.",
  "ranges.new-squares": "Nouveaux carrés par année",
  "ranges.new-squares-caption":
    "Carrés de 10 km par année de leur première donnée ; les années sans nouveau carré sont omises",
  "ranges.new": "Nouveaux",
  "ranges.all-so-far": "Total à ce jour",
} satisfies WordsOf<typeof en>;
