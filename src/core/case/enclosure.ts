import { z } from 'zod';
import { WALL_IDS } from '#core/geometry/frame.ts';
import { fact, HOWS, length, text } from './fact.ts';

const how = z.enum(HOWS);
const coordinate = length(-3000, 4000);
const rect = { x0: coordinate, x1: coordinate, y0: coordinate, y1: coordinate };

const stud = z.strictObject({
	x: length(0, 4000),
	width: length(10, 120),
	how,
	/** Of steel; where it is known, its base metal in thousandths of an inch. */
	steel: z.literal([true, 18, 27, 33, 43, 54]).optional()
});

/** Studs counted on from one that is known: never found one by one. */
const rhythm = z.strictObject({ from: length(0, 4000), every: length(200, 1300), width: length(10, 120) });

/** Wood or sheet behind the finish that screws may bite. `gravity` is the oven-dry specific gravity of the wood. */
const wood = z.strictObject({
	kind: z.enum(['sheet', 'blocking']),
	...rect,
	thickness: length(6, 200),
	gravity: z.number().min(0.2).max(1).optional(),
	how
});

/** Strength declared by paper: where, how much and with which fixing. `load` in N. */
const declared = z.strictObject({
	kind: z.literal('declared'),
	...rect,
	load: z.number().min(1).max(20000),
	document: text(200),
	fixing: text(200),
	/** What the paper names as held. */
	holds: z.enum(['bars', 'seat', 'bars-and-seat']).default('bars')
});

/** Brick, block or concrete behind the finish. What a group of plugs in it takes is a matter of a test. */
const masonry = z.strictObject({
	kind: z.literal('masonry'),
	...rect,
	unit: z.enum(['solid', 'hollow', 'aerated']).optional(),
	how
});

const keepOut = z.strictObject({
	/** An electric point is a switch, a socket, a lamp or a fan: from it cables run. */
	kind: z.enum(['pipe', 'cable', 'rod', 'seam', 'valve-body', 'old-hole', 'niche', 'electric-point']),
	...rect,
	how,
	/** How far it may be from where it is recorded. */
	uncertain: length(0, 300).optional()
});

/** Something that is on the wall already. */
const existing = z.strictObject({
	what: z.enum(['grab-bar', 'seat', 'shelf', 'towel-rail', 'screen', 'other']),
	...rect,
	how,
	/** Whether it stays. */
	fate: z.enum(['keep', 'remove']),
	/** A hand will hold on to it, whatever it was made for. */
	grabbed: z.boolean().default(false),
	/** It was tested as a bar is. */
	tested: z.boolean().default(false)
});

/** Tiles in straight rows: their size without the joint, the joint, and where one crossing of joints is on the wall. */
const tiles = z.strictObject({
	across: length(20, 1500),
	up: length(20, 1500),
	joint: length(0, 20),
	x: coordinate,
	y: coordinate,
	how
});

const facing = z.strictObject({
	kind: z.enum(['tile', 'panel', 'board']),
	thickness: length(1, 150),
	/** Air behind it, to what screws bite: 0 where it lies on. */
	gap: length(0, 200).optional(),
	tiles: tiles.optional(),
	/** Light reflectance value of its face, 0 black to 100 white. */
	reflectance: z.number().min(0).max(100).optional()
});

const wall = z.strictObject({
	/** There is such a wall; a side without one is open. */
	stands: z.boolean().default(true),
	facing: facing.optional(),
	/** A sealing membrane behind the finish, which every hole goes through. */
	membrane: fact(z.boolean()).optional(),
	/** How far the face comes into the room from the foot to the top of a level held upright; less than 0 when it goes away. */
	plumb: z.strictObject({ over: length(300, 3000), out: length(-80, 80), how }).optional(),
	studs: z.record(text(40), stud).default({}),
	rhythm: rhythm.optional(),
	backing: z.record(text(40), z.discriminatedUnion('kind', [wood, declared, masonry])).default({}),
	keepOuts: z.record(text(40), keepOut).default({}),
	existing: z.record(text(40), existing).default({}),
	/** Everything behind this wall has been looked at, so that what is not recorded is not there. */
	surveyed: z.boolean().default(false)
});

/** What closes the entry; of a door with a hinge, at which end of the entry, looking in. */
const closing = z.strictObject({
	kind: z.enum(['open', 'curtain', 'door-out', 'door-in', 'slides', 'screen']),
	hinge: z.enum(['left', 'right']).optional(),
	how
});

/** A drain: its middle from the back left corner along the back wall and out from it, and its size the same ways. */
const drain = z.strictObject({
	x: length(0, 3000),
	y: length(0, 3000),
	wide: length(30, 3000),
	deep: length(30, 3000),
	how
});

/** Types of enclosure: three of the published documents, then what homes have. */
const TYPES = ['transfer', 'roll-in', 'alternate-roll-in', 'corner', 'step-in-tray', 'over-bath'] as const;

/** Categories of a new dwelling. Source: Approved Document M Volume 1, M4(2) and M4(3). */
const CATEGORIES = ['m4-2', 'm4-3-adaptable', 'm4-3-accessible'] as const;

/** An enclosure as surveyed. Lengths in mm, heights from the datum line, walls seen from inside. */
export const enclosure = z.strictObject({
	type: z.enum(TYPES),
	/** The wall at the back of who sits, named looking in from the entry; with no seat, of who washes. */
	seatWall: z.enum(WALL_IDS),
	width: fact(length(600, 3000)),
	depth: fact(length(600, 3000)),
	/** The same near the floor and near the top of the walls, where it was measured there too. */
	widthLow: fact(length(600, 3000)).optional(),
	widthHigh: fact(length(600, 3000)).optional(),
	depthLow: fact(length(600, 3000)).optional(),
	depthHigh: fact(length(600, 3000)).optional(),
	/** Top of the walls above the bathroom floor at the entry. */
	height: fact(length(1500, 4000)),
	/** The ceiling above the bathroom floor, and whether it takes the pressure of a post. */
	ceiling: fact(length(1800, 5000)).optional(),
	ceilingHolds: fact(z.boolean()).optional(),
	entryWidth: fact(length(300, 3000)).optional(),
	closing: closing.optional(),
	drain: drain.optional(),
	/** The datum line above the bathroom finish floor at the entry. */
	datum: fact(length(0, 1500)).optional(),
	/** Of the floor, what is still to come on top where it was measured. */
	floorToCome: fact(length(0, 200)).optional(),
	/** Corner to corner across the floor, from the back left and from the back right corner, as one looks in. */
	diagonals: z.strictObject({ fromLeft: fact(length(800, 4300)), fromRight: fact(length(800, 4300)) }).optional(),
	/** What is stepped over at the entry, above the bathroom floor: a threshold, the edge of a tray, the rim of a bath. */
	threshold: fact(length(0, 700)).optional(),
	/** The shower floor, where it is highest, above the bathroom finish floor: of a raised tray more than 0. */
	floorRise: fact(length(-100, 300)).optional(),
	/** Fall of the shower floor, rise over run, and the side it falls to. */
	fall: fact(z.number().min(0).max(0.1)).optional(),
	fallsTo: z.enum(['back', 'entry', 'seat', 'control']).optional(),
	clearWidth: fact(length(0, 6000)).optional(),
	clearLength: fact(length(0, 6000)).optional(),
	/** The largest circle free to turn in, and how far it lies over the shower. */
	turning: fact(length(0, 4000)).optional(),
	turningOver: fact(length(0, 3000)).optional(),
	/** Floor free beside the seat, outside the swing of a door: along the way one sits, and across it. */
	besideLength: fact(length(0, 4000)).optional(),
	besideWidth: fact(length(0, 4000)).optional(),
	/** The bathroom the shower is in, wall to wall: along the seat wall, and at right angles to it. */
	roomAlong: fact(length(600, 9000)).optional(),
	roomAhead: fact(length(600, 9000)).optional(),
	dwelling: z.boolean().default(true),
	/** Built or being built as new, so that walls can still be made ready. */
	newBuilt: fact(z.boolean()).optional(),
	/** What a planning condition asks of a new dwelling in England. */
	category: fact(z.enum(CATEGORIES)).optional(),
	/** Whose the walls are; where they are somebody else's, whether holes and backing are agreed in writing. */
	tenure: fact(z.enum(['own', 'rented', 'shared'])).optional(),
	permission: fact(z.boolean()).optional(),
	backingMayBeAdded: fact(z.boolean()).optional(),
	hose: fact(length(300, 5000)).optional(),
	/** Mixed water at the handset, degrees Celsius. */
	water: fact(z.number().min(1).max(95)).optional(),
	dampBehind: fact(z.boolean()).optional(),
	/** The force every fixing that holds a person is asked to carry, unless somebody's weight asks for more. Units: N. */
	demand: z.literal([1100, 1112, 1300, 1500]).default(1112),
	/** What somebody competent has signed that bars, seat, fixings and wall carry. `load` in N. */
	loadStatement: z.strictObject({ document: text(200), by: text(80), load: z.number().min(1).max(20000) }).optional(),
	/** The wall beside the entry, where there is one: at which end of the front, looking in, and how long. */
	frontWall: z.strictObject({ side: z.enum(['left', 'right']), length: fact(length(50, 3000)) }).optional(),
	/** One lever for all, or on/off, temperature and outlet each by itself. */
	controls: z.enum(['one', 'apart']).default('one'),
	/** A second outlet beside the hand shower, to be chosen by a diverter. */
	secondOutlet: z.boolean().default(false),
	walls: z.strictObject({ back: wall, left: wall, right: wall, front: wall.prefault({ stands: false }) })
});
