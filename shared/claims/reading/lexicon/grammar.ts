/** Small words that steer the reading: hedges, comparators, statistics, verbs. Same notation as `quantities.ts`. */

/** Words before (or after) a number that widen or turn its interval (`judging.md`, "Rounding"). */
export const hedgeWords: Readonly<Record<string, string>> = {
  about: `about; close to; around; roughly; some; approximately; approx .; approx; circa; ca .; c .; in the region of; in the order of; something like; more or less; or so; or thereabouts; give or take; somewhere around; ~; ≈; of the order of; in the neighbourhood of; ballpark; as good as; around about; close on`,
  almost: `almost; nearly; a whisker short of; a hair short of; a touch short of; a shade short of; just under; shy of; just shy of; a little under; little under; little less than; little short of; a shade under; a touch under; not quite; just below; a hair under; a little less than; slightly less than; slightly under; a little below; a whisker under; a shade below; a fraction under; a whisker below; a touch below; getting on for; just short of; a hair below; virtually; a bit under; a tad under; a fraction below; slightly below; marginally under; fractionally under; just less than; pushing`,
  over: `just over; barely past; barely above; a little over; little over; little more than; hardly more than; barely more than; scarcely more than; barely over; hardly over; marginally more than; a shade over; a touch over; slightly over; a little more than; slightly more than; just above; a hair over; a little above; a whisker over; a fraction over; just past; a bit over; slightly above; a shade above; a tad over; marginally over; a touch above; fractionally over; a fraction above; a hair above; a whisker above; just more than; a shade more than`,
  notFarOff: `not far off; not unlike; not far from; not far short of; not a long way off; not far shy of`,
  exactly: `exactly; spot on; precisely; dead on; bang on; right on; a measured; to the dot; on the nose; smack on`,
  nowhereNear: `nowhere near; not even close to; far from; a long way off; a long way from; miles from; not near; not anywhere near; nothing like; nowhere close to`,
  vague: `minutes on end; a few; several; a couple of; a handful of; many; countless; dozens of; hundreds of; a number of; plenty of`,
};

/** Words that make a limit of the number after them. */
export const comparatorWords: Readonly<Record<string, string>> = {
  '<': `under; below; less than; lower than; beneath; fewer than; smaller than; darker than; shorter than; narrower than; thinner than; slimmer than; quieter than; quicker than; faster than; lighter than; cheaper than; dimmer than; south of; inside; short of; falls short of; fall short of; fell short of; falling short of; <`,
  '<=': `at most; no more than; not more than; up to and including; no higher than; at the most; not above; not over; no worse than; capped at; within; ≤; never more than; at or under; at or below; as little as; tops out below; no greater than; not exceeding; without exceeding; no larger than; never over; never above; no bigger than; no longer than; no heavier than; a ceiling of; not to exceed`,
  '>': `over; above; more than; higher than; greater than; in excess of; north of; beyond; past; exceeding; upward of; larger than; better than; brighter than; wider than; taller than; deeper than; thicker than; slower than; louder than; hotter than; longer than; heavier than; >; upwards of more than; clear of`,
  '>=': `at least; no less than; not less than; no fewer than; upwards of; no lower than; not below; not under; at or above; at or over; ≥; never less than; at the very least; never below; never under; or more than; a floor of; as many as or more than`,
  '<<': `well under; well below; far below; comfortably under; comfortably below; far under; way under; way below; considerably below; considerably under; easily under; safely under; easily below; safely below; significantly below; significantly under; much less than; far less than; much lower than; far lower than`,
  '>>': `well over; well above; far above; comfortably over; comfortably above; far over; way over; way above; considerably above; considerably over; easily over; easily above; significantly above; significantly over; much more than; far more than; much higher than; far higher than; well past; well beyond; far beyond; well in excess of; far in excess of`,
  upTo: `up to; as much as; as many as; as high as; as far as`,
};
/** Comparators that stand after the number. */
export const trailingComparators: Readonly<Record<string, string>> = {
  '<=': `at most; or less; or below; or under; at the most; or fewer; or lower; tops; maximum; max; at the outside; and no more; and not more; and no higher`,
  '>=': `at least; or more; or above; or better; or over; plus; at a minimum; or higher; minimum; at the very least; +; and no less; upwards; and more`,
};

export const statWords: Readonly<Record<string, string>> = {
  average: `average; averages; averaging; mean; averaged; on average; in the mean; arithmetic mean; avg .; avg; typically; across the board; average of`,
  max: `maximum; max; a high of; worst; highest; peak error; largest; greatest; worst case; biggest; at its worst; at worst; worst level; worst step; worst offender; single worst; max .; at most; maxes; widest`,
  min: `minimum; lowest; smallest; least; at its lowest; at its weakest; weakest; min .`,
  none: `no; none; none of the; not one; not a single; not a; nothing; nothing here; nothing else; neither; no single; not any; not one of the`,
  never: `never; at no point; not once; nowhere; at no level; at no stage; at no step; never once`,
  all: `all; every; each; everything; all of the; all the; every single; each of the; throughout; everywhere; at every level; at all levels; at every step; across the whole range; across the range; across the whole scale; across the entire range; from end to end; from black to white; end to end; at every point; at all points; all along; over the whole range; from bottom to top; from the bottom of the scale to the top; from the bottom of the scale to the top of the scale; from the bottom of the range to the top; from bottom to top of the scale; over the entire range; on every step; from top to bottom; any of the; all round; without exception; across the entire scale; at all steps; whole range; entire range; anywhere; wherever; whatever the level`,
  any: `any; some of the; parts of; in places; at least one; one of the; somewhere; some levels; in part; here and there`,
  mostly: `mostly; for the most part; largely; by and large; mainly; almost all; nearly all; almost everywhere; most of the; most levels; in the main; most; most steps`,
};

/** House words: phrases that stand for a limit. */
export const houseWords: Readonly<Record<string, string>> = {
  visible: `
    come(s) into view; came into view; coming into view; visible; visibly; over the visible threshold; the visible threshold; above the visible threshold; visible threshold; threshold of visibility; visibility threshold; noticeable; noticeably; can be seen; be seen; perceptible; perceptibly; discernible; over the threshold; above the threshold; threshold; past the visible threshold; the eye can see; the eye sees; apparent to the eye; detectable; discernibly; over the line; show; shows; in sight; see; seen; spot; notice; noticed; threshold for visibility; limit of visibility; visible limit; perception threshold; threshold of perception
  `,
  invisible: `
    invisible; not visible; cannot be seen; can't be seen; can not be seen; not be seen; unnoticeable; not noticeable; below the visible threshold; under the visible threshold; under the threshold; below the threshold; beneath the threshold; beneath the visible threshold; out of sight; nobody will/would/could/can see/notice/spot; no one will/would/could/can see/notice/spot; beyond what the eye can see; isn't visible; aren't visible; never visible; indiscernible; undetectable; below visibility; below the threshold of visibility; under the threshold of visibility; inside the visible threshold; not perceptible; invisibly; escapes the eye; escape the eye; short of visible; escapes notice; escape notice; you won't see; no eye will see; inside the threshold; isn't noticeable; aren't noticeable; stay out of sight; below the visibility threshold; under the visibility threshold; no longer visible; within the visible threshold; within the threshold; not discernible; not noticed
  `,
  imperceptible: `imperceptible even side by side; imperceptible side by side; imperceptible; invisible even side by side; indistinguishable even side by side; indistinguishable side by side; imperceptible in a side by side comparison; cannot be told apart; imperceptible even in a side by side comparison; imperceptible even when set side by side; even side by side invisible; not even visible side by side; invisible even in a side by side comparison`,
  reference: `reference; reference class; reference grade; reference quality; reference level; reference standard; a reference; of reference quality; reference territory; reference accuracy; reference accurate`,
  closeToReference: `close to reference; near reference; close to reference level; near reference level; almost reference; almost reference grade; close to a reference; near reference quality; close to reference quality; within reach of reference; not far off reference; near reference grade; close to reference grade; close to reference class; approaches reference; nearly reference`,
  accurate: `accurate; accurately; precise; faithful; true to the standard; accuracy; true to life`,
};

export const negationWords: Readonly<Record<string, string>> = {
  not: `let alone; by no means; in no way; not by any means; not by a long way/chalk/shot; not; n't; isn't; aren't; doesn't; don't; won't; can't; cannot; didn't; wasn't; weren't; hasn't; haven't; couldn't; wouldn't; shouldn't; without; hardly; fails to; fail to; failed to; rather than; far from; never; no longer; barely; scarcely; isn't quite; misses; short of being; neither; nor; lacks; lack; lacking; anything but; has/have/had yet to; is/are yet to`,
};

/** Verbs with a sense of motion or rest that turn a number into a bound, an onset or a value. */
export const verbWords: Readonly<Record<string, string>> = {
  exceed: `exceed(s); exceeded; exceeding; top(s); topped; pass(es); passed; cross(es); crossed; surpass(es); surpassed; beat; beats; clears; clear; breach(es); breached; break(s); broke; overshoot(s); outstrip(s); goes past; go past; goes beyond; go beyond; slip(s) past; slipped past; creep(s) past; crept past; edge(s) past; edged past; slide(s) past; slid past; poke(s) past`,
  rise: `rise(s); rose; risen; had/has/have risen; increased; rising; rising; climb(s); climbed; climbing; go(es) above/over; goes over; goes above; creep(s) over/above; creeps above; grow(s); grew; increase(s); shoot(s); jump(s); go over; go above; ever goes above; get(s) above; push(es); drift(s) over/above; swell(s); soar(s); mount(s); ever get above; ever goes over; strays above; stray above; stray over; strays over; goes up; move above; moves above; come over; comes over; comes above; pass over`,
  fall: `fall(s); fell; fallen; had/has/have fallen; drop(s); dropped; dip(s); dipped; sink(s); sank; slip(s); slipped; go(es) below/under; goes under; goes below; shrink(s); falling; dropping; go below; go under; decline(s); declined; plunge(s); tumble(s); decrease(s); decreased; diminish(es); diminished; come(s) down; comes down; came down; is cut; crashes; crash; down; slump(s); sag(s); sagged; droop(s); fade(s); faded`,
  stay: `stay(s); stayed; remain(s); remained; keep(s) to; keeps to; hold(s) at; holds at; is kept; are kept; hover(s) at; lie(s); sit(s); keep(s) below; keeps under; staying; never leaves; stays at; remains at; remain at; stay at; hold steady at; holds steady at; sticks at; stands; stands still at; unchanged at`,
  keep: `keep(s); kept; sustain(s); sustaining; retain(s); retained; hold(s); held; preserve(s); maintain(s); maintained; has left; is left; are left; hang(s) on to; hung on to; cling(s) on to; clung on to; survive(s); left; remain(s) of; keeps hold of; remaining; retaining; keeping`,
  lose: `lose(s); lost; losing; give(s) up; gives away; shed(s); shedding; sacrifice(s); is gone; are gone; has gone; forfeit(s); gave up; loss of; drop of; fall of; loss; is lost; are lost; goes missing; gone`,
  reach: `shines at; is put at; was put at; were put at; are put at; pulls it down to; drags it down to;  glows at; blazes at; gave up at; gives up at; reach(es); reached; reaching; hit(s); hitting; getting to; manage(s); managed; deliver(s); delivered; achieve(s); achieved; produce(s); produced; put(s) out; peak(s) at; peaked at; peaking at; top(s) out at; topping out at; topped out at; tops out at; get(s) to; got to; come(s) to; came to; muster(s); mustered; measured; measure(s); give(s); gave; post(s); posted; record(s); recorded; read(s); show(s) a reading of; reach up to; clock(s); comes in at; came in at; come in at; works out at; weighs in at; max(es) out at; maxes out at; turn(s) in; register(s); registered; stands at; stand at; sits at; sit at; lies at; lie at; settles at; settle at; settled at; averages out at; bottom(s) out at; bottomed out at; amounts to; amount to; land(s) at; lands at; arrives at; arrive at; spit(s) out; pump(s) out; churn(s) out; emit(s); emits; summons; offers; serves up; yields; yield; squeezes out; squeeze out; returns; came out at; comes out at; come out at; equals; hovers around; ends up at; ended up at; end up at`,
  cover: `cover(s); covered; covering; cover of; fill(s); span(s); encompass(es); reproduce(s); reach(es) of; renders; render; takes in; displays; takes up; displaying`,
  cost: `cost(s); costing; sell(s) for; sells at; sold for; is priced at; are priced at; priced at; goes for; go for; retails at; retails for; listed at; asks; set(s) you back; sets one back; is yours for; yours for; comes at; price of; priced; retail(s)`,
  cut: `shifts; shift; changes; change; moves; move`,
};

/** Claims about somebody else's number. */
export const sayingWords = `talks of; talk of; speaks of; will tell you; tells you; tells us; told us; claim(s); claimed; say(s); said; quote(s); quoted; promise(s); promised; state(s); stated; advertise(s); advertised; specifies; specified; rates; rated; puts it at; lists; according to; boast(s); boasted; touts; touted; announces; announced; pledges; pledged; cites; speaks of; talks of; spoke of; talked of; gives a figure of; quotes a figure of; promising; claiming; on paper; the box says; data sheet; datasheet; spec sheet; specification; on the box; vows; vowed; assures`;
export const gotThereWords = `a promise kept; my/our sample beat/beats it; the/our set beat/beats it; we beat it; i beat it; my/our sample bettered it; a promise fulfilled; blows past that; blows right past that; blows straight past that; sails past that; sails straight past that; sails past it; goes past that; goes straight past that; sails right past that; beats that; betters that; exceeds that; tops that; you get more than that; it does better than that; delivers them; delivered them; that figure was [duly] reached; that figure was [duly] met; that was reached; that was met; the figure was reached; delivers it; delivered it; delivers that; delivered that; our sample delivers it; the set delivers it; we got there; got there; and delivers; delivers; it delivers; it gets there; gets there; it does; it did; it got there; we saw them; we measured it; it makes good on that; makes good on it; makes good; keeps that promise; keeps its promise; lives up to it; lives up to that; lives up to the claim; kept its word; it keeps its word; keeps its word; keeps to it; keeps to that; stands by it; that holds; we can confirm; we can confirm it; rightly so; and it is true; is as good as its word; it reaches it; it reaches that; reaches that; reaches it; meets it; meets that; meets that claim; meets the claim; our meter agrees; our measurements agree; confirms it; confirm it; confirms that; confirm that; hits it; hits that; hits that figure; the set gets there; the television gets there; we reached it; we reached that; matches that; matches it; we saw it; it achieves it; it achieves that; delivers on that; delivers on it; delivered on that; is met; was met; is kept; is reached; is fulfilled; holds true; and got there; manages it; manages that; which it reaches; which it meets; which it keeps; are all there; is all there; are there; all present and correct`;
export const fellShortWords = `a promise broken; a promise not kept; does not deliver them/it/that; doesn't deliver them/it/that; did not deliver them/it/that; misses its/the/that promise; missed its/the/that promise; breaks its promise; broke its promise; falls short of its/the promise; just misses it; just misses that; missed by a mile; misses by a mile; missed by miles; missed by a wide margin; missed by some way; falls short; fell short; is not met; isn't met; not met; was not met; is missed; not reached; is not reached; not kept; is not kept; not fulfilled; falls short of that; falls short of it; falls short of the claim; misses it; misses that; we did not get there; we didn't get there; did not get there; didn't get there; never got there; never gets there; does not get there; doesn't get there; does not deliver; doesn't deliver; misses that mark; misses the mark; it does not; it doesn't; fails to reach it; fails to reach that; does not reach it; does not reach that; doesn't reach it; doesn't reach that; comes up short; came up short; could not get there; couldn't get there; we could not reach it; we couldn't reach it; we never saw it; we never saw that; fails to deliver; stops short; stops short of that`;
export const makerWords = `the maker; the manufacturer; maker; manufacturer; its maker; the brand; the company; the box; the data sheet; the datasheet; the specification; the specifications; the spec sheet; the brochure; its manufacturer`;

export const pronounWords: Readonly<Record<string, string>> = {
  it: `it; its; itself; they; their; them; this set; the set; this television; the television; this tv; the tv; this one; the screen; the panel; the display; this model; the set's; this screen; this panel; the picture`,
  own: `ours; yours; your set; your television; your tv; your panel; your product; our unit; our sample; our review sample; our set; our test unit; our test sample; the test unit; the review sample; the unit on test; our review unit; our loan set; the set under test; the sample; the test set; the review unit; this review's set; today's set; the set on test; our loan unit`,
  rival: `the rival; its rival; the other; the competitor; the competition; rivals; its rivals; the others; the other set; the other one; its competitor; its neighbour; its predecessor; the predecessor`,
};

/** Multiples and fractions that stand as numbers of a ratio. */
export const multipleWords: Readonly<
  Record<string, { phrases: string; x: number; low: number; high: number }>
> = {
  half: {
    phrases: `half; half of; half as much as; a half; one half; half as; half the; halves; halved`,
    x: 0.5,
    low: 0.45,
    high: 0.55,
  },
  twice: {
    phrases: `twice; double; twofold; two times; double the; twice the; two fold; 2 ×; 2 x; doubles; twice as; double that; a factor of two`,
    x: 2,
    low: 1.8,
    high: 2.2,
  },
  halfAgain: {
    phrases: `half again; half again as; half as much again; half as bright again; half as much again as; one and a half times`,
    x: 1.5,
    low: 1.35,
    high: 1.65,
  },
  third: { phrases: `a third; one third; a third of; third of`, x: 1 / 3, low: 0.3, high: 1.1 / 3 },
  quarter: {
    phrases: `a quarter; one quarter; a quarter of; quarter of; a fourth; one fourth`,
    x: 0.25,
    low: 0.225,
    high: 0.275,
  },
  twoThirds: { phrases: `two thirds; two thirds of`, x: 2 / 3, low: 0.6, high: 2.2 / 3 },
  threeQuarters: {
    phrases: `three quarters; three quarters of; three fourths; three fourths of`,
    x: 0.75,
    low: 0.675,
    high: 0.825,
  },
  twoFifths: { phrases: `two fifths; two fifths of`, x: 0.4, low: 0.36, high: 0.44 },
  threeFifths: { phrases: `three fifths; three fifths of`, x: 0.6, low: 0.54, high: 0.66 },
  fourFifths: { phrases: `four fifths; four fifths of`, x: 0.8, low: 0.72, high: 0.88 },
  fifth: { phrases: `a fifth; one fifth; a fifth of`, x: 0.2, low: 0.18, high: 0.22 },
  sixth: { phrases: `a sixth; one sixth; a sixth of`, x: 1 / 6, low: 0.9 / 6, high: 1.1 / 6 },
  seventh: { phrases: `a seventh; one seventh; a seventh of`, x: 1 / 7, low: 0.9 / 7, high: 1.1 / 7 },
  eighth: { phrases: `an eighth; one eighth; an eighth of`, x: 1 / 8, low: 0.9 / 8, high: 1.1 / 8 },
  ninth: { phrases: `a ninth; one ninth; a ninth of`, x: 1 / 9, low: 0.1, high: 1.1 / 9 },
  tenth: { phrases: `a tenth; one tenth; a tenth of`, x: 0.1, low: 0.09, high: 0.11 },
  triple: {
    phrases: `three times; triple; thrice; threefold; treble; triple the; three fold; trebles; triples; a factor of three`,
    x: 3,
    low: 2.5,
    high: 3.5,
  },
  quadruple: {
    phrases: `four times; quadruple; fourfold; a factor of four; quadruples`,
    x: 4,
    low: 3.5,
    high: 4.5,
  },
  quintuple: { phrases: `fivefold; five fold; a factor of five; quintuples`, x: 5, low: 4.5, high: 5.5 },
  sextuple: { phrases: `sixfold; six fold; a factor of six`, x: 6, low: 5.5, high: 6.5 },
  tenfold: { phrases: `tenfold; ten fold; a factor of ten`, x: 10, low: 9.5, high: 10.5 },
};

/** Spelled-out numbers. */
export const numberWords: Readonly<Record<string, number>> = {
  zero: 0,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
  twenty: 20,
  thirty: 30,
  forty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
};
export const ordinalWords: Readonly<Record<string, number>> = {
  first: 1,
  second: 2,
  // Of three
  'middle child': 2,
  'middle one': 2,
  third: 3,
  fourth: 4,
  fifth: 5,
  sixth: 6,
  seventh: 7,
  eighth: 8,
  ninth: 9,
  tenth: 10,
};

/** Units of measure → the dimension they measure and the factor to the quantity's own unit. */
export const unitWords: Readonly<
  Record<string, { phrases: string; dimension: string; unit: string; factor?: number }>
> = {
  luminance: {
    phrases: `cd/m2; cd / m2; nit(s); candela(s); candela(s) per square metre; cd per square metre; cd m-2; candela/candelas a square metre; cd per m2`,
    dimension: 'luminance',
    unit: 'cd/m²',
  },
  footLambert: {
    phrases: `fl; foot lambert(s); footlambert(s); ftl; foot_lamberts`,
    dimension: 'luminance',
    unit: 'cd/m²',
    factor: 3.4263,
  },
  kelvin: { phrases: `k; kelvin(s); degrees kelvin`, dimension: 'temperature', unit: 'K' },
  millisecond: { phrases: `ms; millisecond(s); msec`, dimension: 'time', unit: 'ms' },
  lux: { phrases: `lux; lx`, dimension: 'illuminance', unit: 'lx' },
  watt: { phrases: `w; watt(s)`, dimension: 'power', unit: 'W' },
  milliwatt: { phrases: `mw; milliwatt(s)`, dimension: 'power', unit: 'W', factor: 0.001 },
  decibel: { phrases: `db; dba; db ( a ); db(a); decibel(s); db a`, dimension: 'noise', unit: 'dB(A)' },
  gram: { phrases: `g; gram(s); gramme(s)`, dimension: 'mass', unit: 'kg', factor: 0.001 },
  millimetre: { phrases: `mm; millimetre(s)`, dimension: 'length', unit: 'mm' },
  centimetre: { phrases: `cm; centimetre(s)`, dimension: 'length', unit: 'mm', factor: 10 },
  metre: { phrases: `m; metre(s)`, dimension: 'length', unit: 'mm', factor: 1000 },
  poundOfMass: { phrases: `lb; lbs; lb .; lbs .`, dimension: 'mass', unit: 'kg', factor: 0.45359237 },
  kilogram: { phrases: `kg; kilo(s); kilogram(s); kilogramme(s)`, dimension: 'mass', unit: 'kg' },
  hertz: { phrases: `hz; hertz`, dimension: 'frequency', unit: 'Hz' },
  percent: { phrases: `%; percent; per cent; pct`, dimension: 'percent', unit: '%' },
  points: {
    phrases: `percentage point(s); % point(s); points; point; pp; pts; per cent points; percent points`,
    dimension: 'points',
    unit: 'points',
  },
  degree: { phrases: `°; degree(s); deg; deg .`, dimension: 'angle', unit: '°' },
  inch: { phrases: `inch; inches; in; "; in .; inch class; incher`, dimension: 'inch', unit: 'in' },
  second: { phrases: `second(s); s; sec; secs`, dimension: 'duration', unit: 's' },
  minute: { phrases: `minute(s); min; mins`, dimension: 'duration', unit: 's', factor: 60 },
  hour: { phrases: `hour(s); h; hr; hrs`, dimension: 'hours', unit: 'h' },
  day: { phrases: `day(s); week(s)`, dimension: 'calendar', unit: 'd' },
  month: { phrases: `month(s)`, dimension: 'months', unit: 'months' },
  year: { phrases: `year(s)`, dimension: 'months', unit: 'months', factor: 12 },
  pound: { phrases: `pound(s); gbp; quid; pound(s) sterling`, dimension: 'money', unit: 'GBP' },
  euro: { phrases: `euro(s); eur; €`, dimension: 'money', unit: 'EUR' },
  dollar: { phrases: `dollar(s); usd; us dollars`, dimension: 'money', unit: 'USD' },
  deltaE: {
    phrases: `δe; δe2000; δe00; delta e; de2000; de; ciede2000; delta e units; δe units; de units; δe2000 units; deltae; delta es`,
    dimension: 'de',
    unit: 'ΔE2000',
  },
  bits: {
    phrases: `bit; bits; gb; tb; gigabit(s); gigabyte(s); gbit; ghz; mhz; khz; litre(s); mbit; fps; frames per second; frames a second; dioptres; volt(s); v; amp(s); va`,
    dimension: 'other',
    unit: '',
  },
};
export const currencySymbols: Readonly<Record<string, string>> = { '£': 'GBP', '€': 'EUR', $: 'USD' };

/** Verbs of a change beside those above, which also say other things: "from 4.1 to 0.6" behind one is two states. */
export const changeWords: readonly string[] =
  `goes;go;went;gone;has gone;have gone;going;improves;improve;improved;improving;cuts;cutting;brings;brought;bringing;takes;took;taken;taking;moved;reducing;reduces;reduced;lowering;lowers;lowered;gets;got;gotten;came;come;comes;fallen;risen;sunk;shrunk;grown;crept;shifted;changed;halves;halved;doubles;doubled;trimmed;pulled;dragged;raised;lifted;eased;tightened`.split(
    ';',
  );

/** Words that lead to what was before: "87 W, down from 94 W". */
export const comeWords: readonly string[] = `down;up;reduced;lowered;raised;improved;trimmed`.split(';');

/** Words behind a number of the state before: "against 4,550:1 before". */
export const formerWords: readonly string[] = `before;beforehand;previously;formerly`.split(';');

/** Words that may stand in a conjunct without a verb, beside its set and what is said of it. */
export const gappedFillers: ReadonlySet<string> = new Set(
  `and but or while whereas with the a an on for of in at from by to that those those's 's ' only just even still another
  as too also respectively up upwards upward onwards onward over under merely mere weary measly`.split(/\s+/),
);

/** What a writer supposes of the reader's wish without a condition on the set: "if you must", "if you want". */
export const wishWords: ReadonlySet<string> = new Set(
  'want;must;like;prefer;insist;care;mind;wish;wonder'.split(';'),
);

/** What a statement does to the reader who hears it: "if that stings". */
export const reactionWords: ReadonlySet<string> = new Set(
  'stings;hurts;bothers;worries;matters;surprises;disappoints;annoys;irks;rankles;offends;helps;interests;appeals;sounds;seems'.split(
    ';',
  ),
);

/** How strictly a writer means to speak: "if you want to be picky", "if we are honest". */
export const mannerWords: ReadonlySet<string> = new Set(
  'tempted;keen;picky;strict;pedantic;honest;fair;fussy;precise;exact;generous;charitable;blunt;frank;unkind;kind;harsh;critical;curious'.split(
    ';',
  ),
);

/** What a writer wishes done with a statement that stands: "would like it noted that". */
export const notingWords: ReadonlySet<string> = new Set('noted;known;recorded;understood;minuted'.split(';'));

/** Words between "if you" and a manner. */
export const mannerFillers: ReadonlySet<string> = new Set(
  "are;am;is;'re;'m;want;to;be;being;feel;feeling;really;wish;like;must;very;a;bit;too;all".split(';'),
);
