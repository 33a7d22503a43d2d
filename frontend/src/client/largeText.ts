/** Whether this person reads with text so large that turning rows of stones would lie over each other. */
import { signal } from '@preact/signals';

/** From this root text size on stones lie one in a line, px; 18 is the app's own, so this is a quarter more. House value. */
const LARGE_FROM_PX = 22.5;
export const largeText = signal(false);

export function watchTextSize(): void {
  const look = () => (largeText.value = parseFloat(getComputedStyle(document.documentElement).fontSize) >= LARGE_FROM_PX);
  look();
  addEventListener('resize', look);
  document.addEventListener('visibilitychange', look); // it is changed in the phone's settings
}
