import { z } from 'zod';
import { fact, length, text } from './fact.ts';
import { satAt, tapedPoint } from './reach-test.ts';

const degrees = (least: number, most: number) => fact(z.number().min(least).max(most)).optional();
const span = (least: number, most: number) => fact(length(least, most)).optional();

const arm = z.strictObject({
	/** Acromion to the centre of a 32 mm rod in the fist. */
	toGrip: span(200, 1000),
	/** Acromion to elbow. */
	upperArm: span(100, 500),
	flexion: degrees(0, 180),
	abduction: degrees(0, 180),
	/** Past the midline. */
	adduction: degrees(0, 90),
	/** How far the elbow stays bent when straightened. */
	elbowDeficit: degrees(0, 120),
	elbowFlexion: degrees(30, 160),
	/** Lifting the arm, ahead or to the side, hurts from here. */
	hurtsFrom: degrees(10, 180),
	/** The thickest round bar this hand closes round. */
	closesRound: span(10, 80),
	/** Feels what it touches and how hot that is. */
	feels: fact(z.boolean()).optional(),
	/** Where this hand stopped in the reach test. */
	points: z.record(text(40), tapedPoint).optional()
});

const body = z.strictObject({
	stature: span(900, 2300),
	armSpan: span(800, 2500),
	kneeHeight: span(250, 800),
	sittingHeight: span(450, 1200),
	forearmToGrip: span(150, 500),
	handLength: span(100, 260),
	shoulderStanding: span(600, 2000),
	wristStanding: span(300, 1200),
	/** As she really sits, above the loaded seat. */
	shoulderAboveSeat: span(250, 900),
	elbowAboveSeat: span(50, 450),
	/** Under the knee to the floor, barefoot. */
	popliteal: span(200, 650),
	buttockPopliteal: span(250, 750),
	shoulderBreadth: span(200, 600),
	hipBreadth: span(200, 800)
});

const TRANSFERS = ['walks', 'stand-pivot', 'sitting-pivot', 'slide-board', 'hoist'] as const;

/** What may be otherwise later: abilities and aids of one person, with her weight and posture. */
const abilities = {
	mass: fact(z.number().min(10).max(400)).optional(),
	weakerSide: fact(z.enum(['left', 'right', 'both', 'neither'])).optional(),
	/** The weaker hand can hold a bar. */
	weakerHolds: fact(z.boolean()).optional(),
	/** Where she washes: on a seat, on her feet, either, or in a wheeled shower chair. */
	washes: fact(z.enum(['seated', 'standing', 'both', 'in-chair'])).optional(),
	/** Who turns the water on and sets it: the client, the helper because the client must not, or either. */
	runsWater: fact(z.enum(['client', 'helper', 'either'])).optional(),
	/** How far in front of the back rest she sits. */
	sittingForward: span(0, 300),
	/** Lean of the trunk seen done, as travel of the shoulder. */
	lean: fact(
		z.discriminatedUnion('kind', [
			z.strictObject({ kind: z.literal('none') }),
			z.strictObject({ kind: z.enum(['holding', 'free']), at: length(1, 600) })
		])
	).optional(),
	/** The side she moves to, her own left or right, from chair or standing toward the seat. */
	movesIn: fact(z.enum(['left', 'right'])).optional(),
	movesOut: fact(z.enum(['left', 'right'])).optional(),
	transfer: fact(z.enum(TRANSFERS)).optional(),
	/** How she gets out, where that is another way than in. */
	leaves: fact(z.enum(TRANSFERS)).optional(),
	rises: fact(z.enum(['alone', 'with-arms', 'with-help', 'cannot'])).optional(),
	/** On her feet she must always have one hand on something. */
	needsHold: fact(z.boolean()).optional(),
	/** How she sits without being held: both hands free, one hand on something, against a back rest only; or held. */
	sits: fact(z.enum(['free', 'one-hand', 'back-rest', 'held'])).optional(),
	/** How long she stands with a hand on a bar. Units: minutes. */
	standsFor: fact(z.number().min(0).max(120)).optional(),
	/** Is worn out, dizzy or short of breath before she has washed. */
	tires: fact(z.boolean()).optional(),
	/** How many help with getting in and out. */
	helpedBy: fact(z.enum(['nobody', 'one', 'two'])).optional(),
	/** The side she overlooks or does not see. */
	overlooks: fact(z.enum(['left', 'right', 'neither'])).optional(),
	/** Does what she is asked, in order, and knows what a thing is for. */
	followsSteps: fact(z.boolean()).optional(),
	/** Skin that is sore or soon becomes so, where she sits. */
	skinAtRisk: fact(z.boolean()).optional(),
	/** Is washed from below while she sits. */
	washedBelow: fact(z.boolean()).optional(),
	/** May lose consciousness or control of her limbs. */
	seizures: fact(z.boolean()).optional(),
	/** How she calls for help from the shower. */
	callsHelp: fact(z.enum(['cord', 'worn', 'none-wanted'])).optional(),
	/** A hip that must not bend past level, as after an operation. */
	hipLimit: fact(z.boolean()).optional(),
	/** Feels in time that water is too hot, wherever it meets the skin. */
	feelsHeat: fact(z.boolean()).optional(),
	/** Tells a bar from a wall of nearly its colour, as she is in the shower, without glasses. */
	seesBars: fact(z.boolean()).optional()
};

/** The wheeled chair she comes in or washes in. */
const chair = z.strictObject({
	seatHeight: span(300, 800),
	width: span(400, 1000),
	length: span(600, 1700),
	/** What stands above its seat where she crosses: arm rest, wheel, edge of a screen. */
	obstacle: span(0, 500),
	/** Parked as she parks it: beside the seat, aslant, or facing it. */
	approach: fact(z.enum(['beside', 'aslant', 'facing'])).optional(),
	/** Between the edges of the two seats then, along the way she crosses. */
	gap: span(0, 600)
});

/** What she walks with in the bathroom, and its widest part. */
const walkingAid = z.strictObject({
	kind: fact(z.enum(['none', 'stick', 'crutches', 'frame'])).optional(),
	width: span(100, 1000)
});

/** One person: the client, somebody who helps, or somebody else who showers here. Lengths in mm, mass in kg, angles in degrees. */
export const person = z.strictObject({
	role: z.enum(['client', 'helper', 'household']),
	initials: text(12).optional(),
	sex: fact(z.enum(['female', 'male'])).optional(),
	age: fact(z.number().int().min(1).max(120)).optional(),
	body: body.default({}),
	arms: z.strictObject({ left: arm.default({}), right: arm.default({}) }).default({ left: {}, right: {} }),
	/** Where she sat for the points of both arms. */
	reachTest: satAt.optional(),
	...abilities,
	chair: chair.default({}),
	walkingAid: walkingAid.default({}),
	/** What she wants from it, in her own words. */
	goals: text(400).optional(),
	/** She agreed to be assessed, and that the marks go to who fits them; or did not. */
	consents: fact(z.boolean()).optional(),
	/** She agreed that the figures on her own and the therapist's sheets are drawn at her size. */
	ownFigure: fact(z.boolean()).optional(),
	/** What is expected of her condition. */
	prognosis: fact(z.enum(['stable', 'improving', 'worsening', 'varying'])).optional(),
	/** What is expected to be otherwise before long; all else stays as it is. */
	later: z.strictObject(abilities).optional()
});
