/**
 * Cautions where work on a set can hurt people or the set. They remind; local codes and licensed practice decide.
 * Common practice, no source, unless a line names one.
 */
export const cautions: Readonly<Record<string, string>> = {
  flashing:
    'Flashing patterns can cause seizures in people with photosensitive epilepsy. Warn everyone in the room, keep the room lit, look away at any discomfort, and stop. Recommendation ITU-R BT.1702 gives limits for what is published (from memory).',
  'image-retention':
    'A static pattern can leave an image: for good on a self-emissive panel, for a while on others. Keep it up no longer than the reading takes, put moving content between patterns, and let the set run its own compensation afterwards.',
  bright: 'A bright full field in a dark room strains the eyes. Look away while the meter works.',
  'two-person-lift':
    'Two people lift a large set, by the frame and upright, never by the panel. Follow the maker’s instructions and your workplace’s rules on lifting.',
  'tip-over':
    'A set on its stand can tip. Put it on a level, wide surface, fasten the anti-tip strap, and keep children away.',
  'wall-fixing':
    'A wall mount must suit the wall, the weight and the set’s fixing holes. Have it fitted by a qualified person where local codes ask for it.',
  mains:
    'Use an earthed, undamaged outlet and leave mains wiring to a licensed electrician under the local code. Power meters go between plug and outlet, never into the wiring.',
  'opened-chassis':
    'Do not open the set: parts inside stay charged after unplugging. Opening is for licensed service people under local codes.',
};
