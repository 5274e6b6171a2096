import type { WordsOf } from "../catalogue.ts";
import type en from "../en/large-map.ts";

export default {
  "large-map.title": "{name} : grande carte",
  "large-map.description":
    "Où des données ont été faites, par région et par période, avec le nombre de carrés : {name}.",
  "large-map.heading": "Grande carte",
  "large-map.back": "Retour à la fiche",
  "large-map.lead":
    "Une région ou l’ensemble, deux périodes comparées ou une seule. La page marche sans script et imprime ce qui est choisi.",
  "large-map.lead-periods":
    "Une région ou l’ensemble, une période ou toutes dates. La page marche sans script et imprime ce qui est choisi.",
  "large-map.where": "Région",
  "large-map.when": "Période",
  "large-map.compared": "{earlier} et {later} comparées",
  "large-map.all-dates": "Toutes dates",
  "large-map.whole": "Tout l’atlas",
  "large-map.part": "{part, select, north {{name}, nord} middle {{name}, milieu} other {{name}, sud}}",
  "large-map.compared-says":
    "{place} : sur {all, plural, one {# carré} other {# carrés}} de 10 km, trouvée aux deux périodes dans **{both, number}**, **nouvellement trouvée dans {new, number} et non retrouvée dans {gone, number}**. {apart, plural, =0 {} one {# autre carré a des données et ne peut pas être comparé.} other {# autres carrés ont des données et ne peuvent pas être comparés.}}",
  "large-map.period-says":
    "{place}, {time} : des données dans **{recorded, plural, =0 {aucun} other {#}}** de {all, plural, one {# carré} other {# carrés}} de 10 km. {blank, plural, one {# était couvert} other {# étaient couverts}} sans qu’elle y soit notée, {open, plural, one {# ne l’était pas} other {# ne l’étaient pas}}.",
  "large-map.unknown-says":
    "{place}, {time} : des données dans **{recorded, plural, =0 {aucun} other {#}}** de {all, plural, one {# carré} other {# carrés}} de 10 km.",
  "large-map.tetrads":
    "{n, plural, =0 {Aucune donnée n’y nomme un carré de 2 km.} one {Des données dans # carré de 2 km.} other {Des données dans # carrés de 2 km.}}",
  "large-map.key-hectad": "Signalée dans le carré de 10 km",
  "large-map.key-hectad-note": "gris : quelque part dedans",
  "large-map.key-tetrad": "Signalée dans le carré de 2 km",
  "large-map.key-tetrads": "Signalée",
  "large-map.scale": "{n, number} km",
  "large-map.caption": "Carrés de {grids}.",
  "large-map.withheld": "Les lieux des données ne sont pas montrés.",
  "large-map.table": "La carte en tableau",
  "large-map.table-caption":
    "Carrés de 10 km par région : des deux périodes comparées, de chaque période et de toutes dates.",
  "large-map.table-caption-periods": "Carrés de 10 km par région : de chaque période et de toutes dates.",
  "large-map.region": "Région",
  "large-map.both": "Trouvée aux deux périodes",
  "large-map.new": "Nouvellement trouvée",
  "large-map.gone": "Non retrouvée",
  "large-map.apart": "Non comparable",
  "large-map.codes": "Chaque carré par son nom",
  "large-map.codes-caption":
    "Carrés de 10 km ayant une donnée, par carré de 100 km. Le tableau des carrés, avec années et visites, est parmi les téléchargements de la fiche.",
  "large-map.block": "Carré de 100 km",
  "large-map.recorded": "Signalée",
  "large-map.off-map": "Données qui ne sont pas sur les cartes",
  "large-map.off-map-says":
    "Données utilisées qui ne figurent sur aucune carte de cette taille, par raison. Elles comptent dans la saison, les années et les totaux.",
  "large-map.reason": "Raison",
  "large-map.size": "Carrés",
  "large-map.records": "Données",
  "large-map.kilometres": "{n, number} km",
  "large-map.zoom": "Pour un carré à la fois, <a>la carte à zoom</a> ; elle demande des scripts.",
} satisfies WordsOf<typeof en>;
