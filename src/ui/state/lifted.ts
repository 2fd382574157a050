import { caseOf } from '#core/case/read.ts';
import { layDown, type Log } from '#core/log/log.ts';
import { moment } from './clock.ts';

/**
 * A history kept before the record knew all it knows now, with what was not there yet as it is by default.
 * Shape: unchanged when it lacks nothing, or says what this program cannot read.
 */
export function lifted(log: Log): Log {
	const read = caseOf(log.state);
	return read.kind === 'case' ? layDown(log, read.case, { at: moment(), by: 'this device' }) : log;
}
