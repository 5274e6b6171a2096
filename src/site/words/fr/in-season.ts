import type { WordsOf } from "../catalogue.ts";
import type en from "../en/in-season.ts";

export default {
  "in-season.title": "De saison",
  "in-season.heading": "De saison ici",
  "in-season.lead":
    "Ce qui a été noté chaque mois de l’année, toutes années et tous lieux de cet atlas confondus ; et ce qu’il y a à chercher là où vous êtes aujourd’hui.",
  "in-season.description":
    "Quelles espèces ({group}) sont de saison, mois par mois, et lesquelles ont été notées près de vous.",
  "in-season.most": "Saisons des plus notés",
  "in-season.now": "De saison, {third}",
  "in-season.now-here": "De saison ici : {square}, {third}",
  "in-season.species": "Espèce",
  "in-season.strip": "De janvier à décembre",
  "in-season.eight": "Huit données sur dix",
  "in-season.near": "Près d’ici",
  "in-season.note":
    "Trait épais : la moitié centrale des données ; trait fin : de la dixième à la quatre-vingt-dixième sur cent. Toutes années et tous lieux confondus.",
  "in-season.note-now":
    "Les plus probables d’abord : données de ce tiers du mois rapportées aux visites qui y ont été faites, toutes années et tous lieux confondus. Le trait de couleur marque aujourd’hui.",
  "in-season.note-here":
    "Les plus probables d’abord : part des visites à moins de {km} km qui l’ont noté depuis {year}, multipliée par sa saison. Le trait de couleur marque la date.",
  "in-season.note-here-all":
    "Les plus probables d’abord : part des visites à moins de {km} km qui l’ont noté, multipliée par sa saison. Le trait de couleur marque la date.",
  "in-season.choose": "Choisir un carré",
  "in-season.another": "Autre carré ou autre date",
  "in-season.place": "Où vous êtes",
  "in-season.place-hint": "Une référence de carroyage, comme {square}, ou une latitude et une longitude.",
  "in-season.when": "Quand",
  "in-season.show": "Afficher",
  "in-season.locate": "Utiliser la position de cet appareil",
  "in-season.forget": "Oublier ce lieu",
  "in-season.kept": "Le lieu reste sur cet appareil et n’est envoyé à personne.",
  "in-season.no-script":
    "Pour votre carré et la date du jour, cette page a besoin de scripts. Les douze mois ci-dessous s’en passent.",
  "in-season.not-a-place": "« {text} » n’est ni une référence ni une position que connaît cet atlas.",
  "in-season.no-square": "{square} n’a ni terre ni donnée dans cet atlas.",
  "in-season.outside": "Ce lieu se trouve hors des carrés de l’atlas.",
  "in-season.no-location": "L’appareil n’a pas donné de position. Tapez plutôt une référence de carroyage.",
  "in-season.failed": "Les données autour de ce carré ne sont pas arrivées. Vérifiez la connexion et réessayez.",
  "in-season.none": "Rien n’a été noté assez souvent dans ce tiers du mois pour être de saison.",
  "in-season.here-year": "noté dans ce carré de 10 km en {year}",
  "in-season.here": "noté dans ce carré de 10 km",
  "in-season.nearest": "carré le plus proche à {km} km",
  "in-season.none-near": "aucune donnée à moins de {km} km",
  "in-season.months": "Mois par mois",
  "in-season.most-in":
    "{visits, plural, =0 {Aucune visite n’a été faite ce mois-là.} one {D’après # visite.} other {D’après # visites.}}",
  "in-season.castes": "Surtout vus",
  "in-season.castes-of": "{castes}",
  "in-season.begins": "La saison commence",
  "in-season.ends": "La saison finit",
  "in-season.begins-note":
    "« Commence » et « finit » désignent les mois où tombent la dixième et la quatre-vingt-dixième de cent données datées. Les données disent aussi quand on a cherché : peu de relevés en hiver cachent l’activité hivernale.",
  "in-season.nothing": "Pas de saison : moins de {fewest} données datées pour chaque espèce.",
} satisfies WordsOf<typeof en>;
