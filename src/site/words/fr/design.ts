import type { WordsOf } from "../catalogue.ts";
import type en from "../en/design.ts";

export default {
  "design.title": "Graphisme",
  "design.lead": "Les signes dont {title} est fait, chacun avec ses propres données, et quand chacun sert.",
  "design.type": "Caractères",
  "design.type-says":
    "**Deux voix.** Un caractère à empattements parle : noms, textes, la phrase au-dessus d’une figure. Une linéale compte : légendes, tableaux, commandes.",
  "design.colour": "Couleur",
  "design.colour-says":
    "**La forme dit ce qui a été trouvé, la teinte que l’on peut en juger.** Le bleu et le bronze n’apparaissent que là où deux périodes se comparent.",
  "design.space": "Espace",
  "design.space-says":
    "**Des filets, pas de cadres.** Un filet épais ouvre une section, un filet fin sépare les lignes, et huit pas tiennent les distances.",
  "design.square": "Le carré",
  "design.square-says":
    "**Un carré est un petit livre.** Son dos est la période ancienne, sa page la récente. L’inconnu est dessiné : un blanc veut toujours dire que quelqu’un a cherché.",
  "design.body": "Le corps",
  "design.body-says":
    "**Un corps est un ruban.** Chaque partie a sa ligne et sa couleur, et la couleur son mot, car aucun œil ne devrait avoir à deviner.",
  "design.charts": "Graphiques",
  "design.charts-says":
    "**Le dire, puis le montrer.** Une phrase tirée des données ouvre chaque figure, et l’effort d’observation se tient derrière les données.",
  "design.page": "La page",
  "design.page-says":
    "**Rien ne bouge et rien ne se cache.** Elle marche au clavier, sans script, sur papier et à 320 pixels.",

  "design.role-name": "Nom : la tête d’une fiche, une fois par page",
  "design.role-scientific": "Nom scientifique : toujours en italique, l’auteur en linéale",
  "design.role-lead": "Chapeau : une phrase sous le nom",
  "design.role-heading": "Titre de section, à gauche dès la tablette",
  "design.role-say": "Phrase au-dessus d’une figure : ce qu’elle montre, avec les nombres qui comptent",
  "design.role-prose": "Texte d’une fiche",
  "design.role-body": "Faits, tableaux et commandes",
  "design.role-note": "Note : comment lire une figure",
  "design.prose-sample": "L’aspect de l’animal se dit au présent ; ce qui a été noté se dit au passé, avec ses années.",

  "design.on-light": "Sur papier clair",
  "design.on-dark": "Sur papier sombre",
  "design.token": "Jeton et usage",
  "design.ratios":
    "Chaque couleur sur paper et sur leaf, avec son contraste sur les deux, calculé par la formule des WCAG 2.2.",
  "design.use-paper": "la page, et la mer",
  "design.use-leaf": "la terre, un champ, une case",
  "design.use-ink": "texte et barres",
  "design.use-ink-2": "légendes et étiquettes",
  "design.use-ink-3": "le plus faible contraste d’un texte",
  "design.use-accent": "propre au programme : liens, focus, ce qui diffère",
  "design.use-edge": "graduations, bords des champs, ligne du zéro",
  "design.use-rule": "décor seulement",
  "design.use-both": "trouvé aux deux périodes, signalé",
  "design.use-new": "nouvellement trouvé ; des signes, jamais du texte",
  "design.use-gone": "non retrouvé ; des signes, jamais du texte",
  "design.use-part": "signalé, non comparable",
  "design.use-hatch": "non couvert ; sur leaf seulement",
  "design.use-effort": "effort d’observation derrière les données, sous sa ligne",

  "design.space-steps": "Pas de {steps} pixels : les petits dans un signe, les grands entre les sections.",

  "design.map-glyph":
    "Le même signe se tient sur la carte, dans sa légende, dans les tableaux et au bout d’un intervalle. En clair et en sombre, en gris et pour les yeux qui ne séparent pas le rouge du vert, la forme distingue les classes.",
  "design.map-key":
    "La légende : d’abord comment lire un carré, puis chaque classe en mots avec son nombre de carrés. Elle ne se replie jamais.",
  "design.map-small": "La petite carte : des carrés entiers sans hachures, là où une liste a une ligne par espèce.",
  "design.map-number":
    "Le carré d’une carte de nombres grandit en cinq pas, de personne à beaucoup ; une seule encre suffit.",

  "design.plan-empty": "Un plan de corps sans couleurs : aucun taxon de cet atlas n’est décrit par lui.",
  "design.no-plan": "Cet atlas n’a pas de plan de corps : rien n’est dessiné, et les fiches le disent en mots.",

  "design.chart-season":
    "La saison, une ligne par caste : les barres sont ses données, les marches derrière toutes les visites ; une barre ouverte a trop peu de visites pour s’y fier.",
  "design.chart-strip":
    "La saison en une ligne, pour les listes : fine du dixième au neuvième décile, épaisse sur la moitié centrale, un trait au milieu.",
  "design.chart-years": "Données par année devant les visites, avec un crochet pour chaque période comparée.",
  "design.chart-interval":
    "Un intervalle d’évolution se termine par un carré de la carte : page pleine pour plus, dos plein pour moins, ouvert s’il comprend l’absence d’évolution, pointillé s’il ne peut pas être jugé.",
  "design.chart-use":
    "Usage des milieux : le carré ouvert dit où allaient les visites, le plein où l’espèce a été notée.",

  "design.link-sample": "Un lien dit où il mène",
  "design.focus-sample": "ce qui a le focus",
  "design.link-use":
    "Les liens sont soulignés, dans la couleur d’accent. Ce qui a le focus du clavier a un contour de trois pixels.",
  "design.choice-use":
    "Une réponse parmi plusieurs : la choisie est grasse sur l’accent. Ce sont des boutons radio : les flèches marchent et aucun script n’est nécessaire.",
  "design.grid": "Grille",
  "design.squares": "Carrés de 10 km avec de la terre",
  "design.table-use":
    "Les tableaux ont des filets entre les lignes et aucun entre les colonnes ; les nombres se tiennent à droite, en chiffres de même largeur.",
  "design.notice-sample": "Un avis se tient au-dessus de la tête de chaque page.",
  "design.invented-use":
    "L’avis au-dessus de la tête de chaque page, quand tous ses lecteurs doivent d’abord savoir quelque chose.",
  "design.caution-sample":
    "<b>Avant de partir.</b> Demandez avant de quitter les chemins, et laissez les nids comme vous les avez trouvés.",
  "design.caution-use":
    "Une mise en garde a une barre à gauche, deux phrases et un début en gras. Elle se tient à côté de ce dont elle parle.",
  "design.fold-sample": "Ce qu’il y a d’autre à savoir",
  "design.fold-inside":
    "Les preuves se replient sur un téléphone et restent ouvertes sur un bureau et sur papier. Cartes, légendes, saisons et phrases ne se replient jamais.",
  "design.fold-use": "Un repli garde un long tableau hors du chemin jusqu’à ce qu’on le veuille.",
} satisfies WordsOf<typeof en>;
