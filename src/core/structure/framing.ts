/**
 * The slope at which a bar would have its two posts on two studs. Never a reason to slope a bar: it tells the installer
 * that a slope seen on an old bar came from the studs.
 * Units: mm in, degrees from level out. Fails: `impossible` when the bar is shorter than the studs are apart.
 * Source: exact geometry.
 */
export function bridgingSlope(length: number, spacing: number): number | 'impossible' {
	return length < spacing ? 'impossible' : (Math.acos(spacing / length) * 180) / Math.PI;
}
