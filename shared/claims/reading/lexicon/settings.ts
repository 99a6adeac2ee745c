/** Settings and things on the set that no run is kept by; beside one of them a statement has no run to be judged on. */

const listed = (text: string): ReadonlySet<string> => new Set(text.split(';').map((word) => word.trim()));

/** Where a switch or a slider stands: "with eco mode on", "with the sharpness turned up". */
export const switchWords = listed(
  'on;off;up;down;enabled;disabled;engaged;active;activated;deactivated;maximum;minimum;maxed;high;low;medium;zero;running',
);

/** What may be on, off or up without changing the picture, or is a condition that is read elsewhere. */
export const harmlessSwitches = listed(
  'light;lights;lamp;lamps;ceiling;curtain;curtains;blind;blinds;shutters;sun;stand;feet;foot;base;sound;volume;speakers;fan;clothes;shoes;glasses;hand;hands;eye;eyes;ear;ears;head;wall;screen;set;television;tv;show;film;scene;picture;face;back;feet;windows;window;door;doors',
);

/** "At its brightest setting", "with the backlight at maximum" */
export const settingNouns = listed('setting;settings;position;notch;stop;backlight;brightness;slider');

/** What makes an amount another than the price: "with the trade-in", "after cashback". */
export const priceTerms = listed(
  'trade-in;trade;cashback;voucher;vouchers;code;coupon;rebate;discount;discounts;bundle;contract;membership;subscription;offer;sale;sales;finance;credit;deposit;instalments;points',
);
