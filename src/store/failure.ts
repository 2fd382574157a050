/** Something the device would not do, in one sentence for the person at the screen. */
export interface Failed {
	readonly kind: 'failed';
	readonly why: string;
}

const KEEP_A_COPY = 'What you see is not kept: write the case to a file now';

const SENTENCES: Readonly<Record<string, string>> = {
	QuotaExceededError: `There is no room left on this device. ${KEEP_A_COPY}, then make room.`,
	InvalidStateError: `A newer version of this page has taken over the data. ${KEEP_A_COPY}, then reload.`,
	OvertakenError: `This case was changed in another window. ${KEEP_A_COPY}, then reload.`,
	VersionError: 'The data on this device was written by a newer version of this page: reload it.',
	SecurityError:
		'This browser does not let the page keep anything, as in a private window: nothing will be here tomorrow.'
};

/** The failure that an error of the database or of the browser amounts to. */
export function failed(error: unknown): Failed {
	const name = error instanceof Error ? error.name : 'unknown';
	return { kind: 'failed', why: SENTENCES[name] ?? `The device refused (${name}). ${KEEP_A_COPY}.` };
}
