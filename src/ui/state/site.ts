import type { Enclosure } from '#core/case/record.ts';
import type { Room } from '#core/enclosure/room.ts';
import type { Scene } from '#core/measures/scene.ts';
import type { Json } from '#core/log/json.ts';
import type { LengthUnit } from '#core/units/length.ts';
import type { Area, Ground, Shift, Thing } from './spread.ts';

/** What can be put somewhere by hand. */
export interface Kind {
	readonly label: string;
}

/** Where a new thing is put. */
interface Putting {
	readonly unit: LengthUnit;
	/** The middle of it. Units and frame: mm, of its wall or floor. */
	readonly at: Shift;
	readonly on: Ground;
	/** What stands in the record there. */
	readonly record: Json | undefined;
}

/** What one drawing is of: where its things are in the record, and what they lie on. */
export interface Site<K extends Kind> {
	readonly home: readonly string[];
	readonly things: (record: Json | undefined) => readonly Thing[];
	readonly area: (room: Room) => Area;
	/** The room as it is drawn while the record of it is another: only what is drawn, nothing is judged by it. */
	readonly room: (scene: Scene, seen: Enclosure) => Room;
	/** A new thing, by its path below home. */
	readonly made: (kind: K, on: Putting) => { readonly path: readonly string[]; readonly to: Json };
}
