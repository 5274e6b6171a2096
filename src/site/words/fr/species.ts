import type { WordsOf } from "../catalogue.ts";
import type en from "../en/species.ts";

export default {
  "species.title": "{vernacular}, {scientific}",
  "species.description": "Quand et où des données ont été faites : {name}.",
  "species.contents": "Sur cette page",
  "species.know": "La reconnaître",
  "species.alike": "Avec quoi on la confond",
  "species.alike-short": "Confusions",
  "species.when": "Quand",
  "species.where": "Où",
  "species.habitat": "Milieux",
  "species.change": "Évolution",
  "species.years": "Au fil des ans",
  "species.lists": "Ce que disent d’autres listes",
  "species.lists-short": "Autres listes",
  "species.use": "Citer, télécharger, corriger",

  "species.place": "{aggregate, select, true {Groupe} other {Espèce}} {n, number} sur {all, number}",
  "species.subgenus": "sous-genre <i>{name}</i>",
  "species.also": "Aussi notée sous <names></names>",
  "species.members": "Comprend toutes les données de <names></names>.",
  "species.in-season": "Saison",
  "species.recorded": "Données dans",
  "species.recorded-in": "Données {when} dans",
  "species.to-map": "Vers la carte : {n, plural, one {# carré} other {# carrés}}",
  "species.withheld": "Lieux non montrés",
  "species.no-square": "Aucun carré de 10 km",
  "species.squares": "{n, plural, one {{words} carré} other {{words} carrés}} de 10 km",
  "species.needs": "Une donnée demande",
  "species.first-last": "Première et dernière donnée",

  "species.bar": "<b>Une barre devant une couleur</b> marque ce qui diffère de la première colonne.",
  "species.millimetres": "{from, select, same {} other {{from}–}}{to} mm.",
  "species.notes": "Remarques sur {n, plural, one {# caractère} other {# caractères}}",
  "species.own-text": "Texte écrit pour cette démonstration : à vérifier dans un guide d’identification récent.",

  "species.taken-for":
    "{n, plural, one {Un animal est pris} other {{words} animaux sont pris}} pour elle{outside, plural, =0 {} =1 {, dont un d’un autre groupe} other {, dont {outsideWords} d’autres groupes}}.",
  "species.taken-for-outside":
    "{n, plural, one {Un animal d’un autre groupe peut être pris} other {{words} animaux d’autres groupes peuvent être pris}} pour elle.",
  "species.side-by-side": "Chaque nom ouvre les deux côte à côte. <a>Toutes à la fois</a>",
  "species.difference": "<a>{name}</a> : {difference}",
  "species.record-group": "<b>Pas assez bien vue ?</b> Notez <names></names>. {why}",
  "species.tell-members":
    "<b>Ce n’est l’une d’elles que si la partie décisive a été vue.</b> <a>{names}, côte à côte</a>.",

  "species.flight-caption": "{n, plural, one {# donnée datée} other {# données datées}}, par tiers de mois.",
  "species.flight-key":
    "{castes, select, true {Barres : les données de chaque caste, en part de son année, par tiers de mois.} other {Barres : les données, en part de l’année, par tiers de mois.}} Marches grises derrière : les visites ayant noté le groupe ({group}), à la même échelle. <b>Là où une barre dépasse la marche, elle a été notée plus souvent que les visites seules ne le feraient.</b> Barres ouvertes : moins de {fewest, number} visites.",
  "species.flight-vague":
    "{n, plural, one {# donnée a une date} other {# données ont une date}} trop vague pour un tiers de mois.",

  "species.large-map": "<a>La grande carte</a> : une région ou une période à la fois, avec ses nombres.",

  "species.change-uncorrected": "Ces nombres ne sont pas corrigés de l’effort d’observation.",
  "species.change-methods": "Ce que dit chaque méthode",
  "species.change-caption": "{from} à {to}, chaque méthode pour elle-même, avec son intervalle à 95 %",
  "species.change-key":
    "Page pleine : plus. Dos plein : moins. Ouvert : l’intervalle comprend l’absence d’évolution. Pointillé : non applicable. Une moitié est aussi loin de 0 qu’un doublement. Ceci n’est pas une évaluation de liste rouge.",
  "species.change-more": "<a>Tous les chiffres, avec leur intervalle</a> ; <b>les méthodes</b>",
  "species.change-more-first":
    "<a>Tous les chiffres, avec leur intervalle</a>, et <first>la carte des premières années</first> ; <b>les méthodes</b>",

  "species.visited": "Visité ne veut pas dire préféré : les observateurs choisissent où ils marchent.",
  "species.every-habitat": "Tous les milieux, avec leur intervalle",
  "species.every-figure": "Tous les chiffres, avec leur intervalle",

  "species.by-year": "Données par année",
  "species.years-key":
    "Barres : données par an. Marches derrière : visites ayant noté le groupe ({group}), à leur propre échelle.",
  "species.years-provisional": "Ouvertes : {years}, provisoires.",
  "species.years-before":
    "{n, plural, one {# donnée d’avant {year} n’est pas dessinée} other {# données d’avant {year} ne sont pas dessinées}}.",

  "species.listed":
    "{n, plural, one {Une liste la cite} other {{words} listes la citent}}. Ce qu’on y lit n’a pas été calculé ici, et aucun chiffre de cette page n’est une telle évaluation.",
  "species.list-for": "{category}, {jurisdiction}, {year}",
  "species.list-old":
    "<b>Plus de {n, plural, one {# an} other {# ans}}.</b> Beaucoup a pu changer depuis {years} : cherchez une liste plus récente avant de vous y fier.",

  "species.all-on-map": "Toutes les données utilisées figurent sur la carte à 10 km.",
  "species.off-map":
    "{n, plural, one {# donnée utilisée ne figure pas} other {# données utilisées ne figurent pas}} sur la carte à 10 km.",
  "species.off-map-why": "Pourquoi",
  "species.cited": "<i>{scientific}</i>, dans {citation}",
  "species.cited-invented": "<i>{scientific}</i>, dans {citation} Données inventées.",
  "species.tables": "Tableaux de ce taxon",
  "species.table": "Tableau",
  "species.format": "Format",
  "species.rows": "Lignes",
  "species.size": "Taille",
  "species.wrong": "Une erreur sur cette page ? <a>Dites-nous laquelle</a>.",
  "species.wrong-subject": "{name} : une erreur sur sa fiche",
} satisfies WordsOf<typeof en>;
