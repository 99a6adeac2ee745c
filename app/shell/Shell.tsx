import { lazy, Suspense, useEffect, useState } from 'react';
import { Toaster } from 'sonner';
import { listenForCommands, registerCommands } from '../commands/registry.ts';
import { onRefused } from '../door/door.ts';
import { NewArticleSheet } from '../draft/panels/NewArticleSheet.tsx';
import { useEvidence } from '../stores/evidence.ts';
import { useLibrary } from '../stores/library.ts';
import { followNews } from '../stores/news.ts';
import { VerdictSymbols } from '../theme/VerdictGlyph.tsx';
import { TourLine } from '../tour/TourLine.tsx';
import { tourCommands } from '../tour/tourCommands.ts';
import { ErrorBoundary } from './ErrorBoundary.tsx';
import { HelpSheet } from './HelpSheet.tsx';
import { NameSheet } from './NameSheet.tsx';
import { Palette } from './Palette.tsx';
import { hashOf, type Room, roomNames, rooms, useRoute } from './route.ts';
import { ShutDoorPage, UnreadableLibraryPage } from './ShutDoorPage.tsx';
import { SlotContext } from './Slots.tsx';
import { useSheet } from './sheets.ts';
import { shellCommands } from './shellCommands.ts';
import { refuseStrayDrops } from './strayDrops.ts';

const roomViews: Record<Room, ReturnType<typeof lazy>> = {
  shelf: lazy(async () => ({ default: (await import('../shelf/ShelfRoom.tsx')).ShelfRoom })),
  bench: lazy(async () => ({ default: (await import('../bench/BenchRoom.tsx')).BenchRoom })),
  draft: lazy(async () => ({ default: (await import('../draft/DraftRoom.tsx')).DraftRoom })),
  score: lazy(async () => ({ default: (await import('../rooms/ScoreRoom.tsx')).ScoreRoom })),
  desk: lazy(async () => ({ default: (await import('../rooms/DeskRoom.tsx')).DeskRoom })),
  release: lazy(async () => ({ default: (await import('../rooms/ReleaseRoom.tsx')).ReleaseRoom })),
};

/** The window's frame: rooms at the left, the room on show, the status line. */
export function Shell() {
  const route = useRoute();
  const library = useLibrary();
  const sheet = useSheet((state) => state.sheet);
  const [nav, setNav] = useState<HTMLElement | null>(null);
  const [status, setStatus] = useState<HTMLElement | null>(null);
  const [shut, setShut] = useState(false);

  useEffect(() => {
    const stops = [
      onRefused(() => setShut(true)),
      registerCommands([...shellCommands, ...tourCommands]),
      listenForCommands(window),
      followNews(),
      refuseStrayDrops(window),
    ];
    void useLibrary.getState().load();
    void useEvidence.getState().load();
    return () => {
      for (const stop of stops) stop();
    };
  }, []);

  useEffect(() => {
    document.title = `${roomNames[route.room]} · Nitproof`;
  }, [route.room]);

  if (shut) return <ShutDoorPage />;
  if (library.state === 'failed') return <UnreadableLibraryPage faults={library.faults} />;

  const View = roomViews[route.room];
  return (
    <SlotContext value={{ nav, status }}>
      <VerdictSymbols />
      <div className="window">
        <nav className="nav" aria-label="Rooms">
          <b className="name">Nitproof</b>
          <ul className="nav-rooms">
            {rooms.map((room) => (
              <li key={room}>
                <a href={hashOf(room)} aria-current={room === route.room ? 'page' : undefined}>
                  {roomNames[room]}
                </a>
              </li>
            ))}
          </ul>
          <div ref={setNav} style={{ display: 'contents' }} />
        </nav>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a page of nothing but text is scrolled by keyboard too */}
        <main className="room" id="room" tabIndex={0}>
          <ErrorBoundary key={route.room} part={`The ${roomNames[route.room]}`}>
            <Suspense fallback={null}>
              <View />
            </Suspense>
          </ErrorBoundary>
        </main>
        <TourLine />
        <footer className="status">
          <div className="status-slot" ref={setStatus} />
        </footer>
      </div>
      <div id="announcements" className="unseen" aria-live="polite" />
      <Toaster position="bottom-right" offset={44} duration={6000} gap={8} />
      {sheet === 'palette' ? <Palette /> : null}
      {sheet === 'name' ? <NameSheet /> : null}
      {sheet === 'help' ? <HelpSheet /> : null}
      {sheet === 'new-article' ? <NewArticleSheet /> : null}
    </SlotContext>
  );
}
