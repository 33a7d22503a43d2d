import { useLayoutEffect, useRef, useState } from 'preact/hooks';

/** The width of an element in CSS px, followed as it changes; null before it is known. */
export function useWidth() {
  const box = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState<number | null>(null);
  useLayoutEffect(() => {
    const element = box.current;
    if (!element) return;
    setWidth(element.clientWidth);
    const watch = new ResizeObserver(() => setWidth(element.clientWidth));
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  return { box, width };
}

/** Whether an element is at least `px` wide. */
export function useWide(px: number) {
  const { box, width } = useWidth();
  return { box, wide: (width ?? 0) >= px };
}
