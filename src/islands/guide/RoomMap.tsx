import type { Report } from '../../calc/evaluate.ts';
import { type Room, rooms } from '../../calc/guide.ts';
import { LatheLarge } from '../shared/LatheLarge.tsx';
import { questionPlace } from '../shared/places.ts';
import { doorOf, Key, sayRoom, viewOf } from './Rooms.tsx';

/** Shorter than in the list below: names stand side by side on the drawing. */
const noteOf = (view: Report['rooms'][number] | undefined, room: Room): string =>
  view?.state === 'settled' ? 'settled' : sayRoom(view, room);

/** The lathe as a map of the questions: what is settled is blued in, and each number leads into its room. */
export function RoomMap({ report }: { report: Report | undefined }) {
  const views = report?.rooms ?? [];
  return (
    <div class="room-map">
      <LatheLarge
        rooms={rooms.map((room) => ({
          id: room.id,
          number: room.number,
          name: room.name,
          note: noteOf(viewOf(report, room), room),
          href: questionPlace(doorOf(room, report)),
        }))}
        states={Object.fromEntries(views.map(({ id, state }) => [id, state]))}
      />
      <Key />
    </div>
  );
}
