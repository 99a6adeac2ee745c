import './theme/fonts.css';
import './theme/tokens.css';
import './theme/base.css';
import './shell/shell.css';
import { roomParts } from './shell/roomParts.ts';
import { parseRoute } from './shell/route.ts';
import { askForArticle } from './stores/articleAhead.ts';
import { useEvidence } from './stores/evidence.ts';
import { useLibrary } from './stores/library.ts';
import { followNews } from './stores/news.ts';
import { applyLook } from './theme/themeChoice.ts';

/*
 * What the window begins with: everything that the first room needs is asked for at once, the frame and the room's own
 * program, the library's lists, so that none waits for another. The programs first, since a browser opens only six
 * ways to one host; news before what is read, so that no change is missed; the common styles first, so that a room's
 * own stand above them; theme and size before anything is drawn.
 */
applyLook(document.documentElement);
const { room, path } = parseRoute(window.location.hash);
const main = import('./main.tsx');
const program = roomParts[room].fetch();
followNews();
const lists = useLibrary.getState().load();
const house = new Promise<void>((known) => {
  const stop = useEvidence.subscribe((state) => {
    if (!state.house && state.faults.length === 0) return;
    stop();
    known();
  });
});
if (room === 'draft' && path[0]) askForArticle(path[0]);
void useEvidence.getState().load();

/** How long an empty window waits for what it is to show, ms. */
const patience = 400;

/*
 * Frame, room and lines are drawn together, once, when all are there; a door that is slow to answer gets a frame that
 * says so.
 */
void Promise.race([
  Promise.allSettled([program, lists, house]),
  new Promise((resolve) => setTimeout(resolve, patience)),
]).then(async () => (await main).show());
