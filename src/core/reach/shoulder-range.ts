import type { Sex } from '#core/body/survey.ts';

/** What is assumed of a shoulder nobody tested. Units: degrees. */
export interface AssumedRange {
	readonly flexion: number;
	readonly abduction: number;
}

type Band = Readonly<Record<Sex, AssumedRange>>;

/** Past the midline. Ours, no source. */
export const ASSUMED_ADDUCTION = 30;

/** Source: review of daily tasks, Oosterwijk 2018. */
export const ASSUMED_ELBOW_FLEXION = 150;

/**
 * Means by age band.
 * Source: active flexion, and abduction under 65, Gill 2020 (n 2404): mean over 20-91 years less the share of the fall
 * from youngest to oldest that lies past 55 years, read at 70 and 82; abduction from 65, Bassey 1989 (n 1000).
 */
const BANDS: readonly { readonly from: number; readonly band: Band }[] = [
	{ from: 75, band: { female: { flexion: 140, abduction: 114 }, male: { flexion: 142, abduction: 121 } } },
	{ from: 65, band: { female: { flexion: 148, abduction: 124 }, male: { flexion: 151, abduction: 129 } } },
	{ from: 0, band: { female: { flexion: 158, abduction: 149 }, male: { flexion: 161, abduction: 151 } } }
];

/** What is assumed of a shoulder. An age nobody gave is taken as over 75, a sex nobody gave as the stiffer. */
export function assumedRange(sex: Sex | undefined, age: number | undefined): AssumedRange {
	const found = BANDS.find(({ from }) => (age ?? Infinity) >= from) ?? BANDS[0];
	if (!found) throw new RangeError('no band of ages');
	return found.band[sex ?? 'female'];
}
