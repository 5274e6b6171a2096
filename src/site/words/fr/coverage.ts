import type { WordsOf } from "../catalogue.ts";
import type en from "../en/coverage.ts";

export default {
  "coverage.title": "Couverture",
  "coverage.description": "Combien de fois chaque carré de 10 km fut visité pour les {group}.",
  "coverage.lead":
    "Un blanc sur la carte d’une espèce veut dire que d’autres y ont été notées et elle non. Cette page montre où on peut le dire.",
  "coverage.visits": "Visites",
  "coverage.covered-from": "couvert à partir de {words}",
  "coverage.not-enough": "pas assez pour conclure",
  "coverage.no-visit": "Aucune visite",
  "coverage.few-visits": "1–2 visites",
  "coverage.some-visits": "3–9 visites",
  "coverage.many-visits": "10 visites ou plus",
  "coverage.map-description":
    "{many, number} carrés avec dix visites ou plus, {some, number} avec trois à neuf, {few, number} avec une ou deux, {none, number} sans visite.",
  "coverage.visits-sentence":
    "<b>{many, number}</b> {listed, select, yes {carrés terrestres} other {carrés avec une donnée}} sur {all, number} ont eu dix visites ou plus {when} ; <b>{none, number}</b> n’en ont eu aucune.",
  "coverage.map-title": "Visites dans chaque carré de 10 km, {period}",
  "coverage.map-caption": "Plus le carré est grand, plus il y eut de visites {when}. Hachuré : aucune.",
  "coverage.covered":
    "<b>Couvert pour une espèce</b> : {n, plural, =1 {une visite qui a noté} other {{words} visites ou plus qui ont noté}} <b>d’autres</b> {group}, pour qu’une espèce ne puisse faire {comparing, select, yes {son propre gain ni sa propre perte} other {son propre blanc}}. <a>Comment on compte</a>",
  "coverage.two-rules": "Selon deux règles",
  "coverage.two-rules-both":
    "L’évolution peut être jugée dans <b>{both, number}</b> {listed, select, yes {carrés terrestres} other {carrés avec une donnée}} sur {all, number}{share, select, none {} other { ({share})}}, et dans <b>{stricter, number}</b> selon la règle plus stricte.",
  "coverage.two-rules-one":
    "<b>{covered, number}</b> {listed, select, yes {carrés terrestres} other {carrés avec une donnée}} sur {all, number} sont couverts, et <b>{stricter, number}</b> selon la règle plus stricte.",
  "coverage.own-records":
    "Pour une espèce notée dans un carré, ses propres données ne comptent pas : un peu moins est donc couvert pour elle.",
  "coverage.rules-caption":
    "{listed, select, yes {Carrés terrestres} other {Carrés avec une donnée}} de 10 km avec au moins {rules} visites qui ont mentionné l’un des {group}, dans les données qui comptent pour l’évolution.",
  "coverage.rules-or": "{one} ou {other}",
  "coverage.territory": "Territoire",
  "coverage.squares": "Carrés",
  "coverage.both": "Les deux",
  "coverage.gap":
    "Un carré non couvert est une lacune de ce que l’on sait. Il ne dit rien des {group} qui s’y trouvent.",
  "coverage.complete": "Des listes complètes ?",
  "coverage.complete-sentence":
    "Sur {judged, number} carrés avec assez de visites {when}, <b>{fullest, number}</b> ont neuf dixièmes ou plus des {group} que de telles visites peuvent faire attendre.",
  "coverage.complete-note":
    "L’attendu est une borne inférieure, tirée de ce qui fut mentionné à une visite et à deux. <a>Comment on l’estime</a>",
  "coverage.complete-caption":
    "{listed, select, yes {Carrés terrestres} other {Carrés avec une donnée}} de 10 km selon la part que les {group} mentionnés aux visites représentent de ceux que l’on y attend.",
  "coverage.found-of-expected": "Trouvés parmi les attendus",
  "coverage.all-dates": "Toutes dates",
  "coverage.under-half": "Moins de la moitié",
  "coverage.half": "De la moitié aux trois quarts",
  "coverage.three-quarters": "Des trois quarts aux neuf dixièmes",
  "coverage.nine-tenths": "Neuf dixièmes ou plus",
  "coverage.not-judged": "Non jugés : moins de {words} visites",
  "coverage.unsampled": "Aucune visite qui le dise",
  "coverage.land-squares": "Carrés terrestres",
  "coverage.single-records":
    "<b>Données uniques</b> : sans les espèces qui tiennent à une seule donnée dans le carré, neuf dixièmes ou plus sont trouvés dans {numbers} carrés. Un blanc n’est pas une absence, même dans une liste complète.",
  "coverage.number-when": "{n, number} ({when})",
  "coverage.all-dates-small": "toutes dates",
  "coverage.lists": "Longueur des listes",
  "coverage.lists-sentence": "<b>{one, number}</b> visites sur {all, number} {when} n’ont mentionné qu’une espèce.",
  "coverage.lists-caption":
    "Visites selon le nombre de {group} de leur liste. Les visites qui n’ont rien trouvé, et celles des données montrées moins précises, ne comptent que dans la dernière ligne.",
  "coverage.list-of": "Liste de",
  "coverage.one": "Une",
  "coverage.two-or-three": "Deux ou trois",
  "coverage.four-or-more": "Quatre ou plus",
  "coverage.declared": "De toute longueur, déclarée complète",
  "coverage.lists-note":
    "Une liste d’une espèce est rarement une liste entière : que d’autres n’y soient pas ne dit rien d’elles. Les effectifs de chaque carré sont dans <a>les téléchargements</a>.",
} satisfies WordsOf<typeof en>;
