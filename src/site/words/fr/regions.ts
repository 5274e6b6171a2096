import type { WordsOf } from "../catalogue.ts";
import type en from "../en/regions.ts";

export default {
  "regions.about": "Les espèces signalées dans chaque région ({many}), avec la première et la dernière année.",
  "regions.lead": "{n, plural, one {# région} other {# régions}}, chacune avec sa liste d’espèces.",
  "regions.each": "Chaque région",
  "regions.countries": "Pays",
  "regions.provinces": "Provinces",
  "regions.counties": "Comtés",
  "regions.vice-counties": "Vice-comtés",
  "regions.rule":
    "Une donnée compte pour la région qu’elle indique, sinon pour celle de son carré. Un carré de limite n’est dans aucune. <a>La méthode<u> des régions</u></a>",
  "regions.not-additive":
    "Carrés et espèces ne s’additionnent pas : deux données d’un même carré peuvent indiquer deux régions.",
  "regions.caption": "{name} : carrés de 10 km",
  "regions.caption-land": " ; intérieurs et partagés : ceux qui ont de la terre",
  "regions.region": "Région",
  "regions.species": "Espèces",
  "regions.records": "Données",
  "regions.squares": "Carrés avec données",
  "regions.inside": "Carrés intérieurs",
  "regions.shared": "Carrés partagés",
  "regions.first": "De",
  "regions.last": "À",
  "regions.hectads": "Carrés de 10 km",
  "regions.tetrads": "Carrés de 2 km",
  "regions.when": "Quand",
  "regions.about-one": "Les espèces signalées dans {name} ({many}), avec la première et la dernière année.",
  "regions.running":
    "<a>Région</a>{code, select, none {} other { {code}}}{territory, select, none {} other { · {territory}}}",
  "regions.nothing": "Aucune donnée n’est attribuée à cette région. Cela ne dit rien de ce qui y vit.",
  "regions.sentence":
    "{taxa, plural, =0 {Aucune espèce} =1 {Une espèce} other {{words} espèces}} en {records, plural, one {# donnée} other {# données}}{span, select, none {} other {, {span}}}.",
  "regions.assigned": "Chaque donnée est attribuée à une région.",
  "regions.not-assigned":
    "**{records, plural, one {# donnée} other {# données}}** {records, plural, one {n’est pas attribuée} other {ne sont pas attribuées}} : {parts}.",
  "regions.boundary": "{n, number} de carrés qui touchent plusieurs régions",
  "regions.outside": "{n, number} de carrés hors de toute région",
  "regions.no-square": "{n, number} qui n’occupent aucun carré",
  "regions.squares-lie":
    "{inside, number} dans cette seule région, {shared, plural, one {# partagé} other {# partagés}} avec une autre",
  "regions.fact-squares": "Carrés de ses données",
  "regions.fact-squares-said": "{hectads, plural, one {# carré} other {# carrés}} de 10 km, {tetrads, number} de 2 km",
  "regions.fact-land": "Carrés de 10 km avec de la terre",
  "regions.fact-stated": "Données qui l’indiquent",
  "regions.fact-stated-said": "{stated, number} sur {records, plural, one {# donnée} other {# données}}",
  "regions.recorded": "Signalées ici",
  "regions.recorded-note":
    "Une espèce absente de la liste n’a pas été signalée. Cela ne veut pas dire qu’elle n’y est pas.",
  "regions.boundary-note":
    "Un carré de limite n’est dans aucune région, sauf si sa donnée en indique une : {n, plural, one {# donnée de l’atlas n’est pas attribuée et peut manquer ici} other {# données de l’atlas ne sont pas attribuées et peuvent manquer ici}}. Les listes et les carrés des régions ne s’additionnent pas. <a>La méthode<u> des régions</u></a>",
  "regions.recorded-caption": "Par nombre de données. Une donnée d’une espèce compte aussi pour son groupe.",
  "regions.start": "Commencez par celles-ci",
  "regions.start-said":
    "{n, plural, one {Une espèce fait} other {{words} espèces font}} {share, select, none {la plupart} other {{share}}} des données d’ici : qui les connaît peut commencer.",
  "regions.start-note":
    "Les plus signalées de la région, sans les groupes. Trait : de janvier à décembre ; épais, la moitié centrale de ses données.",
  "regions.wanted": "Carrés à visiter",
  "regions.wanted-note":
    "Les {n} premiers qui touchent cette région. <a>Tous les carrés, et comment ils sont classés</a>",
  "regions.all": "Toutes les régions",
} satisfies WordsOf<typeof en>;
