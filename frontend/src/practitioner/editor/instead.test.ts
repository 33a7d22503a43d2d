import { describe, expect, it } from 'vitest';
import type { Circuit, Prescription, ProgramContent } from '../../shared/program';
import { toLibrary, type Entry, type Variant } from '../exercises/entry';
import { allowInstead, alternativesPath, chooseAllowed, putInstead, removeAllowed, setAllowed } from './instead';
import { circuit, prescription, program } from './testing/arbitrary';

const rung = (variant: string, more: Partial<Variant>): Variant =>
  ({ variant, name: variant, short: '', sides: 'both', kit: [], how: [], dose: { reps: [6, 10] }, load: 'none', drawn: false, ...more });
const entry = (code: string, ...ladder: Variant[]) => ({ code, name: code, trains: ['balance'], loads: ['ankle'], ladder } as unknown as Entry);
const LIBRARY = toLibrary([
  entry('step-down', rung('step-15', { sides: 'each', kit: ['step'] }), rung('pack', { kit: ['step', 'pack'], load: 'required' })),
  entry('squat', rung('free', { dose: { reps: [8, 15] } }), rung('few', { dose: { reps: [3, 6] } }), rung('pack', { kit: ['pack'], load: 'required' }), rung('load', { kit: ['dumbbell'], load: 'required' }), rung('single', { sides: 'each', dose: { hold_s: [20, 30] } })),
  entry('wall-sit', rung('half', { kit: ['wall'], dose: { hold_s: [20, 45] } })),
]);
const WISH = { onlyHouse: true, spare: '', trains: '' };

const before = (more: Partial<Prescription> = {}) =>
  program([circuit('s1', [{ ...prescription('p1'), exercise: 'step-down', variant: 'step-15', sides: 'each', reps_low: 8, reps_high: 10, hold_s: null, load_kg: 4, tempo_down_s: 3, rest_s: 45, note: 'slowly', ...more }, prescription('p2')])], []);
const after = (code: string, variant: string, more: Partial<Prescription> = {}) =>
  (putInstead(before(more), 's1', 'p1', LIBRARY, code, variant).sessions[0] as ReturnType<typeof circuit>).prescriptions[0];

describe('another exercise instead', () => {
  it('stands under the same key with its own sides; repetitions that suit it, tempo, rest and note stay; the weight does not', () => {
    expect(after('squat', 'free')).toMatchObject({ key: 'p1', exercise: 'squat', variant: 'free', sides: 'both', reps_low: 8, reps_high: 10, hold_s: null, load_kg: null, tempo_down_s: 3, rest_s: 45, note: 'slowly' });
  });

  it('takes its usual repetitions where those of before do not suit it', () => {
    expect(after('squat', 'few')).toMatchObject({ reps_low: 3, reps_high: 6 });
    expect(after('squat', 'free', { reps_low: null, reps_high: null, hold_s: 30 })).toMatchObject({ reps_low: 8, reps_high: 15, hold_s: null });
  });

  it('is held for the shorter usual time where it was counted, and as long as before within its range', () => {
    expect(after('wall-sit', 'half')).toMatchObject({ reps_low: null, reps_high: null, hold_s: 20, tempo_down_s: null });
    expect([10, 30, 90].map((hold_s) => after('wall-sit', 'half', { reps_low: null, reps_high: null, hold_s })?.hold_s)).toEqual([20, 30, 45]);
  });

  it('keeps the weight of the pack from one pack to the other, never another weight', () => {
    expect(after('squat', 'pack', { variant: 'pack', load_kg: 6 })?.load_kg).toBe(6);
    expect(after('squat', 'load', { variant: 'pack', load_kg: 6 })?.load_kg).toBeNull();
  });

  it('changes nothing else, and nothing at all where the library has no such exercise or variant', () => {
    const content = before();
    const changed = putInstead(content, 's1', 'p1', LIBRARY, 'squat', 'free').sessions[0] as ReturnType<typeof circuit>;
    expect(changed.prescriptions[1]).toBe((content.sessions[0] as ReturnType<typeof circuit>).prescriptions[1]);
    for (const [code, variant] of [['moon', 'free'], ['squat', 'moon']] as const) expect(putInstead(content, 's1', 'p1', LIBRARY, code, variant)).toBe(content);
  });
});

describe('the question to the library', () => {
  const one = { ...prescription('p1'), exercise: 'step-down', variant: 'step-15' };

  it('names variant, kit, region and quality', () => {
    const path = alternativesPath(one, LIBRARY, ['chair', 'mat'], { onlyHouse: true, spare: 'knee', trains: 'balance' });
    expect(decodeURIComponent(path)).toBe('/exercises/step-down/alternatives?variant=step-15&kit=chair,mat&spare=knee&trains=balance');
  });

  it('tells a house without kit from any kit, and leaves out a variant that the library does not have', () => {
    expect(alternativesPath(one, LIBRARY, [], WISH)).toContain('kit=');
    expect(alternativesPath(one, LIBRARY, ['mat'], { ...WISH, onlyHouse: false })).not.toContain('kit');
    expect(alternativesPath({ ...one, variant: 'moon' }, LIBRARY, [], WISH)).not.toContain('moon');
  });
});

describe('what may be done instead', () => {
  const allowed = (from = before()) => allowInstead(from, 's1', 'p1', LIBRARY, 'squat', 'free', 'Without a step.');
  const of = (content: ProgramContent) => (content.sessions[0] as Circuit).prescriptions[0]!.alternatives ?? [];
  it('gets a dose of its own and its reason, and the prescription stays as it is', () => {
    const [one] = of(allowed());
    expect(one).toEqual({ exercise: 'squat', variant: 'free', sides: 'both', reps_low: 8, reps_high: 10, hold_s: null, load_kg: null, reason: 'Without a step.' });
    expect((allowed().sessions[0] as Circuit).prescriptions[0]).toMatchObject({ exercise: 'step-down' });
  });
  it('is another movement, and each comes once', () => {
    expect(allowInstead(before(), 's1', 'p1', LIBRARY, 'step-down', 'step-15', '')).toEqual(before());
    expect(allowed(allowed())).toEqual(allowed());
  });
  it('is changed and taken out by its movement', () => {
    expect(of(setAllowed(allowed(), 's1', 'p1', 'squat', { reps_low: 4 }))[0]).toMatchObject({ reps_low: 4 });
    expect(of(removeAllowed(allowed(), 's1', 'p1', 'squat'))).toEqual([]);
  });
  it('stands on another rung when asked: its dose and reason stay, its sides and no weight are the rung\'s', () => {
    const on = (variant: string, from = allowed()) => of(chooseAllowed(from, 's1', 'p1', LIBRARY.get('squat')!, variant))[0];
    expect(on('few')).toEqual({ ...of(allowed())[0], variant: 'few' });
    expect(on('single')).toMatchObject({ variant: 'single', sides: 'each', reps_low: null, reps_high: null, hold_s: 20, reason: 'Without a step.' });
    const heavy = setAllowed(allowed(), 's1', 'p1', 'squat', { variant: 'load', load_kg: 8 });
    expect([on('pack', heavy)?.load_kg, on('few', heavy)?.load_kg]).toEqual([8, null]);
  });
  it('stays on its rung where there is no other of that name', () => {
    for (const [code, variant] of [['squat', 'moon'], ['wall-sit', 'half']] as const) expect(chooseAllowed(allowed(), 's1', 'p1', LIBRARY.get(code)!, variant)).toEqual(allowed());
  });
  it('is no longer beside what it has become', () => expect(of(putInstead(allowed(), 's1', 'p1', LIBRARY, 'squat', 'free'))).toEqual([]));
});
