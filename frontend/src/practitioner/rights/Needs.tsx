/**
 * Which right the controls in a part of the page need. A page's controls need the right to write unless it says otherwise, so a new
 * page is honest to whoever may only read: buttons are absent, fields are text. What only looks (a filter, "earlier", print) stands in
 * `Looking`, what is an owner's in `Owning`.
 */
import { createContext, type ComponentChildren } from 'preact';
import { useContext } from 'preact/hooks';
import { may, type Right } from './rights';

interface Children { children?: ComponentChildren }

const Needed = createContext<Right>('look');

/** Whether whoever is signed in may use the controls here. */
export const useMay = (): boolean => may(useContext(Needed));

/** The body of every page. */
export const Writing = ({ children }: Children) => <Needed.Provider value="write">{children}</Needed.Provider>;
export const Looking = ({ children }: Children) => <Needed.Provider value="look">{children}</Needed.Provider>;
export const Owning = ({ children }: Children) => <Needed.Provider value="own">{children}</Needed.Provider>;

/** What makes sense only for who may use the controls in it: a section's heading, words that lead up to a button. */
export const Doing = ({ children }: Children) => (useMay() ? <>{children}</> : null);
