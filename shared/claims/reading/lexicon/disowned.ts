/** Words by which a review takes a statement back, or says that it is not its own. */

const listed = (text: string): ReadonlySet<string> => new Set(text.split(';').map((word) => word.trim()));

/** "The claim that … is false", "it is a myth that …" */
export const untrueWords = listed(
  'true;untrue;false;wrong;incorrect;mistaken;nonsense;rubbish;bunk;myth;lie;fiction;fable;legend;believe;trust;exaggeration',
);

/** "We wrote that …", "in an earlier version of this review", "by mistake" */
export const earlierWords = listed(
  'wrote;written;printed;reported;version;draft;edition;issue;review;test;article;mistake;error;oversight;count',
);
