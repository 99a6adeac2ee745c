/** Warnings that stand before work that can hurt; a person must have seen one before its step can be noted. */
export interface Caution {
  title: string;
  text: string;
}

export const cautions = {
  flashing: {
    title: 'Flashing pictures can cause seizures',
    text: 'Anyone who may have photosensitive epilepsy, and anyone who has not been asked, leaves the room first. Light the room, keep two metres away, stop at the first sign of unease. Nothing here starts such a pattern by itself: a person in the room does.',
  },
  static: {
    title: 'Still pictures can burn in',
    text: 'A pattern held for minutes can leave an image behind, above all on self-emissive panels. Hold it no longer than the step needs, then show moving pictures for as long again.',
  },
  lift: {
    title: 'Lift it with two people',
    text: 'Two people, by the frame and never by the panel. On its stand, away from the edge, on a surface that bears it; a set that can be pulled over is strapped as its maker says. A wall fixing is chosen for wall and weight and put up under local codes by someone licensed where they ask for it.',
  },
  mains: {
    title: 'The back stays on',
    text: 'Nothing in the protocol needs an opened chassis. Parts inside hold a dangerous charge after the plug is out. If one must be opened, that is work for someone licensed, under local codes.',
  },
} as const satisfies Record<string, Caution>;

export type CautionName = keyof typeof cautions;
