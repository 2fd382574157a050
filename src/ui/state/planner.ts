import type { Case } from '#core/case/record.ts';
import type { Better } from '#core/further.ts';
import type { Probes, WayOut } from '#core/placement/answer.ts';
import type { Worth } from '#core/worth.ts';
import type { Answered, Asked, Said, Stands, Underway } from './messages.ts';
import planWorker from './plan-worker.ts?worker&url';
import { trustedWorker } from './trusted-worker.ts';

/** What is told while places are looked for, and when they are found. */
export interface Listener {
	readonly onprogress: (underway: Underway) => void;
	readonly onplanned: (answered: Answered) => void;
	/** It was ended before there was any plan. */
	readonly onnothing: () => void;
	readonly onwaysout: (ways: readonly WayOut[]) => void;
	readonly onexplained: (probes: Probes) => void;
	readonly onweighed: (worth: readonly Worth[]) => void;
	readonly onbetter: (better: Better) => void;
	readonly onfailed: (why: string) => void;
}

type FileAsked = Omit<Extract<Asked, { kind: 'file' }>, 'kind' | 'serial'>;
type Content = Extract<Said, { kind: 'file' }>['content'];
type OfPlaces = Exclude<Said, { kind: 'ready' | 'file' }>;

interface Waiting {
	readonly resolve: (content: Content) => void;
	readonly reject: (why: Error) => void;
}

/** The one Worker of the page. It works on one question about places at a time; what it says about an older one is dropped. */
class Planner {
	private worker: Worker | undefined;
	private serial = 0;
	private listener: Listener | undefined;
	private listening = 0;
	private readonly files = new Map<number, Waiting>();

	/** Starts the Worker, once. */
	wake(): Worker {
		if (this.worker) return this.worker;
		const worker = trustedWorker(planWorker);
		worker.addEventListener('message', (event: MessageEvent<Said>) => {
			this.hear(event.data);
		});
		worker.addEventListener('error', (event) => {
			this.listener?.onfailed(event.message);
		});
		this.worker = worker;
		return worker;
	}

	/** Looks for places; whatever was looked for before is dropped. */
	plan(c: Case, listener: Listener): void {
		this.ask({ kind: 'plan', serial: this.listen(listener), c });
	}

	/** Asks about marks as they stand; whatever was looked for before is dropped. */
	stands(stands: Stands, listener: Listener): void {
		this.ask({ kind: 'stands', serial: this.listen(listener), ...stands });
	}

	/** Ends the search with the best it has. */
	enough(): void {
		this.ask({ kind: 'enough', serial: this.listening });
	}

	/** Drops what is looked for. */
	drop(): void {
		this.ask({ kind: 'drop', serial: this.listen(undefined) });
	}

	/** What a file of a plan holds. Fails: why it could not be written, in the words of whoever reads the screen. */
	file(asked: FileAsked): Promise<Content> {
		this.serial += 1;
		const { serial } = this;
		return new Promise((resolve, reject) => {
			this.files.set(serial, { resolve, reject });
			this.ask({ kind: 'file', serial, ...asked });
		});
	}

	private listen(listener: Listener | undefined): number {
		this.serial += 1;
		this.listening = this.serial;
		this.listener = listener;
		return this.serial;
	}

	private ask(asked: Asked): void {
		this.wake().postMessage(asked);
	}

	private hear(said: Said): void {
		if (said.kind === 'ready') return;
		const waiting = this.files.get(said.serial);
		this.files.delete(said.serial);
		if (said.kind === 'file') waiting?.resolve(said.content);
		else if (waiting && said.kind === 'failed') waiting.reject(new Error(said.why));
		else if (this.listener && said.serial === this.listening) tell(this.listener, said);
	}
}

function tell(listener: Listener, said: OfPlaces): void {
	switch (said.kind) {
		case 'progress':
			listener.onprogress(said);
			return;
		case 'planned':
			listener.onplanned(said);
			return;
		case 'nothing':
			listener.onnothing();
			return;
		case 'ways-out':
			listener.onwaysout(said.ways);
			return;
		case 'explained':
			listener.onexplained(said.probes);
			return;
		case 'weighed':
			listener.onweighed(said.worth);
			return;
		case 'better':
			listener.onbetter(said.better);
			return;
		case 'failed':
			listener.onfailed(said.why);
	}
}

/** The planner of this page. */
export const planner = new Planner();
