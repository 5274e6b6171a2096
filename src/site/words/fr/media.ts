import type { WordsOf } from "../catalogue.ts";
import type en from "../en/media.ts";

export default {
  "media.title": "Crédits",
  "media.lead": "Ce que l’atlas montre et que quelqu’un a fait : images, caractères, côtes.",
  "media.photograph": "Photographie.",
  "media.drawing": "Dessin.",
  "media.clip": "Séquence filmée.",
  "media.shows": "On y voit : {what}.",
  "media.credit": "{credit}, <a>{licence}</a>.",
  "media.pictures": "Images",
  "media.none": "Hormis ses schémas, cet atlas ne montre ni photographie, ni dessin, ni séquence filmée.",
  "media.count":
    "{n, plural, one {# image} other {# images}}. Rien dans leurs fichiers ne dit où, quand ni avec quoi elles ont été faites.",
  "media.file": "Fichier {name}",
  "media.diagrams": "Schémas",
  "media.diagrams-own":
    "Les corps dessinés sont faits par le programme à partir du tableau des caractères. On peut les employer comme les données : <a>{licence}</a>.",
  "media.type": "Caractères",
  "media.type-own":
    "Brygada 1918 et Source Sans 3, tous deux sous <a>licence SIL Open Font 1.1</a>, réduits aux lettres employées.",
  "media.coast": "Côtes, lacs et frontières",
} satisfies WordsOf<typeof en>;
