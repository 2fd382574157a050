/** The moment it is now, as the log keeps it. */
export const moment = (): string => new Date().toISOString();

/** A moment as a clock on the wall says it. */
export function clockOf(at: string): string {
	return new Date(at).toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' });
}
