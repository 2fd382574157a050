import type { Person } from '#core/case/record.ts';
import { estimated, lengthSeen, massSeen, type Estimate } from './estimate.ts';
import type { Dimension } from './survey.ts';
import type { Tested } from './tested.ts';

/** What is known of a body, by dimension. */
export type Dimensions = Readonly<Partial<Record<Dimension, Estimate>>>;

function armSeen({ left, right }: Person['arms']): Estimate | undefined {
	const seen = [left.toGrip, right.toGrip].filter((fact) => fact !== undefined).map(lengthSeen);
	const [one, other] = seen;
	if (!one || !other) return one;
	// The two arms of one body err together, so averaging them makes neither surer.
	return { value: (one.value + other.value) / 2, sd: Math.max(one.sd, other.sd), how: one.how };
}

/** What was recorded of a body, nothing added. The arm to grip is the mean of the arms recorded. */
export function measuredOf(person: Person): Dimensions {
	const lengths = Object.entries(person.body).flatMap(([name, fact]) =>
		fact ? [[name, lengthSeen(fact)] as const] : []
	);
	const arm = armSeen(person.arms);
	return {
		...(Object.fromEntries(lengths) as Dimensions),
		...(person.mass && { mass: massSeen(person.mass) }),
		...(arm && { armToGrip: arm })
	};
}

/** The lengths of one arm. Units: mm, from the acromion. Shape: absent where it must be measured. */
export interface ArmLengths {
	readonly toGrip?: Estimate;
	/** Acromion to elbow. */
	readonly upper?: Estimate;
	/** Where taped points were fitted. */
	readonly tested?: Tested;
}

// Ours, no source: how far one arm of a pair may differ from the other.
const OTHER_ARM_SD = 15;

function toGripOf(person: Person, side: 'left' | 'right', arm: Estimate | undefined): Estimate | undefined {
	const own = person.arms[side].toGrip;
	if (own) return lengthSeen(own);
	const other = person.arms[side === 'left' ? 'right' : 'left'].toGrip;
	return other ? estimated(other.value, OTHER_ARM_SD) : arm;
}

/** One arm: as recorded, else after the other arm, else after the body. `share` is upper arm to arm to grip. */
export function armLengths(
	person: Person,
	side: 'left' | 'right',
	after: { arm: Estimate | undefined; share: number }
): ArmLengths {
	const toGrip = toGripOf(person, side, after.arm);
	if (!toGrip) return {};
	const own = person.arms[side].upperArm;
	const upper = own ? lengthSeen(own) : estimated(toGrip.value * after.share, toGrip.sd * after.share);
	return { toGrip, upper };
}
