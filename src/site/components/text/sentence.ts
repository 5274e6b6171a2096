/** A sentence in which `**…**` marks the numbers that matter. */
export type Sentence = string;
