import type { WordsOf } from "../catalogue.ts";
import type en from "../en/downloads.ts";

export default {
  "downloads.title": "Télécharge\u00adments",
  "downloads.description":
    "Les tableaux de l’édition {edition}, avec la description des champs et des exemples de code.",
  "downloads.lead": "Chaque chiffre de ce site est tiré de ces tableaux. Édition {edition}, {date}.",
  "downloads.tables": "Tableaux",
  "downloads.how-many":
    "{tables, plural, one {# tableau} other {# tableaux}} en {files, plural, one {# fichier} other {# fichiers}}, {size}.",
  "downloads.invented":
    "Données inventées : chaque ligne porte <code>invented</code> = true, et les identifiants commencent par <code>invented-</code>.",
  "downloads.licence": "Licence : {licence}.",
  "downloads.licence-link": "Licence : <a>{licence}</a>.",
  "downloads.table": "Tableau",
  "downloads.files": "Fichiers",
  "downloads.rows": "Lignes",
  "downloads.fields": "Champs et sommes de contrôle",
  "downloads.checksum": "Somme de contrôle",
  "downloads.in-folder": "{n, plural, one {# fichier} other {# fichiers}} dans {folder}/",
  "downloads.file": "Fichier",
  "downloads.format": "Format",
  "downloads.size": "Taille",
  "downloads.text": "texte",
  "downloads.records": "Ce qu’est devenue chaque donnée",
  "downloads.records-sentence":
    "Sur {read, plural, one {# donnée} other {# données}}, <b>{used, number}</b> sont utilisées, {held, number} en attente et {unused, number} non utilisées.",
  "downloads.records-caption": "Toutes les sources. La somme des lignes est le nombre de données lues.",
  "downloads.status": "Statut",
  "downloads.reason": "Raison",
  "downloads.number": "Données",
  "downloads.status-used": "Utilisées",
  "downloads.status-held": "En attente",
  "downloads.status-not-used": "Non utilisées",
  "downloads.by-source": "Par source",
  "downloads.source": "Source",
  "downloads.terms": "Licence",
  "downloads.read": "Lues",
  "downloads.used": "Utilisées",
  "downloads.kind-field": "terrain",
  "downloads.kind-photograph": "photographie",
  "downloads.kind-specimen": "spécimen",
  "downloads.kind-literature": "bibliographie",
  "downloads.kind-card": "fiche",
  "downloads.recipes": "Exemples de code",
  "downloads.recipes-sentence": "Le carré <b>NA</b> est un lieu, non une valeur manquante.",
  "downloads.recipes-note":
    "Les deux programmes lisent <code>NA</code> comme « manquant » si on ne leur dit pas le contraire. Ces lignes le leur disent.",
  "downloads.cite": "Comment citer",
  "downloads.cite-invented": "{citation} Données inventées.",
  "downloads.cite-note":
    "Nommez l’édition : les chiffres changent de l’une à l’autre. Dites quels tableaux vous avez utilisés et ce que vous en avez fait.",
  "downloads.no-page": "Page introuvable",
  "downloads.no-page-description": "Il n’y a pas de page à cette adresse.",
  "downloads.no-page-lead": "Il n’y a rien à cette adresse. Un carré sans terre ni donnée n’a pas de page.",
  "downloads.every-species": "Toutes les espèces",
  "downloads.every-square": "Tous les carrés",
} satisfies WordsOf<typeof en>;
