import type { WordsOf } from "../catalogue.ts";
import type en from "../en/offline.ts";

export default {
  "offline.newer": "Une édition plus récente de cet atlas a été publiée. Rechargez la page pour la voir.",
  "offline.title": "Sans réseau",
  "offline.lead":
    "Cette page n’est pas encore sur votre appareil. Celles que vous avez ouvertes, et celles du terrain, s’ouvrent sans réseau.",
  "offline.kept": "Conservé dès votre première visite",
  "offline.kept-text":
    "L’accueil, la détermination pas à pas, les comparaisons, l’entraînement, la recherche, toutes les fiches d’un atlas de 300 espèces au plus, et chaque page que vous avez ouverte, jusqu’à 400. Les cartes qui s’agrandissent et les tableaux à télécharger demandent le réseau.",
  "offline.visited": "Pages que vous avez ouvertes",
  "offline.none": "Aucune page pour l’instant.",
  "offline.where": "Elles se trouvent dans ce navigateur seulement. Rien sur vous ni sur votre position n’est envoyé.",
  "offline.clear": "Tout effacer de cet appareil",
  "offline.cleared": "C’est effacé. La prochaine page que vous ouvrirez sera de nouveau conservée.",
  "offline.keep": "Conserver ce carré et ses voisins sur cet appareil",
  "offline.keep-region": "Conserver les carrés de cette région sur cet appareil",
  "offline.keeping": "En cours…",
  "offline.keeps":
    "{kept, plural, one {# page est conservée} other {# pages sont conservées}} : avec leurs listes et leurs fiches de terrain, elles s’ouvrent sans réseau.",
  "offline.some": "{kept} pages sur {of} sont conservées ; les autres n’ont pas pu être chargées.",
  "offline.script": "La conservation de pages sur l’appareil demande des scripts.",
} satisfies WordsOf<typeof en>;
