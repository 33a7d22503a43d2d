import { describe, expect, it } from 'vitest';
import { addSeconds, clock, isOver, isStale, left, pause, resume, secondsLeft, startCountdown, STALE_AFTER_MIN, walked } from './timer';

const AT = 1_800_000_000_000;

describe('a countdown kept by its end', () => {
  it('says the same whether the page ran, slept or was loaded again', () => {
    const kept = JSON.parse(JSON.stringify(startCountdown(60, AT)));
    expect(secondsLeft(kept, AT)).toBe(60);
    expect(secondsLeft(kept, AT + 17_400)).toBe(43);
    expect(isOver(kept, AT + 59_999)).toBe(false);
    expect(isOver(kept, AT + 60_000)).toBe(true);
    expect(left(kept, AT + 3_600_000)).toBe(0);
  });
  it('stands still while paused and goes on with what was left', () => {
    const paused = pause(startCountdown(60, AT), AT + 20_000);
    expect(secondsLeft(paused, AT + 500_000)).toBe(40);
    const again = resume(paused, AT + 500_000);
    expect(secondsLeft(again, AT + 510_000)).toBe(30);
    expect(resume(again, AT + 520_000)).toEqual(again);
  });
  it('takes more time, running or paused, and the way walked never passes its end', () => {
    const more = addSeconds(startCountdown(60, AT), 30, AT + 50_000);
    expect(secondsLeft(more, AT + 50_000)).toBe(40);
    expect(walked(more, AT + 50_000)).toBeCloseTo(1 - 40 / 90);
    const paused = addSeconds(pause(startCountdown(60, AT), AT), 30, AT + 9_000);
    expect(secondsLeft(paused, AT + 99_000)).toBe(90);
    expect(walked(startCountdown(0, AT), AT)).toBe(1);
  });
  it('is no news long after its end, unless it was paused', () => {
    const timer = startCountdown(30, AT);
    const long = AT + 30_000 + STALE_AFTER_MIN * 60_000;
    expect(isStale(timer, long)).toBe(false);
    expect(isStale(timer, long + 1)).toBe(true);
    expect(isStale(pause(timer, AT), long + 1)).toBe(false);
  });
  it('reads as minutes and seconds', () => {
    expect([clock(0), clock(9), clock(65), clock(600)]).toEqual(['0:00', '0:09', '1:05', '10:00']);
  });
});
