/** What is screwed to its wall, whatever hands do with it. */
export const FIXED = {
	of: 'any',
	purposes: [
		'sit',
		'rest-handset',
		'hang-handset',
		'fix-handset',
		'steady',
		'rise',
		'push-up',
		'sit-steady',
		'hold-ahead',
		'step-in',
		'step-out'
	]
} as const;
