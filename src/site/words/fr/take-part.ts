import type { WordsOf } from "../catalogue.ts";
import type en from "../en/take-part.ts";

export default {
  "take-part.title": "Participer",
  "take-part.lead":
    "Quoi, où, quand, et qui l’a vu : quatre faits font une donnée. Une espèce commune, bien notée, vaut autant qu’une rareté.",
  "take-part.description": "Quoi chercher ce mois-ci, comment le photographier, quoi noter, et où l’envoyer.",
  "take-part.start": "Commencer par ceux-ci",
  "take-part.start-say":
    "Quelques-uns pour chaque mois, qu’un débutant peut déterminer à vue ou avec une seule photographie.",
  "take-part.start-basis":
    "Choisis d’après les données de cet atlas : souvent notés, de saison, et avec un caractère qui décide du nom à vue ou sur photographie. Aucun dont la donnée demande un spécimen ; aucun dont le lieu est tenu secret.",
  "take-part.start-title": "Commencer par ceux-ci : {place}",
  "take-part.start-description":
    "Espèces par lesquelles commencer, {place}, mois par mois, chacune avec le caractère qui la détermine.",
  "take-part.start-lead": "Mois par mois, ce qu’il faut chercher d’abord ({place}), et le caractère qui décide.",
  "take-part.everywhere": "tout l’atlas",
  "take-part.month": "Mois",
  "take-part.look-for": "À chercher",
  "take-part.this-month": "ce mois-ci",
  "take-part.by-region": "Par région",
  "take-part.by-region-note": "Les régions inventées d’une démonstration n’apprennent rien sur les vraies.",
  "take-part.all-months": "Tous les mois, avec les caractères qui décident",
  "take-part.nothing":
    "Rien qu’un débutant puisse déterminer n’a été noté assez souvent à cette période. Notez ce que vous voyez, avec une photographie, et nommez le groupe si l’espèce n’est pas sûre.",
  "take-part.whom": "{name} ({castes})",
  "take-part.settle-sight": "{castes, select, none {À vue} other {{castes} : à vue}}, **{part}** : {state}.",
  "take-part.settle-photograph":
    "{castes, select, none {Sur photographie} other {{castes} : sur photographie}}, **{part}** : {state}.",
  "take-part.segments": "T1 à T6 sont les segments de l’abdomen, comptés depuis la taille.",
  "take-part.photograph": "Photographier les parties qui décident",
  "take-part.photograph-say":
    "{n, plural, one {Une partie du corps décide d’un nom} other {{words} parties du corps décident des noms}} sur photographie. Trois images, de dessus, de côté et de la face, les montrent presque toutes.",
  "take-part.colon": " : ",
  "take-part.part": "Partie",
  "take-part.how": "Comment",
  "take-part.decides": "Décide pour",
  "take-part.how-face": "De face ou un peu de côté, à hauteur de la tête. Attendez que l’insecte boive.",
  "take-part.how-thorax": "Exactement de dessus, ailes repliées ou ouvertes, pour que les bandes se voient en entier.",
  "take-part.how-abdomen":
    "De dessus et de derrière, ailes écartées si possible ; une image de plus de côté. Qu’aucune fleur ne cache l’extrémité.",
  "take-part.how-leg":
    "De côté et d’en bas, la patte arrière dégagée de la fleur : son brillant et ses poils décident.",
  "take-part.how-wings": "Ailes ouvertes devant un fond pâle, en lumière ordinaire.",
  "take-part.how-size":
    "Avec un objet de taille connue à côté, ou la fleur nommée : une photographie seule ne dit pas la taille.",
  "take-part.how-antenna":
    "De près, de face, la mise au point sur les antennes ; les premiers articles après le plus long décident.",
  "take-part.how-coat": "De dessus et de côté en lumière égale : le flash blanchit les poils pâles.",
  "take-part.how-other": "De près et net, en lumière égale, de deux côtés.",
  "take-part.photograph-more":
    "Prenez-en beaucoup et gardez les nettes. Ne changez pas les couleurs, et envoyez l’image entière : la partie coupée est peut-être celle qui décide. Laissez l’animal où il est.",
  "take-part.write": "Ce qu’il faut noter",
  "take-part.write-say": "Sur place, avant d’oublier. Le reste peut attendre le soir.",
  "take-part.write-name": "Ce que c’était",
  "take-part.write-name-note":
    "Tout nom que connaît cet atlas, dans toute langue. Si l’espèce n’est pas sûre, le groupe.",
  "take-part.write-date": "La date",
  "take-part.write-date-note":
    "Le jour, ainsi : 2025-05-14. Si seul le mois est connu, 2025-05 ; jamais le premier du mois faute de mieux.",
  "take-part.write-place": "Le lieu",
  "take-part.write-place-note":
    "Une référence de carroyage comme {square}, ou latitude et longitude ; et le nom du lieu tel que vous le diriez à quelqu’un.",
  "take-part.write-caste": "{castes}",
  "take-part.write-caste-note":
    "Ce que vous en avez vu, avec chaque fois le nombre. Laissez vide si vous n’avez pas pu le dire : c’est aussi une information.",
  "take-part.write-count": "Combien",
  "take-part.write-count-note": "Un nombre entier. « Plusieurs » ne dit rien ; laissez vide.",
  "take-part.write-who": "Qui l’a vu, et qui l’a nommé",
  "take-part.write-who-note": "Ce peuvent être deux personnes. Pas de noms d’enfants : écrivez l’école ou le groupe.",
  "take-part.write-evidence": "Sur quoi repose le nom",
  "take-part.write-evidence-note": "La vue, une photographie ou un spécimen, et la partie qui a été vue.",
  "take-part.precise": "Avec quelle précision",
  "take-part.precise-say": "Aussi précisément que vous le savez, et pas plus.",
  "take-part.precise-1":
    "Une référence à 100 m (six chiffres) suffit largement pour un animal qui vole. Un carré de 2 km suffit aux cartes ; un carré de 10 km compte encore.",
  "take-part.precise-2":
    "Donnez le lieu où était l’animal, pas celui du stationnement. Si vous avez marché un kilomètre et l’avez vu quelque part en route, dites-le : notez le milieu, et la moitié de la longueur comme incertitude en mètres.",
  "take-part.precise-3":
    "La position d’un téléphone est bonne à dix ou vingt mètres en terrain ouvert, bien moins sous les arbres. Regardez la carte avant d’envoyer.",
  "take-part.precise-4":
    "Ne rendez pas un lieu plus précis qu’il n’était, et ne le déplacez pas pour le protéger : cet atlas montre de lui-même les données sensibles moins précisément.",
  "take-part.group": "Quand ne noter que le groupe",
  "take-part.group-say":
    "Un groupe sûr est une bonne donnée. Une espèce devinée en est une mauvaise, et nul ne peut dire laquelle c’était.",
  "take-part.group-members": "{members}",
  "take-part.group-name": "À noter comme",
  "take-part.group-when": "Quand on ne peut séparer",
  "take-part.group-needs": "Ce qui les sépare",
  "take-part.before": "Avant de partir",
  "take-part.before-say": "Aucune donnée ne vaut un accident, une dispute ou un nid.",
  "take-part.caution-safety":
    "**Seul, près de l’eau, au bord des routes.** Dites à quelqu’un où vous êtes et quand vous rentrez. Restez loin des berges, des falaises et des marées ; ne prospectez pas depuis une route sans accotement.",
  "take-part.caution-land":
    "**Terrains.** Un carré qui attend une visite n’est pas une invitation. Sans droit d’accès clair, demandez d’abord, et acceptez un refus ; les réserves ont leurs propres autorisations.",
  "take-part.caution-nests":
    "**Nids.** Ne creusez, ne soulevez ni n’ouvrez rien pour en trouver un. Restez hors de la ligne de vol, et n’y joignez l’adresse de personne.",
  "take-part.caution-law":
    "**Espèces et sites protégés.** Déranger, manipuler ou prélever peut demander une autorisation. La loi du lieu l’emporte sur cette page ; laissez-le à qui a l’autorisation et la pratique.",
  "take-part.caution-more": "Plus de détails : <a>{title}</a>.",
  "take-part.send": "Envoyer",
  "take-part.sheet": "La feuille de saisie",
  "take-part.sheet-say":
    "Une ligne par donnée, avec des listes où choisir. Elle se relit telle quelle : ses colonnes n’ont pas besoin d’être expliquées.",
  "take-part.sheet-xlsx": "Feuille de saisie en classeur (XLSX)",
  "take-part.sheet-csv": "Feuille de saisie en texte (CSV, UTF-8)",
  "take-part.sheet-note":
    "Gardez la première ligne telle quelle. Des colonnes peuvent rester vides ou être supprimées ; d’autres peuvent s’y ajouter.",
  "take-part.send-to": "Envoyez-la à <a>{address}</a>.",
  "take-part.send-url": "Ou saisissez vos données à l’adresse <a>{address}</a>.",
  "take-part.send-nowhere": "Cet atlas ne dit pas où envoyer les données.",
  "take-part.demonstration": "Texte écrit pour cette démonstration : à vérifier dans un guide d’identification à jour.",
} satisfies WordsOf<typeof en>;
