/** Asks the server to look the content over, a little after each edit; only the newest answer counts. */
import { signal } from '@preact/signals';
import type { ProgramContent } from '../../shared/program';
import { failureFrom, type Failure } from '../api/request';
import { check } from './calls';
import type { Checks } from './types';

export interface Checked {
  checks: Checks;
  /** The very content that was looked over: pointers lead into this one. */
  of: ProgramContent;
}
/** Pause in editing after which the server is asked. House value, milliseconds. */
export const CHECK_AFTER_MS = 450;

export class Checker {
  readonly checked = signal<Checked | null>(null);
  readonly failure = signal<Failure | null>(null);
  private timer: ReturnType<typeof setTimeout> | undefined;
  private asked = 0;

  constructor(private readonly client: string) {}

  /** Look this over after the pause; `now` without one. */
  want(content: ProgramContent | null, now = false): void {
    clearTimeout(this.timer);
    this.asked += 1;
    if (!content) return void (this.checked.value = null);
    this.timer = setTimeout(() => void this.ask(content, this.asked), now ? 0 : CHECK_AFTER_MS);
  }

  private async ask(content: ProgramContent, turn: number): Promise<void> {
    try {
      const checks = await check(this.client, content);
      if (turn !== this.asked) return;
      this.checked.value = { checks, of: content };
      this.failure.value = null;
    } catch (error) {
      if (turn === this.asked) this.failure.value = failureFrom(error);
    }
  }
}
