import type { Quantity, Require, Row } from '../row.ts';

/** Where each thing stands in the text of a province. */
interface Clauses {
	readonly stall: string;
	readonly clearFloor: string;
	readonly closing: string;
	readonly threshold: string;
	readonly seat: string;
	readonly seatSize: string;
	readonly seatHeight: string;
	readonly seatWall: string;
	readonly seatLoad: string;
	readonly inTheWay: string;
	readonly upright: string;
	readonly lBar: string;
	readonly valve: string;
	readonly force: string;
	readonly handShower: string;
	readonly soap: string;
	readonly barLoad: string;
	readonly barDiameter: string;
	readonly barGap: string;
	readonly barSlip: string;
}

/** A province whose text is a twin of the national model code: where it stands, and what it prints otherwise. */
export interface Province {
	readonly id: 'ON' | 'BC';
	readonly from: Pick<Row, 'document' | 'edition' | 'source'>;
	readonly clauses: Clauses;
	/** What closes an entry as the text has it, and in words. */
	readonly closes: { readonly kinds: readonly string[]; readonly words: string };
	/** The bevel of a threshold as a question, and in words. */
	readonly bevel: { readonly ask: string; readonly says: string };
	/** What else is asked of the floor outside the entry. */
	readonly floorFree: string;
	/** How the length of a bar is printed. */
	readonly length: Pick<Row, 'ourTolerance' | 'note'>;
	readonly gap: { readonly min: number; readonly max: number };
	/** Force at a control. */
	readonly newtons: string;
}

const mm = (n: number): Quantity => ({ n, unit: 'mm' });

/** Every enclosure but a shower over a bath, of which these texts do not speak. */
export const SHOWER = { type: ['transfer', 'roll-in', 'alternate-roll-in', 'corner', 'step-in-tray'] } as const;
/** Asks of the case: what is measured is not looked at. */
export const ASK = { of: 'case', measure: 'inside-width' } as const;
/** Ours: what stands for the tolerance of a length or a height that is printed as one value. */
export const ONE_VALUE = { ourTolerance: 10 } as const;

const ANY_BAR = { of: 'any', purposes: ['steady', 'rise', 'sit-steady', 'step-in', 'step-out'] } as const;
const UPRIGHT = { of: 'vertical-bar', purposes: ['step-in'] } as const;
const L_BAR = { of: 'horizontal-bar', purposes: ['rise', 'sit-steady'] } as const;
/** What the hand works. */
export const OPERATED = { of: 'any', purposes: ['run-water', 'set-temperature', 'divert'] } as const;
const REST = { of: 'handset-rest', purposes: ['rest-handset'] } as const;
const HIGH = { of: 'handset-rest', purposes: ['fix-handset'] } as const;

/** Who runs the water. */
const OWN_WATER = { runsWater: ['client', 'either', 'unknown'] } as const;
const HELPERS_WATER = { runsWater: ['helper'] } as const;

const L_HEIGHT = { min: mm(750), max: mm(870) };
const BETWEEN = 'Both ends belong to the range: our reading.';

/** What every row of a province has. */
export const rowOf = ({ from }: Province) => ({ ...from, origin: 'document', when: SHOWER }) as const;

/** Compartment, floor outside, what closes it, threshold. */
export function stallRows(p: Province): readonly Row[] {
	const row = { ...rowOf(p), of: 'case' } as const;
	return [
		{
			...row,
			id: `${p.id}-01`,
			clause: p.clauses.stall,
			measure: 'inside-width',
			allowed: { min: mm(1500) },
			says: 'The stall is at least 1500 mm wide inside.',
			note: 'That the width runs along the entry is our reading.'
		},
		{
			...row,
			id: `${p.id}-02`,
			clause: p.clauses.stall,
			measure: 'inside-depth',
			allowed: { min: mm(900) },
			says: 'The stall is at least 900 mm deep inside.'
		},
		{
			...row,
			id: `${p.id}-03`,
			clause: p.clauses.clearFloor,
			measure: 'outside-width',
			allowed: { min: mm(900) },
			says: 'The clear floor outside the entry is at least 900 mm deep.'
		},
		{
			...row,
			id: `${p.id}-04`,
			clause: p.clauses.clearFloor,
			measure: 'clear-floor-past-width',
			allowed: { min: mm(0) },
			says: 'The clear floor outside the entry is as wide as the stall.'
		},
		{
			...row,
			...ASK,
			id: `${p.id}-04-FREE`,
			clause: p.clauses.clearFloor,
			allowed: { ask: p.floorFree },
			says: 'Fixtures reach into the clear floor only where the way in stays free.'
		},
		{
			...row,
			...ASK,
			id: `${p.id}-05`,
			clause: p.clauses.closing,
			when: { ...SHOWER, closing: p.closes.kinds },
			allowed: { ask: `Does ${p.closes.words} leave the controls and the clear floor free?` },
			says: 'What closes the entry is not in the way of controls or clear floor.'
		},
		{
			...row,
			id: `${p.id}-06`,
			clause: p.clauses.threshold,
			measure: 'threshold',
			allowed: { max: mm(13) },
			says: 'The threshold is at most 13 mm high.'
		},
		{
			...row,
			...ASK,
			id: `${p.id}-06-BEVEL`,
			clause: p.clauses.threshold,
			allowed: { ask: p.bevel.ask },
			says: p.bevel.says
		}
	];
}

/** The seat. */
export function seatRows(p: Province): readonly Row[] {
	const row = { ...rowOf(p), of: 'seat' } as const;
	return [
		{
			...row,
			of: 'case',
			id: `${p.id}-07-THERE`,
			clause: p.clauses.seat,
			measure: 'seat-present',
			allowed: 'yes',
			says: 'There is a seat.'
		},
		{
			...row,
			...ASK,
			id: `${p.id}-07`,
			clause: p.clauses.seat,
			allowed: { ask: 'Is the seat fixed, or hinged without a spring, and is it smooth and slip resistant?' },
			says: 'The seat is fixed or hinged, not sprung, smooth and slip resistant.'
		},
		{
			...row,
			id: `${p.id}-08`,
			clause: p.clauses.seatSize,
			measure: 'seat-width',
			allowed: { min: mm(450) },
			says: 'The seat is at least 450 mm wide.'
		},
		{
			...row,
			id: `${p.id}-09`,
			clause: p.clauses.seatSize,
			measure: 'seat-depth',
			allowed: { min: mm(400) },
			says: 'The seat is at least 400 mm deep.'
		},
		{
			...row,
			id: `${p.id}-10`,
			clause: p.clauses.seatHeight,
			measure: 'seat-top-above-bathroom-floor',
			allowed: { min: mm(460), max: mm(480) },
			says: 'The top of the seat is 460 to 480 mm above the floor.',
			note: 'Measured from the bathroom floor, with nobody on it: our reading.'
		},
		{
			...row,
			id: `${p.id}-11`,
			clause: p.clauses.seatWall,
			measure: 'on-side-wall',
			allowed: 'yes',
			says: 'The seat is on a side wall.'
		},
		{
			...row,
			...UPRIGHT,
			id: `${p.id}-11-BAR`,
			clause: p.clauses.seatWall,
			measure: 'on-seat-wall',
			allowed: 'yes',
			says: 'The vertical bar is on the side wall of the seat.'
		},
		{
			...row,
			id: `${p.id}-12`,
			clause: p.clauses.seatLoad,
			measure: 'carries-1300',
			allowed: { min: mm(0) },
			says: 'Every fixing of the seat carries 1.3 kN, by calculation.',
			note: 'Reckoned with the load of this plan; where that is less, it stays a question.'
		}
	];
}

/** The vertical bar and the L bar: there, how long, and where. */
export function barPlaceRows(p: Province): readonly Row[] {
	const upright = { ...rowOf(p), ...UPRIGHT, clause: p.clauses.upright } as const;
	const lBar = { ...rowOf(p), ...L_BAR, clause: p.clauses.lBar } as const;
	return [
		{
			...rowOf(p),
			...ASK,
			id: `${p.id}-25`,
			clause: p.clauses.inTheWay,
			allowed: { ask: 'Are all controls worked without a bar in the way of the hand?' },
			says: 'No bar is in the way of the controls.'
		},
		{
			...rowOf(p),
			of: 'case',
			id: `${p.id}-14-THERE`,
			clause: p.clauses.upright,
			measure: 'vertical-bar-on-seat-wall',
			allowed: 'yes',
			says: 'The side wall of the seat has a vertical bar.'
		},
		{
			...upright,
			...p.length,
			id: `${p.id}-14`,
			measure: 'bar-length',
			allowed: { min: mm(1000) },
			says: 'The vertical bar is 1000 mm long or longer.'
		},
		{
			...upright,
			id: `${p.id}-15`,
			measure: 'from-entry-line',
			allowed: { min: mm(50), max: mm(80) },
			says: 'The vertical bar is 50 to 80 mm from the clear floor outside.',
			note: `The axis of the bar, from the entry line: our reading. ${BETWEEN}`
		},
		{
			...upright,
			id: `${p.id}-16`,
			measure: 'foot-above-floor',
			allowed: { min: mm(600), max: mm(650) },
			says: 'The lower end of the vertical bar is 600 to 650 mm above the floor.',
			note: `The centre of its lower flange: our reading. ${BETWEEN}`
		},
		{
			...rowOf(p),
			of: 'case',
			id: `${p.id}-17-THERE`,
			clause: p.clauses.lBar,
			measure: 'l-bar-on-back-wall',
			allowed: 'yes',
			says: 'The wall opposite the entry has an L-shaped bar.'
		},
		{
			...lBar,
			id: `${p.id}-17-WALL`,
			measure: 'on-back-wall',
			allowed: 'yes',
			says: 'The bar beside the seat is on the wall opposite the entry.',
			note: 'That the bar beside the seat is the L-shaped one is our reading.'
		},
		{
			...lBar,
			...p.length,
			id: `${p.id}-17`,
			measure: 'bar-length',
			allowed: { min: mm(1000) },
			says: 'The level part of the L-shaped bar is 1000 mm long or longer.'
		},
		{
			...lBar,
			id: `${p.id}-18-HIGH`,
			measure: 'bar-axis-from-high-floor',
			allowed: L_HEIGHT,
			says: 'The level part of the L-shaped bar is 750 to 870 mm above the floor, where the floor below it is highest.',
			note: 'The axis of the bar: our reading.'
		},
		{
			...lBar,
			id: `${p.id}-18-LOW`,
			measure: 'bar-axis-from-low-floor',
			allowed: L_HEIGHT,
			says: 'The level part of the L-shaped bar is 750 to 870 mm above the floor, where the floor below it is lowest.',
			note: 'The axis of the bar: our reading.'
		},
		{
			...lBar,
			...p.length,
			id: `${p.id}-19`,
			measure: 'upright-length',
			allowed: { min: mm(750) },
			says: 'The bar beside the seat has an upright part 750 mm long or longer.'
		},
		{
			...lBar,
			id: `${p.id}-20`,
			shape: 'L',
			measure: 'upright-from-seat-wall',
			allowed: { min: mm(400), max: mm(500) },
			says: 'The upright part of the L-shaped bar is 400 to 500 mm from the side wall of the seat.',
			note: `Its axis, from the wall that carries the vertical bar. ${BETWEEN}`
		}
	];
}

/** What is asked of every bar. */
export function barRows(p: Province): readonly Row[] {
	const row = { ...rowOf(p), ...ANY_BAR } as const;
	return [
		{
			...row,
			id: `${p.id}-23`,
			clause: p.clauses.barLoad,
			measure: 'carries-1300',
			allowed: { min: mm(0) },
			says: 'Every fixing of a bar carries 1.3 kN, down or outward, by calculation.',
			note: 'Reckoned with the load of this plan; where that is less, it stays a question.'
		},
		{
			...row,
			id: `${p.id}-21`,
			clause: p.clauses.barDiameter,
			measure: 'bar-diameter',
			allowed: { min: mm(30), max: mm(40) },
			says: 'A bar is 30 to 40 mm thick.'
		},
		{
			...row,
			id: `${p.id}-22`,
			clause: p.clauses.barGap,
			measure: 'bar-gap',
			allowed: { min: mm(p.gap.min), max: mm(p.gap.max) },
			says: `Between wall and bar ${String(p.gap.min)} to ${String(p.gap.max)} mm are free.`
		},
		{
			...rowOf(p),
			...ASK,
			id: `${p.id}-24`,
			clause: p.clauses.barSlip,
			allowed: { ask: 'Are the bars slip resistant?' },
			says: 'Bars are slip resistant.'
		}
	];
}

/** Valve and other controls. */
export function valveRows(p: Province): readonly Row[] {
	const row = { ...rowOf(p), ...OPERATED, clause: p.clauses.valve } as const;
	return [
		{
			...rowOf(p),
			...ASK,
			id: `${p.id}-26`,
			clause: p.clauses.valve,
			allowed: { ask: 'Does the valve keep pressure or temperature even: pressure-equalizing or thermostatic?' },
			says: 'The valve is pressure-equalizing or thermostatic.'
		},
		{
			...rowOf(p),
			...ASK,
			id: `${p.id}-27`,
			clause: p.clauses.force,
			allowed: { ask: `Do the controls work with one closed fist and ${p.newtons} at most?` },
			says: 'Controls work with one closed fist and little force.'
		},
		{
			...row,
			id: `${p.id}-28`,
			measure: 'on-back-wall',
			allowed: 'yes',
			says: 'Controls are on the wall opposite the entry.'
		},
		{
			...row,
			id: `${p.id}-29`,
			measure: 'envelope-top-above-shower-floor',
			allowed: { max: mm(1200) },
			says: 'Controls are at most 1200 mm above the floor.',
			note: 'Their whole operable part: our reading.'
		},
		{
			...row,
			and: 'seat',
			id: `${p.id}-30`,
			when: { ...SHOWER, ...OWN_WATER },
			measure: 'reach-leaning',
			allowed: { min: mm(0) },
			says: 'Controls are reached from the seat.',
			note: 'No figure is printed: it is the reach of the person, with the lean that was seen done.'
		},
		{
			...row,
			and: 'seat',
			id: `${p.id}-30-HELPER`,
			when: { ...SHOWER, ...HELPERS_WATER },
			measure: 'reach-leaning',
			advice: true,
			allowed: { min: mm(0) },
			says: 'Controls are reached from the seat.',
			note: 'Where a helper runs the water they are kept beyond the reach of the client, against the text.'
		}
	];
}

/** Hand shower and soap. */
export function handShowerRows(p: Province): readonly Row[] {
	const row = { ...rowOf(p), clause: p.clauses.handShower } as const;
	return [
		{
			...row,
			of: 'case',
			id: `${p.id}-31`,
			measure: 'hose-length',
			allowed: { min: mm(1800) },
			says: 'The hose of the hand shower is at least 1800 mm long.'
		},
		{
			...row,
			...REST,
			and: 'seat',
			id: `${p.id}-32`,
			measure: 'reach-leaning',
			allowed: { min: mm(0) },
			says: 'The hand shower is reached from the seat.',
			note: 'No figure is printed: it is the reach of the person, with the lean that was seen done.'
		},
		{
			...row,
			...REST,
			...ONE_VALUE,
			id: `${p.id}-33-REST`,
			measure: 'middle-from-high-floor',
			allowed: { min: mm(1200), max: mm(1200) },
			says: 'The hand shower can be fixed at 1200 mm above the floor.'
		},
		{
			...row,
			...HIGH,
			...ONE_VALUE,
			id: `${p.id}-33-HIGH`,
			measure: 'middle-from-high-floor',
			allowed: { min: mm(2030), max: mm(2030) },
			says: 'The hand shower can be fixed at 2030 mm above the floor too.',
			note: 'The text asks for a place to fix it at, not that everybody gets there.'
		},
		{
			...row,
			...ASK,
			id: `${p.id}-34`,
			allowed: { ask: 'Can every bar be held with the hand shower in its holders, hose and upright rail included?' },
			says: 'The hand shower is not in the way of the bars.'
		},
		{
			...row,
			...ASK,
			id: `${p.id}-SOAP`,
			clause: p.clauses.soap,
			allowed: { ask: 'Is there a holder for soap, sunk wholly into the wall, in reach from the seat?' },
			says: 'A recessed holder for soap is reached from the seat.'
		}
	];
}

/** What a province asks for. */
export function requiresOf({ id, from, clauses }: Province): readonly Require[] {
	const row = { ...from, when: SHOWER } as const;
	return [
		{
			...row,
			id: `${id}-REQ-SEAT`,
			clause: clauses.seat,
			kind: 'seat',
			purpose: 'sit',
			walls: ['seat-wall'],
			part: 'seat-deep',
			accessory: 'seat',
			says: 'A shower has a seat.'
		},
		{
			...row,
			id: `${id}-REQ-UPRIGHT`,
			clause: clauses.upright,
			kind: 'vertical-bar',
			purpose: 'step-in',
			walls: ['seat-wall'],
			accessory: 'entry-bar',
			says: 'The side wall of the seat has a vertical bar beside the entry.'
		},
		{
			...row,
			id: `${id}-REQ-L-BAR`,
			clause: clauses.lBar,
			kind: 'horizontal-bar',
			purpose: 'rise',
			walls: ['beside'],
			part: 'l-bar',
			accessory: 'bar-back',
			says: 'The wall opposite the entry has an L-shaped bar.'
		},
		{
			...row,
			id: `${id}-REQ-VALVE`,
			clause: clauses.valve,
			kind: 'control',
			purpose: 'run-water',
			walls: ['beside'],
			accessory: 'control',
			says: 'The water is turned on and off at a valve.'
		},
		{
			...row,
			id: `${id}-REQ-HAND-SHOWER`,
			clause: clauses.handShower,
			kind: 'handset-rest',
			purpose: 'rest-handset',
			walls: ['control-wall', 'beside'],
			accessory: 'handset-rest',
			says: 'The hand shower has a place at 1200 mm.'
		},
		{
			...row,
			id: `${id}-REQ-HEAD-HEIGHT`,
			clause: clauses.handShower,
			kind: 'handset-rest',
			purpose: 'fix-handset',
			walls: ['beside'],
			accessory: 'handset-high',
			says: 'The hand shower can be fixed at head height too.'
		}
	];
}
