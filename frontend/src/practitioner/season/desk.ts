/** The state of one season being planned: what it is planned from with its history, and what the rules propose for it. */
import { computed, effect, signal, untracked, type Signal } from '@preact/signals';
import type { LocalDate } from '../../shared/dates';
import type { ProgramContent } from '../../shared/program';
import { draft } from '../api/drafts';
import { failureFrom, type Failure } from '../api/request';
import type { Client } from '../api/types';
import { focusSoon } from '../editor/focus';
import { apply, begin, redo, settle, undo, type History } from '../editor/history';
import type { Template } from '../editor/types';
import { t } from '../words';
import { plan as ask, resume } from './calls';
import { planFrom } from './plan';
import type { Activity, Pause, Plan, Proposal, Resumption, Start } from './types';

/** Pause in changing after which the server is asked. House value, milliseconds. */
const ASK_AFTER_MS = 300;

export interface Form {
  plan: Plan;
  trip: string;
}
/** A session in the hand: where it lies and where it is held. */
export interface Carried {
  date: LocalDate;
  activity: Activity;
  locked: boolean;
  pinned: boolean;
  to: LocalDate;
}
export interface Program {
  client: Client;
  /** The draft, else what is published; null before the first program. */
  content: ProgramContent | null;
  /** Number of the version that a draft goes on from. */
  base: number | null;
  /** Tag of the draft that the server keeps; null when there is none. */
  etag: string | null;
  templates: readonly Template[];
}

export class Desk {
  readonly history: Signal<History<Form>>;
  /** What was proposed, and for which plan. */
  readonly proposed = signal<{ of: Plan; season: Proposal } | null>(null);
  readonly failure = signal<Failure | null>(null);
  readonly said = signal<{ text: string; canUndo: boolean }>({ text: '', canUndo: false });
  readonly carried = signal<Carried | null>(null);
  readonly today: LocalDate;
  private readonly kept: Signal<string>;
  private focusNext: string | null = null;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private asked = 0;

  constructor(readonly program: Program, readonly start: Start) {
    this.today = start.today;
    this.kept = draft(`season-${program.client.id}`);
    this.history = signal(begin(this.kept.peek() ? (JSON.parse(this.kept.peek()) as Form) : { plan: planFrom(start), trip: start.trip_name }));
  }

  readonly form = computed(() => this.history.value.present);
  readonly plan = computed(() => this.form.value.plan);
  readonly canUndo = computed(() => this.history.value.past.length > 0);
  readonly canRedo = computed(() => this.history.value.future.length > 0);
  /** The weeks shown fit what is asked for now. */
  readonly isFresh = computed(() => this.proposed.value?.of === this.plan.value);

  /** Follow the plan: keep it while the desk is in use, ask what the rules propose. Answers what ends that. */
  run(): () => void {
    let last: Plan | null = null;
    return effect(() => {
      const { plan } = this.form.value;
      untracked(() => {
        if (last) this.kept.value = JSON.stringify(this.form.peek());
        if (plan !== last) this.want(plan, last === null);
        last = plan;
      });
    });
  }

  private want(plan: Plan, now: boolean): void {
    clearTimeout(this.timer);
    this.asked += 1;
    this.failure.value = null;
    this.timer = setTimeout(() => void this.propose(plan, this.asked), now ? 0 : ASK_AFTER_MS);
  }

  private async propose(plan: Plan, turn: number): Promise<void> {
    try {
      const season = await ask(this.program.client.id, plan);
      if (turn !== this.asked) return;
      this.failure.value = null;
      this.proposed.value = { of: plan, season };
      if (this.focusNext) focusSoon(this.focusNext);
    } catch (error) {
      if (turn === this.asked) this.failure.value = failureFrom(error);
    }
    this.focusNext = null;
  }

  /** Resolves when the weeks fit what is asked for: true; or when they cannot be had: false. */
  settled(): Promise<boolean> {
    return new Promise((resolve) => {
      const stop = effect(() => {
        if (!this.isFresh.value && this.failure.value === null) return;
        resolve(this.failure.peek() === null);
        queueMicrotask(() => stop());
      });
    });
  }

  askAgain = (): void => this.want(this.plan.peek(), true);

  /** One change. Typing in the same `field` is one step of undo. `focus`: what to look for in the weeks that come of it. */
  change(does: (plan: Plan) => Plan, said = '', { field = null, focus = null }: { field?: string | null; focus?: string | null } = {}): void {
    const before = this.form.peek();
    this.focusNext = focus;
    this.step(apply(this.history.peek(), { ...before, plan: does(before.plan) }, field));
    if (said) this.said.value = { text: said, canUndo: true };
  }
  nameTrip = (trip: string): void => this.step(apply(this.history.peek(), { ...this.form.peek(), trip }, 'trip'));
  settle = (): void => void (this.history.value = settle(this.history.peek()));

  undo = (): void => this.turn(undo(this.history.peek()), this.canUndo.peek() ? t('seaTookBack') : t('seaNothing'));
  redo = (): void => this.turn(redo(this.history.peek()), this.canRedo.peek() ? t('seaDidAgain') : t('seaNothingAgain'));
  private turn(next: History<Form>, said: string): void {
    this.step(next);
    this.said.value = { text: said, canUndo: false };
  }
  private step(next: History<Form>): void {
    this.carried.value = null;
    this.said.value = { text: '', canUndo: false };
    this.history.value = next;
  }
  say(text: string): void {
    this.said.value = { text, canUndo: false };
  }

  /** Plan the rest anew after a pause, as one step. */
  async resume(pause: { reason: Pause; since: LocalDate; resume_on: LocalDate }): Promise<Resumption> {
    const found = await resume(this.program.client.id, this.plan.peek(), pause);
    this.change(() => found.season);
    return found;
  }

  /** It is in the draft now: what the page kept is not needed any more. */
  taken(): void {
    this.kept.value = '';
  }
}
