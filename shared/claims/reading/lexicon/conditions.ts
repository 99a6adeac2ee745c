/** Conditions named in words. One phrase a line or parted by ";" as in `quantities.ts`. */
export const stageWords: Readonly<Record<string, string>> = {
  'as-delivered': `
    as delivered; at delivery; on delivery; in delivery condition/state; on arrival; in its delivery condition/state; in [the] delivered condition/state; out of the box; out of box; straight out of the box; factory; factory setting(s); factory default(s); from the factory; factory fresh; unadjusted; uncalibrated; before adjustment; before calibration; before any adjustment; before adjusting; before calibrating; default settings; at default settings; in its default state; as shipped; as supplied; pre calibration; pre adjustment; untouched; as it arrives; as it leaves the factory; as it comes; before we adjusted it; before we touched anything; with default settings; before tuning; prior to adjustment; prior to calibration; without adjustment; without calibration
  `,
  adjusted: `
    after adjustment; after calibration; after adjusting; after calibrating; adjusted; calibrated; once adjusted; once calibrated; have/let/get somebody/someone calibrate/adjust it; post calibration; post adjustment; after we adjusted it; after our adjustment; after our calibration; following adjustment; following calibration; with adjustment; after tuning; after a calibration; after an adjustment; when adjusted; when calibrated; after some adjustment; after we calibrated it; once we had adjusted it; after a two point adjustment; after a full calibration; with calibration; after manual adjustment; afterwards; after it; after that; after the adjustment; after the calibration; after correction; after correcting it; once corrected; after/following [a/an/the/our/some/its] proper/full/careful/thorough/quick/professional/complete/little/manual/brief/light/further/modest/short/good/decent/two-point/ten-point/twenty-point/minimal/basic adjustment/calibration/tuning; after/following [a/an/the/our] [bit/touch/spot/round] of adjustment/calibration/tuning
  `,
};

export const signalWords: Readonly<Record<string, string>> = {
  SDR: `sdr; standard dynamic range; in sdr; with sdr; sdr content; sdr mode; sdr signal(s); sdr material; sdr measurements; in ordinary/everyday/standard/conventional television/tv/broadcasts; with ordinary/everyday/standard television/tv/broadcasts; ordinary/everyday television; ordinary broadcasts; ordinary programmes; in standard range`,
  HDR: `hdr; high dynamic range; in hdr; with hdr; hdr content; hdr mode; hdr signal(s); hdr material; hdr video; hdr measurements; hdr pictures; hdr films`,
  HDR10: `in hdr10; with hdr10; hdr10 content; hdr10 signal(s); hdr10 mode`,
  HLG: `in hlg; with hlg; hlg content; hlg signal(s); hlg mode; hlg broadcasts`,
};

export const dimmingWords: Readonly<Record<string, string>> = {
  off: `
    dimming off; local dimming off; [local] dimming to off; turn/switch off [the] [local] dimming; disable [the] [local] dimming; dimming switched/turned off; local dimming switched/turned off; without [local] dimming; with [the] [local] dimming disabled; [local] dimming disabled; with [the] [local] dimming off; with [the] [local] dimming turned/switched off; no [local] dimming engaged; dimming is off; switching dimming off; with dimming out of play; undimmed; switch/turn [local] dimming off; [local] dimming deactivated
  `,
  low: `with [the] [local] dimming low; [local] dimming to low; [local] dimming up/down to low; dimming low; dimming on low; dimming at low; dimming set to low; local dimming low; local dimming on low; local dimming set to low; with [the] [local] dimming at/on low; with [the] [local] dimming set to low; low dimming; low local dimming`,
  medium: `with [the] [local] dimming medium; [local] dimming to medium/middle; [local] dimming up/down to medium; dimming medium; dimming on medium; dimming at medium; dimming set to medium; local dimming medium; local dimming on medium; local dimming set to medium; medium dimming; medium local dimming; with [the] [local] dimming at/on medium; with [the] [local] dimming set to medium; local dimming at medium`,
  high: `with [the] [local] dimming high; [local] dimming to high/full/maximum; [local] dimming up to high/full/maximum; dimming high; dimming on high; dimming at high; dimming set to high; local dimming high; local dimming on high; local dimming set to high; high dimming; high local dimming; local dimming at high; with [the] [local] dimming on/at high; with [the] [local] dimming set to high; with [the] [local] dimming set to maximum; with [the] [local] dimming at maximum; dimming at full; dimming at maximum; dimming at its highest; dimming set to maximum`,
  on: `turn/switch on [the] [local] dimming; engage/enable [the] [local] dimming; [local] dimming in play; dimming on; local dimming on; with local dimming; dimming engaged; local dimming engaged; dimming switched/turned on; local dimming switched/turned on; with dimming; dimming active; local dimming active; dimming enabled; local dimming enabled; with [the] [local] dimming on`,
};

export const roomWords: Readonly<Record<string, string>> = {
  dark: `with the lamps/lights out/off; with the lamp/light out/off; once the lamp/light is off/out; with the lights down; in a dark room; in the dark; in a darkened room; in a dim room; in darkness; with the lights off; in a blacked out room; at night; in a black room; dark room; in a dark living room; with the curtains drawn; in pitch darkness; in pitch dark; in a pitch dark room; in a fully dark room; in a completely dark room; in a pitch black room`,
  lit: `in a daylit room; daylit room; in a lit room; in a bright room; with the lights on; with the room lights on; with all the lights on; in daylight; by day; in a bright living room; in a sunny room; in a well lit room; with bias light; with a lamp on; with ambient light; in ambient light; bright room; lit room; in room light; in a sunlit room; in normal room light`,
};

export const sideWords: Readonly<Record<string, string>> = {
  left: `to the left; from the left; on the left`,
  right: `to the right; from the right; on the right`,
  up: `above the screen; from above`,
  down: `below the screen; from below`,
  both: `to either side; on either side; either side; either way; to both sides; on both sides; both sides; left and right`,
};

export const planeWords: Readonly<Record<string, string>> = {
  vertical: `degrees/° above; degrees/° below; from above; from below; seen from above; seen from below; look(s) down on it; looking down on it; vertically; vertical; in the vertical; in the vertical plane; above or below; above the axis; below the axis; above axis; below axis`,
  horizontal: `horizontally; horizontal; in the horizontal plane; sideways`,
};

/** Signals of the panel that uniformity and angle are measured with. */
export const levelWords: Readonly<Record<string, string>> = {
  white: `on white; white screen; white field; on a white field; on a white screen; full white field; white uniformity; with a white field; with a white screen; on a full white field`,
  grey50: `on a 50 % grey screen; on a 50/fifty percent grey screen; on a 50/fifty per cent grey screen; 50 % grey field/screen/picture/raster/image; 50/fifty percent grey screen/field/picture/raster/image; 50/fifty per cent grey screen/field/picture/raster/image; grey field/screen/picture of 50 %; grey field/screen/picture of 50/fifty percent; grey field/screen/picture of 50/fifty per cent; mid grey screen/picture/one; half grey; a half grey; on a half grey field/screen; half grey field/screen; a grey picture; on grey; on mid grey; at mid grey; on 50 % grey; on [a] 50/fifty percent grey [field]; on [a] 50/fifty per cent grey [field]; grey field; mid grey field; grey screen; 50 % grey field; on a grey field; grey uniformity; 50 % grey; on a mid grey field; on a 50 % grey field; 50 percent grey; 50 per cent grey; on a grey screen; fifty percent grey`,
  black: `on black; black screen; black field; on a black field; on a black screen; black uniformity; with a black field`,
};

/** A patch that fills the screen: window 100 %. */
export const fullScreenLines = `the whole/entire screen white; the screen all white; fill the screen; fill the whole/entire screen; fill the screen with white; filling the screen; fill the panel; a/the screen filled with white; a/the screen full of white; a completely/entirely/wholly/totally white screen/field; full screen; full field; full screen white; full field white; the whole screen; the entire screen; whole screen; entire screen; across the full screen; full white screen; a white screen; an all white screen; a full screen; full white field; full white; full screen pattern; fullscreen; screen filling white; fill(s) the screen with white; filling the screen with white; fill the whole/entire screen with white; filled with white`;
