import type { WordsOf } from "../catalogue.ts";
import type en from "../en/expected.ts";

export default {
  "expected.title": "Attendues, non trouvées {when}",
  "expected.title-region": "Attendues, non signalées {when}",
  "expected.one-likely":
    "{n, plural, one {**Une espèce de plus** a} other {**{words} espèces de plus** ont}} au moins 1 chance sur 2 d’être ici ; d’abord : **{name}**.",
  "expected.none-likely": "Aucune autre espèce n’est plus probable ici qu’improbable. La plus proche : **{name}**.",
  "expected.nothing":
    "Rien ne peut être attendu ici : il faut de la terre dans cinq carrés de 2 km au moins, {least} carrés couverts alentour, et une de leurs espèces qui n’ait pas été trouvée ici.",
  "expected.nothing-region": "Rien n’est attendu dans cette région au-delà de ce qui a été signalé {when}.",
  "expected.basis":
    "D’après les carrés couverts à moins de {km} km, les plus proches comptant davantage, et d’après les visites d’ici qui ne l’ont pas trouvée. C’est une chance, non une donnée : personne ne l’a signalée ici {when}. Les habitats n’y entrent pas. <a>La méthode<u> de ce qui est attendu</u></a>",
  "expected.caption":
    "Non signalées {when}, les plus probables d’abord. Parmi les carrés couverts alentour, combien l’ont.",
  "expected.caption-region": "Non signalées dans la région {when}, chacune dans le carré où elle est la plus probable.",
  "expected.species": "Espèce",
  "expected.when": "Quand chercher",
  "expected.around": "Carrés voisins qui l’ont",
  "expected.of": "{with, number} sur {near, number}",
  "expected.chance": "Chance ici",
  "expected.odds": "environ {n} sur 10",
  "expected.odds-high": "plus de 9 sur 10",
  "expected.likeliest": "Surtout dans",
  "expected.last": "dernière en {year}",
  "expected.visits": "{n, plural, one {manquée lors de # visite} other {manquée lors de # visites}}",
  "expected.few-dates": "trop peu de dates",
  "expected.more":
    "{n, plural, one {Une autre a} other {# autres ont}} une chance plus faible : <a>le tableau complet</a>.",
} satisfies WordsOf<typeof en>;
