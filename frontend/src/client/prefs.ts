/** Choices that belong to this phone alone: how stones lie, and how a timer speaks at its end. */
import { signal, type Signal } from '@preact/signals';

function kept(name: string, initial: boolean): Signal<boolean> {
  const choice = signal(initial);
  try {
    const saved = localStorage.getItem(`steadfoot.${name}`);
    if (saved !== null) choice.value = saved === 'yes';
  } catch {
    // storage refused: the initial choice
  }
  choice.subscribe((value) => {
    try {
      localStorage.setItem(`steadfoot.${name}`, value ? 'yes' : 'no');
    } catch {
      // storage refused: the choice lasts until the page is closed
    }
  });
  return choice;
}

export const straightList = kept('straight', false);
/** Whether the drawing on an exercise card moves. */
export const figureMoves = kept('figureMoves', true);
export const timerSound = kept('sound', true);
export const timerVibration = kept('vibration', true);
