/** How a timer makes itself felt: two short tones and a vibration, each with its switch, and a screen that stays on meanwhile. */
import { useEffect } from 'preact/hooks';
import { timerSound, timerVibration } from '../prefs';

let audio: AudioContext | null = null;

/** Call from a tap: browsers let a page sound only after one. */
export function prepareSound(): void {
  if (!timerSound.value || typeof AudioContext === 'undefined') return;
  audio ??= new AudioContext();
  void audio.resume().catch(() => undefined);
}

const TONE_HZ = { end: 880, count: 587 } as const;

function tone(hz: number, after_s: number, length_s: number): void {
  if (!audio) return;
  const [oscillator, gain, at] = [audio.createOscillator(), audio.createGain(), audio.currentTime + after_s];
  oscillator.frequency.value = hz;
  // A short rise and fall: a tone cut off hard clicks.
  gain.gain.setValueAtTime(0, at);
  gain.gain.linearRampToValueAtTime(0.25, at + 0.02);
  gain.gain.linearRampToValueAtTime(0, at + length_s);
  oscillator.connect(gain).connect(audio.destination);
  oscillator.start(at);
  oscillator.stop(at + length_s);
}

const vibrate = (pattern: number[]) => timerVibration.value && navigator.vibrate?.(pattern);

/** A rest or a hold is over, or the sides change. */
export function soundEnd(): void {
  vibrate([180, 120, 180]);
  if (timerSound.value) [0, 0.28].forEach((after) => tone(TONE_HZ.end, after, 0.2));
}

/** Three, two, one. */
export function soundCount(): void {
  vibrate([40]);
  if (timerSound.value) tone(TONE_HZ.count, 0, 0.09);
}

/** Keeps the screen on while `wanted`; the browser lets go of it whenever the page is hidden, so it is asked again. */
export function useScreenOn(wanted: boolean): void {
  useEffect(() => {
    if (!wanted || !navigator.wakeLock) return;
    let lock: WakeLockSentinel | null = null;
    let over = false;
    const ask = async () => {
      if (document.visibilityState !== 'visible') return;
      lock = await navigator.wakeLock.request('screen').catch(() => null);
      if (over) void lock?.release();
    };
    void ask();
    document.addEventListener('visibilitychange', ask);
    return () => {
      over = true;
      document.removeEventListener('visibilitychange', ask);
      void lock?.release();
    };
  }, [wanted]);
}
