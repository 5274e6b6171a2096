import type { WordsOf } from "../catalogue.ts";
import type en from "../en/entry-sheet.ts";

export default {
  "entry-sheet.records": "données",
  "entry-sheet.columns": "colonnes",
  "entry-sheet.names": "noms",
  "entry-sheet.about": "à propos",
  "entry-sheet.column": "Colonne",
  "entry-sheet.holds": "Ce qu’elle contient",
  "entry-sheet.needed": "Nécessaire",
  "entry-sheet.yes": "oui",
  "entry-sheet.name-to-write": "Nom à écrire",
  "entry-sheet.name-called": "Appelé aussi",
  "entry-sheet.other-name": "Ce nom n’est pas dans la liste de cet atlas. Gardez-le s’il est juste.",
  "entry-sheet.other-value": "Choisissez dans la liste.",
  "entry-sheet.whole": "Écrivez un nombre entier, ou laissez vide.",
  "entry-sheet.title": "{title} : feuille de saisie",
  "entry-sheet.invented":
    "{title} est une démonstration : son réseau, ses personnes et ses données sont inventés. Personne ne lit ce qui est envoyé.",
  "entry-sheet.fill":
    "Une ligne est une donnée. Remplissez la feuille « {records} » ; gardez sa première ligne telle quelle. La feuille « {columns} » dit ce que contient chaque colonne, la feuille « {names} » donne les noms.",
  "entry-sheet.send": "À envoyer à {address}.",
  "entry-sheet.edition": "Édition {edition}.",
  "entry-sheet.scientificName": "Ce que c’était : un nom de la liste. Si l’espèce n’est pas sûre, le groupe.",
  "entry-sheet.eventDate":
    "Le jour, ainsi : 2025-05-14. Si seul le mois ou l’année est connu, laissez vide et remplissez les deux colonnes suivantes.",
  "entry-sheet.year": "Seulement si le jour n’est pas connu : l’année, ainsi : 2025.",
  "entry-sheet.month": "Seulement si le jour n’est pas connu : le mois, de 1 à 12.",
  "entry-sheet.gridReference":
    "Référence de carroyage, aussi précise que vous le savez et pas plus : {example}, ou un carré de 2 km avec sa lettre.",
  "entry-sheet.decimalLatitude": "À la place d’une référence : latitude en degrés, positive au nord.",
  "entry-sheet.decimalLongitude": "Longitude en degrés, négative à l’ouest.",
  "entry-sheet.geodeticDatum":
    "Avec latitude et longitude : WGS84, comme les donnent les téléphones et les cartes du web.",
  "entry-sheet.coordinateUncertaintyInMeters": "De combien le lieu peut être faux, en mètres.",
  "entry-sheet.locality": "Le lieu tel que vous le diriez à quelqu’un. Pas d’adresse privée.",
  "entry-sheet.caste":
    "Ce qui a été vu : {castes}. Plusieurs, avec leur nombre : {example}. Vide si vous n’avez pas pu le dire.",
  "entry-sheet.individualCount": "Combien en tout, un nombre entier. Vide si vous n’avez pas compté.",
  "entry-sheet.recordedBy": "Qui l’a vu. Pas de noms d’enfants : l’école ou le groupe.",
  "entry-sheet.identifiedBy": "Qui l’a nommé, si c’est quelqu’un d’autre.",
  "entry-sheet.evidence": "Sur quoi repose le nom : sight (vue), photograph (photographie) ou specimen (spécimen).",
  "entry-sheet.partSeen": "La partie du corps qui a été vue et qui décide.",
  "entry-sheet.habitat": "Où c’était : jardin, bois, prairie…",
  "entry-sheet.occurrenceRemarks": "Tout ce qui peut aider, par exemple le nom d’une photographie.",
} satisfies WordsOf<typeof en>;
