/** Words that carry a claim of their own kind: comparisons, ranks, directions, tints. Notation as in `quantities.ts`. */

/** Comparative → what it compares and which way is more of it. */
export const comparativeWords: Readonly<
  Record<string, { phrases: string; concept: string; direction: 'higher' | 'lower' }>
> = {
  brighter: {
    phrases: `brighter; outshines; outshine; more luminous; higher peak luminance; higher peak brightness; more light; a higher peak; more light output`,
    concept: 'peak',
    direction: 'higher',
  },
  dimmer: {
    phrases: `dimmer; darker; less bright; lower peak luminance; lower peak brightness; less luminous`,
    concept: 'peak',
    direction: 'lower',
  },
  dearer: {
    phrases: `dearer; more expensive; pricier; costlier; more costly; cost(s) more`,
    concept: 'price',
    direction: 'higher',
  },
  cheaper: {
    phrases: `cheaper; less expensive; less costly; more affordable; cost(s) less; less dear; undercuts`,
    concept: 'price',
    direction: 'lower',
  },
  moreAccurate: {
    phrases: `more accurate; truer; more precise; more faithful; lower error(s); smaller error(s); less error; more neutral greys; lower greyscale error(s)`,
    concept: 'greyError',
    direction: 'lower',
  },
  lessAccurate: {
    phrases: `less accurate; further off; less faithful; higher error(s); larger error(s); less precise; greater error(s); bigger error(s)`,
    concept: 'greyError',
    direction: 'higher',
  },
  contrastier: {
    phrases: `contrastier; more contrasty; higher contrast; more contrast; better contrast; greater contrast; higher native contrast; a higher contrast; a better contrast; stronger contrast; better native contrast; superior contrast`,
    concept: 'contrast',
    direction: 'higher',
  },
  flatter: {
    phrases: `less contrast; lower contrast; weaker contrast; worse contrast; less contrasty; poorer contrast`,
    concept: 'contrast',
    direction: 'lower',
  },
  deeperBlacks: {
    phrases: `black(s) is/are deeper; deeper black(s); darker black(s); blacker blacks; lower black level(s); deeper black level(s); better blacks; lower black; blacker`,
    concept: 'black',
    direction: 'lower',
  },
  raisedBlacks: {
    phrases: `higher black level(s); lighter blacks; brighter blacks; greyer blacks; higher black; shallower blacks`,
    concept: 'black',
    direction: 'higher',
  },
  faster: {
    phrases: `quicker; faster; sooner; more responsive; less lag; lower lag; less input lag; lower input lag; shorter lag; lower latency; less latency; lower input latency`,
    concept: 'lag',
    direction: 'lower',
  },
  slower: {
    phrases: `slower; laggier; more lag; higher lag; more input lag; higher input lag; longer lag; less responsive; higher latency; more latency`,
    concept: 'lag',
    direction: 'higher',
  },
  quieter: {
    phrases: `quieter; less noisy; more silent; makes less noise; less noise`,
    concept: 'noise',
    direction: 'lower',
  },
  louder: { phrases: `louder; noisier; makes more noise; more noise`, concept: 'noise', direction: 'higher' },
  thirstier: {
    phrases: `thirstier; more power hungry; hungrier; draws more; uses more power; more power; higher power consumption; consumes more; more hungry`,
    concept: 'power',
    direction: 'higher',
  },
  thriftier: {
    phrases: `thriftier; more frugal; more efficient; draws less; uses less power; less power; lower power consumption; consumes less; more economical; less hungry`,
    concept: 'power',
    direction: 'lower',
  },
  wider: {
    phrases: `wider gamut; wider colour gamut; larger gamut; bigger gamut; more colour; wider colour; wider coverage; higher coverage; better coverage; a wider gamut; more coverage; wider colour range`,
    concept: 'coverage',
    direction: 'higher',
  },
  narrower: {
    phrases: `narrower gamut; smaller gamut; less colour; narrower colour gamut; lower coverage; less coverage; tighter gamut`,
    concept: 'coverage',
    direction: 'lower',
  },
  moreEven: {
    phrases: `more even; more uniform; better uniformity; evener; more evenly lit; better lit; greater uniformity`,
    concept: 'uniformity',
    direction: 'lower',
  },
  lessEven: {
    phrases: `less even; less uniform; patchier; worse uniformity; poorer uniformity; more uneven`,
    concept: 'uniformity',
    direction: 'higher',
  },
  thinner: { phrases: `thinner; slimmer`, concept: 'fact:depth', direction: 'lower' },
  thicker: {
    phrases: `thicker; deeper; deeper cabinet; fatter; chunkier; bulkier`,
    concept: 'fact:depth',
    direction: 'higher',
  },
  taller: { phrases: `taller`, concept: 'fact:height', direction: 'higher' },
  lighter: { phrases: `lighter; weighs less`, concept: 'fact:weight', direction: 'lower' },
  heavier: {
    phrases: `heavier; weighs more; outweighs; outweigh`,
    concept: 'fact:weight',
    direction: 'higher',
  },
  better: { phrases: `better; superior; tidier; neater`, concept: '', direction: 'higher' },
  worse: { phrases: `worse; inferior; poorer`, concept: '', direction: 'lower' },
  higher: {
    phrases: `higher; larger; greater; bigger; more; longer; wider; more of`,
    concept: '',
    direction: 'higher',
  },
  lower: { phrases: `lower; smaller; less; shorter; narrower; fewer`, concept: '', direction: 'lower' },
  warmer: { phrases: `warmer`, concept: 'cct', direction: 'lower' },
  cooler: { phrases: `cooler; colder`, concept: 'cct', direction: 'higher' },
};

export const superlativeWords: Readonly<
  Record<string, { phrases: string; concept: string; direction: 'higher' | 'lower' }>
> = {
  brightest: {
    phrases: `brightest; most luminous; highest peak luminance; highest peak brightness`,
    concept: 'peak',
    direction: 'higher',
  },
  dimmest: {
    phrases: `dimmest; least bright; lowest peak luminance; lowest peak brightness`,
    concept: 'peak',
    direction: 'lower',
  },
  dearest: { phrases: `dearest; most expensive; priciest; costliest`, concept: 'price', direction: 'higher' },
  cheapest: {
    phrases: `cheapest; least expensive; most affordable; lowest price`,
    concept: 'price',
    direction: 'lower',
  },
  mostAccurate: {
    phrases: `most accurate; most accurate greys/grey/greyscale; truest; most precise; most faithful; lowest average error; best greyscale; best grayscale; best grey tracking`,
    concept: 'greyError',
    direction: 'lower',
  },
  leastAccurate: {
    phrases: `least accurate; highest average error; least faithful; worst average; worst average error; worst greyscale; worst greyscale error; worst grey tracking; worst average greyscale error`,
    concept: 'greyError',
    direction: 'higher',
  },
  contrastiest: {
    phrases: `contrastiest; highest contrast; best contrast; highest native contrast; most contrast; greatest contrast; best native contrast; strongest contrast`,
    concept: 'contrast',
    direction: 'higher',
  },
  flattest: {
    phrases: `lowest contrast; worst contrast; weakest contrast; least contrast; lowest native contrast; poorest contrast`,
    concept: 'contrast',
    direction: 'lower',
  },
  deepestBlacks: {
    phrases: `deepest black(s); darkest black(s); lowest black level(s); best blacks; blackest; lowest black`,
    concept: 'black',
    direction: 'lower',
  },
  highestBlacks: {
    phrases: `highest black level(s); lightest blacks; highest black`,
    concept: 'black',
    direction: 'higher',
  },
  fastest: {
    phrases: `quickest; fastest; lowest input lag; lowest lag; least lag; most responsive; shortest lag; lowest latency; shortest input lag`,
    concept: 'lag',
    direction: 'lower',
  },
  slowest: {
    phrases: `slowest; highest input lag; highest lag; most lag; longest lag; laggiest; least responsive; longest input lag`,
    concept: 'lag',
    direction: 'higher',
  },
  quietest: { phrases: `quietest`, concept: 'noise', direction: 'lower' },
  loudest: { phrases: `loudest; noisiest`, concept: 'noise', direction: 'higher' },
  thirstiest: {
    phrases: `thirstiest; most power hungry; hungriest; highest power consumption; highest consumption`,
    concept: 'power',
    direction: 'higher',
  },
  thriftiest: {
    phrases: `thriftiest; most frugal; most efficient; lowest power consumption; most economical; lowest consumption`,
    concept: 'power',
    direction: 'lower',
  },
  widest: {
    phrases: `widest gamut; widest colour gamut; largest gamut; best coverage; highest coverage; widest colour; widest coverage; biggest gamut; most colour`,
    concept: 'coverage',
    direction: 'higher',
  },
  narrowest: {
    phrases: `narrowest gamut; smallest gamut; lowest coverage; narrowest colour gamut; worst coverage`,
    concept: 'coverage',
    direction: 'lower',
  },
  mostEven: {
    phrases: `most even; most uniform; best uniformity; most evenly lit`,
    concept: 'uniformity',
    direction: 'lower',
  },
  leastEven: {
    phrases: `least even; patchiest; worst uniformity; least uniform; most uneven`,
    concept: 'uniformity',
    direction: 'higher',
  },
  thinnest: { phrases: `thinnest; slimmest; shallowest`, concept: 'fact:depth', direction: 'lower' },
  thickest: {
    phrases: `thickest; fattest; chunkiest; bulkiest; deepest`,
    concept: 'fact:depth',
    direction: 'higher',
  },
  lightest: { phrases: `lightest`, concept: 'fact:weight', direction: 'lower' },
  heaviest: { phrases: `heaviest`, concept: 'fact:weight', direction: 'higher' },
  warmest: { phrases: `warmest`, concept: 'cct', direction: 'lower' },
  coolest: { phrases: `coolest; coldest`, concept: 'cct', direction: 'higher' },
  best: { phrases: `best; finest`, concept: '', direction: 'higher' },
  worst: { phrases: `poorest`, concept: '', direction: 'lower' },
};

/** Adjectives in "as bright as": what they compare. */
export const equativeWords: Readonly<
  Record<string, { phrases: string; concept: string; direction: 'higher' | 'lower' }>
> = {
  bright: { phrases: `bright`, concept: 'peak', direction: 'higher' },
  expensive: { phrases: `expensive; dear; costly; pricey`, concept: 'price', direction: 'higher' },
  cheap: { phrases: `cheap; affordable`, concept: 'price', direction: 'lower' },
  contrasty: {
    phrases: `contrasty; much contrast; high a contrast`,
    concept: 'contrast',
    direction: 'higher',
  },
  accurate: { phrases: `true`, concept: 'greyError', direction: 'lower' },
  quick: { phrases: `quick; quickly; fast; responsive`, concept: 'lag', direction: 'lower' },
  dark: { phrases: `dark`, concept: 'peak', direction: 'lower' },
  quiet: { phrases: `quiet`, concept: 'noise', direction: 'lower' },
  hungry: { phrases: `power hungry; hungry; much power`, concept: 'power', direction: 'higher' },
  slim: { phrases: `slim; thin; shallow`, concept: 'fact:depth', direction: 'lower' },
  deep: { phrases: `deep; thick`, concept: 'fact:depth', direction: 'higher' },
  wide: { phrases: `wide`, concept: 'fact:width', direction: 'higher' },
  tall: { phrases: `tall`, concept: 'fact:height', direction: 'higher' },
  heavy: { phrases: `heavy`, concept: 'fact:weight', direction: 'higher' },
  many: { phrases: `many`, concept: '', direction: 'higher' },
  even: { phrases: `evenly lit; uniform; even`, concept: 'uniformity', direction: 'lower' },
};

/** One set before or behind another, without a number: by what is better of the quantity. */
export const standingWords: Readonly<Record<string, string>> = {
  ahead: `beat(s); tops; surpasses; betters; outdoes; outperforms; outstrips; outclasses; edges out; edges ahead of; thrashes; trounces; pips; wins; wins out; ahead; ahead of; leads; has the edge; has the edge on/over; has the upper hand; gets the better of; comes out on top; comes out ahead; puts to shame; overtakes; overhauls; outshines; outguns; leaves behind; leaves standing`,
  behind: `trails; loses to; lose to; loses out to; behind; lags behind; falls behind; no match for; no match; comes second to; second to; plays second fiddle to; cannot keep up with; can't keep up with; cannot match; can't match; beaten by; bettered by; outdone by; surpassed by; loses out; falls short of; not up to`,
};

/** Colours of a tint, as nouns and adjectives. */
export const tintWords: Readonly<Record<string, string>> = {
  red: `reddish; red tint; red cast; pinkish red; ruddy; too red; red tinge`,
  yellow: `yellowish; yellow tint; yellow cast; yellow tinge; too yellow; yellowy`,
  green: `greenish; green tint; green cast; green tinge; too green; greeny`,
  cyan: `cyan tint; cyan cast; cyan tinge; too cyan; turquoise tint; turquoise cast`,
  blue: `bluish; blueish; blue tint; blue cast; blue tinge; too blue; blue push`,
  magenta: `magenta tint; magenta cast; magenta tinge; pinkish; pink tint; pink cast; purplish; too magenta; pink tinge; purple tint; purple cast`,
  none: `neutral; the tint/cast is gone; the tint/cast has gone; no tint; no cast; no colour cast; untinted; free of tint; free of any tint; free of colour casts; free of any cast; free of casts; tint free; without a tint; without any tint; without a cast; without tint; without any cast; no visible tint; no tint at all; free from tint; no trace of a tint; no hint of a tint; no tinge; perfectly neutral; without a colour cast; no trace of tint; free of any colour cast; no tints; no casts; no real tint; no tint to speak of; free of tints; free of a tint; no discernible tint; not tinted; residual tint : none; tint : none; cast : none`,
  tinted: `tinted; lose their neutrality; loses its neutrality; lose neutrality; loses neutrality; off neutral; a tint; not neutral; a colour cast; a cast`,
};

/** Directions of an error. */
export const directionWords: Readonly<Record<string, string>> = {
  over: `brighter than its/the pq/hlg/bt.1886 target; brighter/lighter than the pq/hlg curve; brighter/lighter than the pq/hlg curve asks; brighter/lighter than the bt.1886 curve; brighter than its/their target; brighter than target; lighter than its/their target; oversaturated; over saturated; too saturated; overcooked; supersaturated; too strong; overshoots its target; overshoots; above its target; too vivid; over its target; above target; over target; too much; oversaturates; over saturates; overdone; too rich; too lively; too bright; brighter than it should be; brighter than they should be; brighter than target; brighter than the target; brighter/lighter than its target; brighter/lighter than the target/reference curve; brighter/lighter than the target/reference curve asks; brighter/lighter than the curve; brighter than intended; too light; lighter than it should be; lighter than they should be; too high; above the curve; above the target; over the target; above the standard; above the pq curve; above the reference curve; brighter than the standard; overbright; lies above the curve; over the curve; too luminous; above bt.1886; above bt 1886; above pq; overshoots the target; more saturated than it should be; too high in saturation; lifted; raised; above its saturation target; over its saturation target; oversaturation; over saturation; brighter than the standard asks; brighter than the curve asks; brighter than the signal asks; brighter than asked; brighter/lighter than it/they ought to be; brighter/lighter than it/they should be; laid on too thick; too thick; too much saturation; too much light; brighter/lighter than bt.1886/pq; brighter/lighter than bt.1886/pq asks/wants/prescribes [for]; more light than it/they should; higher than it/they should [be]; higher than it/they ought to be; more light than bt.1886/pq prescribes/asks/wants; more light than the standard/target/curve prescribes/asks/wants; more light than the standard/target/curve`,
  under: `darker/dimmer than its/the pq/hlg/bt.1886 target; darker/dimmer than the pq/hlg curve; darker/dimmer than the pq/hlg curve asks; darker/dimmer than the bt.1886 curve; darker than its/their target; darker than target; dimmer than its/their target; undersaturated; under saturated; desaturated; washed out; undershoots its target; undershoots; short of its target; below its target; under its target; below target; under target; undersaturates; under saturates; falls short of its target; fall(s) short of the pq/hlg/reference/target/bt.1886 curve; falls short of pq; fall(s) short of its/the saturation target; fall(s) short of target/saturation; fall(s) short of the target; too pale; pale; too weak; too dark; darker than it should be; darker than they should be; darker than target; darker than the target; darker/dimmer than its target; darker/dimmer than the target/reference curve; darker/dimmer than the target/reference curve asks; darker/dimmer than the curve; darker/dimmer than the curve asks; darker than intended; too dim; too low; below the curve; under the curve; below the target; under the target; below the standard; below the pq curve; darker than the standard; dimmer than it should be; dimmer than target; misses its saturation target; short of target; short of its saturation target; short of the target; crushed; less saturated than it should be; under the reference curve; below bt.1886; below bt 1886; below pq; undershoots the target; not saturated enough; below its saturation target; under its saturation target; undersaturation; under saturation; lacking in saturation; lacks saturation; short on saturation; darker than the standard asks; darker than the signal asks; darker than asked; short of saturation; too muted; muted; darker/dimmer than it/they ought to be; darker/dimmer than it/they should be; too little saturation; too little light; darker/dimmer than bt.1886/pq; darker/dimmer than bt.1886/pq asks/wants/prescribes [for]; underdone; less light than it/they should; lower than it/they should [be]; lower than it/they ought to be; less light than bt.1886/pq prescribes/asks/wants; less light than the standard/target/curve prescribes/asks/wants; less light than the standard/target/curve`,
  'on-target': `on target; spot on target; on the target; dead on target; on its target; right on target; follows the curve; tracks the curve; follows pq; tracks pq; follows bt.1886; tracks bt.1886; follows bt 1886; tracks bt 1886; follows the pq curve; tracks the pq curve; follows the standard; tracks the standard; sticks to the curve; keeps to the curve; hits its target; hits the target; hits target; follows the target; tracks the target; follows the bt.1886 curve; tracks the eotf; follows the eotf; follow pq; follow the curve; track the curve; hugs the curve; hugs the target; hugs pq; correctly saturated; neither over nor undersaturated; neither over - nor undersaturated; neither over nor under saturated; neither oversaturated nor undersaturated; neither undersaturated nor oversaturated; neither too dark nor too bright; neither too bright nor too dark; neither too high nor too low; spot on; tracked faithfully; tracked closely; is tracked; is followed; followed closely; followed faithfully; meets its target; meets the target; on the curve; follows its target; correct; sticks to pq; keeps to pq; on the mark; hugs the pq curve; sits on the curve; sits on the target; hit their targets; hit their target; hits its saturation target; hits the saturation target; meet their targets; are on target; all on target; tracks hlg; follows hlg; tracks the hlg curve; tracks its target; follows st 2084; tracks st 2084; tracks closely; adheres to pq; adheres to the curve; obeys the curve; obeys pq; correct saturation; lean(s) neither way; leans neither way; tracked accurately; is tracked accurately; accurately tracked; tracks accurately; neither warm nor cool; neither cool nor warm; neither too warm nor too cool; neither over nor under; keep(s) to its/their target(s); exactly where it/they should be; right where it/they should be; where it/they should be`,
  'rolls-off': `rolls off; tone mapping sets in; tone mapping begins; tone mapping starts; tone mapping kicks in; roll off; rolled off; rolls highlights off; rolls the highlights off; rolls them off; rolls off gently; rolls off softly; rolling off; eases off; rolls them off gently; rolls off the highlights; rolls it off; gentle roll off; soft roll off; soft knee; rolls off highlights`,
  clips: `clips; hard clips; clipped; clips hard; clip; clips abruptly; clips highlights; hard clipping; clips the highlights; cuts off; clips them; clips everything; hard clip`,
  neither: `neither clips nor rolls off; neither rolls off nor clips; no roll off; without roll off; does not roll off or clip`,
  warm: `warmer than d65; warmer than it/they should be; warmer than it/they ought to be; warmer than neutral; warmer than the standard/target/reference; warmer than ideal; warmer than intended; warmer than it has any right to be; too warm; warm; warmish; on the warm side; on the warm side of neutral; a warm white; slightly warm; runs warm; warm side; leans warm; a warm cast/tint/tinge/tone; warm cast/tint/tinge; warm toned; to/towards the warm side`,
  cool: `cooler than d65; cooler/colder than it/they should be; cooler/colder than it/they ought to be; cooler/colder than neutral; cooler/colder than the standard/target/reference; cooler/colder than ideal; cooler/colder than intended; cooler/colder than it has any right to be; too cool; cool; cold; coolish; too cold; on the cool side; on the cold side; a cool white; runs cool; cool side; leans cool; a cool/cold cast/tint/tinge/tone; cool/cold cast/tint/tinge; cool toned; to/towards the cool/cold side; chilly`,
};

/** Set phrases that look like claims and are none. */
export const idiomLines = `
  through it all; the clipping point; clipping point; power law; half light; point of reference; power curve; power function; by contrast; by way of contrast; no less; behind me; behind us; under one roof; less alike; more alike; part company; and nowhere else; but nowhere else; and not before; the other way; the other way round; the opposite way; in the other direction; in the opposite direction
  turn(s) the tables; turned the tables; turning the tables; one hundred percent sure; a hundred percent sure; 100 % sure; 100 percent sure; 100 per cent sure; two thumbs up; at the end of the day; first and foremost; at first glance; at first sight; on the one hand; on the other hand; second to none; second thoughts; one of a kind; one way or another; one thing; for one; the price of all this/that; the price to pay; a price to pay; cast or no cast; tint or no tint; award or no award; believe it or not; like it or not; whether you like it or not; two sides of the same coin; the lion's share; nine times out of ten; one more time; once or twice; at once; in two minds; in one go; on all fours; back to square one; a second look; a second opinion; the best of both worlds; best of both worlds; for the best; at best; better late than never; better off; more or less; more than welcome; no more no less; more than meets the eye; more often than not; last but not least; not least; less is more; for better or worse; for better or for worse; so far so good; sooner or later; no doubt; no wonder; no surprise; no need; no matter; no reason; no longer need; no one; in no time; all in all; all the same; after all; above all; above board; over and above; at all; all of a sudden; once and for all; not at all; in all fairness; and so on; for all that; all things considered; as it happens; as it happened; as it turns out; as it turned out; as it stands; when all is/'s said and done; it has to be said; it must be said; truth be told; if truth be told; as luck would have it; be that as it may; for what it is/'s worth; come to think of it; as you would/might/may expect; as one would/might/may expect; as might be expected; all but; never mind; now and then; every now and then; every so often; every time; every bit; every inch; as ever; first of all; in the first place; first impressions; first things first; third party; first party; first rate; second hand; zero day; zero effort; a million miles away; in a nutshell; on second thoughts; one by one; one after another; one after the other; two by two; says/say/said more about; tells you/us more about;  one another; each other; one thing at a time; 24/7; ten out of ten for style; five minutes; a minute or two; half the battle; half the fun; half hearted; half an hour; half an eye; half way; halfway; half time; second nature; first class; top notch; from one moment to the next; best wishes; best of all; at its best; make the best of; worst case scenario; if the worst comes to the worst; in the long run; in the short term; on balance; by far; under the circumstances; under the hood; over time; over there; over here; over the years; over the air; over again; under way; under control; under test; under pressure; below the fold; beyond doubt; beyond that; beyond question; above the fold; past caring; in light of; in the light of; in the spotlight; in the limelight; light years; shed light; bring to light; light hearted; in black and white; black friday; black box; in the red; in the black; green light; red carpet; blue moon; white lie; grey area; red herring; a far cry; out of the blue; give the green light; seen to be believed; as you can see; see below; see above; see the table; see our; let us see; wait and see; see for yourself; see how; we shall see; seen so far; no two; of two minds; third time lucky; see to it; that said; having said that; needless to say; to say the least; strange to say; dare we say; i dare say; it goes without saying; more and more; less and less; better and better; all too; over the top; no small feat; more than enough; little more to say; half a chance; put two and two together; the naked eye; would sooner; hard pressed to see it; hard put to see it; struggle to see it; in full swing; full marks for effort; tops the list of; by half; by and large a; a better idea; know better; no better place; no better way; what's more; more importantly; more precisely put; to be precise; to be exact; to be more precise; in more detail; a closer look; higher being; further reading; more on that; more about that; more on this; more of that; more later; more below; more details; more information; no more to say; less said; the less said the better; worse still; better still; worse luck; none the worse; none the less; nonetheless; nevertheless; so much the better; all the better for it; for the better; no worse for wear; the worse for wear; price is right; light up; lights up; light show; any more; anymore; any longer`;

/** Adjectives without a definition: opinion candidates, and what drift looks at. */
export const opinionWords = `
  punchy; narrow; wide; dim; gorgeous; beautiful; impressive; disappointing; excellent; superb; stunning; vivid; lifeless; dull; rich; natural; crisp; sharp; smooth; stylish; elegant; ugly; sturdy; flimsy; solid; mediocre; decent; respectable; poor; weak; strong; fantastic; great; good; bad; inky; deep; bright; bright enough; dazzling; blinding; searing; glorious; lacklustre; pleasing; pleasant; convincing; unconvincing; brilliant; terrific; wonderful; awful; terrible; muddy; murky; flat; lively; lifelike; immersive; striking; remarkable; outstanding; acceptable; passable; ordinary; handsome; attractive; sluggish; snappy; responsive; thin sounding; tinny; boomy; balanced; harsh; generous; expensive; cheap; affordable; dear; pricey; good value; bargain; overpriced; well built; poorly built; luxurious; premium; plasticky; intuitive; clumsy; confusing; tidy; cluttered; soothing; colourful; garish; gaudy; lovely; fine; neat; clever
`;

/** Verbs and prepositions that lead from a colour to the direction of its error: "leans towards green". */
export const leanLines = `lean(s) towards/toward/to; a hint of; hint of; a trace of; trace of; a touch of; a suggestion of; a whisper of; a tinge of; a dash of; drift(s) towards/toward/to/into; tend(s) towards/toward/to; veer(s) towards/toward/to/into; tilt(s) towards/toward/to; push(es) towards/toward/to; shift(s) towards/toward/to; turn(s) towards/toward/to; pull(s) towards/toward/to; stray(s) towards/toward/to/into; slide(s) towards/toward/to/into; go(es) towards/toward; lean(s); drifting towards/toward/to; leaning towards/toward/to; turns; biased towards/toward; skew(s) towards/toward/to; skewed towards/toward; nudged towards/toward; tip(s) towards/toward/to/into; wander(s) towards/toward/to/into; shifted towards/toward; move(s) towards/toward; swing(s) towards/toward/to; a shift towards/toward/to; a lean towards/toward; a bias towards/toward`;

/** Verbs and nouns of an award. */
export const awardLines = `earns; earn; wins; win; receives; receive; gets; takes; takes home; awarded; given; deserves; carries; we award; we give; picks up; collects; worthy of`;

/** Ends of a superlative that put a set above all others: "the lowest error of them all". */
export const wholeField: readonly string[] = [
  'of them all',
  'of the lot',
  'of the bunch',
  'of all sets',
  'of the pack',
];

/** Behind a share of a set's own quantity: "half of its luminance is left". */
export const keptOrLost: readonly string[] = ['left', 'is left', 'remains', 'survives', 'gone', 'lost'];
