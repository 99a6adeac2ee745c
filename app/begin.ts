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

/*
 * What the window begins with: everything that the first room needs is asked for at once, the frame and the room's own
 * program, the library's lists, so that none waits for another. The programs first, since a browser opens only six
 * ways to one host; news before what is read, so that no change is missed; the common styles first, so that a room's
 * own stand above them.
 */
const { room, path } = parseRoute(window.location.hash);
void import('./main.tsx');
void roomParts[room].fetch();
followNews();
void useLibrary.getState().load();
if (room === 'draft' && path[0]) askForArticle(path[0]);
void useEvidence.getState().load();
