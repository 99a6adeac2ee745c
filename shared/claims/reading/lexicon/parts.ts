/**
 * Words that rules look for by the part that they play in a clause, where they have no meaning of their own.
 * Same notation as `quantities.ts`; asked for by name through `plays` (`parts.ts`).
 */
export const partWords = {
  /** Verbs between a grey and the hue that it has or takes on */
  colouring: `is; are; was; were; look(s); looked; seem(s); appear(s); go(es); went; going; turn(s); turned; turning; become(s); became; get(s); got`,
  /** Greys in everyday words, where no concept names them */
  greys: `grey(s); white(s); greyscale`,
  /** What a series consists of */
  levels: `level(s); step(s); patch(es); greys; them; these`,
  /** Between a number and what it is a part of: "two of all the steps" */
  partitive: `of; of the; the; its; all; of all; of these; out of; out of the; our`,
  /** Judgements on one level, which say no more than the number beside them */
  verdict: `poor; bad; difficult; stubborn; rogue; stray; lone; single; odd; awkward; errant; outlying; problem; particular; grey; colour; test; chart; such`,
  /** Which levels of a series a count speaks of */
  placed: `brightest; darkest; lightest; top; bottom; upper; lower; first; last; uppermost; lowest; highest`,
  /** Before what is left out: "all but two" */
  excepting: `all but; but; except; save; bar; for; apart from; except for; bar for`,
  /** Verbs that begin something */
  beginning: `become(s); turns; start(s); begin(s); sets; first; appear(s)`,
} as const satisfies Readonly<Record<string, string>>;
