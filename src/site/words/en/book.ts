/** Words of the printed book. */
export default {
  "book.contents": "Contents",
  "book.about": "About this atlas",
  "book.accounts": "Accounts",
  "book.methods": "How the figures were made",
  "book.index": "Index of names",
  "book.edition": "Edition {edition}, {date}",
  "book.cite": "How to cite",
  "book.licence": "Licence",
  "book.coast": "Coast",
} as const;
