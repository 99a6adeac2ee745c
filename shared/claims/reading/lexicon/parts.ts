/**
 * Words that rules look for by the part that they play in a clause, where they have no meaning of their own.
 * Same notation as `quantities.ts`; asked for by name through `plays` (`parts.ts`).
 */
export const partWords = {
  /** Verbs between a grey and the hue that it has or takes on */
  colouring: `is; are; was; were; look(s); looked; seem(s); appear(s); go(es); went; going; turn(s); turned; turning; become(s); became; get(s); got`,
  /** Greys in everyday words, where no concept names them */
  greys: `grey(s); white(s); greyscale`,
  /** The picture as a whole, whose white and light are meant */
  picture: `whites; picture; image; pictures; the picture; the image`,
  /** Small words that stand before a hue or a direction */
  leading: `the; a; an; slightly; too; towards; toward; a little; little; a touch; touch; a shade; shade; a bit; bit; somewhat; rather; just; still; also`,
  /** Next to nothing: "a touch of green" */
  tiny: `shade; trace; touch; tad`,
  /** A tint that was there and is no more */
  vanishing: `disappears; disappeared; vanishes; vanished; goes; nothing remains; nothing is left; nothing left`,
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
  /** The state of today, after one that was before */
  nowadays: `after; afterwards; now; today; nowadays; currently; since; meanwhile`,
  /** Verbs that begin something */
  beginning: `become(s); turns; start(s); begin(s); sets; first; appear(s)`,
  /** A topic is there, or does something to the picture */
  showing: `brings; bring; brought; is; are; was; were; there; shows; show; see; saw; seen; suffers; suffer; exhibits; exhibit; appears; appear; occurs; occur; spot; spotted; noticed; notice; remains; remain; creeps; crops; displays; betrays; some; mars; spoils; has; have; found; find; observed; visible; sets; crept; reveals; plagues; plagued; becomes; become; gets; bothers; bothered; disturbed; annoyed; disturbs; distracts; occasional; with; surround(s); surrounded; cling(s); ring(s); follow(s); accompany; accompanies; frame(s); swallow(s); spread(s); leak(s); haunt(s); dog(s); disfigure(s); taint(s); lurk(s); trouble(s); invade(s); ruin(s); wash over; washes over; stain(s); mark(s)`,
  /** How much is seen, in words that no house word measures */
  unmeasured: `little; controlled; problem; issue; trouble; worry; concern; restrained; handled; in check; at bay; under control; well under control; tamed; well contained; contained; reined in; well managed; well suppressed; suppressed; tolerable; bearable`,
  /** Behind a topic: a test or a setting, nothing seen */
  testing: `test; tests; pattern; patterns; control; reduction; clip`,
  /** Behind "is": only that something is there */
  present: `there; present; evident; easy; easily; uneven; everywhere; all; common; frequent; around; about; in; on; at; along; across; where; when; with; seen; and; but; as; also; still; always; often; sometimes; occasionally; not; from; to; under; near; behind; a fact; here; what`,
  copula: `is; are; was; were; remain(s); become(s); gets`,
  /** Places of the screen, one of which is the darkest */
  spots: `spot(s); spot on; cell(s); part(s); area(s); patch(es); point; place; zone; corner; edge; region`,
  /** Topics that are verbs */
  acting: `bloom; blooms; flickers; judders; smears; stutters; ghosts`,
  /** The three hues that the screen mixes all others of */
  primaries: `primaries; primary; three primaries; primary colours; three primary colours`,
  secondaries: `secondaries; secondary; three secondaries; secondary colours`,
} as const satisfies Readonly<Record<string, string>>;
