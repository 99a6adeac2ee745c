/**
 * Words that name what is measured: concept → phrases (one a line or parted by ";").
 * "grey/white" are alternatives, "(s)" a plural, [word] may be missing. Spell the British way.
 * A concept becomes a quantity id together with the rest of the clause (`subject.ts`).
 */
export const quantityWords: Readonly<Record<string, string>> = {
  greyError: `
    greyscale error(s); greyscale colour error(s); greyscale delta e; greyscale δe; greyscale de; greyscale accuracy; greyscale deviation(s)
    error(s) of/in/on/across the greyscale; error(s) in [the] grey(s); error(s) across the grey(s); grey error(s); greyscale tracking error(s)
    grey ramp error(s); white balance error(s); error(s) in white balance; δe of/in/on/across the greyscale; delta e of/in/on/across the greyscale
    greyscale δe2000; greyscale de2000; greyscale; grey scale; grey scale error(s); grey tracking; greyscale tracking; track(s) grey(s); tracked grey(s); tracking grey(s); grey ramp; grey steps; greyscale ciede2000
    colour error(s) of/in/on/across the greyscale; colour error(s) of/in the grey(s); deviation of/in/on the greyscale; error(s) on the grey ramp
  `,
  error: `
    error(s); deviation(s); δe; δe2000; δe00; de2000; de00; delta e; delta e 2000; delta e2000; deltae; deltae2000; ciede2000; de; δe(s); sweep(s); saturation sweep(s); colour shift(s); ciede 2000; δe 2000
  `,
  deItp: `δe_itp; δeitp; de_itp; delta e itp; deitp; δe itp; greyscale δe itp; greyscale δeitp; greyscale δe_itp; greyscale deitp; δeitp error(s); δe itp error(s); itp error(s)`,
  totalWord: `with luminance; including luminance; luminance included; with luminance included; total error; in total; luminance and all; total δe; total greyscale error(s); total colour error`,
  chartError: `
    [colour] chart; [colour] chart error(s); [colour] chart patch(es); chart δe; chart δe2000; colour chart δe; patch(es); error(s) on/across/over the [colour] chart; colour checker; test chart; 24 patch chart; chart of 24 patch(es); 24 patch colour chart
    colour error(s) on/across/over the [colour/test] chart; chart colours; chart colour error(s); chart errors; chart deviation(s)
    colour accuracy; colour error(s); colour δe; colour delta e; colour δe2000; error(s) in colour(s); colour deviation(s)
  `,
  tint: `tint; cast; colour cast; hue cast; tinge; colour tint`,
  gamma: `gamma; average gamma; effective gamma; measured gamma; gamma value; gamma curve; gamma average`,
  gammaSlope: `gamma slope; slope of the gamma; log slope`,
  eotf: `
    eotf; eotf error(s); eotf tracking; pq; pq curve; pq tracking; st 2084; hlg curve; bt.1886; bt 1886; tone curve; the curve; luminance tracking; bt.1886 curve; bt 1886 curve; st 2084 curve; eotf curve; pq eotf; tone mapping; brightness tracking
    luminance error(s); tracking of the curve; eotf deviation(s)
  `,
  rolloff: `roll off; rolloff; roll-off; knee`,
  cct: `
    colour temperature; correlated colour temperature; cct; white balance; white point temperature; colour temperature of white; temperature of white; white's temperature; white temperature
  `,
  duv: `duv; δuv; d uv; distance from the planckian locus; distance from the locus`,
  whitePoint: `white point; white; δu'v' of white; white point error; white point distance; reference white; δu'v'`,
  coverage: `coverage; gamut coverage; colour gamut coverage; gamut; colour gamut; colour space coverage; colour space; colour volume; gamuts`,
  area: `gamut area; area; relative gamut area; gamut size; gamut volume; by area; in area`,
  peak: `
    peak luminance; peak brightness; peak white; peak output; peak light output; peak(s); luminance peak; brightness peak; highlight luminance; highlight brightness; maximum luminance; maximum brightness; max luminance; max brightness; highest luminance; hdr peak; hdr peak luminance; hdr brightness; hdr luminance; hdr peak brightness; peak hdr luminance; peak hdr brightness; hdr highlights; peak level; top luminance; specular highlights; highlight peak(s); highlight output; peak luminances
  `,
  sustained: `sustained luminance; sustained brightness; sustained peak; sustained output; long term luminance; sustained white; sustained level; sustained peak luminance; sustained peak brightness; sustained full screen luminance; settled luminance`,
  hold: `of its/the opening figure/value/level/luminance; of its/the starting figure/level; of where it started/began; of what it started/began with; of its original/first level/value/luminance/brightness; of its peak; of its initial luminance; of her peak; of his peak; of its initial brightness; of its starting luminance; of its starting brightness; of the initial luminance; of the initial peak; of its first reading; of that peak; of its peak luminance; of its peak brightness; of the peak; of its peak output; of its own peak; of its own opening figure; of its own maximum; of its strength; peak hold; luminance hold`,
  luminance: `luminance; brightness; light output; light; output; luminance level`,
  sdrWhite: `sdr luminance; sdr brightness; sdr white; sdr peak; sdr peak luminance; white luminance; luminance of white; white level; full white; sdr peak white; sdr white luminance; sdr light output; sdr peak brightness`,
  black: `black level(s); black luminance; blacks; black; the black; minimum luminance; luminance of black; black floor; minimum black; native black; native black level`,
  contrast: `contrast; native contrast; contrast ratio; native contrast ratio; static contrast; panel contrast; native figure; native number; native ratio; on off contrast; full field contrast; contrast ratios; contrast native; native panel contrast`,
  contrastChequer: `chequer figure; chequer ratio; chequer; chequers; chequerboard contrast; 4 × 4 chequerboard; 4 x 4 chequerboard; chequer contrast; ansi contrast; contrast on a chequerboard; chequerboard; in scene contrast; contrast on a/the 4 × 4 chequerboard; contrast on the chequerboard; 4 × 4 chequerboard contrast; chequerboard contrast ratio; contrast on a 4×4 chequerboard; intra frame contrast; contrast within a/one frame; simultaneous contrast; contrast in a chequerboard; chequerboard pattern; chequered contrast; ansi contrast ratio`,
  contrastSequential: `sequential contrast; dynamic contrast; sequential contrast ratio; dimmed contrast; contrast with dimming; full on full off contrast`,
  uniformity: `uniformity; white uniformity; grey uniformity; brightness uniformity; luminance uniformity; screen uniformity; evenness; unevenness; unevenness of/in [the] luminance/brightness; luminance/brightness unevenness; uneven by; non uniformity; backlight uniformity; uniformity deviation; uniformity error; brightness deviation across the screen; illumination; uniformity spread`,
  colourUniformity: `colour uniformity; uniformity of colour; colour shift across the screen; chromatic uniformity; colour of the white/grey/black field/screen; tint across the screen`,
  angle: `viewing angle(s); off axis performance; viewing cone`,
  lag: `input lag; lag; input latency; latency; input delay; display lag; controller lag; display latency; input lag time; answer(s) [to] a/the/your button/controller/pad/thumb; react(s)/respond(s) to a/the/your button/controller/pad/thumb; between press and picture; from press/controller/button/hand to picture/screen`,
  response: `response time; pixels respond in; pixels respond; pixels answer; pixels answer in; pixels react; pixels react in; pixels change; pixel response; pixel response time; response; grey to grey response; transition time; panel response; average response time; response times; grey to grey time`,
  power: `power consumption; appetite for power/electricity; electricity use; electricity consumption; power draw; power; consumption; energy use; power use; energy consumption; power usage; draws; draw; consumes; uses; takes; pulls; sips; gulps; swallows`,
  standby: `standby; standby power; standby consumption; standby power consumption; standby draw; power in standby; draw in standby; consumption in standby; standby mode; on standby; in standby; idles; idling; when idle; at idle; dozing`,
  noise: `noise; fan noise; noise level; acoustic noise; hum; fan; sound level`,
  saturation: `saturation; saturation error(s); saturation target(s); colourfulness; saturation level`,
  hueError: `hue; hue error(s); hue shift; hue angle; hue deviation(s); hue target`,
  balance: `rgb balance; balance; colour balance; red green blue balance; rgb levels`,
  redBalance: `red balance; red channel; balance of red; red component; red level; red gain`,
  greenBalance: `green balance; green channel; balance of green; green component; green level; green gain`,
  blueBalance: `blue balance; blue channel; balance of blue; blue component; blue level; blue gain`,
  price: `price; price tag; asking price; list price; retail price; street price; cost; sticker price; launch price`,
  score: `score; overall score; total score; final score; verdict score; rating; overall rating; overall mark; mark; our score; overall; total; our verdict; final mark; final rating`,
  award: `award; best buy; badge; seal; recommendation award; editor's choice; recommended badge; our award`,
};

/** Reference gamuts. */
export const gamutWords: Readonly<Record<string, string>> = {
  bt709: `bt.709; bt 709; rec . 709; rec.709; rec 709; bt . 709; itu bt.709; rec709; bt709; srgb; rec.709 gamut; srgb gamut; bt.709 gamut; itu r bt.709`,
  p3: `p3; dci p3; display p3; p3 d65; dci-p3 gamut; p3 gamut; p3 colour space; dci p3 gamut; dci p3 colour space; dci gamut; dcip3; p3 colours`,
  bt2020: `bt.2020; bt 2020; rec . 2020; rec.2020; rec 2020; bt . 2020; rec2020; bt2020; uhd colour space; bt.2020 gamut; rec.2020 gamut; bt.2100 gamut; rec. 2020 colour space; itu r bt.2020`,
};

/** Chromaticity diagrams, where the sentence names one. */
export const diagramWords: Readonly<Record<string, string>> = {
  xy: `in xy; xy; cie 1931; cie 1931 xy; 1931 diagram; in the xy diagram; in cie xy; x y diagram; cie xy; in 1931; in the 1931 diagram; xy diagram; xy chart; in the xy chart; on the xy chart`,
  uv: `in u'v'; u'v'; cie 1976; 1976 diagram; in the u'v' diagram; in cie u'v'; in uv; uv; cie 1976 u'v'; in 1976; u'v' diagram; in the 1976 diagram; cie u'v'; in u ' v '; u' v'`,
};

export const hueWords: Readonly<Record<string, string>> = {
  red: `red(s)`,
  green: `green(s)`,
  blue: `blue(s)`,
  cyan: `cyan(s)`,
  magenta: `magenta(s)`,
  yellow: `yellow(s)`,
};

/** Parts of the greyscale named in words: [from, to] in % stimulus. */
export const toneWords: Readonly<Record<string, { phrases: string; from: number; to: number }>> = {
  nearBlack: { phrases: `near black; just above black; close to black`, from: 5, to: 10 },
  shadows: {
    phrases: `shadow(s); dark grey(s); dark tones; dark parts; the dark end; dark end; low end; darks; dark steps; shadow tones; shadow detail; deep shadows; the bottom of the range; the bottom of the scale`,
    from: 5,
    to: 30,
  },
  darkerHalf: {
    phrases: `darker grey(s); dimmer grey(s); dimmer half; dimmer steps; darker tones; darker steps; lower half; darker half; lower grey(s); the lower half; darker levels; lower steps`,
    from: 5,
    to: 50,
  },
  midtones: {
    phrases: `mid tone(s); midtone(s); mid grey(s); middle grey(s); mid range; the middle of the range; middle of the range; middle tones; mids; the middle of the scale`,
    from: 30,
    to: 70,
  },
  brighterHalf: {
    phrases: `brighter grey(s); lighter grey(s); upper grey(s); upper half; brighter tones; lighter tones; brighter steps; upper steps; brighter half; bright/brighter half of the scale/range/greyscale; bright half; the upper half; brighter levels; lighter steps; light grey(s); bright grey(s)`,
    from: 50,
    to: 100,
  },
  highlights: {
    phrases: `highlight(s); the very top; very top; bright tones; bright parts; the bright end; bright end; top end; bright steps; near white; the top end; the top of the range; the top of the scale`,
    from: 70,
    to: 100,
  },
};
