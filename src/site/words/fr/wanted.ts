import type { WordsOf } from "../catalogue.ts";
import type en from "../en/wanted.ts";

export default {
  "wanted.title": "Carrés à visiter",
  "wanted.about": "Les carrés de 10 km où de nouvelles visites apporteraient le plus ({many}).",
  "wanted.lead":
    "Où {visits, plural, one {une visite de plus ajouterait} other {{words} visites de plus ajouteraient}} le plus d’espèces à la liste actuelle d’un carré, et quand y aller.",
  "wanted.nothing":
    "Aucun carré ne peut encore être classé : il faut {least} carrés couverts autour d’un carré pour dire ce qu’on peut y trouver.",
  "wanted.first":
    "**{square}** vient en tête : {visits, plural, one {une visite pourrait} other {{words} visites pourraient}} ajouter environ **{gain} espèces**, de préférence les {third}.",
  "wanted.first-ever":
    "**{square}** vient en tête : {visits, plural, one {une visite pourrait} other {{words} visites pourraient}} ajouter environ **{gain} espèces**.",
  "wanted.basis":
    "Pour chaque espèce, la chance d’être là, d’après les carrés couverts à moins de {km} km, multipliée par la chance {visits, plural, one {qu’une visite la note} other {qu’une de {words} visites la note}}. <a>La méthode<u> des carrés à visiter</u></a>",
  "wanted.blank":
    "<b>Un blanc n’est pas une absence.</b> Un carré bas dans cette liste peut avoir tout autant besoin de vous : elle connaît des listes d’espèces, non des habitats, et n’atteint pas les carrés presque sans visites alentour.",
  "wanted.caution":
    "<b>Avant de partir.</b> Un carré, c’est 100 km² de terres d’autrui : demandez avant de quitter les chemins et respectez le droit local. Pas seul près de l’eau, sur les falaises ou en montagne ; dites à quelqu’un où vous êtes. Laissez les nids fermés et les fleurs sur pied ; ne creusez, ne drainez et ne coupez jamais pour trouver un animal.",
  "wanted.by-licence":
    "<b>Certains lieux et certaines espèces sont protégés.</b> Un relevé peut exiger une autorisation ou une personne habilitée ; les gestionnaires du lieu le savent.",
  "wanted.map": "Où",
  "wanted.map-title": "Espèces que de nouvelles visites pourraient ajouter à chaque carré de 10 km",
  "wanted.map-caption": "Plus le carré est grand, plus il pourrait gagner d’espèces. Hachuré : on ne peut rien dire.",
  "wanted.map-none": "On ne peut rien dire",
  "wanted.map-under": "moins de {most}",
  "wanted.map-from": "{least} ou plus",
  "wanted.map-span": "de {least} à {most}",
  "wanted.map-said": "{list}.",
  "wanted.map-class": "{words} : {n, plural, one {# carré} other {# carrés}}",
  "wanted.list": "Les {n} premiers",
  "wanted.caption":
    "Classés par ce que {visits, plural, one {une visite pourrait} other {{words} visites pourraient}} ajouter. Trouvailles probables : celles qui y comptent le plus.",
  "wanted.rank": "Rang",
  "wanted.square": "Carré",
  "wanted.region": "Région",
  "wanted.visits": "Visites {when}",
  "wanted.go": "Quand y aller",
  "wanted.gain": "Gain possible",
  "wanted.likely": "Trouvailles probables",
  "wanted.any-time": "toute saison",
  "wanted.more": "{from, number} à {to, number}",
  "wanted.by-region": "Par région",
  "wanted.by-territory": "Par partie de l’atlas",
  "wanted.choose":
    "Choisissez-en une : ses {n} premiers carrés sont ci-dessous. Un carré de limite compte dans chacune.",
  "wanted.none-here": "Aucun carré ne peut encore être classé ici.",
  "wanted.of-region": "{name}",
} satisfies WordsOf<typeof en>;
